using Fastening.Equations;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>Beer and Johnston, Mechanics of Materials: two bolts and a rod between rigid castings, nuts turned a quarter turn (from memory).</summary>
public sealed class BeerJohnstonMechanicsOfMaterials : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } = [new("bj-castings", Castings)];

    /// <summary>Each bolt clamps half of the rod: a sleeve of half its section.</summary>
    private static double? Castings(PublishedRow row, string output)
    {
        double rodArea = StressEquations.SectionArea(row["rod_d_in"]), hole = 0.8 * row["rod_d_in"];
        Length sleeve = Length.FromInches(Math.Sqrt(hole * hole + row["rod_d_in"] * row["rod_d_in"] / 2));
        Length diameter = Length.FromInches(row["bolt_d_in"]);
        var joint = new Joint(
            BoltCompliance.OfSections(
                ScrewThread.Unified(diameter, 1 / row["pitch_in"]), [BoltSection.OfDiameter(Length.FromInches(row["bolt_L_in"]), diameter)],
                new ElasticMaterial("bolt", Pressure.FromPoundsForcePerSquareInch(row["Eb_psi"]), 0.3, null)),
            ClampedStack.Sleeve(
                [new ClampedLayer(Length.FromInches(row["rod_L_in"]), new ElasticMaterial("rod", Pressure.FromPoundsForcePerSquareInch(row["Er_psi"]), 0.3, null))],
                sleeve, Length.FromInches(hole)));
        double rod = 2 * joint.PreloadGainAt(Angle.FromRevolutions(row["turns"])).KilopoundsForce;
        return output switch
        {
            "P_rod_kip" => rod,
            "sigma_rod_ksi" => -rod / rodArea,
            _ => null,
        };
    }
}
