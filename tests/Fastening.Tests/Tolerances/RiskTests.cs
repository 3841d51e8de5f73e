using MathNet.Numerics.Distributions;
using UnitsNet;

namespace Fastening.Tests.Tolerances;

public class RiskTests
{
    public static TheoryData<double, double, double, double, double, double, double> Tests => new()
    {
        // Mean and spread of the process, uncertainty, limits, acceptance limits: off centre, narrow, wide, fully outside, coarse and fine readings.
        { 50.4, 0.9, 0.31, 48, 52.5, 48.4, 52.2 },
        { 50.4, 0.9, 0.31, 48, 52.5, 47.1, 53.3 },
        { 51.9, 0.2, 0.9, 48, 52, 48.5, 51.0 },
        { 47.2, 0.5, 0.2, 48, 52, 48.3, 51.7 },
        { 10, 2.5, 2.5, 5, 14, 6, 13 },
        { -3, 4, 0.05, -8, 5, -7.9, 4.5 },
    };

    [Theory]
    [MemberData(nameof(Tests))]
    public void Global_risks_match_a_simulation(double mean, double spread, double measuring, double lower, double upper, double acceptLower, double acceptUpper)
    {
        const int Draws = 1_000_000;
        var random = new Random(20);
        double[] values = new double[Draws], errors = new double[Draws];
        Normal.Samples(random, values, mean, spread);
        Normal.Samples(random, errors, 0, measuring);
        int consumer = 0, producer = 0, accepted = 0;
        for (int i = 0; i < Draws; i++)
        {
            bool conforms = values[i] >= lower && values[i] <= upper;
            double reading = values[i] + errors[i];
            bool accepts = reading >= acceptLower && reading <= acceptUpper;
            if (accepts) accepted++;
            if (accepts && !conforms) consumer++;
            if (!accepts && conforms) producer++;
        }

        GlobalRisk risk = RiskOf(mean, spread, measuring, lower, upper, acceptLower, acceptUpper);
        AssertWithinSampling(risk.Consumer, consumer, Draws);
        AssertWithinSampling(risk.Producer, producer, Draws);
        AssertWithinSampling(risk.ProbabilityOfAcceptance, accepted, Draws);
    }

    [Theory]
    [MemberData(nameof(Tests))]
    public void Global_risks_match_the_integral_over_the_readings(double mean, double spread, double measuring, double lower, double upper, double acceptLower, double acceptUpper)
    {
        // Independent route: the other order of integration. Readings are normal with u0² + um²; each has its specific risk, with the process as prior.
        double total = Math.Sqrt(spread * spread + measuring * measuring);
        double Integrate(double from, double to, Func<SpecificRisk, double> risk) => Simpson(
            reading => risk(RiskAt(reading)) * Normal.PDF(mean, total, reading), Math.Max(from, mean - 12 * total), Math.Min(to, mean + 12 * total));
        SpecificRisk RiskAt(double reading) => SpecificRisk.At(
            Window(lower, upper), Nm(reading), MeasurementUncertainty.Standard(Nm(measuring)), Prior.Normal(Nm(mean), Nm(spread)));

        GlobalRisk found = RiskOf(mean, spread, measuring, lower, upper, acceptLower, acceptUpper);
        Assert.Equal(Integrate(acceptLower, acceptUpper, r => r.Consumer), found.Consumer, 1e-9);
        Assert.Equal(
            Integrate(double.NegativeInfinity, acceptLower, r => r.Producer) + Integrate(acceptUpper, double.PositiveInfinity, r => r.Producer), found.Producer, 1e-9);
        Assert.Equal(Normal.CDF(mean, total, acceptUpper) - Normal.CDF(mean, total, acceptLower), found.ProbabilityOfAcceptance, 1e-12);
        Assert.Equal(Normal.CDF(mean, spread, upper) - Normal.CDF(mean, spread, lower), found.ProbabilityOfConformity, 1e-12);
        Assert.Equal(found.Consumer / found.ProbabilityOfAcceptance, found.NonconformingAmongAccepted!.Value, 1e-15);
    }

