namespace Fastening.Quality;

/// <summary>Ranks, from 0, of the ends of coverage intervals (JCGM 101:2008 §7.7).</summary>
internal static class Ranks
{
    /// <summary>q: how many ranks the upper end lies above the lower.</summary>
    public static int Span(int count, double coverageProbability)
    {
        double exact = coverageProbability * count;
        double whole = Math.Round(exact);
        return Math.Abs(exact - whole) <= 1e-9 * count ? (int)whole : (int)Math.Floor(exact + 0.5);
    }

    public static (int Low, int High) Symmetric(int count, double coverageProbability)
    {
        int span = Span(count, coverageProbability);
        int low = (count - span + (count - span) % 2) / 2;
        return (low - 1, low - 1 + span);
    }
}
