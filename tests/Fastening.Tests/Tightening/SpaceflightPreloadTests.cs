using Fastening.Equations;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Tightening;

[Properties(Arbitrary = [typeof(Domain)], MaxTest = 100)]
public class SpaceflightPreloadTests
{
    private static readonly NutFactorModel Quarter = TorquePreloadModel.FromNutFactor(0.2, Length.FromInches(0.25));
    private static readonly Ratio Gamma = Ratio.FromPercent(25);

    /// <summary>NASA TM-106943 (1995), Table I: 3/8-24 of A-286, 65 % of yield, u = 0.25; 4851, 3465 and 6064 lb as printed, to 1 lb.</summary>
    [Fact]
    public void Table_I_of_TM_106943()
    {
        NutFactorModel model = TorquePreloadModel.FromNutFactor(0.2, Length.FromInches(0.375));
        Torque torque = model.TorqueFor(Force.FromPoundsForce(0.65 * 85_000 * 0.0878));
        Range<Force> range = SpaceflightPreload.ByTm106943(model, torque, Gamma);

        Assert.InRange(range.Low.PoundsForce, 3464, 3466);
        Assert.InRange(range.High.PoundsForce, 6063, 6065);
    }

    [Fact]
    public void The_two_documents_read_five_percent_differently()
    {
        Torque torque = Quarter.TorqueFor(Force.FromNewtons(1000));
        Range<Force> memorandum = SpaceflightPreload.ByTm106943(Quarter, torque, Gamma);
        Range<Force> standard = SpaceflightPreload.ByNasaStd5020(Quarter, torque, Gamma, Ratio.FromPercent(5));

        Assert.Equal(750 / 1.05, memorandum.Low.Newtons, 9);
        Assert.Equal(750 * 0.95, standard.Low.Newtons, 9);
        Assert.Equal(1250, memorandum.High.Newtons, 9);
        Assert.Equal(memorandum.High, standard.High);
        Assert.True(standard.Low < memorandum.Low);
    }

    /// <summary>NASA-STD-5020 as stated in J. Failure Analysis and Prevention 19 (2019): 0.65 and 1.35 unlubricated, 0.75 and 1.25 lubricated.</summary>
    [Theory]
    [InlineData(35, 0.65, 1.35)]
    [InlineData(25, 0.75, 1.25)]
    public void Gamma_of_NASA_STD_5020(double percent, double low, double high)
    {
        Range<Force> range = SpaceflightPreload.ByNasaStd5020(Quarter, Quarter.TorqueFor(Force.FromNewtons(1)), Ratio.FromPercent(percent), Ratio.Zero);
        Close.To(low, range.Low.Newtons);
        Close.To(high, range.High.Newtons);
    }

    [Property]
    public void Work_ends_on_the_lowest_preload_bit_for_bit(AnyJoint joint, AnyTorque torque)
    {
        FrictionTorqueModel model = joint.Model.WithPrevailing(torque.Torque * 0.05);
        Ratio relaxation = Ratio.FromPercent(7);
        Assert.Equal(
            SpaceflightPreload.ByTm106943(model, torque.Torque, Gamma).Low.Newtons,
            Derivation.Of(() => SpaceflightPreload.ByTm106943(model, torque.Torque, Gamma).Low).Result);
        Assert.Equal(
            SpaceflightPreload.ByNasaStd5020(model, torque.Torque, Gamma, relaxation).Low.Newtons,
            Derivation.Of(() => SpaceflightPreload.ByNasaStd5020(model, torque.Torque, Gamma, relaxation).Low).Result);
        Close.To(model.PreloadAt(torque.Torque).Newtons * 1.25, SpaceflightPreload.ByTm106943(model, torque.Torque, Gamma).High.Newtons);
    }
}
