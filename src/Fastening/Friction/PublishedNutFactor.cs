using Fastening.Internals;

namespace Fastening;

/// <summary>A published nut factor K, or a range of it, with its source. Guidance for a first estimate, never a default.</summary>
/// <example><code>PublishedNutFactor lubricated = FrictionGuidance.NutFactors.Single(k => k.Condition == "lubricated");
/// NutFactorModel model = TorquePreloadModel.FromNutFactor(lubricated.Low, Length.FromInches(0.5));</code></example>
public sealed class PublishedNutFactor
{
    internal PublishedNutFactor(DataRow row)
    {
        Condition = row["condition"];
        Low = row.Number("low");
        High = row.Number("high");
        Provenance = Provenance.Of(row);
    }

    /// <summary>What it was published for.</summary>
    public string Condition { get; }

    /// <summary>Lowest nut factor.</summary>
    public double Low { get; }

    /// <summary>Highest nut factor; equal to <see cref="Low"/> where one value was published, which says nothing about its scatter.</summary>
    public double High { get; }

    /// <summary>Whether one value was published, without its scatter.</summary>
    public bool IsSingleValue => Low == High;

    /// <summary>Where it comes from.</summary>
    public Provenance Provenance { get; }

    /// <inheritdoc />
    public override string ToString() =>
        Print.Text($"{Condition}: K {Low:0.##}{(IsSingleValue ? "" : Print.Text($"…{High:0.##}"))} ({Provenance})");
}