    [Fact]
    public void Risk_of_the_resistors_of_jcgm_106()
    {
        // JCGM 106:2012 §9.5, inputs from memory; it prints 1 % and 7 %, the digits are recomputed outside the library.
        GlobalRisk risk = RiskOf(1500, 0.12, 0.04, 1499.8, 1500.2, 1499.82, 1500.18);
        Assert.Equal(0.00988, risk.Consumer, 5e-6);
        Assert.Equal(0.0690, risk.Producer, 5e-5);
    }

    [Fact]
    public void A_perfect_measurement_carries_no_risk_but_the_guard_band()
    {
        GlobalRisk risk = RiskOf(50.3, 1, 1e-9, 48, 52, 48.5, 51.5);
        Assert.Equal(0, risk.Consumer, 1e-12);
        Assert.Equal(Normal.CDF(50.3, 1, 48.5) - Normal.CDF(50.3, 1, 48) + Normal.CDF(50.3, 1, 52) - Normal.CDF(50.3, 1, 51.5), risk.Producer, 1e-9);
    }

    [Fact]
    public void Where_nothing_is_accepted_every_good_item_is_lost()
    {
        GlobalRisk risk = GlobalRisk.Of(Window(48, 52), null, Prior.Normal(Nm(50), Nm(1)), MeasurementUncertainty.Standard(Nm(2)));
        Assert.Equal(0, risk.Consumer);
        Assert.Equal(risk.ProbabilityOfConformity, risk.Producer);
        Assert.Null(risk.NonconformingAmongAccepted);
    }

    [Fact]
    public void Guard_bands_trade_one_risk_for_the_other()
    {
        GlobalRisk before = RiskOf(50.3, 0.8, 0.25, 48, 52, 47, 53);
        for (double band = -0.95; band < 1.95; band += 0.05)
        {
            GlobalRisk after = RiskOf(50.3, 0.8, 0.25, 48, 52, 48 + band, 52 - band);
            Assert.True(after.Consumer < before.Consumer && after.Producer > before.Producer);
            before = after;
        }
    }

    [Fact]
    public void Extreme_ratios_stay_probabilities()
    {
        var random = new Random(3);
        for (int n = 0; n < 3000; n++)
        {
            double Any() => Math.Exp(random.NextDouble() * 60 - 27);
            double centre = (random.NextDouble() - 0.5) * Any(), half = Any();
            GlobalRisk risk = RiskOf(centre + (random.NextDouble() - 0.5) * Any(), Math.Max(1e-12, Any()), Math.Max(1e-12, Any()), centre - half, centre + half, centre - half * 0.8, centre + half * 0.9);
            foreach (double share in new[] { risk.Consumer, risk.Producer, risk.ProbabilityOfAcceptance, risk.ProbabilityOfConformity }) Assert.InRange(share, 0, 1 + 1e-12);
        }
    }

    [Fact]
    public void Probability_of_one_reading_by_the_closed_form()
    {
        SpecificRisk risk = SpecificRisk.At(Window(48, 53), Nm(52.1), MeasurementUncertainty.Standard(Nm(0.7)));
        Close.To(Normal.CDF(52.1, 0.7, 53) - Normal.CDF(52.1, 0.7, 48), risk.ProbabilityOfConformity);
        Close.To(1, risk.Consumer + risk.Producer);
        Close.To(risk.ProbabilityOfConformity, Window(48, 53).Decide(Nm(52.1), MeasurementUncertainty.Expanded(Nm(1.4), 2), DecisionRule.IlacG8).ProbabilityOfConformity);
        Assert.Equal(1, SpecificRisk.At(Window(48, 53), Nm(53), MeasurementUncertainty.Standard(Torque.Zero)).ProbabilityOfConformity);
        Assert.Equal(0, SpecificRisk.At(Window(48, 53), Nm(53.0001), MeasurementUncertainty.Standard(Torque.Zero)).ProbabilityOfConformity);

        // Far beyond the limit, where 1 − Φ would have cancelled to nothing.
        Close.To(Normal.CDF(0, 1, -12), SpecificRisk.At(Window(-1000, 0), Nm(12), MeasurementUncertainty.Standard(Nm(1))).ProbabilityOfConformity, 1e-9);
        Close.To(Normal.CDF(0, 1, -12), SpecificRisk.At(Window(0, 1000), Nm(-12), MeasurementUncertainty.Standard(Nm(1))).ProbabilityOfConformity, 1e-9);
    }

