using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>Mott, Machine Elements in Mechanical Design, 4th ed. (2004): an ACME screw, 1 1/2 in by 4 per inch, no collar.</summary>
public sealed class MottMachineElements : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } = [new("mott4-ex17.1", PowerScrew)];

    private static double? PowerScrew(PublishedRow row, string output)
    {
        ScrewThread thread = ScrewThread.FromProfile(
            Length.FromInches(1.5), Length.FromInches(row["lead_in"]), Angle.FromDegrees(row["phi_deg"]), 1,
            Length.FromInches(row["Dp_in"]), Length.FromInches(1.2));
        FrictionTorqueModel screw = TorquePreloadModel
            .FromFriction(
                thread, BearingSurface.Annulus(Length.FromInches(2.5), Length.FromInches(1.5)), new FrictionCoefficients(row["f"], 0))
            .WithConvention(TorqueConvention.PowerScrew);
        return output switch
        {
            "lead_angle_deg" => thread.LeadAngle.Degrees,
            "TU_lb_in" => screw.TorqueFor(Force.FromPoundsForce(row["F_lb"])).PoundForceInches,
            _ => null,
        };
    }
}
