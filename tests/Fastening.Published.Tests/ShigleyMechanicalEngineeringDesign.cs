using System.Globalization;
using Fastening.Equations;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>Budynas and Nisbett, Shigley's Mechanical Engineering Design, 9th ed. (2011), chapter 8.</summary>
public sealed class ShigleyMechanicalEngineeringDesign : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("unified-area-", UnifiedArea),
        new("shigley9-class-", Strength),
        new("shigley9-ex8.1", PowerScrew),
        new("shigley-prob8.4", PowerScrew),
        new("shigley-prob8.3-", (row, _) => Efficiency(row["lead_angle_deg"], row["f"])),
        new("shigley9-ex8.3-geom", MeanDiameter),
        new("shigley9-ex8.3a-", (row, _) => StressEquations.TensileStress(row["Fi_kip"], row["At_in2"])),
        new("shigley9-K-", (row, _) => TorqueOverForceAndDiameter(row.Values[0].Number)),
        new("shigley-815", (row, output) => TorqueOverForceAndDiameter(row.Values.Single(value => value.Output == output).Number)),
    ];

    private static double? UnifiedArea(PublishedRow row, string output) => output == "At_in2"
        ? ScrewThread.Unified(Length.FromInches(row["d_in"]), row["threads_per_inch"]).StressArea.SquareInches
        : null;

    private static double? Strength(PublishedRow row, string output)
    {
        double largest = double.Parse(row.Text("size_range").Split("-M")[1], CultureInfo.InvariantCulture);
        BoltStrength strength = Iso898Part1.StrengthOf(row, largest);
        return output switch
        {
            "proof_MPa" => strength.ProofLoadStress?.Megapascals,
            "tensile_min_MPa" => strength.TensileStrength.Megapascals,
            "yield_min_MPa" => strength.YieldStrength.Megapascals,
            _ => null,
        };
    }

    /// <summary>A square thread has d_m = d − P/2 and d_r = d − P; the collar acts at a given diameter.</summary>
    private static double? PowerScrew(PublishedRow row, string output)
    {
        double d = row["d_mm"], pitch = row["pitch_mm"], root = d - pitch;
        double mean = ThreadEquations.TextbookMeanDiameter(d, root);
        ScrewThread thread = SquareThread(d, pitch, (int)row["starts"], mean, root);
        FrictionTorqueModel screw = Screw(thread, row["dc_mm"], new FrictionCoefficients(row["f"], row["fc"]));
        FrictionTorqueModel withoutCollar = screw.WithFriction(new FrictionCoefficients(row["f"], 0));
        Force load = Force.FromNewtons(row["F_N"]);
        Torque raise = screw.TorqueFor(load);
        return output switch
        {
            "dm_mm" => mean,
            "lead_mm" => thread.Lead.Millimeters,
            "TR_total_Nm" => raise.NewtonMeters,
            "TR_thread_Nm" => withoutCollar.TorqueFor(load).NewtonMeters,
            "T_collar_Nm" => screw.BreakdownAt(raise).BearingFrictionTorque.NewtonMeters,
            "TL_total_Nm" => screw.LooseningTorqueAt(load).NewtonMeters,
            "TL_thread_Nm" => withoutCollar.LooseningTorqueAt(load).NewtonMeters,
            "efficiency" => screw.BreakdownAt(raise).PitchShare,
            "self_locking" or "self_locking_thread_alone" => screw.IsSelfLocking ? 1 : 0,
            "tau_body_MPa" => StressEquations.TorsionalStress(raise.NewtonMeters * 1e3, StressEquations.ElasticSectionModulus(root)),
            "sigma_axial_MPa" => -StressEquations.TensileStress(load.Newtons, StressEquations.SectionArea(root)),
            _ => null,
        };
    }

    /// <summary>A square thread of that lead angle, without a collar; the size cancels, and many starts bring the lead.</summary>
    private static double Efficiency(double leadAngleDegrees, double friction)
    {
        const double Mean = 30;
        const int Starts = 20;
        double lead = Math.PI * Mean * Math.Tan(leadAngleDegrees * Math.PI / 180);
        ScrewThread thread = SquareThread(32, lead / Starts, Starts, Mean, 28);
        FrictionTorqueModel screw = Screw(thread, 40, new FrictionCoefficients(friction, 0));
        return screw.BreakdownAt(Torque.FromNewtonMeters(10)).PitchShare;
    }

    /// <summary>The book takes the root diameter from the tabulated minor area, and the lead angle from the rounded mean diameter.</summary>
    private static double? MeanDiameter(PublishedRow row, string output) => output switch
    {
        "dm_in" => ThreadEquations.TextbookMeanDiameter(row["d_in"], Math.Sqrt(4 / Math.PI * row["Ar_in2"])),
        "lead_angle_deg" => Angle.FromRadians(ThreadEquations.LeadAngleAtMeanDiameter(
            1 / row["threads_per_inch"], row.Values.Single(value => value.Output == "dm_in").Number)).Degrees,
        _ => null,
    };

    /// <summary>A tabulated K is an input: what is checked is T = K F d, eq. (8-27), the other way round.</summary>
    private static double TorqueOverForceAndDiameter(double nutFactor)
    {
        Length diameter = Length.FromMillimeters(12);
        Force force = Force.FromKilonewtons(40);
        return TorquePreloadModel.FromNutFactor(nutFactor, diameter).TorqueFor(force).NewtonMeters / (force.Newtons * diameter.Meters);
    }

    private static ScrewThread SquareThread(double diameter, double pitch, int starts, double mean, double root) => ScrewThread.FromProfile(
        Length.FromMillimeters(diameter), Length.FromMillimeters(pitch), Angle.Zero, starts,
        Length.FromMillimeters(mean), Length.FromMillimeters(root));

    private static FrictionTorqueModel Screw(ScrewThread thread, double collarDiameter, FrictionCoefficients friction) => TorquePreloadModel
        .FromFriction(
            thread, BearingSurface.Annulus(Length.FromMillimeters(collarDiameter + 5), Length.FromMillimeters(collarDiameter - 5)), friction)
        .WithConvention(TorqueConvention.Shigley);
}
