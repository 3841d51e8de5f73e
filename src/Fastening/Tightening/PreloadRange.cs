using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Lowest and highest preload of one tightening.</summary>
/// <example><code>PreloadRange range = model.PreloadRangeAt(Torque.FromNewtonMeters(150), friction);   // M16, µ_th 0.10…0.16, µ_b 0.09…0.14
/// Console.WriteLine(range);      // 48.765 … 72.574 kN</code></example>
public sealed class PreloadRange
{
    private readonly double _minimum;
    private readonly double _maximum;

    internal PreloadRange(double minimum, double maximum)
    {
        _minimum = minimum;
        _maximum = maximum;
        Minimum = Si.Force(minimum);
        Maximum = Si.Force(maximum);
    }

    internal PreloadRange(Force minimum, Force maximum)
        : this(Si.Of(minimum), Si.Of(maximum))
    {
    }

    /// <summary>A range of your own: measured, or from another method.</summary>
    /// <param name="minimum">Lowest preload.</param>
    /// <param name="maximum">Highest preload, at least the lowest.</param>
    /// <returns>The range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A preload is outside its domain, or maximum is less than minimum.</exception>
    /// <example><code>PreloadRange.Between(Force.FromKilonewtons(48), Force.FromKilonewtons(72))</code></example>
    public static PreloadRange Between(Force minimum, Force maximum)
    {
        double low = Domains.Force.Check(minimum), high = Domains.Force.Check(maximum);
        if (high < low) Guard.RefuseAgainst(nameof(maximum), maximum, $"at least minimum, {Guard.ShowToCompare(minimum)}");
        return new PreloadRange(low, high);
    }

    /// <summary>Lowest preload: of a range of friction, at the highest.</summary>
    public Force Minimum { get; }

    /// <summary>Highest preload: of a range of friction, at the lowest.</summary>
    public Force Maximum { get; }

    /// <summary>Tightening factor α_A = F_max/F_min (VDI 2230-1:2015 §5.4.3, from memory); null when the lowest preload is zero.</summary>
    public double? TighteningFactor => _minimum > 0 ? _maximum / _minimum : null;

    internal double MinimumSi => _minimum;

    internal double MaximumSi => _maximum;

    /// <inheritdoc />
    public override string ToString() => Print.Range(Minimum, Maximum, "0.###");
}
