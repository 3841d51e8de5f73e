using Fastening.Internals;

namespace Fastening.Quality;

/// <summary>Readings of one or more inputs, taken together: means, and the covariances of the means (JCGM 100:2008 §4.2, §5.2.3).</summary>
internal sealed class JointReadings
{
    public JointReadings(IReadOnlyList<double>[] columns, string parameter)
    {
        if (columns.Length == 0) throw new ArgumentException($"{parameter} is empty; it must have one input or more.", parameter);
        foreach (IReadOnlyList<double> readings in columns)
        {
            Guard.NotNull(readings, parameter);
            if (readings.Count < 2) throw new ArgumentException($"{parameter} has {readings.Count} readings; a standard deviation needs 2 or more.", parameter);
            if (readings.Count != columns[0].Count)
            {
                throw new ArgumentException(
                    $"{parameter} has {readings.Count} readings of one input; read together there must be as many as of the first, {columns[0].Count}.", parameter);
            }

            foreach (double reading in readings) Domains.Number.Check(reading, "", parameter);
        }

        Count = columns[0].Count;
        Means = Array.ConvertAll(columns, readings => Mean(readings));
        Covariance = new double[columns.Length, columns.Length];
        for (int i = 0; i < columns.Length; i++)
        {
            for (int j = 0; j <= i; j++) Covariance[i, j] = Covariance[j, i] = CovarianceOfMeans(columns[i], Means[i], columns[j], Means[j]);
        }
    }

    public double[] Means { get; }

    public double[,] Covariance { get; }

    public double DegreesOfFreedom => Count - 1;

    private int Count { get; }

    /// <summary>A second pass over the residuals, so that readings far from zero keep their digits.</summary>
    private static double Mean(IReadOnlyList<double> readings)
    {
        double first = readings[0];
        double mean = first + readings.Sum(x => x - first) / readings.Count;
        return mean + readings.Sum(x => x - mean) / readings.Count;
    }

    private static double CovarianceOfMeans(IReadOnlyList<double> a, double meanOfA, IReadOnlyList<double> b, double meanOfB)
    {
        double sum = 0;
        for (int k = 0; k < a.Count; k++) sum += (a[k] - meanOfA) * (b[k] - meanOfB);
        return sum / (a.Count - 1) / a.Count;
    }
}
