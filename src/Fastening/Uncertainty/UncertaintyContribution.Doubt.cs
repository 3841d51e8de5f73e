using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

/// <content>Uncertainties that are themselves uncertain: Student's t and limits of doubtful width.</content>
public sealed partial class UncertaintyContribution
{
    /// <summary>
    /// Standard deviation of the values as <see cref="MonteCarlo"/> draws them; null where there is none. It is u, but u√(ν/(ν − 2)) for
    /// Student's t of scale u and for readings (none up to ν = 2; JCGM 101:2008 §6.4.9.4, from memory), and u√(1 + q²/3) for limits of doubtful width,
    /// q = 1/√(2ν) (§6.4.3.3).
    /// </summary>
    public double? DrawnStandardDeviation => Distribution switch
    {
        UncertaintyDistribution.StudentByStandardDeviation => StandardUncertainty,
        _ when double.IsInfinity(DegreesOfFreedom) => StandardUncertainty,
        _ when HasLimits => StandardUncertainty * Math.Sqrt(1 + WidthDoubt * WidthDoubt / 3),
        _ when DegreesOfFreedom > 2 => StandardUncertainty * Math.Sqrt(DegreesOfFreedom / (DegreesOfFreedom - 2)),
        _ => null,
    };

    /// <summary>Degrees of freedom of the tails in a draw: finite for Student's t, whatever its u is.</summary>
    internal double TailFreedom { get; private init; }

    /// <summary>Scale of Student's t or of the normal curve in a draw.</summary>
    internal double DrawnScale => Distribution == UncertaintyDistribution.StudentByStandardDeviation
        ? StandardUncertainty * Math.Sqrt((TailFreedom - 2) / TailFreedom)
        : StandardUncertainty;

    /// <summary>q: the half width is drawn from a(1 − q) to a(1 + q); 0 when it is certain.</summary>
    internal double WidthDoubt => HasLimits && !double.IsInfinity(DegreesOfFreedom) ? 1 / Math.Sqrt(2 * DegreesOfFreedom) : 0;

    private bool HasLimits => Distribution is UncertaintyDistribution.Rectangular or UncertaintyDistribution.Triangular
        or UncertaintyDistribution.Arcsine or UncertaintyDistribution.Trapezoidal;

    /// <summary>Student's t whose scale is u, as the s/√n of a mean or the U/k of a certificate that states ν (JCGM 101:2008 §6.4.9.2 and §6.4.9.7, from memory).</summary>
    /// <param name="name">The name.</param>
    /// <param name="value">Best value.</param>
    /// <param name="scale">Scale of t, 0 or more. It is the u of a budget; the draws have the standard deviation u√(ν/(ν − 2)).</param>
    /// <param name="degreesOfFreedom">ν, 1 or more; it need not be whole.</param>
    /// <returns>The input; the same as Normal(name, value, scale).WithDegreesOfFreedom(degreesOfFreedom).</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its domain.</exception>
    /// <example><code>UncertaintyContribution reference = UncertaintyContribution.StudentByScale("l_s (nm)", 50_000_623, scale: 25, degreesOfFreedom: 18);
    /// double? drawn = reference.DrawnStandardDeviation;     // 26.5</code></example>
    public static UncertaintyContribution StudentByScale(string name, double value, double scale, double degreesOfFreedom) =>
        Normal(name, value, Domains.Uncertainty.Check(scale)).WithDegreesOfFreedom(degreesOfFreedom);

    /// <summary>Student's t whose standard deviation is u: its scale is u√((ν − 2)/ν) (JCGM 101:2008 §6.4.9.4, from memory).</summary>
    /// <param name="name">The name.</param>
    /// <param name="value">Best value.</param>
    /// <param name="standardDeviation">Standard deviation of the values, 0 or more; the u of a budget.</param>
    /// <param name="degreesOfFreedom">ν of the tails, above 2: at 2 and below there is no standard deviation.</param>
    /// <returns>The input. Its u is known exactly, for the tails are in the distribution: it lends a budget no degrees of freedom.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its domain.</exception>
    /// <example><code>UncertaintyContribution drift = UncertaintyContribution.StudentByStandardDeviation("drift", 0, standardDeviation: 0.4, degreesOfFreedom: 5);</code></example>
    public static UncertaintyContribution StudentByStandardDeviation(string name, double value, double standardDeviation, double degreesOfFreedom) => new(
        name,
        UncertaintyDistribution.StudentByStandardDeviation,
        Domains.Number.Check(value),
        Domains.Uncertainty.Check(standardDeviation))
    {
        TailFreedom = Domains.DegreesOfFreedomWithDeviation.Check(degreesOfFreedom),
    };

    /// <summary>The same input with the degrees of freedom of its standard uncertainty.</summary>
    /// <param name="degreesOfFreedom">ν, 1 or more; it need not be whole. Without this call it is infinite, except for readings.</param>
    /// <returns>
    /// A new input. Monte Carlo then draws a normal input as Student's t of scale u, and a bounded one with limits of doubtful width: the
    /// half width first, within a(1 ± 1/√(2ν)), then the value between. For a rectangle that is JCGM 101:2008 §6.4.3 (from memory); for the other shapes
    /// it is done alike, without a source.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="degreesOfFreedom"/> is outside its domain.</exception>
    /// <exception cref="InvalidOperationException">The input comes from readings, which have their own, or is Student's t by its standard deviation, which is known.</exception>
    /// <example><code>UncertaintyContribution gauge = UncertaintyContribution.Normal("transducer (N·m)", 0, 0.12).WithDegreesOfFreedom(18);</code></example>
    public UncertaintyContribution WithDegreesOfFreedom(double degreesOfFreedom)
    {
        Domains.DegreesOfFreedom.Check(degreesOfFreedom);
        if (Distribution is UncertaintyDistribution.Readings or UncertaintyDistribution.JointReadings)
        {
            throw new InvalidOperationException($"{Name} comes from readings; its degrees of freedom are their number less one.");
        }

        if (Distribution is UncertaintyDistribution.StudentByStandardDeviation)
        {
            throw new InvalidOperationException($"{Name} is Student's t by its standard deviation, which is known; state its scale and degrees of freedom with StudentByScale.");
        }

        if (HasLimits) return new(this, Distribution) { DegreesOfFreedom = degreesOfFreedom };
        return new(this, UncertaintyDistribution.StudentByScale) { DegreesOfFreedom = degreesOfFreedom, TailFreedom = degreesOfFreedom };
    }

    /// <summary>The same input when its standard uncertainty is itself doubtful: ν = ½(Δu/u)⁻² (JCGM 100:2008 G.4.2).</summary>
    /// <param name="relativeDoubt">
    /// Δu/u, 0.01 to 70 %: 25 % says that u may be a quarter off. Of limits a ± d it is d/a, and Monte Carlo draws the limits so (JCGM 101:2008 §6.4.3, from memory).
    /// </param>
    /// <returns>A new input, as <see cref="WithDegreesOfFreedom"/> makes it.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="relativeDoubt"/> is outside its domain.</exception>
    /// <exception cref="InvalidOperationException">The input comes from readings, which have their own degrees of freedom, or is Student's t by its standard deviation.</exception>
    /// <example><code>UncertaintyContribution guess = UncertaintyContribution.Rectangular("K", 0.17, halfWidth: 0.02).WithDoubt(Ratio.FromPercent(25));     // ν = 8</code></example>
    public UncertaintyContribution WithDoubt(Ratio relativeDoubt)
    {
        double doubt = Domains.RelativeDoubt.Check(relativeDoubt);
        return WithDegreesOfFreedom(0.5 / (doubt * doubt));
    }
}
