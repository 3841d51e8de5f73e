using Fastening;
using UnitsNet;

namespace TwoDayJob;

/// <summary>The cover and its tightening program, as the invented procedure asks for it.</summary>
internal sealed record DigesterCover(TighteningProgram Program)
{
    public const int Bolts = 48;

    public static DigesterCover Planned()
    {
        string[] bolts = [.. Enumerable.Range(1, Bolts).Select(i => $"B{i:00}")];
        IReadOnlyList<string> crosswise = TighteningPattern.Cross(Bolts).Arrange(bolts);
        ToleranceWindow<Torque> final = ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(400), minus: Ratio.FromPercent(5), plus: Ratio.FromPercent(5));
        return new(new TighteningProgram(
            bolts,
            [
                TighteningStep.ByTorque("pass 1 (30 %)", final.Scale(0.3)).WithFasteners(crosswise),
                TighteningStep.ByTorque("pass 2 (70 %)", final.Scale(0.7)).WithFasteners(crosswise),
                TighteningStep.ByTorqueWatchingRotation(
                    "pass 3 (100 %)", final, ToleranceWindow.FromLimits(Angle.FromDegrees(8), Angle.FromDegrees(30))).WithFasteners(crosswise),
            ],
            TighteningOrder.InSequence));
    }
}
