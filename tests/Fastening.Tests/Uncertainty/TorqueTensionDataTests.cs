using Fastening.Quality;
using UnitsNet;

namespace Fastening.Tests.Uncertainty;

/// <summary>Bolts torqued to 90 N·m, Shigley 9th ed. (2011) Tables 8-13 (20 unlubricated) and 8-14 (10 lubricated): the bands against the data.</summary>
public class TorqueTensionDataTests
{
    private const double Diameter = 12;

    private static readonly double[] Unlubricated =
        [23.6, 27.6, 28.0, 29.4, 30.3, 30.7, 32.9, 33.8, 33.8, 33.8, 34.7, 35.6, 35.6, 37.4, 37.8, 37.8, 39.2, 40.0, 40.5, 42.7];

    private static readonly double[] Lubricated = [30.3, 32.5, 32.5, 32.9, 32.9, 33.8, 34.3, 34.7, 37.4, 40.5];

    public static TheoryData<double[], double> Data => new() { { Unlubricated, 35 }, { Lubricated, 25 } };

    /// <summary>Scatter as NASA NSTS 08307A states it, ± 35 % unlubricated and ± 25 % lubricated, about the mean of the data: no bolt lies outside.</summary>
    [Theory]
    [MemberData(nameof(Data))]
    public void The_worst_case_of_the_stated_scatter_holds_every_bolt(double[] kilonewtons, double percent)
    {
        // ± s in preload at a fixed torque is K from K/(1 + s) to K/(1 − s).
        double factor = 90 / (kilonewtons.Average() * Diameter);
        PreloadBand band = Band(factor / (1 + percent / 100), factor / (1 - percent / 100), ScatterShape.Rectangular);
        Close.To(kilonewtons.Average() * (1 - percent / 100), band.WorstCase.Low.Kilonewtons, 1e-9);
        Assert.All(kilonewtons, preload => Assert.InRange(preload, band.WorstCase.Low.Kilonewtons, band.WorstCase.High.Kilonewtons));
    }

    /// <summary>Nut factors scattered as measured: the statistical band has the mean and spread of the data and holds about 95 % of the bolts.</summary>
    [Theory]
    [MemberData(nameof(Data))]
    public void The_statistical_band_of_the_measured_nut_factors_is_that_of_the_data(double[] kilonewtons, double percent)
    {
        Assert.True(percent > 0);
        double[] factors = [.. kilonewtons.Select(preload => 90 / (preload * Diameter))];
        double mean = factors.Average(), deviation = Math.Sqrt(factors.Sum(k => (k - mean) * (k - mean)) / (factors.Length - 1));
        double ofData = Math.Sqrt(kilonewtons.Sum(f => Math.Pow(f - kilonewtons.Average(), 2)) / (kilonewtons.Length - 1));
        PreloadBand band = Band(mean - 2 * deviation, mean + 2 * deviation, ScatterShape.Normal(2));

        Close.To(kilonewtons.Average(), band.Mean.Kilonewtons, 0.01);
        Close.To(ofData, band.StandardDeviation.Kilonewtons, 0.25);
        int outside = kilonewtons.Count(preload => preload < band.Statistical.Low.Kilonewtons || preload > band.Statistical.High.Kilonewtons);
        Assert.InRange(outside, 0, 1);
    }

    private static PreloadBand Band(double low, double high, ScatterShape shape)
    {
        NutFactorModel model = TorquePreloadModel.FromNutFactor(0.2, Length.FromMillimeters(Diameter));
        var torque = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(90), Torque.FromNewtonMeters(90));
        return PreloadBand.Evaluate(new PreloadBandInputs(model, torque, low, high).WithFrictionShape(shape), new MonteCarlo().WithDraws(100_000));
    }
}
