using Fastening.Quality;
using Fastening.Tests.Rotation;
using UnitsNet;

namespace Fastening.Tests.Uncertainty;

/// <summary>Snug torque, then rotation: the band against the models of rotation, and against tightening by torque.</summary>
public class RotationBandTests
{
    private static readonly AnyTurnedJoint Turned = new(20, 0.125, 55, 30, 0.85, 1.9, 110, 0.14, 0.11);
    private static readonly FrictionRange Friction = new(new FrictionCoefficients(0.10, 0.09), new FrictionCoefficients(0.18, 0.15));
    private static readonly RotationTightening Tightening = Turned.Tightening;
    private static readonly ToleranceWindow<Torque> Snug = ToleranceWindow.FromDeviations(Tightening.SnugTorque, Ratio.FromPercent(20), Ratio.FromPercent(20));
    private static readonly ToleranceWindow<Angle> Rotation = ToleranceWindow.FromDeviations(Tightening.ElasticRotation * 0.6, Ratio.FromPercent(6), Ratio.FromPercent(6));

    private static PreloadBandInputs Inputs(double compliancePercent) => new PreloadBandInputs(Turned.Model, Snug, Friction, FrictionCorrelation.Independent)
        .WithRotation(Tightening, Rotation, Ratio.FromPercent(compliancePercent), ScatterShape.Rectangular);

    [Fact]
    public void Worst_case_is_that_of_the_rotation_model()
    {
        PreloadBand band = PreloadBand.Evaluate(Inputs(0), new MonteCarlo().WithDraws(1000));
        PreloadRangeAfterRotation expected = Tightening.PreloadRangeAt(Rotation, Snug, Friction);
        Close.To(expected.Low.Preload.Newtons, band.WorstCase.Low.Newtons, 1e-9);
        Close.To(expected.High.Preload.Newtons, band.WorstCase.High.Newtons, 1e-9);
    }

    [Fact]
    public void First_order_is_that_of_the_rotation_model()
    {
        PreloadBand band = PreloadBand.Evaluate(Inputs(9));
        double OfSnug(UncertaintyBudgetRow row) => row.Input.Name.StartsWith("rotation", StringComparison.Ordinal) || row.Input.Name.StartsWith("joint", StringComparison.Ordinal) ? 0 : row.Part;
        double snug = Math.Sqrt(band.Budget.Rows.Sum(row => Math.Pow(OfSnug(row), 2)));
        Force expected = Tightening.StandardUncertaintyAt(
            Rotation.Target!.Value, MeasurementUncertainty.Standard(Force.FromKilonewtons(snug)), MeasurementUncertainty.Standard(Rotation.Target!.Value * (0.06 / Math.Sqrt(3))), MeasurementUncertainty.Standard(Ratio.FromPercent(9 / Math.Sqrt(3))));
        Close.To(expected.Kilonewtons, band.Budget.StandardUncertainty, 1e-9);
        Close.To(band.Budget.StandardUncertainty, band.StandardDeviation.Kilonewtons, 0.03);
    }

    [Fact]
    public void Inputs_that_share_a_rotation_do_not_disturb_each_other()
    {
        var quick = new MonteCarlo().WithDraws(1000);
        PreloadBand first = PreloadBand.Evaluate(Inputs(5), quick);
        PreloadBandInputs shared = Inputs(5);
        PreloadBand before = PreloadBand.Evaluate(shared, quick);
        PreloadBand.Evaluate(shared.WithPrevailingRange(Torque.FromNewtonMeters(1), Torque.FromNewtonMeters(2)).WithBearingDiameterError(Length.FromMillimeters(0.1)), quick);
        Assert.Equal(first.Nominal.Kilonewtons, before.Budget.WithOrder(UncertaintyOrder.First).Estimate, 9);
        Assert.Equal(first.Draws.Values.ToArray(), quick.Run(before.Budget).Values.ToArray());
    }

    [Fact]
    public void Rotation_scatters_less_than_torque_for_the_same_preload()
    {
        PreloadBand byRotation = PreloadBand.Evaluate(Inputs(5));
        FrictionTorqueModel middle = Turned.Model.WithFriction(new FrictionCoefficients(0.14, 0.12));
        ToleranceWindow<Torque> torque = ToleranceWindow.FromDeviations(middle.TorqueFor(byRotation.Nominal), Ratio.FromPercent(4), Ratio.FromPercent(4));
        PreloadBand byTorque = PreloadBand.Evaluate(new PreloadBandInputs(Turned.Model, torque, Friction, FrictionCorrelation.Independent));
        Close.To(byTorque.Nominal.Kilonewtons, byRotation.Nominal.Kilonewtons, 1e-9);
        Assert.True(byRotation.Statistical.HighOverLow < byTorque.Statistical.HighOverLow - 0.1);
        Assert.True(byRotation.WorstCase.HighOverLow < byTorque.WorstCase.HighOverLow - 0.1);
    }
}
