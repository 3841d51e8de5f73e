using Fastening.Equations;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>
/// Shigley's Mechanical Engineering Design, 8th and 9th ed., chapter 8: stiffness of bolts and clamped parts, frustum by frustum and in
/// stacks.
/// </summary>
public sealed class ShigleyJoints : PublishedSource
{
    private const double PoundsPerInchPerMega = 1e6;

    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("shigley-8-2", MixedPlates),
        new("shigley-8-3", PrestressedBolt),
        new("shigley-8-4", CastIronJoint),
        new("shigley-sm-823", MetricCapScrew),
        new("shigley-sm-825", TappedJoint),
        new("shigley-sm-827", SmallCapScrew),
        new("wileman-", Coefficients),
    ];

    private static double? MixedPlates(PublishedRow row, string output)
    {
        double steel = row["E_steel_Mpsi"], iron = row["E_ci_Mpsi"], washer = row["washer_in"], plate = row["steel_plate_in"], cast = row["cast_iron_in"];
        ScrewThread thread = ScrewThread.Parse("1/2-13 UNC");
        IReadOnlyList<ClampedLayer> allSteel = [InchLayer(washer + plate + cast, steel)];
        return output switch
        {
            "k1_Mlbf_in" => Frustum(row["d_in"], steel, 0.595, 0.75),
            "k2_Mlbf_in" => Frustum(row["d_in"], iron, 0.0775, 1.437),
            "k3_Mlbf_in" => Frustum(row["d_in"], iron, 0.6725, 0.75),
            "km_Mlbf_in" => MegaPoundsPerInch(ClampedStack.ShigleyFrusta(
                thread, [InchLayer(washer, steel), InchLayer(plate, steel), InchLayer(cast, iron)]).Stiffness),
            "km_both_steel_cone" => MegaPoundsPerInch(ClampedStack.ShigleyFrusta(thread, allSteel).Stiffness),
            "km_both_steel_wileman" => MegaPoundsPerInch(ClampedStack.Wileman(thread, allSteel, WilemanFit.Steel).Stiffness),
            _ => null,
        };
    }

    /// <summary>The stiffnesses are given; the torques follow from the book's root diameter, which goes into its mean diameter.</summary>
    private static double? PrestressedBolt(PublishedRow row, string output)
    {
        double mean = ThreadEquations.TextbookMeanDiameter(row["d_in"], Math.Sqrt(4 / Math.PI * row["Ar_in2"]));
        double share = JointEquations.LoadFactor(1 / row["kb_Mlbf_in"], 1 / row["km_Mlbf_in"]);
        double leadAngle = ThreadEquations.LeadAngleAtMeanDiameter(1 / 16.0, row.Values.Single(value => value.Output == "dm_in").Number);
        return output switch
        {
            "C" => share,
            "sigma_i_kpsi" => StressEquations.TensileStress(row["Fi_lbf"], row["At_in2"]) / 1000,
            "sigma_b_kpsi" => StressEquations.TensileStress(LoadShareEquations.BoltForce(row["Fi_lbf"], share, row["P_lbf"]), row["At_in2"]) / 1000,
            "T_K_lbfin" => TorquePreloadModel.FromNutFactor(row["K"], Length.FromInches(row["d_in"]))
                .TorqueFor(Force.FromPoundsForce(row["Fi_lbf"])).PoundForceInches,
            "dr_in" => BoltComplianceEquations.RoundDiameter(row["Ar_in2"]),
            "dm_in" => mean,
            "lead_angle_deg" => Angle.FromRadians(leadAngle).Degrees,
            "T_friction_lbfin" => row["Fi_lbf"] * TorqueEquations.TorqueArm(
                TorqueEquations.ExactThreadArm(TorqueEquations.AxialFlankFactor(Math.PI / 6), row["f"], mean, leadAngle),
                TorqueEquations.BearingArm(row["fc"], TorqueEquations.TextbookBearingDiameter(row["d_in"]), Math.PI)),
            _ => null,
        };
    }

    private static double? CastIronJoint(PublishedRow row, string output)
    {
        ScrewThread thread = ScrewThread.Unified(Length.FromInches(row["d_in"]), row["threads_per_inch"]);
        BoltCompliance bolt = BoltCompliance.Textbook(
            thread, Length.FromInches(row["L_in"]), Length.FromInches(row["threaded_in"]), Length.FromInches(row["grip_in"]), Of(row["E_bolt_Mpsi"]));
        ClampedStack parts = ClampedStack.ShigleyFrusta(thread, [InchLayer(row["grip_in"], row["E_cast_iron_Mpsi"])]);
        return output switch
        {
            "kb_Mlbf_in" => MegaPoundsPerInch(bolt.Stiffness),
            "km_Mlbf_in" => MegaPoundsPerInch(parts.Stiffness),
            "C" => new Joint(bolt, parts).LoadFactor,
            "N_exact" => row["load_factor"] / FactorsOf(row, new Joint(bolt, parts), 1).Overload,
            "N" => Math.Ceiling(row["load_factor"] / FactorsOf(row, new Joint(bolt, parts), 1).Overload),
            "nL" => FactorsOf(row, new Joint(bolt, parts), 6).Overload,
            "np" => FactorsOf(row, new Joint(bolt, parts), 6).Yielding,
            "n0" => FactorsOf(row, new Joint(bolt, parts), 6).Separation,
            _ => null,
        };
    }

    /// <summary>Preload 0.75 of the proof load, the load shared by the bolts.</summary>
    private static ShigleyFactors FactorsOf(PublishedRow row, Joint joint, int bolts)
    {
        var proof = Pressure.FromPoundsForcePerSquareInch(row["Sp_kpsi"] * 1000);
        var strength = new BoltStrength(1.5 * proof, proof, proof);
        return joint.ShigleyFactorsAt(
            PublishedPreload.ReusableJoint(strength, joint.Bolt.Thread).Preload, Force.FromPoundsForce(row["P_total_kip"] * 1000 / bolts), strength);
    }

    private static double? MetricCapScrew(PublishedRow row, string output)
    {
        double d = row["d_mm"];
        ScrewThread thread = ScrewThread.Parse("M12");
        ClampedStack parts = ClampedStack.ShigleyFrusta(thread, [MetricLayer(20, 207), MetricLayer(6, 100)]);
        double share = JointEquations.LoadFactor(1 / row["kb_MN_m"], parts.MetersPerNewton * 1e6);
        return output switch
        {
            "k1" => MetricFrustum(d, 207, 13, 18),
            "k2" => MetricFrustum(d, 207, 7, 24.9),
            "k3" => MetricFrustum(d, 100, 6, 18),
            "km" => parts.Stiffness.NewtonsPerMeter / 1e6,
            "C" => share,
            "n" => LoadShareEquations.OverloadFactor(
                MaterialEquations.ProofLoad(row["Sp_MPa"], row["At_mm2"]), row["Fi_kN"] * 1000, share, row["P_kN"] * 1000),
            _ => null,
        };
    }

    /// <summary>
    /// Threaded to the head, and screwed into cast iron: an inch of it, of which half a diameter counts. The second frustum is printed with a
    /// diameter where the cone of the third has not arrived (it ends at 1.039 in.), so the three are put in series as printed.
    /// </summary>
    private static double? TappedJoint(PublishedRow row, string output)
    {
        double d = row["d_in"], modulus = row["E_Mpsi"];
        ScrewThread thread = ScrewThread.Parse("1/2-13 UNC");
        double plates = row["l_in"] - d / 2;
        Length grip = BoltCompliance.TappedGrip(thread, Length.FromInches(plates), Length.FromInches(1)), length = Length.FromInches(1.25);
        BoltCompliance bolt = BoltCompliance.Textbook(thread, length, length, grip, Of(modulus));
        double first = Frustum(d, 30, 0.4225, 0.75), second = Frustum(d, 30, 0.1725, 1.018), third = Frustum(d, 14.5, 0.25, 0.75);
        double inSeries = 1 / first + 1 / second + 1 / third;
        return output switch
        {
            "kb" => MegaPoundsPerInch(bolt.Stiffness),
            "k1" => first,
            "k2" => second,
            "k3" => third,
            "km" => 1 / inSeries,
            "C" => JointEquations.LoadFactor(1 / MegaPoundsPerInch(bolt.Stiffness), inSeries),
            _ => null,
        };
    }

    private static double? SmallCapScrew(PublishedRow row, string output) => output switch
    {
        "k1" => Frustum(row["d_in"], 30, 0.065, 0.5625),
        "k2" => Frustum(row["d_in"], 14, 0.18625, 0.6375),
        "k3" => Frustum(row["d_in"], 14, 0.25125, 0.5625),
        "km" => MegaPoundsPerInch(ClampedStack.ShigleyFrusta(
            ScrewThread.Parse("3/8-16 UNC"), [InchLayer(0.065, 30), InchLayer(0.18625 + 0.25125, 14)]).Stiffness),
        _ => null,
    };

    private static double? Coefficients(PublishedRow row, string output)
    {
        WilemanFit fit = output.Split('[')[0] switch
        {
            "steel" => WilemanFit.Steel,
            "gray_cast_iron" => WilemanFit.GreyCastIron,
            "aluminum" => WilemanFit.Aluminium,
            "copper" => WilemanFit.Copper,
            _ => WilemanFit.General,
        };
        return output.EndsWith("[0]", StringComparison.Ordinal) ? fit.Coefficient : fit.Exponent;
    }

    private static double Frustum(double d, double modulus, double thickness, double diameter) => MegaPoundsPerInch(ClampedStack.Frustum(
        InchLayer(thickness, modulus), Length.FromInches(diameter), Length.FromInches(d), Angle.FromDegrees(30)).Stiffness);

    private static double MetricFrustum(double d, double modulus, double thickness, double diameter) => ClampedStack.Frustum(
        MetricLayer(thickness, modulus), Length.FromMillimeters(diameter), Length.FromMillimeters(d), Angle.FromDegrees(30)).Stiffness.NewtonsPerMeter / 1e6;

    private static ClampedLayer InchLayer(double inches, double megaPsi) => new(Length.FromInches(inches), Of(megaPsi));

    private static ClampedLayer MetricLayer(double millimeters, double gigapascals) =>
        new(Length.FromMillimeters(millimeters), new ElasticMaterial("plate", Pressure.FromGigapascals(gigapascals), 0.3, null));

    private static ElasticMaterial Of(double megaPsi) =>
        new("plate", Pressure.FromPoundsForcePerSquareInch(megaPsi * PoundsPerInchPerMega), 0.29, null);

    private static double MegaPoundsPerInch(ForcePerLength stiffness) => stiffness.PoundsForcePerInch / PoundsPerInchPerMega;
}
