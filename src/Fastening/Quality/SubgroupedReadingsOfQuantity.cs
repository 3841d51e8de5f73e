using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

/// <summary>Readings in their subgroups: the scatter within them is that of the process at a moment, the overall scatter also that from time to time.</summary>
/// <typeparam name="TQuantity">Torque, Angle, Force, RotationalSpeed or Length.</typeparam>
/// <example><code>Torque within = audit.StandardDeviationWithin(WithinDeviation.MeanRange);
/// Torque overall = audit.Overall.StandardDeviation;</code></example>
public sealed class SubgroupedReadings<TQuantity>
    where TQuantity : struct, IQuantity
{
    private readonly double[][] _subgroups;
    private readonly bool _areIndividual;

    internal SubgroupedReadings(double[][] subgroups, bool areIndividual)
    {
        _subgroups = subgroups;
        _areIndividual = areIndividual;
        double[] all = [.. subgroups.SelectMany(subgroup => subgroup)];
        Overall = new(all.Length, SampleMoments.Mean(all), SampleMoments.StandardDeviation(all));
    }

    /// <summary>Number of all readings.</summary>
    public int Count => Overall.Count;

    /// <summary>Number of subgroups; that of the readings when they are single.</summary>
    public int SubgroupCount => _areIndividual ? Count : _subgroups.Length;

    /// <summary>Readings in each subgroup; null when the sizes differ.</summary>
    public int? SubgroupSize => _areIndividual ? 1 : Array.TrueForAll(_subgroups, s => s.Length == _subgroups[0].Length) ? _subgroups[0].Length : null;

    /// <summary>Mean and standard deviation of all readings, whatever their subgroup.</summary>
    public SampleStatistics<TQuantity> Overall { get; }

    /// <summary>Standard deviation within subgroups.</summary>
    /// <param name="method">How it is estimated; never assumed.</param>
    /// <returns>The standard deviation.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="method"/> is not a value of the enumeration, or does not fit the subgroups.</exception>
    /// <example><code>Torque within = audit.StandardDeviationWithin(WithinDeviation.Pooled);</code></example>
    public TQuantity StandardDeviationWithin(WithinDeviation method) => Si.Make<TQuantity>(Within(method).Deviation);

    /// <inheritdoc />
    public override string ToString() =>
        Print.Text($"{Overall}, {SubgroupCount} subgroups{(SubgroupSize is int size ? Print.Text($" of {size}") : "")}");

    internal WithinScatter Within(WithinDeviation method)
    {
        string? permitted = Permitted(method);
        if (permitted is not null)
        {
            throw new ArgumentOutOfRangeException(nameof(method), $"method is {method}; it must be {permitted}.");
        }

        return method switch
        {
            WithinDeviation.Pooled => WithinScatter.Pooled(_subgroups),
            WithinDeviation.MeanRange => WithinScatter.FromRanges(_subgroups.Average(s => SampleMoments.Range(s)), _subgroups[0].Length, _subgroups.Length),
            WithinDeviation.MeanStandardDeviation => WithinScatter.FromDeviations(
                _subgroups.Average(s => SampleMoments.StandardDeviation(s)), _subgroups[0].Length, _subgroups.Length),
            _ => WithinScatter.FromMovingRanges(_subgroups[0]),
        };
    }

    /// <summary>What is permitted instead of a method that does not fit; null when it fits.</summary>
    private string? Permitted(WithinDeviation method)
    {
        if (_areIndividual) return method == WithinDeviation.MovingRange ? null : "MovingRange: the readings are single";
        if (SubgroupSize is null) return method == WithinDeviation.Pooled ? null : "Pooled: the subgroups differ in size";
        return method is >= WithinDeviation.Pooled and < WithinDeviation.MovingRange
            ? null
            : "Pooled, MeanRange or MeanStandardDeviation: the readings stand in subgroups";
    }
}
