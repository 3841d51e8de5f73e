namespace Fastening.Quality;

/// <summary>The adaptive stop of JCGM 101:2008 §7.9.4: each block is one of its h sequences of trials.</summary>
internal sealed class StabilityCheck(int significantDigits)
{
    private readonly List<double[]> _figures = [];

    public bool IsStable(double[] values, int threads)
    {
        int known = _figures.Count, blocks = values.Length / MonteCarlo.BlockLength;
        var added = new double[blocks - known][];
        Parallel.For(known, blocks, new ParallelOptions { MaxDegreeOfParallelism = threads }, block =>
            added[block - known] = Figures(values.AsSpan(block * MonteCarlo.BlockLength, MonteCarlo.BlockLength).ToArray()));
        _figures.AddRange(added);
        if (_figures.Count < 2) return false;
        double uncertainty = _figures.Average(figures => figures[1]);
        return Enumerable.Range(0, _figures[0].Length).All(i => 2 * DeviationOfMean(i) <= Tolerance(uncertainty));
    }

    /// <summary>Half a unit of the last significant digit of u (JCGM 101:2008 §7.9.2).</summary>
    private double Tolerance(double uncertainty) =>
        uncertainty > 0 ? 0.5 * Math.Pow(10, Math.Floor(Math.Log10(uncertainty)) - significantDigits + 1) : 0;

    private static double[] Figures(double[] block)
    {
        (double mean, double deviation) = Moments.Of(block);
        Array.Sort(block);
        (int low, int high) = Ranks.Symmetric(block.Length, 0.95);
        return [mean, deviation, block[low], block[high]];
    }

    private double DeviationOfMean(int figure)
    {
        (_, double deviation) = Moments.Of([.. _figures.Select(figures => figures[figure])]);
        return deviation / Math.Sqrt(_figures.Count);
    }
}
