using Fastening.Internals;

namespace Fastening;

/// <content>Verdicts on readings whose uncertainty counts.</content>
public sealed partial class ToleranceWindow<TQuantity>
{
    /// <summary>The verdict on a reading of known uncertainty, by an agreed rule.</summary>
    /// <param name="reading">The reading, in any unit.</param>
    /// <param name="uncertainty">Uncertainty of the reading; 0 decides by the limits.</param>
    /// <param name="rule">The rule, agreed beforehand (ISO/IEC 17025:2017 §7.1.3); there is no default.</param>
    /// <returns>Within when the rule accepts, Below or Above when it rejects, Undecidable between; <see cref="ZoneOf"/> gives the side.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="rule"/> is null.</exception>
    /// <exception cref="ArgumentException">No uncertainty was stated, or the rule needs two limits and the window has one.</exception>
    /// <example><code>window.Classify(reading, readingUncertainty, DecisionRule.IlacG8)</code></example>
    public Conformity Classify(TQuantity reading, MeasurementUncertainty<TQuantity> uncertainty, DecisionRule rule) =>
        LimitsOf(uncertainty, rule).Classify(Si.Of(reading));

    /// <summary>The verdicts on many readings of one uncertainty; a reading that is not finite is Undefined.</summary>
    /// <param name="readingsInSiOrDegrees">Readings in newton-metres, degrees, newtons, degrees per second or metres, after the quantity of the window.</param>
    /// <param name="uncertainty">Uncertainty of each reading.</param>
    /// <param name="rule">The rule, agreed beforehand.</param>
    /// <param name="verdicts">As many verdicts.</param>
    /// <exception cref="ArgumentException">No uncertainty was stated, the rule needs two limits and the window has one, or the lengths differ; nothing was written.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="rule"/> is null.</exception>
    public void Classify(ReadOnlySpan<double> readingsInSiOrDegrees, MeasurementUncertainty<TQuantity> uncertainty, DecisionRule rule, Span<Conformity> verdicts)
    {
        DecisionLimits limits = LimitsOf(uncertainty, rule);
        Batch.RefuseUnequal(readingsInSiOrDegrees.Length, verdicts.Length, nameof(verdicts));
        for (int i = 0; i < readingsInSiOrDegrees.Length; i++) verdicts[i] = limits.Classify(readingsInSiOrDegrees[i]);
    }

    /// <summary>Where a reading of known uncertainty stands: accepted, conditionally accepted, conditionally rejected or rejected.</summary>
    /// <param name="reading">The reading, in any unit.</param>
    /// <param name="uncertainty">Uncertainty of the reading.</param>
    /// <param name="rule">The rule, agreed beforehand.</param>
    /// <returns>The zone; the two conditional ones are what <see cref="Classify(TQuantity, MeasurementUncertainty{TQuantity}, DecisionRule)"/> calls Undecidable.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="rule"/> is null.</exception>
    /// <exception cref="ArgumentException">No uncertainty was stated, or the rule needs two limits and the window has one.</exception>
    /// <example><code>window.ZoneOf(reading, readingUncertainty, DecisionRule.IlacG8)   // ConditionalAccept</code></example>
    public DecisionZone ZoneOf(TQuantity reading, MeasurementUncertainty<TQuantity> uncertainty, DecisionRule rule) =>
        LimitsOf(uncertainty, rule).ZoneOf(Si.Of(reading));

    /// <summary>The decision on a reading with everything that belongs into the record: zone, guard band, acceptance window, probability, reason.</summary>
    /// <param name="reading">The reading, in any unit.</param>
    /// <param name="uncertainty">Uncertainty of the reading.</param>
    /// <param name="rule">The rule, agreed beforehand.</param>
    /// <returns>The decision.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="rule"/> is null.</exception>
    /// <exception cref="ArgumentException">No uncertainty was stated, or the rule needs two limits and the window has one.</exception>
    /// <example><code>Console.WriteLine(window.Decide(reading, readingUncertainty, DecisionRule.IlacG8).Reason);</code></example>
    public Decision<TQuantity> Decide(TQuantity reading, MeasurementUncertainty<TQuantity> uncertainty, DecisionRule rule)
    {
        double expanded = uncertainty.OfRules(nameof(uncertainty));
        return new(this, reading, uncertainty, Guard.NotNull(rule), rule.BandsFor(_limits, expanded, nameof(rule)));
    }

    private DecisionLimits LimitsOf(MeasurementUncertainty<TQuantity> uncertainty, DecisionRule rule)
    {
        double expanded = uncertainty.OfRules(nameof(uncertainty));
        return new(_limits, Guard.NotNull(rule).BandsFor(_limits, expanded, nameof(rule)));
    }
}
