using Fastening.Quality;
using UnitsNet;

namespace Fastening.Tests.Uncertainty;

/// <summary>How thread and bearing friction vary together is stated, and the band repeats it.</summary>
public class FrictionCorrelationTests
{
    private static readonly FrictionRange Friction = new(new FrictionCoefficients(0.10, 0.09), new FrictionCoefficients(0.16, 0.14));
    private static readonly FrictionTorqueModel Model = TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse("M16"), Friction.Low);
    private static readonly ToleranceWindow<Torque> Exact = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(130), Torque.FromNewtonMeters(130));

    [Fact]
    public void It_cannot_be_left_out() => Assert.DoesNotContain(
        typeof(PreloadBandInputs).GetConstructors(),
        constructor => constructor.GetParameters() is var parameters
            && parameters.Any(parameter => parameter.ParameterType == typeof(FrictionRange))
            && !parameters.Any(parameter => parameter.ParameterType == typeof(FrictionCorrelation) && !parameter.HasDefaultValue));

    [Fact]
    public void Fully_correlated_friction_reaches_the_quantiles_of_one_rectangle()
    {
        // With r = 1 both coefficients stand at the same share of their ranges, so the preload is monotonic in one uniform number: its 2.5 % and 97.5 % quantiles are exact.
        PreloadBand full = PreloadBand.Evaluate(
            new PreloadBandInputs(Model, Exact, Friction, FrictionCorrelation.Full), new MonteCarlo().WithDraws(200_000).WithSeed(3));
        Force At(double share) => Model.WithFriction(new FrictionCoefficients(0.10 + 0.06 * share, 0.09 + 0.05 * share)).PreloadAt(Exact.Target!.Value);
        Assert.Equal(At(0.975).Kilonewtons, full.Statistical.Low.Kilonewtons, 0.05);
        Assert.Equal(At(0.025).Kilonewtons, full.Statistical.High.Kilonewtons, 0.05);
        PreloadBand apart = PreloadBand.Evaluate(
            new PreloadBandInputs(Model, Exact, Friction, FrictionCorrelation.Independent), new MonteCarlo().WithDraws(200_000).WithSeed(3));
        Assert.True(apart.Statistical.Low > full.Statistical.Low && apart.Statistical.High < full.Statistical.High);
        Assert.Equal(apart.WorstCase.Low.Newtons, full.WorstCase.Low.Newtons);
    }

    [Fact]
    public void The_band_says_what_was_stated()
    {
        string Text(FrictionCorrelation correlation) => PreloadBand.Evaluate(
            new PreloadBandInputs(Model, Exact, Friction, correlation), new MonteCarlo().WithDraws(20_000).WithSeed(3)).ToString();
        Assert.Contains("; thread and bearing friction independent; not covered", Text(FrictionCorrelation.Independent), StringComparison.Ordinal);
        Assert.Contains("; thread and bearing friction fully correlated; not covered", Text(FrictionCorrelation.Full), StringComparison.Ordinal);
        Assert.Contains("; thread and bearing friction correlated, r 0.8; not covered", Text(FrictionCorrelation.Of(0.8)), StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => FrictionCorrelation.Of(1.01));
        Assert.Throws<ArgumentOutOfRangeException>(() => FrictionCorrelation.Of(-0.01));
        Assert.Throws<ArgumentNullException>(() => new PreloadBandInputs(Model, Exact, Friction, null!));
    }
}
