namespace Fastening.Quality;

/// <summary>Mean and standard deviation, stable on numbers far from zero, the same whatever the number of threads.</summary>
internal static class Moments
{
    private const int Chunk = 4096;

    public static (double Mean, double Deviation) Of(double[] values)
    {
        // Sums of chunks keep the rounding errors of a million additions from piling up.
        double pivot = values[0], sum = 0;
        for (int start = 0; start < values.Length; start += Chunk)
        {
            double part = 0;
            foreach (double value in values.AsSpan(start, Math.Min(Chunk, values.Length - start))) part += value - pivot;
            sum += part;
        }

        double shift = sum / values.Length, mean = pivot + shift, squares = 0, rest = 0;
        for (int start = 0; start < values.Length; start += Chunk)
        {
            double part = 0, residue = 0;
            foreach (double value in values.AsSpan(start, Math.Min(Chunk, values.Length - start)))
            {
                double d = value - mean;
                part += d * d;
                residue += d;
            }

            squares += part;
            rest += residue;
        }

        return (mean + rest / values.Length, Math.Sqrt(Math.Max(0, squares - rest * rest / values.Length) / (values.Length - 1)));
    }
}
