namespace Fastening.Quality;

/// <summary>The ranges of a gauge study as its form lists them: of the trials, of the means of the appraisers, of the means of the parts.</summary>
internal readonly record struct GaugeRanges(double OfTrials, double OfAppraisers, double OfParts)
{
    public static GaugeRanges Of(GaugeTable table) => new(
        table.Cells.Average(cell => SampleMoments.Range(cell)), SampleMoments.Range(table.AppraiserMeans), SampleMoments.Range(table.PartMeans));
}
