using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

/// <summary>Count, mean and standard deviation of a sample.</summary>
/// <typeparam name="TQuantity">Torque, Angle, Force, RotationalSpeed or Length.</typeparam>
/// <example><code>SampleStatistics.Of(readings).StandardDeviation</code></example>
public sealed class SampleStatistics<TQuantity>
    where TQuantity : struct, IQuantity
{
    internal SampleStatistics(int count, double mean, double deviation)
    {
        Count = count;
        MeanSi = mean;
        DeviationSi = deviation;
    }

    /// <summary>Number of readings n.</summary>
    public int Count { get; }

    /// <summary>Mean of the readings.</summary>
    public TQuantity Mean => Si.Make<TQuantity>(MeanSi);

    /// <summary>Standard deviation of the readings, with n − 1.</summary>
    public TQuantity StandardDeviation => Si.Make<TQuantity>(DeviationSi);

    internal double MeanSi { get; }

    internal double DeviationSi { get; }

    /// <inheritdoc />
    public override string ToString() =>
        Print.Text($"{Si.Make<TQuantity>(MeanSi)}, standard deviation {Si.Make<TQuantity>(DeviationSi):G6}, {Count} readings");
}
