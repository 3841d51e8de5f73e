using System.Diagnostics.CodeAnalysis;
using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>How far inside a limit a reading must lie to be accepted, agreed before anything is measured (ISO/IEC 17025:2017 §7.1.3).</summary>
/// <remarks>
/// There is no default: simple acceptance is a rule too and must be chosen by name. The U of a rule is the expanded uncertainty with k = 2, whatever
/// factor the uncertainty was stated with. The guard band is the same at both limits. With a window so narrow that the bands meet, nothing is
/// accepted; nor by a rule of the ratio TUR where TUR is below 1, for which those formulas were not made. A window with one limit has no width and no
/// ratio TUR: rules that need it refuse such a window (<see cref="RequiresTwoLimits"/>), the others keep their band at the one limit.
/// </remarks>
/// <example><code>Conformity verdict = window.Classify(reading, readingUncertainty, DecisionRule.IlacG8);</code></example>
public sealed class DecisionRule
{
    private const double CoverageFactor = 2;
    private static readonly Interval FactorDomain = new(-10, 10);
    private static readonly Interval ProbabilityDomain = new(0.5, 0.999999, lowOpen: true);

    /// <summary>From half width and expanded uncertainty; null for a rule of a factor.</summary>
    private readonly Func<double, double, GuardBands>? _bands;

    private readonly double _factor;

    private DecisionRule(string name, Func<double, double, GuardBands> bands, bool requiresTwoLimits)
    {
        Name = name;
        _bands = bands;
        RequiresTwoLimits = requiresTwoLimits;
    }

    private DecisionRule(string name, double factor)
    {
        Name = name;
        _factor = factor;
    }

    /// <summary>No guard band: a reading inside the limits is accepted, any other rejected. At a limit the risk of being wrong is 50 %.</summary>
    public static DecisionRule SimpleAcceptance { get; } = OfFactor("simple acceptance", 0);

    /// <summary>Guard band w = U: false acceptance below 2.5 % at a limit (ILAC-G8:09/2019; ILAC-G8:03/2009 Table 1 from memory).</summary>
    public static DecisionRule IlacG8 { get; } = OfFactor("ILAC-G8, guard band 1 U", 1);

    /// <summary>Guard band w = 0.83 U: false acceptance below 5 % at a limit (ISO 14253-1:2017 default, from memory).</summary>
    public static DecisionRule Iso14253 { get; } = OfFactor("ISO 14253-1:2017, guard band 0.83 U", 0.83);

    /// <summary>Guard band w = 1.645 u, u = U/2: the 5 % of ISO 14253-1:2017 without the rounding to 0.83 U.</summary>
    public static DecisionRule Iso14253Exact { get; } = OfFactor("ISO 14253-1:2017, guard band 1.645 u", 1.645 / CoverageFactor);

    /// <summary>Guard band w = 1.5 U = 3 u: false acceptance below 0.16 % at a limit (ILAC-G8:03/2009 Table 1, from memory).</summary>
    public static DecisionRule ThreeSigma { get; } = OfFactor("3 sigma, guard band 1.5 U", 1.5);

    /// <summary>Guard band w = 3 U = 6 u: false acceptance below 1 in a million at a limit (ILAC-G8:03/2009 Table 1, from memory).</summary>
    public static DecisionRule SixSigma { get; } = OfFactor("6 sigma, guard band 3 U", 3);

    /// <summary>Guard band w = −U: a reading is rejected only beyond the limit by more than U; false rejection below 2.5 % (ILAC-G8:03/2009 Table 1, from memory). It protects the producer only: not for anything on which people depend.</summary>
    public static DecisionRule Uncritical { get; } = OfFactor("ILAC-G8 uncritical, guard band −1 U", -1);

    /// <summary>Acceptance window √(1 − 1/TUR²) of the tolerance window, TUR = half its width over U; nothing is accepted below TUR = 1 (D. Deaver, papers on guard banding for NCSL, 1990s).</summary>
    public static DecisionRule RootSumSquare { get; } = OfRatio("root sum square, √(1 − 1/TUR²)", DecisionEquations.RootSumSquareFactor, requiresTwoLimits: true);

    /// <summary>Acceptance window 1 − 1/TUR of the tolerance window: the guard band of <see cref="IlacG8"/>, written by the ratio; with one limit it is U as well.</summary>
    public static DecisionRule FullUncertainty { get; } = OfRatio("full uncertainty, 1 − 1/TUR", DecisionEquations.FullUncertaintyFactor, requiresTwoLimits: false);

    /// <summary>Acceptance window 1.25 − 1/TUR of the tolerance window, at most all of it: no guard band from TUR = 4 on (NCSL RP-10).</summary>
    public static DecisionRule NcslRp10 { get; } = OfRatio("NCSL RP-10, 1.25 − 1/TUR", DecisionEquations.NcslRp10Factor, requiresTwoLimits: true);

    /// <summary>Guard band M U with M = 1.04 − e^(0.38 ln TUR − 0.54), at least 0: false acceptance of about 2 % at most whatever the process (M. Dobbert, A guard-band strategy for managing false-accept risk, NCSL International 2008).</summary>
    public static DecisionRule ManagedRisk { get; } = OfRatio("Dobbert, managed risk of 2 %", DecisionEquations.ManagedRiskFactor, requiresTwoLimits: true);

    /// <summary>Name of the rule, as it goes into the record.</summary>
    public string Name { get; }

