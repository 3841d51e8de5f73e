using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>NASA-STD-5020, as stated in J. Failure Analysis and Prevention 19 (2019): preload from torque with an uncertainty Γ.</summary>
public sealed class NasaStd5020 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } = [new("nasa5020-", Preload)];

    private static double? Preload(PublishedRow row, string output)
    {
        const double NutFactor = 0.2;
        double gamma = row[output.EndsWith("unlub", StringComparison.Ordinal) ? "Gamma_unlubricated" : "Gamma_lubricated"];
        NutFactorModel model = TorquePreloadModel.FromNutFactor(NutFactor, Length.FromInches(0.25));
        Range<Force> range = SpaceflightPreload.ByNasaStd5020(
            model, model.TorqueFor(Force.FromNewtons(row["Fp"])), Ratio.FromDecimalFractions(gamma), Ratio.Zero);
        return (output.StartsWith("Fmin", StringComparison.Ordinal) ? range.Low : range.High).Newtons;
    }
}
