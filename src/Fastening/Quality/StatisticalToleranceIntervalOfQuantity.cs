using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

/// <summary>Limits that hold a share of the population with a confidence.</summary>
/// <typeparam name="TQuantity">Torque, Angle, Force, RotationalSpeed or Length.</typeparam>
/// <example><code>Force least = StatisticalToleranceInterval.Above(sample, populationShare: Ratio.FromPercent(99), confidence: 0.95).Low!.Value;</code></example>
public sealed class StatisticalToleranceInterval<TQuantity>
    where TQuantity : struct, IQuantity
{
    private readonly double? _factorBelow;
    private readonly double? _factorAbove;
    private readonly double _share;

    internal StatisticalToleranceInterval(
        SampleStatistics<TQuantity> sample, double? factorBelow, double? factorAbove, double populationShare, double confidence)
    {
        ReadingColumn.Scattering<TQuantity>(sample.DeviationSi, nameof(sample));
        Sample = sample;
        (_factorBelow, _factorAbove, _share, Confidence) = (factorBelow, factorAbove, populationShare, confidence);
    }

    /// <summary>Mean minus the factor times the standard deviation; null when the interval is open below.</summary>
    public TQuantity? Low => _factorBelow is double factor ? Si.Make<TQuantity>(Sample.MeanSi - factor * Sample.DeviationSi) : null;

    /// <summary>Mean plus the factor times the standard deviation; null when the interval is open above.</summary>
    public TQuantity? High => _factorAbove is double factor ? Si.Make<TQuantity>(Sample.MeanSi + factor * Sample.DeviationSi) : null;

    /// <summary>Standard deviations from the mean to a limit.</summary>
    public double Factor => _factorBelow ?? _factorAbove!.Value;

    /// <summary>Share p of the population inside.</summary>
    public Ratio PopulationShare => Si.Ratio(_share);

    /// <summary>Confidence γ.</summary>
    public double Confidence { get; }

    /// <summary>The sample.</summary>
    public SampleStatistics<TQuantity> Sample { get; }

    /// <inheritdoc />
    public override string ToString()
    {
        string limits = (Low, High) switch
        {
            (TQuantity low, TQuantity high) => Print.Between(low, high, "G6"),
            (TQuantity low, null) => Print.Text($"above {low:G6}"),
            _ => Print.Text($"below {High:G6}"),
        };
        return Print.Text($"{limits} holds {Si.Ratio(_share):0.##} with {Si.Ratio(Confidence):0.##} confidence");
    }
}
