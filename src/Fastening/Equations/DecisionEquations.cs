using Fastening.Internals;

namespace Fastening.Equations;

/// <summary>Guard bands, test uncertainty ratios and the normal prior.</summary>
/// <remarks>
/// They hold for a window of any quantity: every length of an equation is counted in one unit, so all of them stand as pure numbers.
/// Probabilities are integrals of the normal curve and root finding: procedures, not equations. The factors of the ratio TUR hold from 1 to 1e12 and
/// refuse what lies outside: below 1 they are negative or not defined.
/// </remarks>
internal static class DecisionEquations
{
    /// <summary>Below it the uncertainty is wider than the window.</summary>
    internal const double LeastRatio = 1;

    /// <summary>Above it a guard band is less than the widening of a limit.</summary>
    internal const double GreatestRatio = 1e12;

    private static readonly Interval RatioDomain = new(LeastRatio, GreatestRatio);

    /// <summary>Guard band that is a multiple of the expanded uncertainty.</summary>
    public static double GuardBand(double r_g, double U_k) => r_g * U_k;

    /// <summary>w = r U.</summary>
    public static Equation<Func<double, double, double>> GuardBandEquation { get; } = Equation.Define(
        GuardBand, "decision.guard-band", Symbols.GuardBand, "r_g*U_k", "ILAC-G8:03/2009 (from memory); ISO 14253-1:2017 (from memory)",
        Symbols.GuardBandFactor, Symbols.ExpandedUncertainty);

    /// <summary>Test uncertainty ratio by the usual definition.</summary>
    public static double ToleranceUncertaintyRatio(double h_T, double U_k) => h_T / U_k;

    /// <summary>TUR = h/U.</summary>
    public static Equation<Func<double, double, double>> ToleranceUncertaintyRatioEquation { get; } = Equation.Define(
        ToleranceUncertaintyRatio, "decision.tolerance-uncertainty-ratio", Symbols.ToleranceUncertaintyRatio, "h_T/U_k",
        "ANSI/NCSL Z540.3-2006 (from memory)", Symbols.HalfWidth, Symbols.ExpandedUncertainty);

    /// <summary>Test uncertainty ratio as a ratio of standard deviations.</summary>
    public static double DeviationUncertaintyRatio(double u_0, double u_m) => u_0 / u_m;

    /// <summary>TUR_s = u_0/u_m.</summary>
    public static Equation<Func<double, double, double>> DeviationUncertaintyRatioEquation { get; } = Equation.Define(
        DeviationUncertaintyRatio, "decision.deviation-uncertainty-ratio", Symbols.DeviationUncertaintyRatio, "u_0/u_m",
        "D. Deaver, papers on guard banding for NCSL (1990s)", Symbols.PriorDeviation, Symbols.MeasuringDeviation);

    /// <summary>Guard band that belongs to an acceptance window of a given share of the tolerance window.</summary>
    public static double GuardBandOfFactor(double K_g, double h_T) => (1 - K_g) * h_T;

    /// <summary>w = (1 − K) h.</summary>
    public static Equation<Func<double, double, double>> GuardBandOfFactorEquation { get; } = Equation.Define(
        GuardBandOfFactor, "decision.guard-band-of-factor", Symbols.GuardBand, "(1 - K_g)*h_T", "derived", Symbols.AcceptanceFactor, Symbols.HalfWidth);

    /// <summary>Acceptance factor of the root-sum-square rule.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="TUR"/> is outside 1 to 1e12.</exception>
    public static double RootSumSquareFactor(double TUR) => Math.Sqrt((InDomain(TUR) - 1) * (TUR + 1)) / TUR;

    /// <summary>K = √((TUR − 1)(TUR + 1))/TUR = √(1 − 1/TUR²), without the difference of two numbers near 1.</summary>
    public static Equation<Func<double, double>> RootSumSquareFactorEquation { get; } = Equation.Define(
        RootSumSquareFactor, "decision.root-sum-square-factor", Symbols.AcceptanceFactor, "sqrt((TUR - 1)*(TUR + 1))/TUR",
        "D. Deaver, papers on guard banding for NCSL (1990s)", Symbols.ToleranceUncertaintyRatio);

