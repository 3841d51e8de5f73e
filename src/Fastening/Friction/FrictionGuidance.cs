using Fastening.Internals;

namespace Fastening;

/// <summary>Published coefficients of friction and nut factors: ranges with their sources, for a first estimate.</summary>
/// <remarks>
/// The library never picks one. Friction belongs to the thread, the bearing face, the coating and the lubricant in hand: measure it
/// (<c>FrictionTest</c>) or take the range that the maker of the fastener states.
/// </remarks>
/// <example><code>foreach (PublishedFriction f in FrictionGuidance.Coefficients) Console.WriteLine(f);</code></example>
public static class FrictionGuidance
{
    private static readonly Lazy<IReadOnlyList<DataRow>> Rows = new(() => DataFile.Read("published-friction.csv"));

    private static readonly Lazy<IReadOnlyList<PublishedFriction>> AllCoefficients =
        new(() => Array.AsReadOnly(Rows.Value.Where(row => row["quantity"] == "mu").Select(row => new PublishedFriction(row)).ToArray()));

    private static readonly Lazy<IReadOnlyList<PublishedNutFactor>> AllNutFactors =
        new(() => Array.AsReadOnly(Rows.Value.Where(row => row["quantity"] == "K").Select(row => new PublishedNutFactor(row)).ToArray()));

    /// <summary>Coefficients of friction: the friction classes A to E of VDI 2230.</summary>
    public static IReadOnlyList<PublishedFriction> Coefficients => AllCoefficients.Value;

    /// <summary>Nut factors: Shigley, NASA TM-106943, Speck.</summary>
    public static IReadOnlyList<PublishedNutFactor> NutFactors => AllNutFactors.Value;
}
