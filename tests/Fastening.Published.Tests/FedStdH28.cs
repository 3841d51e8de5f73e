using Fastening.Equations;

namespace Fastening.Published.Tests;

/// <summary>FED-STD-H28/2B and ASME B1.1 Appendix B: shear areas per inch of engagement, and the length for equal materials as Machinery's Handbook has it.</summary>
public sealed class FedStdH28 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("h28-strip-", (row, output) => output == "AS_s_in2_per_in" ? External(row) : Internal(row)),
        new("mh-Le-", (row, _) => EngagementEquations.ExternalLeastLength(1, row["At_in2"], EngagementEquations.ExternalStripForce(0.5, External(row)))),
    ];

    private static double External(PublishedRow row)
    {
        double pitch = 1 / row["n_per_in"], minor = row["Kn_max_in"];
        return EngagementEquations.ExternalShearArea(minor, 1, pitch, EngagementEquations.ExternalThickness(pitch, row["Es_min_in"], minor));
    }

    private static double Internal(PublishedRow row)
    {
        double pitch = 1 / row["n_per_in"], major = row["Ds_min_in"];
        return EngagementEquations.InternalShearArea(major, 1, pitch, EngagementEquations.InternalThickness(pitch, major, row["En_max_in"]));
    }
}