    /// <summary>Acceptance factor that keeps the whole expanded uncertainty away from the limit.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="TUR"/> is outside 1 to 1e12.</exception>
    public static double FullUncertaintyFactor(double TUR) => (InDomain(TUR) - 1) / TUR;

    /// <summary>K = (TUR − 1)/TUR = 1 − 1/TUR.</summary>
    public static Equation<Func<double, double>> FullUncertaintyFactorEquation { get; } = Equation.Define(
        FullUncertaintyFactor, "decision.full-uncertainty-factor", Symbols.AcceptanceFactor, "(TUR - 1)/TUR",
        "ILAC-G8:09/2019 as quoted elsewhere, guard band equal to U", Symbols.ToleranceUncertaintyRatio);

    /// <summary>Acceptance factor of NCSL RP-10: no guard band from a ratio of 4 on.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="TUR"/> is outside 1 to 1e12.</exception>
    public static double NcslRp10Factor(double TUR) => Math.Min(1, 1.25 - 1 / InDomain(TUR));

    /// <summary>K = min(1, 1.25 − 1/TUR).</summary>
    public static Equation<Func<double, double>> NcslRp10FactorEquation { get; } = Equation.Define(
        NcslRp10Factor, "decision.ncsl-rp10-factor", Symbols.AcceptanceFactor, "min(1, 1.25 - 1/TUR)",
        "NCSL RP-10; the cap at 1 derived", Symbols.ToleranceUncertaintyRatio);

    /// <summary>Acceptance factor that keeps false acceptance at 2 % whatever the process; no guard band from a ratio of about 4.6 on.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="TUR"/> is outside 1 to 1e12.</exception>
    public static double ManagedRiskFactor(double TUR) => Math.Min(1, 1 - (1.04 - Math.Exp(0.38 * Math.Log(InDomain(TUR)) - 0.54)) / TUR);

    /// <summary>K = min(1, 1 − (1.04 − e^(0.38 ln TUR − 0.54))/TUR); the text writes e^−0.54 as a number.</summary>
    public static Equation<Func<double, double>> ManagedRiskFactorEquation { get; } = Equation.Define(
        ManagedRiskFactor, "decision.managed-risk-factor", Symbols.AcceptanceFactor, "min(1, 1 - (1.04 - 0.5827482523739896*TUR^0.38)/TUR)",
        "M. Dobbert, A guard-band strategy for managing false-accept risk (NCSL International 2008); the cap at 1 derived", Symbols.ToleranceUncertaintyRatio);

    /// <summary>Mean of the posterior of a normal prior and a normal reading.</summary>
    public static double PosteriorMean(double y_0, double u_0, double eta_m, double u_m) =>
        (y_0 * (u_m * u_m) + eta_m * (u_0 * u_0)) / (u_0 * u_0 + u_m * u_m);

    /// <summary>y = (y_0 u_m² + η_m u_0²)/(u_0² + u_m²).</summary>
    public static Equation<Func<double, double, double, double, double>> PosteriorMeanEquation { get; } = Equation.Define(
        PosteriorMean, "decision.posterior-mean", Symbols.PosteriorMean, "(y_0*u_m^2 + eta_m*u_0^2)/(u_0^2 + u_m^2)", "JCGM 106:2012 Annex A (from memory); derived",
        Symbols.PriorMean, Symbols.PriorDeviation, Symbols.MeasuredValue, Symbols.MeasuringDeviation);

    /// <summary>Standard deviation of the posterior of a normal prior and a normal reading.</summary>
    public static double PosteriorDeviation(double u_0, double u_m) => u_0 * u_m / Math.Sqrt(u_0 * u_0 + u_m * u_m);

    /// <summary>u = u_0 u_m/√(u_0² + u_m²).</summary>
    public static Equation<Func<double, double, double>> PosteriorDeviationEquation { get; } = Equation.Define(
        PosteriorDeviation, "decision.posterior-deviation", Symbols.PosteriorDeviation, "u_0*u_m/sqrt(u_0^2 + u_m^2)", "JCGM 106:2012 Annex A (from memory); derived",
        Symbols.PriorDeviation, Symbols.MeasuringDeviation);

    private static double InDomain(double TUR) => RatioDomain.Check(TUR);
}
