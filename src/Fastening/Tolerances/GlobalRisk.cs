using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The risk in a test of many items of one process, before any of them is read.</summary>
/// <remarks>
/// JCGM 106:2012 §9: with the density g0 of the process and a(η) = Φ((A_U − η)/u_m) − Φ((A_L − η)/u_m), the consumer's risk is ∫ a g0 beyond the
/// limits, the producer's ∫ (1 − a) g0 within them. By Gauss–Legendre quadrature, split at the limits and where a changes; normal process and
/// normal readings only.
/// </remarks>
/// <example><code>GlobalRisk risk = GlobalRisk.Of(window, window.AcceptanceWindow(Torque.FromNewtonMeters(0.6)),
///     Prior.Normal(Torque.FromNewtonMeters(50.2), Torque.FromNewtonMeters(0.8)), standardUncertainty: Torque.FromNewtonMeters(0.3));</code></example>
public sealed class GlobalRisk
{
    private GlobalRisk(double conforming, double acceptedInside, double acceptedOutside)
    {
        ProbabilityOfConformity = conforming;
        Consumer = acceptedOutside;
        Producer = Math.Max(0, conforming - acceptedInside);
        ProbabilityOfAcceptance = acceptedInside + acceptedOutside;
    }

    /// <summary>Global consumer's risk: the share of all items that does not conform and is accepted.</summary>
    public double Consumer { get; }

    /// <summary>Global producer's risk: the share of all items that conforms and is rejected.</summary>
    public double Producer { get; }

    /// <summary>Probability that an item of the process conforms.</summary>
    public double ProbabilityOfConformity { get; }

    /// <summary>Probability that an item is accepted.</summary>
    public double ProbabilityOfAcceptance { get; }

    /// <summary>Share of the accepted items that does not conform: another figure often called consumer's risk; null when nothing is accepted.</summary>
    public double? NonconformingAmongAccepted => ProbabilityOfAcceptance > 0 ? Consumer / ProbabilityOfAcceptance : null;

    /// <summary>The risk of a test of a process.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="window">The tolerance window.</param>
    /// <param name="acceptanceWindow">The window in which readings are accepted; null when none is.</param>
    /// <param name="process">The process, N(y0, u0²).</param>
    /// <param name="standardUncertainty">Standard uncertainty u_m (k = 1) of the readings, greater than 0.</param>
    /// <returns>The risk.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="window"/> or <paramref name="process"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>GlobalRisk risk = GlobalRisk.Of(window, window, process, standardUncertainty: Torque.FromNewtonMeters(0.3));     // simple acceptance
    /// Console.WriteLine(risk);     // N(50.2, 0.8²) in 48 … 52 N·m: consumer's risk 0.3749 %, producer's risk 1.1129 %</code></example>
    public static GlobalRisk Of<TQuantity>(
        ToleranceWindow<TQuantity> window, ToleranceWindow<TQuantity>? acceptanceWindow, Prior<TQuantity> process, TQuantity standardUncertainty)
        where TQuantity : struct, IQuantity
    {
        WindowLimits limits = Guard.NotNull(window).Limits;
        double mean = Guard.NotNull(process).MeanSi, spread = process.DeviationSi;
        double measuring = Prior<TQuantity>.CheckDeviation(standardUncertainty, nameof(standardUncertainty));
        double conforming = NormalKnowledge.ProbabilityWithin(limits, mean, spread);
        if (acceptanceWindow is null) return new GlobalRisk(conforming, 0, 0);
        WindowLimits accepted = acceptanceWindow.Limits;
        double Accepted(double from, double to) => NormalKnowledge.AcceptedShare(from, to, accepted, mean, spread, measuring);
        return new GlobalRisk(
            conforming,
            Accepted(limits.Lower, limits.Upper),
            Accepted(double.NegativeInfinity, limits.Lower) + Accepted(limits.Upper, double.PositiveInfinity));
    }

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant($"consumer's risk {Consumer * 100:0.####} %, producer's risk {Producer * 100:0.####} %");
}
