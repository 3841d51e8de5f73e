using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

/// <summary>Readings as SI doubles (degrees for angles), each checked once; a refusal names its index.</summary>
internal static class ReadingColumn
{
    public static double[] Of<TQuantity>(IReadOnlyList<TQuantity> readings, string name)
        where TQuantity : struct, IQuantity
    {
        Guard.NotNull(readings, name);
        var column = new double[readings.Count];
        for (int i = 0; i < column.Length; i++) column[i] = Check<TQuantity>(Si.Of(readings[i]), name, i);
        return column;
    }

    public static double[] Of<TQuantity>(ReadOnlySpan<double> readings, string name)
        where TQuantity : struct, IQuantity
    {
        for (int i = 0; i < readings.Length; i++) Check<TQuantity>(readings[i], name, i);
        return readings.ToArray();
    }

    /// <summary>Refuses a sample that is too small for a standard deviation.</summary>
    public static void RefuseFewerThanTwo(int count, string name)
    {
        if (count < 2) throw new ArgumentException($"{name} has {count} elements; a standard deviation needs at least 2.", name);
    }

    /// <summary>Refuses readings that do not scatter: what divides by their standard deviation is undefined, not infinite.</summary>
    public static double Scattering<TQuantity>(double deviation, string name)
        where TQuantity : struct, IQuantity
    {
        if (!Domains.StandardDeviation.Contains(deviation))
        {
            throw new ArgumentOutOfRangeException(
                name,
                $"{name} is a sample with a standard deviation of {Print.Quantity<TQuantity>(deviation)}; it must be "
                    + $"{ShopScale.Of<TQuantity>().Describe(Domains.StandardDeviation)}.");
        }

        return deviation;
    }

    private static double Check<TQuantity>(double reading, string name, int index)
        where TQuantity : struct, IQuantity
    {
        if (!Domains.Sample.Contains(reading))
        {
            name = $"{name}[{index}]";
            throw new ArgumentOutOfRangeException(
                name, $"{name} is {Print.Quantity<TQuantity>(reading)}; it must be {ShopScale.Of<TQuantity>().Describe(Domains.Sample)}.");
        }

        return reading;
    }
}
