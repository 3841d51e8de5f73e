using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A published scatter of the preload of a tightening method, with its source. The sources disagree; name the one that is used.</summary>
/// <remarks>VDI 2230 of 1986 (± %) and 2015 (α_A, from memory), NASA NSTS 08307A, NASA TM-106943, NASA-STD-5020, Machinery's Handbook.</remarks>
/// <example><code>foreach (PublishedPreloadScatter row in PublishedPreloadScatter.Of(TighteningMethod.TorqueWrench)) Console.WriteLine(row);</code></example>
public sealed class PublishedPreloadScatter
{
    private static readonly Lazy<IReadOnlyList<PublishedPreloadScatter>> Rows =
        new(() => Array.AsReadOnly(DataFile.Read("published-preload-scatter.csv").Select(row => new PublishedPreloadScatter(row)).ToArray()));

    private PublishedPreloadScatter(DataRow row)
    {
        Method = Enum.TryParse(row["method"], out TighteningMethod method)
            ? method
            : throw new InvalidDataException($"Unknown tightening method '{row["method"]}'.");
        Condition = row["condition"];
        IsTighteningFactor = row["given_as"] == "factor";
        Low = Scatter(row.Number("low"));
        High = Scatter(row.Number("high"));
        Provenance = Provenance.Of(row);
    }

    /// <summary>Every row of every source.</summary>
    public static IReadOnlyList<PublishedPreloadScatter> All => Rows.Value;

    /// <summary>The tightening method.</summary>
    public TighteningMethod Method { get; }

    /// <summary>What the source adds to the method; empty when nothing.</summary>
    public string Condition { get; }

    /// <summary>Least scatter of the published range.</summary>
    public PreloadScatter Low { get; }

    /// <summary>Greatest scatter of the published range; equal to <see cref="Low"/> in value where one was published.</summary>
    public PreloadScatter High { get; }

    /// <summary>Whether the source gives α_A; otherwise it gives ± %. The other reading is computed.</summary>
    public bool IsTighteningFactor { get; }

    /// <summary>Where it comes from.</summary>
    public Provenance Provenance { get; }

    /// <summary>The rows of one method.</summary>
    /// <param name="method">The method.</param>
    /// <returns>The rows in the order of their sources.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="method"/> is not a value of the enumeration.</exception>
    /// <example><code>PublishedPreloadScatter.Of(TighteningMethod.TorqueWrench)</code></example>
    public static IReadOnlyList<PublishedPreloadScatter> Of(TighteningMethod method)
    {
        if (method is < TighteningMethod.ByFeel or > TighteningMethod.InstrumentedBolt)
        {
            Guard.RefuseAgainst(nameof(method), (int)method, "a value of TighteningMethod");
        }

        return Array.AsReadOnly(All.Where(row => row.Method == method).ToArray());
    }

    /// <inheritdoc />
    public override string ToString() => $"{Method}{(Condition.Length == 0 ? "" : ", " + Condition)}: {Range} ({Provenance})";

    private string Range
    {
        get
        {
            string low = Printed(Low), high = Printed(High);
            string range = low == high ? low : low + "…" + high;
            return IsTighteningFactor ? "α_A " + range : "±" + range + " %";
        }
    }

    private string Printed(PreloadScatter scatter) =>
        Print.Text($"{(IsTighteningFactor ? scatter.TighteningFactor : scatter.PlusMinus.Percent):0.##}");

    private PreloadScatter Scatter(double value) => IsTighteningFactor ? PreloadScatter.FromTighteningFactor(value) : PreloadScatter.FromPlusMinus(Ratio.FromPercent(value));
}