    [Fact]
    public void A_prior_moves_the_reading_by_its_weight()
    {
        // Precisions add: 1/u² = 1/u0² + 1/um², y u^-2 = y0 u0^-2 + η um^-2.
        Prior<Torque> before = Prior.Normal(Nm(50), Nm(0.8)), after = before.After(Nm(52), MeasurementUncertainty.Standard(Nm(0.3)));
        double precision = 1 / (0.8 * 0.8) + 1 / (0.3 * 0.3);
        Close.To((50 / (0.8 * 0.8) + 52 / (0.3 * 0.3)) / precision, after.Mean.NewtonMeters);
        Close.To(1 / Math.Sqrt(precision), after.StandardDeviation.NewtonMeters);
        SpecificRisk risk = SpecificRisk.At(Window(48, 51.9), Nm(52), MeasurementUncertainty.Standard(Nm(0.3)), before);
        Close.To(Normal.CDF(after.Mean.NewtonMeters, after.StandardDeviation.NewtonMeters, 51.9), risk.ProbabilityOfConformity, 1e-9);
        Assert.True(risk.ProbabilityOfConformity > SpecificRisk.At(Window(48, 51.9), Nm(52), MeasurementUncertainty.Standard(Nm(0.3))).ProbabilityOfConformity);

        // A vague prior says nothing.
        Assert.Equal(
            SpecificRisk.At(Window(48, 51.9), Nm(52), MeasurementUncertainty.Standard(Nm(0.3))).ProbabilityOfConformity,
            SpecificRisk.At(Window(48, 51.9), Nm(52), MeasurementUncertainty.Standard(Nm(0.3)), Prior.Normal(Nm(0), Nm(1e9))).ProbabilityOfConformity, 1e-9);
    }

    [Fact]
    public void The_two_ratios_that_share_a_name_differ()
    {
        Assert.Equal(4, TestUncertaintyRatio.OfTolerance(Window(48, 52), MeasurementUncertainty.Expanded(Nm(0.5), 2)));
        Assert.Equal(2.5, TestUncertaintyRatio.OfTolerance(Window(0, 5), MeasurementUncertainty.Expanded(Nm(1), 2)));
        Close.To(3.2, TestUncertaintyRatio.OfStandardDeviations(Prior.Normal(Nm(50), Nm(0.8)), MeasurementUncertainty.Standard(Nm(0.25))));
    }

    private static void AssertWithinSampling(double expected, int count, int draws)
    {
        // Five standard errors of a binomial share, and one count for shares near nothing.
        double error = 5 * Math.Sqrt(Math.Max(expected * (1 - expected), 1.0 / draws) / draws);
        Assert.True(Math.Abs(expected - (double)count / draws) <= error, $"expected {expected:G6}, counted {(double)count / draws:G6} ± {error:G3}");
    }

    private static GlobalRisk RiskOf(double mean, double spread, double measuring, double lower, double upper, double acceptLower, double acceptUpper) =>
        GlobalRisk.Of(Window(lower, upper), Window(acceptLower, acceptUpper), Prior.Normal(Nm(mean), Nm(spread)), MeasurementUncertainty.Standard(Nm(measuring)));

    private static double Simpson(Func<double, double> f, double from, double to)
    {
        const int Steps = 20_000;
        if (to <= from) return 0;
        double step = (to - from) / Steps, sum = f(from) + f(to);
        for (int i = 1; i < Steps; i++) sum += (i % 2 == 0 ? 2 : 4) * f(from + i * step);
        return sum * step / 3;
    }

    private static ToleranceWindow<Torque> Window(double lower, double upper) => ToleranceWindow.FromLimits(Nm(lower), Nm(upper));

    private static Torque Nm(double value) => Torque.FromNewtonMeters(value);
}