    /// <summary>Whether the band follows from the width of the window, so that the rule refuses a window with one limit: a far limit in place of the
    /// missing one would make the band vanish.</summary>
    public bool RequiresTwoLimits { get; }

    /// <summary>Guard band over expanded uncertainty, r = w/U; null where it depends on the window.</summary>
    public double? GuardBandFactor => _bands is null ? _factor : null;

    /// <summary>Probability that an item beyond one limit is accepted when its reading lies on the acceptance limit, Φ(−2r), the other limit being far
    /// away and nothing known beforehand; null where it depends on the window.</summary>
    public double? FalseAcceptanceAtLimit => GuardBandFactor is double r ? NormalCurve.Below(-CoverageFactor * r) : null;

    /// <summary>A guard band of a factor agreed between the parties.</summary>
    /// <param name="guardBandFactor">r = w/U, −10 to 10; negative accepts beyond the limits.</param>
    /// <returns>The rule.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The factor is outside its domain.</exception>
    /// <example><code>DecisionRule agreed = DecisionRule.FromFactor(0.5);</code></example>
    public static DecisionRule FromFactor(double guardBandFactor)
    {
        double factor = FactorDomain.Check(guardBandFactor);
        return OfFactor(Print.Text($"agreed guard band, {factor:0.######} U"), factor);
    }

    /// <summary>Acceptance only where an item conforms with a given probability, both limits counted together where there are two.</summary>
    /// <param name="probability">Probability of conformity, above 0.5 to 0.999999; nothing is known beforehand.</param>
    /// <returns>The rule. In a wide window its band is the one-sided z u; in a narrow one both tails count and the band grows; where even the
    /// middle of the window is too uncertain (95 %: narrower than 3.92 u) nothing is accepted. Rejection by the same probability, one limit alone.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The probability is outside its domain.</exception>
    /// <example><code>DecisionRule rule = DecisionRule.FromProbability(0.95);</code></example>
    public static DecisionRule FromProbability(double probability)
    {
        var band = new TwoSidedGuardBand(ProbabilityDomain.Check(probability));
        return new(Print.Text($"conforming with a probability of {Si.Ratio(probability):0.####}"), (halfWidth, expanded) =>
        {
            double u = expanded / CoverageFactor;

            // The smallest number there is has no half: then it is as good as none.
            if (u == 0) return default;
            return new GuardBands(band.For(2 * halfWidth, u), band.OneSided * u);
        }, requiresTwoLimits: false);
    }

    /// <summary>The guard band of this rule for a window and an uncertainty.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="window">The tolerance window.</param>
    /// <param name="uncertainty">Uncertainty of the reading.</param>
    /// <returns>The width of the band inside each limit, negative when it lies outside; null when no band keeps the rule.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="window"/> is null.</exception>
    /// <exception cref="ArgumentException">No uncertainty was stated, or the rule needs two limits and the window has one.</exception>
    /// <example><code>Torque? guardBand = DecisionRule.IlacG8.GuardBandFor(window, MeasurementUncertainty.Standard(Torque.FromNewtonMeters(0.3)));   // 0.6 N·m</code></example>
    public TQuantity? GuardBandFor<TQuantity>(ToleranceWindow<TQuantity> window, MeasurementUncertainty<TQuantity> uncertainty)
        where TQuantity : struct, IQuantity
    {
        WindowLimits limits = Guard.NotNull(window).Limits;
        double inside = BandsFor(limits, uncertainty.OfRules(nameof(uncertainty)), nameof(window)).Inside;
        return double.IsNaN(inside) ? null : Si.Make<TQuantity>(inside);
    }

    /// <inheritdoc />
    public override string ToString() => Name;

    /// <summary>Without uncertainty every rule decides by the limits.</summary>
    internal GuardBands BandsFor(in WindowLimits window, double expanded, string name)
    {
        if (_bands is not null)
        {
            if (RequiresTwoLimits && window.IsOneSided) RefuseOneLimit(name);
            return expanded == 0 ? default : _bands(window.HalfWidth, expanded);
        }

        double band = DecisionEquations.GuardBand(_factor, expanded);
        return new GuardBands(band, band > 0 ? band : 0);
    }

    [DoesNotReturn]
    private void RefuseOneLimit(string name) => throw new ArgumentException(
        $"The rule ({Name}) takes its guard band from the width of the window, and a window with one limit has none: agree on a rule of a factor or of a probability.", name);

    private static DecisionRule OfFactor(string name, double factor) => new(name, factor);

    private static DecisionRule OfRatio(string name, Func<double, double> acceptanceFactor, bool requiresTwoLimits) => new(name, (halfWidth, expanded) =>
    {
        // Only the rule whose band is U whatever the width comes here with one limit.
        if (double.IsInfinity(halfWidth)) return new GuardBands(expanded, expanded);
        double ratio = DecisionEquations.ToleranceUncertaintyRatio(halfWidth, expanded);

        // Below a ratio of 1 the uncertainty is wider than the window: a band of U leaves nothing, whatever the rule.
        if (ratio < DecisionEquations.LeastRatio) return new GuardBands(double.NaN, expanded);
        if (ratio > DecisionEquations.GreatestRatio) return default;
        double band = DecisionEquations.GuardBandOfFactor(acceptanceFactor(ratio), halfWidth);
        return new GuardBands(band, band);
    }, requiresTwoLimits);
}
