using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A decision on one reading by an agreed rule, with what belongs into the record.</summary>
/// <typeparam name="TQuantity">Torque, Angle, Force, RotationalSpeed or Length.</typeparam>
/// <remarks>Zones after ILAC-G8:09/2019; probability after JCGM 106:2012 §7 with nothing known before the reading (both from memory).</remarks>
/// <example><code>Decision&lt;Torque&gt; decision = window.Decide(reading, readingUncertainty, DecisionRule.IlacG8);
/// if (decision.Zone == DecisionZone.ConditionalAccept) Console.WriteLine(decision.Reason);</code></example>
public sealed class Decision<TQuantity>
    where TQuantity : struct, IQuantity
{
    internal Decision(ToleranceWindow<TQuantity> window, TQuantity reading, MeasurementUncertainty<TQuantity> uncertainty, DecisionRule rule, in GuardBands bands)
    {
        var limits = new DecisionLimits(window.Limits, bands);
        double value = Si.Of(reading);
        Window = window;
        Reading = reading;
        Uncertainty = uncertainty;
        Rule = rule;
        Zone = limits.ZoneOf(value);
        Conformity = limits.Classify(value);
        GuardBand = double.IsNaN(bands.Inside) ? null : Si.Make<TQuantity>(bands.Inside);
        AcceptanceWindow = !double.IsNaN(bands.Inside) && window.Limits.Shrink(bands.Inside) is WindowLimits accepted ? new(accepted) : null;
        ProbabilityOfConformity = NormalKnowledge.ProbabilityWithin(window.Limits, value, uncertainty.Standard(nameof(uncertainty)));
        Reason = DecisionReason.For(Zone, window.Limits, bands, value, si => Print.Quantity<TQuantity>(si, "G6"), rule.Name);
    }

    /// <summary>The tolerance window.</summary>
    public ToleranceWindow<TQuantity> Window { get; }

    /// <summary>The reading.</summary>
    public TQuantity Reading { get; }

    /// <summary>Uncertainty of the reading, as it was stated; the rule counts it with k = 2.</summary>
    public MeasurementUncertainty<TQuantity> Uncertainty { get; }

    /// <summary>The rule that was agreed.</summary>
    public DecisionRule Rule { get; }

    /// <summary>Accepted, conditionally accepted, conditionally rejected or rejected.</summary>
    public DecisionZone Zone { get; }

    /// <summary>The same as a verdict: both conditional zones are Undecidable.</summary>
    public Conformity Conformity { get; }

    /// <summary>The guard band inside each limit, negative when it lies outside; null when no band keeps the rule.</summary>
    public TQuantity? GuardBand { get; }

    /// <summary>The window in which readings are accepted; null when nothing is.</summary>
    public ToleranceWindow<TQuantity>? AcceptanceWindow { get; }

    /// <summary>Probability that the true value lies within the limits, 0 to 1; <see cref="SpecificRisk"/> counts a prior.</summary>
    public double ProbabilityOfConformity { get; }

    /// <summary>The decision in words: one sentence for the record.</summary>
    public string Reason { get; }

    /// <inheritdoc />
    public override string ToString() => Reason;
}
