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
///     Prior.Normal(Torque.FromNewtonMeters(50.2), Torque.FromNewtonMeters(0.8)), MeasurementUncertainty.Standard(Torque.FromNewtonMeters(0.3)));</code></example>
public sealed class GlobalRisk
{
    private GlobalRisk(double conforming, double rejectedInside, double acceptedInside, double acceptedOutside)
    {
        ProbabilityOfConformity = conforming;
        Consumer = acceptedOutside;
        Producer = rejectedInside;
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
    /// <param name="uncertainty">Uncertainty of the readings, greater than 0; u_m is their standard uncertainty.</param>
    /// <returns>The risk.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="window"/> or <paramref name="process"/> is null.</exception>
    /// <exception cref="ArgumentException">No uncertainty was stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>GlobalRisk risk = GlobalRisk.Of(window, window, process, MeasurementUncertainty.Standard(Torque.FromNewtonMeters(0.3)));     // simple acceptance
    /// Console.WriteLine(risk);     // N(50.2, 0.8²) in 48 … 52 N·m: consumer's risk 0.3749 %, producer's risk 1.1129 %</code></example>
    public static GlobalRisk Of<TQuantity>(
        ToleranceWindow<TQuantity> window, ToleranceWindow<TQuantity>? acceptanceWindow, Prior<TQuantity> process, MeasurementUncertainty<TQuantity> uncertainty)
        where TQuantity : struct, IQuantity
    {
        WindowLimits limits = Guard.NotNull(window).Limits;
        double mean = Guard.NotNull(process).MeanSi, spread = process.DeviationSi;
        double measuring = uncertainty.Positive(nameof(uncertainty));
        double conforming = NormalKnowledge.ProbabilityWithin(limits, mean, spread);
        if (acceptanceWindow is null) return new GlobalRisk(conforming, conforming, 0, 0);
        var quadrature = new ProcessQuadrature(acceptanceWindow.Limits, mean, spread, measuring);
        return new GlobalRisk(
            conforming,
            quadrature.Rejected(limits.Lower, limits.Upper),
            quadrature.Accepted(limits.Lower, limits.Upper),
            quadrature.Accepted(double.NegativeInfinity, limits.Lower) + quadrature.Accepted(limits.Upper, double.PositiveInfinity));
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"consumer's risk {Si.Ratio(Consumer):0.####}, producer's risk {Si.Ratio(Producer):0.####}");
}
