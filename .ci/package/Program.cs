using Fastening;
using Fastening.Equations;
using Fastening.Quality;
using UnitsNet;

// A little of everything that can break between a project and its package: embedded data, vectors, the numerics behind it, threads of the system.
ScrewThread thread = ScrewThread.Parse("M16");
var range = new FrictionRange(low: new FrictionCoefficients(0.10, 0.09), high: new FrictionCoefficients(0.16, 0.14));
FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(thread, range.Low);
Force permitted = model.PermittedPreload(PropertyClass.Parse("10.9").StrengthFor(thread), utilisation: Ratio.FromPercent(90));
Torque torque = model.TorqueFor(permitted);
Console.WriteLine($"{model}: {permitted.Kilonewtons:F1} kN, {torque.NewtonMeters:F1} N·m, at the highest friction {model.PreloadRangeAt(torque, range).Low.Kilonewtons:F1} kN");

double[] preloads = [.. Enumerable.Range(0, 1000).Select(i => permitted.Newtons * i / 999)];
double[] torques = new double[1000];
model.TorquesFor(preloads, torques);
Console.WriteLine($"span and scalar differ by {Math.Abs(torques[999] - torque.NewtonMeters):G2} N·m");

ToleranceWindow<Torque> window = ToleranceWindow.FromDeviations(torque, minus: Ratio.FromPercent(5), plus: Ratio.FromPercent(5));
Console.WriteLine(window.Decide(torque * 1.04, MeasurementUncertainty.Expanded(Torque.FromNewtonMeters(3), coverageFactor: 2), DecisionRule.IlacG8));
Console.WriteLine(StatisticalToleranceInterval.TwoSidedFactor(count: 20, populationShare: Ratio.FromPercent(95), confidence: 0.95).ToString("F3"));
Console.WriteLine(TorqueToolClass.Parse("II A"));
Console.WriteLine(string.Join(", ", TighteningPattern.Cross(8).Order));
Console.WriteLine(Derivation.Of(() => model.TorqueFor(permitted)).Steps[^1]);
