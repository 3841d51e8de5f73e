using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>VDI 2230 of 1986 and tables compiled after it: elastic torsion, strengths in kp/mm², scatter by method.</summary>
public sealed class Vdi2230Of1986 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("vdi-old-", (row, _) => TensionLoad(row).Newtons),
        new("vdi86-", Scatter),
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
        return model.PermittedPreload(new BoltStrength(yield, yield, yield), Ratio.FromDecimalFractions(row["nu"]), TorsionDistribution.Elastic);
    }

    /// <summary>The scatter that the package holds for the method, as plus_minus_pct[end] and as alphaA[end].</summary>
    private static double? Scatter(PublishedRow row, string output)
    {
        (TighteningMethod method, string condition) = row.Text("method") switch
        {
            "angle-controlled" => (TighteningMethod.AngleControlled, "power tool or by hand; snug torque and angle found by test"),
            "hydraulic" => (TighteningMethod.HydraulicTensioner, "low for long bolts; high for short ones"),
            "torque, set from original-bolt tests" => (TighteningMethod.TorqueWrench, "torque found by test on the original joint"),
            "torque, friction estimated" => (TighteningMethod.TorqueWrench, "friction estimated"),
            _ => (TighteningMethod.PowerTool, "precision power screwdriver set by re-torque"),
        };
        int end = output.EndsWith("[0]", StringComparison.Ordinal) ? 0 : 1;
        (double percent, double factor) = ShippedScatter.Of("VDI 2230:1986", method, condition, end);
        return output.StartsWith("alphaA", StringComparison.Ordinal) ? factor : percent;
    }
}
