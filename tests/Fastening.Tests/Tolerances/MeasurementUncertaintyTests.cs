using Fastening.Equations;
using Fastening.Quality;
using UnitsNet;

namespace Fastening.Tests.Tolerances;

public class MeasurementUncertaintyTests
{
    private static readonly ToleranceWindow<Torque> Window = ToleranceWindow.FromLimits(Nm(48), Nm(52));

    [Fact]
    public void Standard_and_expanded_are_one_uncertainty_stated_twice()
    {
        MeasurementUncertainty<Torque> standard = MeasurementUncertainty.Standard(Nm(0.3)), expanded = MeasurementUncertainty.Expanded(Nm(0.6), 2), wide = MeasurementUncertainty.Expanded(Nm(0.9), 3);
        foreach (MeasurementUncertainty<Torque> u in new[] { standard, expanded, wide })
        {
            Assert.Equal(0.3, u.StandardUncertainty.NewtonMeters, 1e-15);
            Assert.Equal(0.6, u.ExpandedWith(2).NewtonMeters, 1e-15);
            Assert.Equal(0.6, DecisionRule.IlacG8.GuardBandFor(Window, u)!.Value.NewtonMeters, 1e-15);
            Assert.Equal(0.158655, SpecificRisk.At(Window, Nm(51.7), u).Consumer, 1e-6);
            Assert.Equal(2 / 0.6, TestUncertaintyRatio.OfTolerance(Window, u), 1e-12);
        }

        Assert.Equal(1, standard.CoverageFactor);
        Assert.Equal(3, wide.CoverageFactor);
        Assert.Equal("u = 0.3 N·m", standard.ToString());
        Assert.Equal("U = 0.6 N·m (k = 2)", expanded.ToString());
        Assert.Equal("U = 1.5 % (k = 3)", MeasurementUncertainty.Expanded(Ratio.FromPercent(1.5), 3).ToString());
    }

