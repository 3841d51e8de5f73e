using Fastening.Equations;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>Gere, Mechanics of Materials, 6th and 7th ed., problems 3.3-3 and 3.3-6: stress and twist of a round bar.</summary>
public sealed class GereMechanicsOfMaterials : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("twist-gere-336", SocketWrench),
        new("twist-gere-333", LugWrench),
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

    private static double Twist(Length length, Length diameter, Pressure shearModulus, Torque torque) =>
        new TorqueWrench(Length.FromMillimeters(300))
            .WithCoaxialExtension(CoaxialExtension.Round(length, diameter, shearModulus)).WindUpAt(torque).Degrees;
}
