using System.Globalization;
using Fastening.Equations;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>Machinery's Handbook, 27th and 31st ed.: unified and metric threads, the torque coefficients of Table 3, scatter by method.</summary>
public sealed class MachinerysHandbook : PublishedSource
{
    private const string ScatterTable = "Machinery's Handbook";

    /// <summary>The sizes averaged in Table 3: coarse thread, ISO 272 width across flats, ISO 273 medium hole, mm.</summary>
    private static readonly (double Diameter, double Pitch, double AcrossFlats, double Hole)[] Sizes =
    [
        (4, 0.7, 7, 4.5), (5, 0.8, 8, 5.5), (6, 1, 10, 6.6), (8, 1.25, 13, 9), (10, 1.5, 16, 11), (12, 1.75, 18, 13.5),
        (16, 2, 24, 17.5), (20, 2.5, 30, 22), (24, 3, 36, 26), (30, 3.5, 46, 33), (36, 4, 55, 39),
    ];

    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("mh31-UNC-", UnifiedThread),
        new("mh31-UNF-", UnifiedThread),
        new("mh31-8UN-", UnifiedThread),
        new("mh31-p1663-", (row, _) => Metric(row["d_mm"], row["P_mm"]).StressArea.SquareMillimeters),
        new("mprofile-", ProfileHeight),
        new("mh31-eq23-", Coefficient),
        new("mh31-table3-", (_, output) => AverageNutFactor(output)),
        new("machinery-scatter", (_, output) => Scatter(output)),
    ];

    private static double? UnifiedThread(PublishedRow row, string output)
    {
        ScrewThread thread = ScrewThread.Unified(Length.FromInches(row["d_in"]), row["threads_per_inch"]);
        return output switch
        {
            "d2_in" => thread.PitchDiameter.Inches,
            "d3_ext_ref_in" => thread.RootDiameter.Inches,
            "D1_int_in" => thread.InternalMinorDiameter!.Value.Inches,
            "At_in2" => thread.StressArea.SquareInches,
            "A_minor_in2" => thread.MinorArea.SquareInches,
            "lead_angle_deg" => thread.LeadAngle.Degrees,
            _ => null,
        };
    }

    /// <summary>Multiples of the height H, written as "3H/8", "0.711325H" or "H"; two of them are depths of a thread.</summary>
    private static double? ProfileHeight(PublishedRow row, string output)
    {
        ScrewThread thread = Metric(10, row["P_mm"]);
        if (output == "3H/4") return (thread.NominalDiameter - thread.PitchDiameter).Millimeters;
        if (output == "5H/4") return (thread.NominalDiameter - thread.InternalMinorDiameter!.Value).Millimeters;
        string[] parts = output.Split('H');
        double multiple = parts[0].Length == 0 ? 1 : Number(parts[0]);
        double divisor = parts[1].Length == 0 ? 1 : Number(parts[1][1..]);
        return multiple / divisor * ThreadEquations.TriangleHeight(row["P_mm"]);
    }

    /// <summary>Torque per unit preload at d = 1: lead, thread friction on 0.92 d, bearing friction on the mean of 1.5 d and d.</summary>
    private static double? Coefficient(PublishedRow row, string output)
    {
        double flank = TorqueEquations.AxialFlankFactor(Angle.FromDegrees(row["alpha_deg"]).Radians);
        double thread = TorqueEquations.LinearThreadArm(0, flank, 1, 0.92);
        double bearing = TorqueEquations.BearingArm(1, TorqueEquations.MeanBearingDiameter(1.5, 1), Math.PI);
        return output switch
        {
            "c_l" => TorqueEquations.PitchArm(1),
            "c_mu1" => thread,
            "c_mu2" => bearing,
            "c_mu_sum" => TorqueEquations.TorqueArm(thread, bearing),
            _ => null,
        };
    }

    /// <summary>K[bearing friction][thread friction], the average over the sizes.</summary>
    private static double AverageNutFactor(string output)
    {
        string[] keys = output.Split('[', ']');
        var friction = new FrictionCoefficients(thread: Number(keys[3]), bearing: Number(keys[1]));
        return Sizes.Average(size => TorquePreloadModel
            .FromFriction(
                Metric(size.Diameter, size.Pitch),
                BearingSurface.Annulus(Length.FromMillimeters(0.95 * size.AcrossFlats), Length.FromMillimeters(size.Hole))
                    .WithUniformPressure(),
                friction)
            .WithConvention(TorqueConvention.MachinerysHandbook).NutFactor);
    }

    private static double? Scatter(string output) => output switch
    {
        "by_feel_pct" => Percent(TighteningMethod.ByFeel),
        "torque_wrench_pct" => Percent(TighteningMethod.TorqueWrench),
        "turn_of_nut_pct" => Percent(TighteningMethod.AngleControlled, "turn of the nut"),
        "preload_indicating_washer_pct" => Percent(TighteningMethod.LoadIndicatingWasher),
        "strain_gage_pct" => Percent(TighteningMethod.InstrumentedBolt, "strain gauge"),
        "computer_controlled_below_yield_pct" => Percent(TighteningMethod.AngleControlled, "computer controlled; below yield"),
        "yield_point_sensing_pct" => Percent(TighteningMethod.YieldControlled, "computer controlled"),
        "bolt_elongation_pct[0]" => ShippedScatter.Of(ScatterTable, TighteningMethod.Elongation, "", 0).Percent,
        "bolt_elongation_pct[1]" => ShippedScatter.Of(ScatterTable, TighteningMethod.Elongation, "", 1).Percent,
        "ultrasonic_pct" => Percent(TighteningMethod.Ultrasonic),
        _ => null,
    };

    private static double Percent(TighteningMethod method, string condition = "") => ShippedScatter.Percent(ScatterTable, method, condition);

    private static ScrewThread Metric(double diameter, double pitch) =>
        ScrewThread.IsoMetric(Length.FromMillimeters(diameter), Length.FromMillimeters(pitch));

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