    [Fact]
    public void What_states_nothing_is_refused_everywhere()
    {
        MeasurementUncertainty<Torque> nothing = default;
        Assert.Equal("no uncertainty stated", nothing.ToString());
        Assert.Throws<InvalidOperationException>(() => nothing.StandardUncertainty);
        Assert.Throws<InvalidOperationException>(() => nothing.ExpandedWith(2));
        foreach (Action call in new Action[]
        {
            () => Window.Classify(Nm(50), nothing, DecisionRule.IlacG8),
            () => Window.ZoneOf(Nm(50), nothing, DecisionRule.SimpleAcceptance),
            () => Window.Decide(Nm(50), nothing, DecisionRule.IlacG8),
            () => Window.Classify([50.0], nothing, DecisionRule.IlacG8, new Conformity[1]),
            () => DecisionRule.IlacG8.GuardBandFor(Window, nothing),
            () => SpecificRisk.At(Window, Nm(50), nothing),
            () => GlobalRisk.Of(Window, Window, Prior.Normal(Nm(50), Nm(1)), nothing),
            () => TestUncertaintyRatio.OfTolerance(Window, nothing),
            () => TestUncertaintyRatio.OfStandardDeviations(Prior.Normal(Nm(50), Nm(1)), nothing),
            () => Prior.Normal(Nm(50), Nm(1)).After(Nm(50), nothing),
        })
        {
            Assert.Equal("uncertainty", Assert.Throws<ArgumentException>(call).ParamName);
        }

        TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400)).WithAccuracy(Ratio.FromPercent(4));
        Assert.Throws<ArgumentException>(() => wrench.GuaranteedSettingFor(Window, default));
        Assert.Throws<ArgumentException>(() => new CalibrationUncertainty(default));
    }

    [Fact]
    public void What_is_outside_its_domain_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => MeasurementUncertainty.Standard(Nm(-0.1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => MeasurementUncertainty.Expanded(Nm(0.1), 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => MeasurementUncertainty.Expanded(Nm(0.1), double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => MeasurementUncertainty.Standard(Ratio.FromPercent(101)));
        Assert.Throws<NotSupportedException>(() => MeasurementUncertainty.Standard(Mass.FromKilograms(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SpecificRisk.At(Window, Nm(50), MeasurementUncertainty.Standard(Torque.Zero), Prior.Normal(Nm(50), Nm(1))));
    }

    [Fact]
    public void A_guarantee_counts_the_stated_factor_and_at_least_two()
    {
        TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400)).WithAccuracy(Ratio.FromPercent(4));
        double Lowest(MeasurementUncertainty<Ratio> calibration) => wrench.GuaranteedSettingFor(ToleranceWindow.FromLimits(Nm(100), Nm(200)), calibration).Window!.Lower!.Value.NewtonMeters;

        // S_lo = M_lo (1 + a + W) with W = 2 u, or 3 u where the certificate says so.
        Assert.Equal(105, Lowest(MeasurementUncertainty.Standard(Ratio.FromPercent(0.5))), 1e-12);
        Assert.Equal(105, Lowest(MeasurementUncertainty.Expanded(Ratio.FromPercent(1), 2)), 1e-12);
        Assert.Equal(105.5, Lowest(MeasurementUncertainty.Expanded(Ratio.FromPercent(1.5), 3)), 1e-12);
        Assert.Equal(104, Lowest(MeasurementUncertainty.Standard(Ratio.Zero)), 1e-12);
    }

    [Fact]
    public void Small_risks_keep_their_digits()
    {
        // Φ(−9) = 1.1285884059538406e-19, Φ(−12) = 1.776482112077679e-33 (mpmath, 50 digits); 1 − p_c was 0 there.
        MeasurementUncertainty<Torque> u = MeasurementUncertainty.Standard(Nm(0.1));
        Close.To(1.1285884059538406e-19, SpecificRisk.At(ToleranceWindow.AtMost(Nm(0)), Nm(-0.9), u).Consumer, 1e-10);
        Close.To(1.776482112077679e-33, SpecificRisk.At(ToleranceWindow.AtLeast(Nm(0)), Nm(1.2), u).Consumer, 1e-10);
        Close.To(2 * 1.1285884059538406e-19, SpecificRisk.At(ToleranceWindow.FromLimits(Nm(-0.9), Nm(0.9)), Nm(0), u).Consumer, 1e-10);

        // Process N(0, 1), limits and acceptance limits ±8, u 0.1: both integrals by mpmath, 40 digits.
        ToleranceWindow<Torque> eight = ToleranceWindow.FromLimits(Nm(-8), Nm(8));
        GlobalRisk global = GlobalRisk.Of(eight, eight, Prior.Normal(Nm(0), Nm(1)), u);
        Close.To(7.346120183321674e-16, global.Producer, 1e-10);
        Close.To(2.6254321783295173e-16, global.Consumer, 1e-10);
        Assert.Equal(1, SpecificRisk.At(Window, Nm(50), MeasurementUncertainty.Standard(Torque.Zero)).ProbabilityOfConformity);
        Assert.Equal(0, SpecificRisk.At(Window, Nm(50), MeasurementUncertainty.Standard(Torque.Zero)).Consumer);
        Assert.Equal(1, SpecificRisk.At(Window, Nm(53), MeasurementUncertainty.Standard(Torque.Zero)).Consumer);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.999999)]
    [InlineData(0)]
    [InlineData(-3)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Factors_of_the_ratio_refuse_what_they_were_not_made_for(double ratio)
    {
        foreach (Func<double, double> factor in new Func<double, double>[]
        {
            DecisionEquations.RootSumSquareFactor, DecisionEquations.FullUncertaintyFactor, DecisionEquations.NcslRp10Factor, DecisionEquations.ManagedRiskFactor,
        })
        {
            Assert.Throws<ArgumentOutOfRangeException>(() => factor(ratio));
            Assert.InRange(factor(1), 0, 1);
            Assert.InRange(factor(1e12), 0, 1);
        }
    }

    [Fact]
    public void Factors_near_one_keep_their_digits()
    {
        // With TUR = 1 + 2^-40 exactly: (TUR − 1)/TUR and √((TUR − 1)(TUR + 1))/TUR, mpmath with 50 digits.
        double ratio = 1 + Math.Pow(2, -40);
        Close.To(9.0949470177210106e-13, DecisionEquations.FullUncertaintyFactor(ratio), 4e-16);
        Close.To(1.3486991523476891e-06, DecisionEquations.RootSumSquareFactor(ratio), 4e-16);
    }

    private static Torque Nm(double value) => Torque.FromNewtonMeters(value);
}
