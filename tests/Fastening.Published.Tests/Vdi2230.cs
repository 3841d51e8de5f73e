using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>VDI 2230-1, 2001 and later: assembly preload and tightening torque (plastic torsion), tightening factors, friction classes.</summary>
public sealed class Vdi2230 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("vdi2230-fine-", (row, output) => Assembly(row, row["Rp_min_MPa"], output)),
        new("vdi2230-A1-", (row, output) => Assembly(row, row["Rp_min_MPa"], output)),
        new("vdi-M1.6-", (row, output) => Assembly(row, row["Rp_MPa_used"], output)),
        new("alphaA-spread-", (row, _) => PreloadScatter.FromPlusMinus(Ratio.FromPercent(row["preload_scatter_pct"])).TighteningFactor),
        new("alphaA-elongation-", TighteningFactor),
        new("alphaA-yield-point-", TighteningFactor),
        new("alphaA-hydraulic-", TighteningFactor),
        new("alphaA-torque-", TighteningFactor),
        new("alphaA-impact-", TighteningFactor),
        new("vdi-friction-class-", FrictionClass),
    ];

    /// <summary>One model, as a user writes it: the rounded coefficients of VDI 2230 stay with the torque and out of the stress.</summary>
    internal static double? Assembly(PublishedRow row, double yieldMegapascals, string output)
    {
        FrictionTorqueModel model = TorquePreloadModel.FromFriction(
            ScrewThread.IsoMetric(Length.FromMillimeters(row["d_mm"]), Length.FromMillimeters(row["P_mm"])),
            BearingSurface.Annulus(Length.FromMillimeters(row["dW_mm_used"]), Length.FromMillimeters(row["dh_mm"])),
            new FrictionCoefficients(thread: row["mu_G"], bearing: row["mu_K"])).WithConvention(TorqueConvention.Vdi2230);
        Pressure yield = Pressure.FromMegapascals(yieldMegapascals);
        Force preload = model.PermittedPreload(new BoltStrength(yield, yield, yield), Ratio.FromDecimalFractions(row["nu"]));
        return output switch
        {
            "FMTab_kN" or "FM_kN" => preload.Kilonewtons,
            "FM_N" => preload.Newtons,
            "MA_Nm" => model.TorqueFor(preload).NewtonMeters,
            _ => null,
        };
    }

    /// <summary>The α_A that the package holds for the row's method; not a number when a row names two methods that differ.</summary>
    private static double? TighteningFactor(PublishedRow row, string output)
    {
        (TighteningMethod Method, string Condition)[] methods = row.Text("method") switch
        {
            "elongation, ultrasonic" => [(TighteningMethod.Ultrasonic, "elongation controlled by ultrasound")],
            "yield-point or angle controlled" => [(TighteningMethod.YieldControlled, ""), (TighteningMethod.AngleControlled, "")],
            "hydraulic" => [(TighteningMethod.HydraulicTensioner, "")],
            "torque wrench, torque found by test (mu measured)" =>
                [(TighteningMethod.TorqueWrench, "torque found by test; friction measured")],
            "torque wrench, estimated friction" => [(TighteningMethod.TorqueWrench, "friction estimated; class B")],
            "torque-controlled screwdriver / impulse with check torque" =>
                [(TighteningMethod.PowerTool, "torque-controlled screwdriver; impulse tool with check torque")],
            _ => [(TighteningMethod.ImpactTool, "impact wrench or by hand; unchecked")],
        };
        int end = output == "alphaA_range[0]" ? 0 : 1;
        double[] factors =
        [
            .. methods.Select(m => ShippedScatter.Of("VDI 2230-1:2015 Table A8", m.Method, m.Condition, end).TighteningFactor).Distinct(),
        ];
        return factors.Length == 1 ? factors[0] : double.NaN;
    }

    /// <summary>A class printed without an upper end must be open in the package: 0 says that the two agree.</summary>
    private static double? FrictionClass(PublishedRow row, string output)
    {
        PublishedFriction? shipped = FrictionGuidance.Coefficients.SingleOrDefault(f => f.Condition == "friction class " + row.Text("class"));
        if (output == "mu_min") return shipped?.Low ?? double.NaN;
        bool isOpen = row.Values.Single(value => value.Output == output).Printed == PublishedValue.Open;
        return isOpen && shipped is { High: null } ? 0 : shipped?.High ?? double.NaN;
    }
}
