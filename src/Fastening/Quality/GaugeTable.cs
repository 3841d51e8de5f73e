using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

/// <summary>The readings of a gauge study in their cells: every appraiser measured every part equally often.</summary>
internal sealed class GaugeTable
{
    private const int Named = 5;

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
        RefuseCount(parts.Length, $"{parts.Length} parts", name);
        RefuseCount(appraisers.Length, $"{appraisers.Length} appraisers", name);
        ILookup<(string, string), double> cells = readings.ToLookup(reading => (reading.Appraiser, reading.Part), reading => reading.ReadingSi);
        var counts = new List<(string Appraiser, string Part, int Trials)>();
        foreach (string appraiser in appraisers)
        {
            foreach (string part in parts) counts.Add((appraiser, part, cells[(appraiser, part)].Count()));
        }

        int trials = MostOften(counts.Select(count => count.Trials));
        RefuseCount(trials, $"{trials} trials of most parts by most appraisers", name);
        RefuseUnequal(counts.FindAll(count => count.Trials != trials), trials, name);
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

    /// <summary>How many trials most cells have: one reading too few or too many must not make the others the odd ones.</summary>
    private static int MostOften(IEnumerable<int> trials) =>
        trials.GroupBy(count => count).OrderByDescending(group => group.Count()).ThenByDescending(group => group.Key).First().Key;

    private static void RefuseCount(int count, string counted, string name)
    {
        double most = Domains.SubgroupSize.High;
        if (count >= 2 && count <= most) return;
        throw new ArgumentException(Print.Text($"{name} has {counted}; a study has at least 2 parts, 2 appraisers and 2 trials of each part by each appraiser, and at most {most} of each."), name);
    }

    private static void RefuseUnequal(List<(string Appraiser, string Part, int Trials)> odd, int trials, string name)
    {
        if (odd.Count == 0) return;
        string cells = string.Join(", ", odd.Take(Named).Select(cell => $"{cell.Trials} trials of part {Quoted.Text(cell.Part)} by {Quoted.Text(cell.Appraiser)}"));
        string more = odd.Count > Named ? $" and {odd.Count - Named} more such" : "";
        throw new ArgumentException($"{name} has {cells}{more}, of the others {trials}; every appraiser must measure every part equally often.", name);
    }
}
