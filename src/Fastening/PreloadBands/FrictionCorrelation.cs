using Fastening.Internals;

namespace Fastening;

/// <summary>How thread and bearing friction vary together from joint to joint: part of every statement about the band of the preload, never a default.</summary>
/// <remarks>
/// Independent gives the narrower statistical band, fully correlated the wider one. One lubricant on both faces makes them rise and fall together; where
/// it has not been tested, evaluate both and take the wider.
/// </remarks>
/// <example><code>var inputs = new PreloadBandInputs(model, window, friction, FrictionCorrelation.Full);</code></example>
public sealed class FrictionCorrelation
{
    private FrictionCorrelation(double coefficient) => Coefficient = coefficient;

    /// <summary>r = 0: neither depends on the other.</summary>
    public static FrictionCorrelation Independent { get; } = new(0);

    /// <summary>r = 1: both rise and fall together.</summary>
    public static FrictionCorrelation Full { get; } = new(1);

    /// <summary>Correlation coefficient r.</summary>
    public double Coefficient { get; }

    /// <summary>A correlation from tests of the friction.</summary>
    /// <param name="coefficient">r, 0 to 1. Less than 0 would narrow the band, and no published test is known here that shows it.</param>
    /// <returns>The correlation.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="coefficient"/> is outside its domain.</exception>
    /// <example><code>FrictionCorrelation.Of(0.8)     // one paste on thread and head, from tests</code></example>
    public static FrictionCorrelation Of(double coefficient) => new(Domains.FrictionCorrelation.Check(coefficient));

    /// <inheritdoc />
    public override string ToString() => Coefficient switch
    {
        0 => "thread and bearing friction independent",
        1 => "thread and bearing friction fully correlated",
        _ => Print.Text($"thread and bearing friction correlated, r {Coefficient:0.###}"),
    };
}
