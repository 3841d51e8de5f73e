using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The risk in the decision on one item: its reading is known.</summary>
/// <remarks>JCGM 106:2012 §7 and §9.2 (from memory): p_c = Φ((T_U − y)/u) − Φ((T_L − y)/u), with a prior y and u of the posterior.</remarks>
/// <example><code>SpecificRisk risk = SpecificRisk.At(window, Torque.FromNewtonMeters(51.7), MeasurementUncertainty.Standard(Torque.FromNewtonMeters(0.3)));
/// double wrongIfAccepted = risk.Consumer;   // about 0.16</code></example>
public sealed class SpecificRisk
{
    private SpecificRisk(in WindowLimits window, double mean, double deviation)
    {
        ProbabilityOfConformity = NormalKnowledge.ProbabilityWithin(window, mean, deviation);
        Consumer = NormalKnowledge.ProbabilityBeyond(window, mean, deviation);
    }

    /// <summary>Probability that the item conforms, 0 to 1.</summary>
    public double ProbabilityOfConformity { get; }

    /// <summary>Specific consumer's risk: the probability that the item does not conform, should it be accepted. Summed from the tails, so that a small risk keeps its digits.</summary>
    public double Consumer { get; }

    /// <summary>Specific producer's risk: the probability that the item conforms, should it be rejected.</summary>
    public double Producer => ProbabilityOfConformity;

    /// <summary>From the reading alone.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="window">The tolerance window.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="uncertainty">Uncertainty of the reading; 0 decides by the limits.</param>
    /// <returns>The risk.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="window"/> is null.</exception>
    /// <exception cref="ArgumentException">No uncertainty was stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>double wrongIfAccepted = SpecificRisk.At(window, Torque.FromNewtonMeters(51.7), readingUncertainty).Consumer;   // 0.16 with u 0.3 and an upper limit of 52 N·m</code></example>
    public static SpecificRisk At<TQuantity>(ToleranceWindow<TQuantity> window, TQuantity reading, MeasurementUncertainty<TQuantity> uncertainty)
        where TQuantity : struct, IQuantity => new(
            Guard.NotNull(window).Limits,
            ToleranceWindow<TQuantity>.Check(reading, fromZero: false, nameof(reading)),
            uncertainty.Standard(nameof(uncertainty)));

    /// <summary>From the reading and what was known before.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="window">The tolerance window.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="uncertainty">Uncertainty of the reading, greater than 0.</param>
    /// <param name="prior">What was known before the reading, N(y0, u0²).</param>
    /// <returns>The risk.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="window"/> or <paramref name="prior"/> is null.</exception>
    /// <exception cref="ArgumentException">No uncertainty was stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>double wrongIfAccepted = SpecificRisk.At(window, Torque.FromNewtonMeters(51.7), readingUncertainty, process).Consumer;
    /// // 0.042 with an upper limit of 52 N·m and a process N(50.2, 0.8²)</code></example>
    public static SpecificRisk At<TQuantity>(ToleranceWindow<TQuantity> window, TQuantity reading, MeasurementUncertainty<TQuantity> uncertainty, Prior<TQuantity> prior)
        where TQuantity : struct, IQuantity
    {
        WindowLimits limits = Guard.NotNull(window).Limits;
        Prior<TQuantity> after = Guard.NotNull(prior).After(reading, uncertainty);
        return new(limits, after.MeanSi, after.DeviationSi);
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"conforms with a probability of {Si.Ratio(ProbabilityOfConformity):0.####}");
}
