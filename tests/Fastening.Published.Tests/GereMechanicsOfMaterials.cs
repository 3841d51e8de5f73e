using Fastening.Equations;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>Gere, Mechanics of Materials, 6th and 7th ed., problems 3.3-3 and 3.3-6: stress and twist of a round bar; 2.5-7 and 2.5-8: a rod and a sleeve in heat.</summary>
public sealed class GereMechanicsOfMaterials : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("twist-gere-336", SocketWrench),
        new("twist-gere-333", LugWrench),
        new("gere-257", RodInSleeve),
        new("gere-258", (row, _) => BoltInSleeve(row)),
    ];

    private static double? SocketWrench(PublishedRow row, string output)
    {
        Length diameter = Length.FromMillimeters(row["d_mm"]);
        var torque = Torque.FromNewtonMeters(
            Pressure.FromMegapascals(row["tau_allow_MPa"]).Pascals * StressEquations.ElasticSectionModulus(diameter.Meters));
        return output switch
        {
            "T_max_Nm" => torque.NewtonMeters,
            "phi_deg" => Twist(Length.FromMillimeters(row["L_mm"]), diameter, Pressure.FromGigapascals(row["G_GPa"]), torque),
            _ => null,
        };
    }

    /// <summary>A pair of forces, one at each end of two arms: the lever is twice the arm. The twisted length equals one arm.</summary>
    private static double? LugWrench(PublishedRow row, string output)
    {
        Length diameter = Length.FromInches(row["d_in"]), arm = Length.FromInches(row["arm_in"]);
        Torque torque = HandForce.TorqueOf(Force.FromPoundsForce(row["P_lb"]), 2 * arm);
        double stress = StressEquations.TorsionalStress(torque.NewtonMeters, StressEquations.ElasticSectionModulus(diameter.Meters));
        return output switch
        {
            "T_inlb" => torque.PoundForceInches,
            "tau_psi" => Pressure.FromPascals(stress).PoundsForcePerSquareInch,
            "phi_deg" => Twist(arm, diameter, Pressure.FromPoundsForcePerSquareInch(row["G_psi"]), torque),
            _ => null,
        };
    }

    /// <summary>A steel rod, of which the last foot is held by a brass sleeve that grows more: the rod is the bolt, the sleeve the parts, no preload.</summary>
    private static double? RodInSleeve(PublishedRow row, string output)
    {
        double free = row["alpha_s"] * row["dT_F"] * (row["L1_in"] - row["L2_in"]);
        Length length = Length.FromInches(row["L2_in"]);
        var rise = TemperatureDelta.FromKelvins(row["dT_F"] / 1.8);
        Length rod = Length.FromInches(Math.Sqrt(4 / Math.PI * row["As_in2"]));
        Joint joint = RingOf(
            length, rod, Of(Pressure.FromPoundsForcePerSquareInch(row["Es_psi"]), row["alpha_s"] * 1.8),
            rod, Length.FromInches(Math.Sqrt(4 / Math.PI * (row["As_in2"] + row["Ab_in2"]))),
            Of(Pressure.FromPoundsForcePerSquareInch(row["Eb_psi"]), row["alpha_b"] * 1.8));
        Force tension = -joint.ThermalLossAt(Force.Zero, new JointTemperatures(rise, rise));
        double held = row["alpha_s"] * row["dT_F"] * row["L2_in"] + joint.Bolt.ElongationAt(tension).Inches;
        return output switch
        {
            "delta1_in" => free,
            "delta2_in" => held,
            "total_in" => free + held,
            _ => null,
        };
    }

    /// <summary>The rise at which the sleeve bears its stress: the preload gained from nothing is proportional to it.</summary>
    private static double BoltInSleeve(PublishedRow row)
    {
        Length hole = Length.FromMillimeters(row["d1_mm"]), outside = Length.FromMillimeters(row["d2_mm"]);
        Joint joint = RingOf(
            Length.FromMillimeters(100), Length.FromMillimeters(row["dB_mm"]), Of(Pressure.FromGigapascals(row["EB_GPa"]), row["alpha_B"]),
            hole, outside, Of(Pressure.FromGigapascals(row["ES_GPa"]), row["alpha_S"]));
        var kelvin = TemperatureDelta.FromKelvins(1);
        Force gained = -joint.ThermalLossAt(Force.Zero, new JointTemperatures(kelvin, kelvin));
        return row["sigma_S_MPa"] * WorkingStressEquations.BearingArea(row["d2_mm"], row["d1_mm"]) / gained.Newtons;
    }

    private static Joint RingOf(Length length, Length rod, ElasticMaterial rodMaterial, Length hole, Length outside, ElasticMaterial sleeveMaterial) => new(
        BoltCompliance.OfSections(ScrewThread.Parse("M24"), [BoltSection.OfDiameter(length, rod)], rodMaterial),
        ClampedStack.Sleeve([new ClampedLayer(length, sleeveMaterial)], outside, hole));

    private static ElasticMaterial Of(Pressure modulus, double expansionPerKelvin) =>
        new("as printed", modulus, 0.3, CoefficientOfThermalExpansion.FromPerKelvin(expansionPerKelvin));

    private static double Twist(Length length, Length diameter, Pressure shearModulus, Torque torque) =>
        new TorqueWrench(Length.FromMillimeters(300))
            .WithCoaxialExtension(CoaxialExtension.Round(length, diameter, shearModulus)).WindUpAt(torque).Degrees;
}
