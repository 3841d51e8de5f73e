using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>How much the surfaces of a joint flatten after tightening; divided by the joint's compliance it is the preload that is lost.</summary>
/// <remarks>
/// Guide values of VDI 2230-1:2015 Table 5, from memory, for compact parts of steel, or a length of your own from a test. Coatings, gaskets and
/// creep are another matter. A washer adds a face: count it.
/// </remarks>
/// <example><code>// Through bolt, two plates: one thread, head and nut, one interface: 3 + 2·3 + 2 = 11 µm
/// Embedding.ForRoughness(SurfaceRoughness.Rz10To40, EmbeddingLoad.Axial, threads: 1, bearingFaces: 2, interfaces: 1)
/// Embedding.Of(Length.FromMicrometers(8))</code></example>
public sealed class Embedding
{
    private readonly Held<Length>? _total;
    private readonly Surfaces? _surfaces;

    private Embedding(Held<Length>? total, Surfaces? surfaces)
    {
        _total = total;
        _surfaces = surfaces;
    }

    /// <summary>No embedding: said, not assumed.</summary>
    public static Embedding None { get; } = new(new Held<Length>(Stated<Length>.Of(0, "embedding, stated to be none")), null);

    /// <summary>Total flattening f_Z.</summary>
    public Length Total => Si.Length(TotalTerm);

    /// <summary>Where the values come from; null for a length of your own.</summary>
    public string? Source => _surfaces is null ? null : "VDI 2230-1:2015 Table 5 (from memory)";

    internal Term TotalTerm => _surfaces?.Total() ?? _total!.Term;

    /// <summary>The direction of load that the published values are for; null for a length of one's own.</summary>
    internal EmbeddingLoad? Load => _surfaces?.Load;

    /// <summary>A total of your own, from a test.</summary>
    /// <param name="total">Flattening of all surfaces together, 0 to 10 mm.</param>
    /// <returns>The embedding.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its domain.</exception>
    /// <example><code>Embedding.Of(Length.FromMicrometers(8))</code></example>
    public static Embedding Of(Length total) => new(new Held<Length>(new(total, Domains.Embedding.Check(total), "embedding of all surfaces")), null);

    /// <summary>The published guide values (equations <c>joint.face-embedding</c>, <c>joint.embedding</c>).</summary>
    /// <param name="roughness">Roughness of the surfaces.</param>
    /// <param name="load">Direction of the load in service.</param>
    /// <param name="threads">Engaged threads: 1 of a bolt, 2 of a stud with a nut at each end.</param>
    /// <param name="bearingFaces">Faces under heads and nuts: 2 of a through bolt, 1 of a screw in a tapped hole.</param>
    /// <param name="interfaces">Interfaces between the clamped parts, washers and the part with the tapped hole included.</param>
    /// <returns>The embedding.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not of its enumeration, or a count is outside 0 to 100.</exception>
    /// <exception cref="ArgumentException">All three counts are 0: there is no published value for no surface.</exception>
    /// <example><code>Embedding.ForRoughness(SurfaceRoughness.Rz10To40, EmbeddingLoad.Axial, threads: 1, bearingFaces: 2, interfaces: 1).Total.Micrometers   // 11</code></example>
    public static Embedding ForRoughness(SurfaceRoughness roughness, EmbeddingLoad load, int threads, int bearingFaces, int interfaces)
    {
        if (roughness is < SurfaceRoughness.RzBelow10 or > SurfaceRoughness.Rz40To160)
        {
            Guard.RefuseAgainst(nameof(roughness), (int)roughness, "RzBelow10, Rz10To40 or Rz40To160");
        }

        if (load is < EmbeddingLoad.Axial or > EmbeddingLoad.Shear) Guard.RefuseAgainst(nameof(load), (int)load, "Axial or Shear");
        Domains.Count.Check(threads);
        Domains.Count.Check(bearingFaces);
        Domains.Count.Check(interfaces);
        if (threads + bearingFaces + interfaces == 0)
        {
            throw new ArgumentException("without a thread, a face or an interface there is no published value; Embedding.None says that nothing embeds.", nameof(interfaces));
        }

        return new Embedding(null, new Surfaces(roughness, load, threads, bearingFaces, interfaces));
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"embedding {Si.Length(TotalTerm.Value).Micrometers:0.###} µm")
        + (Source is string source ? $", {source}" : "");

    private sealed record Surfaces(SurfaceRoughness Roughness, EmbeddingLoad Load, int Threads, int BearingFaces, int Interfaces)
    {
        public Term Total()
        {
            EmbeddingRow row = EmbeddingTable.Of(Roughness, Load);
            Term faces = PreloadLossEquations.FaceEmbeddingEquation.Of(
                Term.Given(Threads, "engaged threads"), row.Thread.Term, Term.Given(BearingFaces, "faces under heads and nuts"), row.Face.Term);
            return PreloadLossEquations.TotalEmbeddingEquation.Of(faces, Term.Given(Interfaces, "interfaces between the parts"), row.Interface.Term);
        }
    }
}
