using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>J. A. Speck, Mechanical Fastening, Joining, and Assembly, 2nd ed. (2015), ch. 3.</summary>
public sealed class SpeckMechanicalFastening : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("speck-K-", (row, _) => TorquePreloadModel.FromNutFactor(row["K"], Length.FromInches(row["D_in"]))
            .TorqueFor(Force.FromPoundsForce(row["P_lb"])).PoundForceInches),
        new("speck-elongation", (row, _) => BoltCompliance.OfSections(
                ScrewThread.Parse("#10-32 UNF"),
                [BoltSection.OfArea(Length.FromInches(row["L_in"]), Area.FromSquareInches(row["A_in2"]))],
                new ElasticMaterial("bolt", Pressure.FromPoundsForcePerSquareInch(row["E_psi"]), 0.29, null))
            .ElongationAt(Force.FromPoundsForce(row["F_lb"])).Inches),
    ];
}
