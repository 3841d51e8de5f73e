namespace Fastening.Quality;

/// <summary>How the standard deviation within subgroups is estimated.</summary>
public enum WithinDeviation
{
    /// <summary>Subgroups of any sizes: √(Σ(n_i − 1)s_i²/Σ(n_i − 1)).</summary>
    Pooled = 0,

    /// <summary>Subgroups of one size: mean range over d2.</summary>
    MeanRange = 1,

    /// <summary>Subgroups of one size: mean standard deviation over c4.</summary>
    MeanStandardDeviation = 2,

    /// <summary>Single readings in their order: mean moving range of two over d2 = 1.128.</summary>
    MovingRange = 3,
}
