using Fastening.Equations;
using Fastening.Quality;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>NIST/SEMATECH e-Handbook of Statistical Methods 7.2.6.3: tolerance intervals of a normal population.</summary>
public sealed class NistStatisticsHandbook : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } = [new("nist-7263", Compute)];

    private static double? Compute(PublishedRow row, string output)
    {
        int count = (int)row["N"];
        double share = row["p"], confidence = row["gamma"];
        double zShare = Normal.InvCDF(0, 1, share), zConfidence = Normal.InvCDF(0, 1, confidence);
        SampleStatistics<Length> sample = SampleStatistics.FromSummary(count, Length.FromMeters(row["mean"]), Length.FromMeters(row["s"]));
        return output switch
        {
            "k2_howe" => StatisticalToleranceInterval.HoweFactor(count, Ratio.FromDecimalFractions(share), confidence),
            "a" => ToleranceFactorEquations.NatrellaA(zConfidence, count),
            "b" => ToleranceFactorEquations.NatrellaB(zShare, zConfidence, count),
            "k1_natrella" => StatisticalToleranceInterval.NatrellaFactor(count, Ratio.FromDecimalFractions(share), confidence),
            "k1_noncentral_t" => StatisticalToleranceInterval.OneSidedFactor(count, Ratio.FromDecimalFractions(share), confidence),
            "two_sided[0]" => StatisticalToleranceInterval.TwoSidedByHowe(sample, Ratio.FromDecimalFractions(share), confidence).Low!.Value.Meters,
            "two_sided[1]" => StatisticalToleranceInterval.TwoSidedByHowe(sample, Ratio.FromDecimalFractions(share), confidence).High!.Value.Meters,
            "upper_one_sided" => row["mean"] + StatisticalToleranceInterval.NatrellaFactor(count, Ratio.FromDecimalFractions(share), confidence) * row["s"],
            "lower_one_sided" => row["mean"] - StatisticalToleranceInterval.NatrellaFactor(count, Ratio.FromDecimalFractions(share), confidence) * row["s"],
            _ => null,
        };
    }
}
