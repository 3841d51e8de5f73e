using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The risk in the decision on one item: its reading is known.</summary>
/// <remarks>JCGM 106:2012 §7 and §9.2 (from memory): p_c = Φ((T_U − y)/u) − Φ((T_L − y)/u), with a prior y and u of the posterior.</remarks>
/// <example><code>SpecificRisk risk = SpecificRisk.At(window, Torque.FromNewtonMeters(51.7), standardUncertainty: Torque.FromNewtonMeters(0.3));
/// double wrongIfAccepted = risk.Consumer;   // about 0.16</code></example>
public sealed class SpecificRisk
{
    private SpecificRisk(double conformity) => ProbabilityOfConformity = conformity;

    /// <summary>Probability that the item conforms, 0 to 1.</summary>
    public double ProbabilityOfConformity { get; }

    /// <summary>Specific consumer's risk: the probability that the item does not conform, should it be accepted.</summary>
    public double Consumer => 1 - ProbabilityOfConformity;

    /// <summary>Specific producer's risk: the probability that the item conforms, should it be rejected.</summary>
    public double Producer => ProbabilityOfConformity;

    /// <summary>From the reading alone.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="window">The tolerance window.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="standardUncertainty">Standard uncertainty u (k = 1) of the reading, 0 or more; 0 decides by the limits.</param>
    /// <returns>The risk.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="window"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>double wrongIfAccepted = SpecificRisk.At(window, Torque.FromNewtonMeters(51.7), Torque.FromNewtonMeters(0.3)).Consumer;   // 0.16 with an upper limit of 52 N·m</code></example>
    public static SpecificRisk At<TQuantity>(ToleranceWindow<TQuantity> window, TQuantity reading, TQuantity standardUncertainty)
        where TQuantity : struct, IQuantity => new(NormalKnowledge.ProbabilityWithin(
            Guard.NotNull(window).Limits,
            ToleranceWindow<TQuantity>.Check(reading, fromZero: false, nameof(reading)),
            ToleranceWindow<TQuantity>.Check(standardUncertainty, fromZero: true, nameof(standardUncertainty))));

    /// <summary>From the reading and what was known before.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="window">The tolerance window.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="standardUncertainty">Standard uncertainty u_m (k = 1) of the reading, greater than 0.</param>
    /// <param name="prior">What was known before the reading, N(y0, u0²).</param>
    /// <returns>The risk.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="window"/> or <paramref name="prior"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>double wrongIfAccepted = SpecificRisk.At(window, Torque.FromNewtonMeters(51.7), Torque.FromNewtonMeters(0.3), process).Consumer;
    /// // 0.042 with an upper limit of 52 N·m and a process N(50.2, 0.8²)</code></example>
    public static SpecificRisk At<TQuantity>(ToleranceWindow<TQuantity> window, TQuantity reading, TQuantity standardUncertainty, Prior<TQuantity> prior)
        where TQuantity : struct, IQuantity
    {
        WindowLimits limits = Guard.NotNull(window).Limits;
        Prior<TQuantity> after = Guard.NotNull(prior).After(reading, standardUncertainty);
        return new(NormalKnowledge.ProbabilityWithin(limits, after.MeanSi, after.DeviationSi));
    }

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant($"conforms with a probability of {ProbabilityOfConformity * 100:0.####} %");
}
