using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Scatter of the preload of a tightening method: ± a share of the mean, or highest over lowest as the tightening factor α_A.</summary>
/// <remarks>α_A = (1 + s)/(1 − s), equation scatter.tightening-factor (VDI 2230-1:2015 §5.4.3, from memory). Both readings are kept; the one that was stated stays exact.</remarks>
/// <example><code>PreloadScatter.FromTighteningFactor(1.6).PlusMinus.Percent     // about 23.1
/// PreloadScatter.FromPlusMinus(Ratio.FromPercent(17)).RangeAround(Force.FromKilonewtons(60))</code></example>
public sealed class PreloadScatter
{
    private static readonly Domain<Ratio> ShareDomain = new(0, 0.999);
    private static readonly Interval FactorDomain = new(1, 1999);

    private readonly double _percent;
    private readonly double _share;

    private PreloadScatter(double percent, double share, double factor)
    {
        _percent = percent;
        _share = share;
        TighteningFactor = factor;
    }

    /// <summary>Scatter s about the mean.</summary>
    public Ratio PlusMinus => Ratio.FromPercent(_percent);

    /// <summary>Tightening factor α_A = F_max/F_min.</summary>
    public double TighteningFactor { get; }

    /// <summary>A scatter of plus and minus a share of the mean preload.</summary>
    /// <param name="plusMinus">0 to 99.9 %.</param>
    /// <returns>The scatter.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its domain.</exception>
    /// <example><code>PreloadScatter.FromPlusMinus(Ratio.FromPercent(17)).TighteningFactor   // 1.41</code></example>
    public static PreloadScatter FromPlusMinus(Ratio plusMinus)
    {
        double share = ShareDomain.Check(plusMinus);
        return new PreloadScatter(plusMinus.Percent, share, ScatterEquations.TighteningFactor(share));
    }

    /// <summary>A scatter from the tightening factor α_A.</summary>
    /// <param name="tighteningFactor">Highest over lowest preload, 1 to 1999.</param>
    /// <returns>The scatter.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The factor is outside its domain.</exception>
    /// <example><code>PreloadScatter.FromTighteningFactor(1.6).PlusMinus.Percent   // 23.1</code></example>
    public static PreloadScatter FromTighteningFactor(double tighteningFactor)
    {
        double share = ScatterEquations.Scatter(FactorDomain.Check(tighteningFactor));
        return new PreloadScatter(share * 100, share, tighteningFactor);
    }

    /// <summary>Lowest and highest preload about a mean one.</summary>
    /// <param name="mean">The preload aimed at.</param>
    /// <returns>(1 − s) to (1 + s) of it.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="mean"/> is negative or beyond its domain.</exception>
    /// <example><code>PreloadScatter.FromPlusMinus(Ratio.FromPercent(17)).RangeAround(Force.FromKilonewtons(60))   // 49.8 … 70.2 kN</code></example>
    public PreloadRange RangeAround(Force mean)
    {
        double force = Domains.Force.Check(mean);
        return new PreloadRange(ScatterEquations.LowestPreload(_share, force), ScatterEquations.HighestPreload(_share, force));
    }

    /// <summary>Lowest and highest preload when the highest is known: the permitted preload, which no bolt may pass.</summary>
    /// <param name="highest">The highest preload.</param>
    /// <returns>The highest over α_A, to the highest.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="highest"/> is negative or beyond its domain.</exception>
    /// <example><code>PreloadScatter.FromTighteningFactor(1.6).RangeBelow(Force.FromKilonewtons(80))   // 50 … 80 kN</code></example>
    public PreloadRange RangeBelow(Force highest)
    {
        double force = Domains.Force.Check(highest);
        return new PreloadRange(ScatterEquations.LowestFromHighest(force, TighteningFactor), force);
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"±{_percent:0.##} %, α_A {TighteningFactor:0.###}");
}
