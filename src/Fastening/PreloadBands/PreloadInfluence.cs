using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>What one input does to the preload, in the statistical and in the worst case.</summary>
/// <example><code>PreloadInfluence first = band.Influences[0];
/// Console.WriteLine($"{first.Name}: {first.Weight:P0} of the variance");</code></example>
public sealed class PreloadInfluence
{
    private readonly double _swing;

    internal PreloadInfluence(string name, double weight, double swing)
    {
        Name = name;
        Weight = weight;
        _swing = swing;
    }

    /// <summary>The input, with its unit.</summary>
    public string Name { get; }

    /// <summary>Share of the variance of the preload, to first order: (c u)²/u_c², with correlations c_i u_i Σ r_ij c_j u_j/u_c².</summary>
    public double Weight { get; }

    /// <summary>Change of the preload when this input alone goes from one limit to the other, |Δ|.</summary>
    public Force Swing => Si.Force(_swing);

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Name}: {Si.Ratio(Weight):0.0} of the variance, {Si.Force(_swing):0.###} from limit to limit");
}
