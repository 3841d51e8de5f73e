using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>J. A. Speck, Mechanical Fastening, Joining, and Assembly, 2nd ed. (2015), ch. 3.</summary>
public sealed class SpeckMechanicalFastening : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("speck-K-", (row, _) => TorquePreloadModel.FromNutFactor(row["K"], Length.FromInches(row["D_in"]))
            .TorqueFor(Force.FromPoundsForce(row["P_lb"])).PoundForceInches),
    ];
}
