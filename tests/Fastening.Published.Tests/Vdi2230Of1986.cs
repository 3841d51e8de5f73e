using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>VDI 2230 of 1986 and tables compiled after it: elastic torsion, strengths in kp/mm², tightening factors.</summary>
public sealed class Vdi2230Of1986 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("vdi-old-", (row, _) => TensionLoad(row).Newtons),
        new("vdi86-", TighteningFactor),
    ];

    /// <summary>90 % of yield by combined stress; the bearing does not twist the bolt, so any ring will do.</summary>
    private static Force TensionLoad(PublishedRow row)
    {
        Length diameter = Length.FromMillimeters(row["d_mm"]);
        FrictionTorqueModel model = TorquePreloadModel.FromFriction(
            ScrewThread.IsoMetric(diameter, Length.FromMillimeters(row["P_mm"])),
            BearingSurface.Annulus(diameter * 1.5, diameter * 1.1),
            FrictionCoefficients.Uniform(row["mu"]));
        Pressure yield = Pressure.FromMegapascals(row["Rp_MPa"]);
        return AssemblyStress.PermittedPreload(model, new BoltStrength(yield, yield, yield), row["nu"], TorsionDistribution.Elastic);
    }

    /// <summary>alphaA[i] belongs to plus_minus_pct[i].</summary>
    private static double? TighteningFactor(PublishedRow row, string output)
    {
        if (!output.StartsWith("alphaA", StringComparison.Ordinal)) return null;
        string percent = "plus_minus_pct" + output["alphaA".Length..];
        return Vdi2230.TighteningFactor(row.Values.Single(value => value.Output == percent).Number / 100);
    }
}
