using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The readings of a gauge study in their cells: every appraiser measured every part equally often.</summary>
internal sealed class GaugeTable
{
    private readonly double[][][] _cells;

    private GaugeTable(double[][][] cells)
    {
        _cells = cells;
        Appraisers = cells.Length;
        Parts = cells[0].Length;
        Trials = cells[0][0].Length;
        double[] all = [.. cells.SelectMany(row => row).SelectMany(cell => cell)];
        Mean = SampleMoments.Mean(all);
    }

    public int Appraisers { get; }

    public int Parts { get; }

    public int Trials { get; }

    public double Mean { get; }

    public IEnumerable<double[]> Cells => _cells.SelectMany(row => row);

    public double[] AppraiserMeans => [.. _cells.Select(row => row.Average(MeanOf))];

    public double[] PartMeans => [.. Enumerable.Range(0, Parts).Select(part => _cells.Average(row => MeanOf(row[part])))];

    public static GaugeTable Of<TQuantity>(IReadOnlyList<GaugeReading<TQuantity>> readings, string name)
        where TQuantity : struct, IQuantity
    {
        Guard.NotNull(readings, name);
        for (int i = 0; i < readings.Count; i++) Guard.NotNull(readings[i], $"{name}[{i}]");
        string[] parts = [.. readings.Select(reading => reading.Part).Distinct()];
        string[] appraisers = [.. readings.Select(reading => reading.Appraiser).Distinct()];
        int trials = parts.Length == 0 ? 0 : readings.Count / (parts.Length * appraisers.Length);
        if (parts.Length < 2 || appraisers.Length < 2 || trials < 2)
        {
            throw new ArgumentException(
                $"{name} has {parts.Length} parts, {appraisers.Length} appraisers and {trials} trials; a study needs at least 2 of each.", name);
        }

        RefuseMany(parts.Length, appraisers.Length, trials, name);
        ILookup<(string, string), double> cells = readings.ToLookup(reading => (reading.Appraiser, reading.Part), reading => reading.ReadingSi);
        foreach (string appraiser in appraisers)
        {
            foreach (string part in parts) RefuseUnequal(cells[(appraiser, part)].Count(), trials, appraiser, part, name);
        }

        return new([.. appraisers.Select(a => parts.Select(p => cells[(a, p)].ToArray()).ToArray())]);
    }

    /// <summary>Sum of the squared differences between cell means and what their part and appraiser explain, over one reading.</summary>
    public double InteractionSquares()
    {
        double[] appraisers = AppraiserMeans, parts = PartMeans;
        double sum = 0;
        for (int a = 0; a < Appraisers; a++)
        {
            for (int p = 0; p < Parts; p++)
            {
                double difference = MeanOf(_cells[a][p]) - appraisers[a] - (parts[p] - Mean);
                sum += difference * difference;
            }
        }

        return sum;
    }

    private static double MeanOf(double[] cell) => SampleMoments.Mean(cell);

    private static void RefuseMany(int parts, int appraisers, int trials, string name)
    {
        double most = Domains.SubgroupSize.High;
        if (parts > most || appraisers > most || trials > most)
        {
            throw new ArgumentException($"{name} has {parts} parts, {appraisers} appraisers and {trials} trials; a study has at most {most} of each.", name);
        }
    }

    private static void RefuseUnequal(int count, int trials, string appraiser, string part, string name)
    {
        if (count != trials)
        {
            throw new ArgumentException(
                $"{name} has {count} trials of part {Quoted.Text(part)} by {Quoted.Text(appraiser)}; every appraiser must measure every part equally often.", name);
        }
    }
}
