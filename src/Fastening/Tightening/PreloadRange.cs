using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Lowest and highest preload of one tightening.</summary>
/// <example><code>PreloadRange range = model.PreloadRangeAt(Torque.FromNewtonMeters(150), friction);   // M16, µ_th 0.10…0.16, µ_b 0.09…0.14
/// Console.WriteLine(range);      // 48.8 … 72.6 kN</code></example>
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

    /// <summary>Lowest preload: of a range of friction, at the highest.</summary>
    public Force Minimum { get; }

    /// <summary>Highest preload: of a range of friction, at the lowest.</summary>
    public Force Maximum { get; }

    /// <summary>Tightening factor α_A = F_max/F_min (VDI 2230-1:2015 §5.4.3); null when the lowest preload is zero.</summary>
    public double? TighteningFactor => _minimum > 0 ? _maximum / _minimum : null;

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant($"{Minimum.Kilonewtons:0.###} … {Maximum.Kilonewtons:0.###} kN");
}
