using Fastening.Quality;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace Fastening.Tests.Quality;

public class ControlChartTests
{
    public static TheoryData<int, string, double> Table => new()
    {
        // Montgomery, Introduction to Statistical Quality Control, App. VI, from memory; printed to three decimals.
        { 2, "A2", 1.880 }, { 5, "A2", 0.577 }, { 10, "A2", 0.308 }, { 25, "A2", 0.153 },
        { 2, "A3", 2.659 }, { 5, "A3", 1.427 }, { 10, "A3", 0.975 }, { 25, "A3", 0.606 },
        { 2, "B3", 0 }, { 5, "B3", 0 }, { 6, "B3", 0.030 }, { 10, "B3", 0.284 }, { 25, "B3", 0.565 },
        { 2, "B4", 3.267 }, { 5, "B4", 2.089 }, { 10, "B4", 1.716 }, { 25, "B4", 1.435 },
        { 2, "D3", 0 }, { 6, "D3", 0 }, { 7, "D3", 0.076 }, { 10, "D3", 0.223 }, { 25, "D3", 0.459 },
        { 2, "D4", 3.267 }, { 5, "D4", 2.115 }, { 10, "D4", 1.777 }, { 25, "D4", 1.541 },
    };

    [Theory]
    [MemberData(nameof(Table))]
    public void Tabulated_constants(int size, string name, double printed)
    {
        ControlChart chart = ControlChart.ForSubgroupsOf(size);
        double computed = name switch
        {
            "A2" => chart.A2,
            "A3" => chart.A3,
            "B3" => chart.B3,
            "B4" => chart.B4,
            "D3" => chart.D3,
            _ => chart.D4,
        };

        // The table itself was computed from rounded d2 and d3: one unit of the last digit.
        Assert.True(Math.Abs(computed - printed) <= 0.001 + 1e-9, $"{name} for {size}: {computed} against {printed}");
    }

    /// <summary>1 − c4 by the gamma function with 25 digits in another language (mpmath): it decides B3, B4 and the degrees of freedom of large subgroups.</summary>
    [Theory]
    [InlineData(1, 0.20211543919713464)]
    [InlineData(1.5, 0.14590406174589562)]
    [InlineData(4, 0.060014397013374812)]
    [InlineData(20.3, 0.01223484268839104)]
    [InlineData(59, 0.0042281215470429116)]
    [InlineData(61, 0.0040897910777428121)]
    [InlineData(999, 0.00025021889848679679)]
    [InlineData(12345.6, 2.0249924546195648e-5)]
    [InlineData(1e6, 2.4999996874998647e-7)]
    public void What_c4_lacks_of_one_keeps_its_digits(double freedom, double lacking) =>
        Close.To(lacking, 1 - ControlChart.C4Of(freedom), 2e-15, scale: 1);

    [Fact]
    public void Ranges_of_small_subgroups_have_closed_forms()
    {
        double pi = Math.PI, root = Math.Sqrt(pi);
        AssertRange(2, 2 / root, Math.Sqrt(2 - 4 / pi));
        AssertRange(3, 3 / root, Math.Sqrt(2 + 3 * Math.Sqrt(3) / pi - 9 / pi));
        Close.To(3 / root * (1 + 2 / pi * Math.Asin(1.0 / 3)), ControlChart.ForSubgroupsOf(4).RangeMean, 1e-13);
        Close.To(5 / root * (0.5 + 3 / pi * Math.Asin(1.0 / 3)), ControlChart.ForSubgroupsOf(5).RangeMean, 1e-13);
    }

    [Theory]
    [InlineData(6)]
    [InlineData(25)]
    [InlineData(400)]
    [InlineData(1000)]
    public void Mean_range_by_its_single_integral(int size)
    {
        // ∫[1 − Φⁿ − (1 − Φ)ⁿ]dx by the trapezoidal rule, which is spectral for such a curve.
        double sum = 0;
        const double Step = 1 / 64.0;
        for (double x = -12; x <= 12; x += Step) sum += 1 - Math.Pow(Normal.CDF(0, 1, x), size) - Math.Pow(Normal.CDF(0, 1, -x), size);
        Close.To(sum * Step, ControlChart.ForSubgroupsOf(size).RangeMean, 1e-12);
    }

    [Theory]
    [InlineData(4)]
    [InlineData(9)]
    public void Scatter_of_the_range_by_simulation(int size)
    {
        const int Draws = 400_000;
        var random = new Random(3);
        double[] draw = new double[size];
        double sum = 0, squares = 0;
        for (int i = 0; i < Draws; i++)
        {
            Normal.Samples(random, draw, 0, 1);
            double range = draw.Max() - draw.Min();
            sum += range;
            squares += range * range;
        }

        ControlChart chart = ControlChart.ForSubgroupsOf(size);
        double mean = sum / Draws, deviation = Math.Sqrt(squares / Draws - mean * mean);
        Assert.InRange((mean - chart.RangeMean) / (chart.RangeDeviation / Math.Sqrt(Draws)), -4, 4);
        Assert.InRange(deviation / chart.RangeDeviation, 1 - 4 / Math.Sqrt(2.0 * Draws) * 1.3, 1 + 4 / Math.Sqrt(2.0 * Draws) * 1.3);
    }

    [Fact]
    public void Mean_deviation_by_recursion()
    {
        // c4(n) c4(n − 1) = √((n − 2)/(n − 1)), from c4(2) = √(2/π): no gamma function.
        double c4 = Math.Sqrt(2 / Math.PI);
        for (int n = 2; n <= 1000; n++)
        {
            if (n > 2) c4 = Math.Sqrt((n - 2.0) / (n - 1)) / c4;
            if (n is < 40 or 1000) Close.To(c4, ControlChart.ForSubgroupsOf(n).C4, 2e-12);
        }
    }

    [Fact]
    public void Limits_are_ordered_and_close_in()
    {
        ControlChart[] charts = [.. new[] { 2, 3, 8, 30, 300 }.Select(ControlChart.ForSubgroupsOf)];
        Assert.All(charts, chart => Assert.True(chart.D3 < 1 && chart.D4 > 1 && chart.B3 < 1 && chart.B4 > 1 && chart.C4 < 1));
        for (int i = 1; i < charts.Length; i++)
        {
            Assert.True(charts[i].RangeMean > charts[i - 1].RangeMean && charts[i].A2 < charts[i - 1].A2 && charts[i].B4 < charts[i - 1].B4);
        }
    }

    [Fact]
    public void Text_is_invariant() => CommaCulture.Run(() => Assert.StartsWith(
        "subgroups of 5: c4 0.9400, d2 2.326, d3 0.864, A2 0.577", ControlChart.ForSubgroupsOf(5).ToString(), StringComparison.Ordinal));

    private static void AssertRange(int size, double mean, double deviation)
    {
        ControlChart chart = ControlChart.ForSubgroupsOf(size);
        Close.To(mean, chart.RangeMean, 1e-13);
        Close.To(deviation, chart.RangeDeviation, 1e-12);
        Close.To(Math.Sqrt(2.0 / (size - 1)) * SpecialFunctions.Gamma(size / 2.0) / SpecialFunctions.Gamma((size - 1) / 2.0), chart.C4, 1e-13);
    }
}
