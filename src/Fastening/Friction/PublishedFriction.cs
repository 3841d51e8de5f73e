using Fastening.Internals;

namespace Fastening;

/// <summary>A published range of coefficients of friction, with its source. Guidance for a first estimate, never a default.</summary>
/// <example><code>PublishedFriction classB = FrictionGuidance.Coefficients.Single(f => f.Condition == "friction class B");
/// Range&lt;Force&gt; worst = model.PreloadRangeAt(torque, classB.ToRange());</code></example>
public sealed class PublishedFriction
{
    internal PublishedFriction(DataRow row)
    {
        Condition = row["condition"];
        Low = row.Number("low");
        High = row["high"].Length == 0 ? null : row.Number("high");
        Provenance = Provenance.Of(row);
    }

    /// <summary>What the range was published for.</summary>
    public string Condition { get; }

    /// <summary>Lowest coefficient.</summary>
    public double Low { get; }

    /// <summary>Highest coefficient; null when the range is open above.</summary>
    public double? High { get; }

    /// <summary>Where it comes from.</summary>
    public Provenance Provenance { get; }

    /// <summary>The range for thread and bearing alike.</summary>
    /// <returns>Lowest in both places to highest in both places.</returns>
    /// <exception cref="InvalidOperationException">The range is open above: no highest coefficient was published.</exception>
    /// <example><code>FrictionGuidance.Coefficients.Single(f =&gt; f.Condition == "friction class B").ToRange().High.Thread   // 0.16</code></example>
    public FrictionRange ToRange() => new(
        FrictionCoefficients.Uniform(Low),
        FrictionCoefficients.Uniform(High ?? throw new InvalidOperationException(
            Print.Text($"{Provenance.Source}, {Condition}: open above {Low}; the highest coefficient must come from a test."))));

    /// <inheritdoc />
    public override string ToString() =>
        Print.Text($"{Condition}: µ {Low:0.##}{(High is double high ? Print.Text($"…{high:0.##}") : " and more")} ({Provenance})");
}
