namespace Fastening;

/// <summary>The elastic region in steps of the smoothed curve and in samples, with its line and the scatter of the samples about it.</summary>
internal readonly record struct ElasticFit(int From, int To, int FirstSample, int LastSample, RobustLine Line, double Scatter)
{
    public int Middle => (From + To) / 2;
}
