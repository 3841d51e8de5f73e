namespace Fastening;

/// <summary>The elastic region in steps of the smoothed curve and in samples, with its line, the scatter of the samples about it, and whether the rise bends.</summary>
internal readonly record struct ElasticFit(int From, int To, int FirstSample, int LastSample, RobustLine Line, double Scatter, bool IsBent)
{
    public int Middle => (From + To) / 2;

    public int Length => To - From;

    public double Slope => Line.Slope;
}
