using Fastening.Equations;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>VDI 2230-1:2015 §5.1: substitution lengths of the bolt, angle of the deformation cone; Table A1 as used in an example.</summary>
public sealed class Vdi2230Joints : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("vdi-subst", Substitution),
        new("vdi-fz", Embedded),
        new("vdi-m12-88", (row, _) => TorquePreloadModel.FromFriction(
                ScrewThread.IsoMetric(Length.FromMillimeters(row["d"]), Length.FromMillimeters(row["P"])),
                BearingSurface.Annulus(Length.FromMillimeters(16.63), Length.FromMillimeters(13.5)),
                FrictionCoefficients.Uniform(row["mu_G"])).PermittedPreload(new BoltStrength(Strength(row), Strength(row), Strength(row)), utilisation: Ratio.FromPercent(90)).Kilonewtons),
    ];

    /// <summary>One surface pair at a time, in micrometres.</summary>
    private static double? Embedded(PublishedRow row, string output)
    {
        SurfaceRoughness roughness = output.StartsWith("Rz<10", StringComparison.Ordinal) ? SurfaceRoughness.RzBelow10
            : output.StartsWith("10", StringComparison.Ordinal) ? SurfaceRoughness.Rz10To40
            : SurfaceRoughness.Rz40To160;
        EmbeddingLoad load = output.Contains("[axial]", StringComparison.Ordinal) ? EmbeddingLoad.Axial : EmbeddingLoad.Shear;
        int Is(string surface) => output.EndsWith($"[{surface}]", StringComparison.Ordinal) ? 1 : 0;
        return Embedding.ForRoughness(roughness, load, Is("thread"), Is("head_or_nut"), Is("interface")).Total.Micrometers;
    }

    private static Pressure Strength(PublishedRow row) => Pressure.FromMegapascals(row["Rp02_MPa"]);

    private static double? Substitution(PublishedRow row, string output) => output switch
    {
        "hex_head_lSK_over_d" => Factor(BoltHead.Hexagon, tapped: false, 0),
        "socket_head_lSK_over_d" => Factor(BoltHead.HexagonSocket, tapped: false, 0),
        "engaged_thread_lG_over_d" => Factor(BoltHead.Hexagon, tapped: false, 1),
        "nut_lM_over_d" => Factor(BoltHead.Hexagon, tapped: false, 2),
        "tapped_hole_lM_over_d" => Factor(BoltHead.Hexagon, tapped: true, 2),
        "tan_phi_D" => Deviation(
            ClampedPartsEquations.ThroughBoltConeAngle, (beta, y) => 0.362 + 0.032 * Math.Log(beta / 2) + 0.153 * Math.Log(y)),
        "tan_phi_E" => Deviation(ClampedPartsEquations.TappedConeAngle, (beta, y) => 0.348 + 0.013 * Math.Log(beta) + 0.193 * Math.Log(y)),
        _ => null,
    };

    /// <summary>Which substitution length the bolt used: head, engaged thread, nut or tapped part.</summary>
    private static double Factor(BoltHead head, bool tapped, int index)
    {
        ScrewThread thread = ScrewThread.Parse("M10");
        BoltCompliance bolt = BoltCompliance.Vdi2230(
            thread, [BoltSection.OfRootArea(Length.FromMillimeters(30), thread)], head, ElasticMaterial.Steel);
        Derivation work = Derivation.Of(() => (tapped ? bolt.TappedInto(ElasticMaterial.GreyCastIron) : bolt).MetersPerNewton);
        return work.Steps.Where(step => step.Equation.Id == "bolt.substitution-length").ElementAt(index).Inputs[0];
    }

    private static double Deviation(Func<double, double, double> angle, Func<double, double, double> printedTangent) =>
        (from beta in new[] { 0.5, 1.7, 9 }
         from y in new[] { 1.1, 2.3, 8 }
         select Math.Abs(Math.Tan(angle(beta, y)) / printedTangent(beta, y) - 1)).Max();
}
