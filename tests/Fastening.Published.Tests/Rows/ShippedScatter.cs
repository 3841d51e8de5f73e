namespace Fastening.Published.Tests;

/// <summary>The scatter that the package holds for a source, a method and a condition; not a number where it has no such row.</summary>
internal static class ShippedScatter
{
    /// <summary>± % of a row with one value.</summary>
    public static double Percent(string source, TighteningMethod method, string condition = "")
    {
        double low = Of(source, method, condition, 0).Percent, high = Of(source, method, condition, 1).Percent;
        return low == high ? low : double.NaN;
    }

    /// <summary>Both readings of one end of a row: 0 is the least scatter, 1 the greatest.</summary>
    public static (double Percent, double TighteningFactor) Of(string source, TighteningMethod method, string condition, int end)
    {
        PublishedPreloadScatter? row = PublishedPreloadScatter.Of(method)
            .SingleOrDefault(row => row.Provenance.Source == source && row.Condition == condition);
        PreloadScatter? scatter = end == 0 ? row?.Low : row?.High;
        return (scatter?.PlusMinus.Percent ?? double.NaN, scatter?.TighteningFactor ?? double.NaN);
    }
}
