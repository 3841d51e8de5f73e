using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>VDI 2230-1, 2001 and later: assembly preload and tightening torque (plastic torsion), tightening factors.</summary>
public sealed class Vdi2230 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("vdi2230-fine-", (row, output) => Assembly(row, row["Rp_min_MPa"], output)),
        new("vdi2230-A1-", (row, output) => Assembly(row, row["Rp_min_MPa"], output)),
        new("vdi-M1.6-", (row, output) => Assembly(row, row["Rp_MPa_used"], output)),
        new("alphaA-spread-", (row, _) => TighteningFactor(row["preload_scatter_pct"] / 100)),
    ];

    /// <summary>The preload by the exact coefficients of §5.4.2; the torque at it by the rounded ones, as the tables have it.</summary>
    internal static double? Assembly(PublishedRow row, double yieldMegapascals, string output)
    {
        FrictionTorqueModel model = TorquePreloadModel.FromFriction(
            ScrewThread.IsoMetric(Length.FromMillimeters(row["d_mm"]), Length.FromMillimeters(row["P_mm"])),
            BearingSurface.Annulus(Length.FromMillimeters(row["dW_mm_used"]), Length.FromMillimeters(row["dh_mm"])),
            new FrictionCoefficients(thread: row["mu_G"], bearing: row["mu_K"]));
        Pressure yield = Pressure.FromMegapascals(yieldMegapascals);
        Force preload = AssemblyStress.PermittedPreload(model, new BoltStrength(yield, yield, yield), row["nu"]);
        return output switch
        {
            "FMTab_kN" or "FM_kN" => preload.Kilonewtons,
            "FM_N" => preload.Newtons,
            "MA_Nm" => model.WithConvention(TorqueConvention.Vdi2230).TorqueFor(preload).NewtonMeters,
            _ => null,
        };
    }

    /// <summary>α_A of a scatter of ± s of the preload, as a band of the nut factor.</summary>
    internal static double TighteningFactor(double scatter)
    {
        const double NutFactor = 0.2;
        return TorquePreloadModel.FromNutFactor(NutFactor, Length.FromMillimeters(10))
            .PreloadRangeAt(Torque.FromNewtonMeters(50), NutFactor / (1 + scatter), NutFactor / (1 - scatter)).TighteningFactor!.Value;
    }
}
