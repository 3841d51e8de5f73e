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
    private readonly Stated<Ratio>? _share;
    private readonly StatedNumber? _factor;

    private PreloadScatter(double percent, Stated<Ratio>? share, StatedNumber? factor)
    {
        _percent = percent;
        _share = share;
        _factor = factor;
    }

    /// <summary>Scatter s about the mean.</summary>
    public Ratio PlusMinus => Si.Heard(Ratio.FromPercent(_percent), ShareTerm);

    /// <summary>Tightening factor α_A = F_max/F_min.</summary>
    public double TighteningFactor => Si.Number(FactorTerm);

    private Term ShareTerm => _share is Stated<Ratio> share ? share.Term : ScatterEquations.ScatterEquation.Of(_factor!.Value.Term);

    internal Term FactorTerm => _factor is StatedNumber factor ? factor.Term : ScatterEquations.TighteningFactorEquation.Of(_share!.Value.Term);

    /// <summary>A scatter of plus and minus a share of the mean preload.</summary>
    /// <param name="plusMinus">0 to 99.9 %.</param>
    /// <returns>The scatter.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its domain.</exception>
    /// <example><code>PreloadScatter.FromPlusMinus(Ratio.FromPercent(17)).TighteningFactor   // 1.41</code></example>
    public static PreloadScatter FromPlusMinus(Ratio plusMinus)
    {
        Stated<Ratio> share = ShareDomain.Stated(plusMinus);
        return new PreloadScatter(plusMinus.Percent, share, null);
    }

    /// <summary>A scatter from the tightening factor α_A.</summary>
    /// <param name="tighteningFactor">Highest over lowest preload, 1 to 1999.</param>
    /// <returns>The scatter.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The factor is outside its domain.</exception>
    /// <example><code>PreloadScatter.FromTighteningFactor(1.6).PlusMinus.Percent   // 23.1</code></example>
    public static PreloadScatter FromTighteningFactor(double tighteningFactor)
    {
        StatedNumber factor = FactorDomain.Stated(tighteningFactor);
        return new PreloadScatter(ScatterEquations.Scatter(tighteningFactor) * 100, null, factor);
    }

    /// <summary>Lowest and highest preload about a mean one.</summary>
    /// <param name="mean">The preload aimed at.</param>
    /// <returns>(1 − s) to (1 + s) of it.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="mean"/> is negative or beyond its domain.</exception>
    /// <example><code>PreloadScatter.FromPlusMinus(Ratio.FromPercent(17)).RangeAround(Force.FromKilonewtons(60))   // 49.8 … 70.2 kN</code></example>
    public Range<Force> RangeAround(Force mean)
    {
        Term force = Domains.Force.Argument(mean), share = ShareTerm;
        return new Range<Force>((Si.Force(ScatterEquations.LowestPreloadEquation.Of(share, force)), Si.Force(ScatterEquations.HighestPreloadEquation.Of(share, force))));
    }

    /// <summary>Lowest and highest preload when the highest is known: the permitted preload, which no bolt may pass.</summary>
    /// <param name="highest">The highest preload.</param>
    /// <returns>The highest over α_A, to the highest.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="highest"/> is negative or beyond its domain.</exception>
    /// <example><code>PreloadScatter.FromTighteningFactor(1.6).RangeBelow(Force.FromKilonewtons(80))   // 50 … 80 kN</code></example>
    public Range<Force> RangeBelow(Force highest)
    {
        Term force = Domains.Force.Argument(highest);
        return new Range<Force>((Si.Force(ScatterEquations.LowestFromHighestEquation.Of(force, FactorTerm)), Si.Force(force)));
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"±{_percent:0.##} %, α_A {TighteningFactor:0.###}");
}
