using System.Collections.Concurrent;
using Fastening.Equations;
using Fastening.Internals;

namespace Fastening.Quality;

/// <summary>Constants of control charts for subgroups of any size, computed and not looked up.</summary>
/// <remarks>
/// c4 in closed form; d2 and d3, mean and standard deviation of the range of a normal sample, by quadrature (Tippett 1925); the rest follows,
/// equations chart.*. The constants d2 and d3 are called <see cref="RangeMean"/> and <see cref="RangeDeviation"/>, not to be confused with D3 and D4.
/// </remarks>
/// <example><code>ControlChart chart = ControlChart.ForSubgroupsOf(5);
/// double a2 = chart.A2;     // 0.577</code></example>
public sealed class ControlChart
{
    private const double SeriesFrom = 30;

    // Of 1/x and its powers; OEIS A143503/A061549.
    private static readonly double[] GammaRatio =
        [-1.0 / 8, 1.0 / 128, 5.0 / 1024, -21.0 / 32768, -399.0 / 262144, 869.0 / 4194304, 39325.0 / 33554432];

    private static readonly ConcurrentDictionary<int, ControlChart> Known = new();

    private ControlChart(int subgroupSize)
    {
        SubgroupSize = subgroupSize;
        C4 = C4Of(subgroupSize - 1);
        (RangeMean, RangeDeviation) = RangeMoments(subgroupSize);
    }

    /// <summary>Readings in a subgroup.</summary>
    public int SubgroupSize { get; }

    /// <summary>c4: mean of the standard deviation of a subgroup over σ.</summary>
    public double C4 { get; }

    /// <summary>d2: mean of the range of a subgroup over σ.</summary>
    public double RangeMean { get; }

    /// <summary>d3: standard deviation of the range of a subgroup over σ.</summary>
    public double RangeDeviation { get; }

    /// <summary>A2: half width of the chart of means over the mean range.</summary>
    public double A2 => ChartEquations.MeanLimitByRange(RangeMean, SubgroupSize);

    /// <summary>A3: half width of the chart of means over the mean standard deviation.</summary>
    public double A3 => ChartEquations.MeanLimitByDeviation(C4, SubgroupSize);

    /// <summary>B3: lower limit of the chart of standard deviations over their mean.</summary>
    public double B3 => ChartEquations.DeviationLowerLimit(C4);

    /// <summary>B4: upper limit of the chart of standard deviations over their mean.</summary>
    public double B4 => ChartEquations.DeviationUpperLimit(C4);

    /// <summary>D3: lower limit of the chart of ranges over the mean range.</summary>
    public double D3 => ChartEquations.RangeLowerLimit(RangeMean, RangeDeviation);

    /// <summary>D4: upper limit of the chart of ranges over the mean range.</summary>
    public double D4 => ChartEquations.RangeUpperLimit(RangeMean, RangeDeviation);

    /// <summary>The constants for a size of the subgroups.</summary>
    /// <param name="subgroupSize">Readings in a subgroup, 2 to 1000.</param>
    /// <returns>The constants.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="subgroupSize"/> is outside its domain.</exception>
    /// <example><code>ControlChart chart = ControlChart.ForSubgroupsOf(4);     // A2 is 0.729, D4 is 2.282</code></example>
    public static ControlChart ForSubgroupsOf(int subgroupSize)
    {
        Domains.SubgroupSize.Check(subgroupSize);
        return Known.GetOrAdd(subgroupSize, size => new ControlChart(size));
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"subgroups of {SubgroupSize}: c4 {C4:0.0000}, d2 {RangeMean:0.000}, d3 {RangeDeviation:0.000}, A2 {A2:0.000}, A3 {A3:0.000}, B3 {B3:0.000}, B4 {B4:0.000}, D3 {D3:0.000}, D4 {D4:0.000}");

    /// <summary>c4 for any degrees of freedom: √(2/ν) Γ((ν + 1)/2)/Γ(ν/2).</summary>
    /// <remarks>
    /// From x = 30 on by the series of Γ(x + ½)/(Γ(x) √x) in 1/x, before that by Γ(x + 1) = x Γ(x): two logarithms of gamma functions would leave
    /// nothing of 1 − c4 when the subgroup is large.
    /// </remarks>
    internal static double C4Of(double degreesOfFreedom)
    {
        double x = degreesOfFreedom / 2, ratio = 1;
        for (; x < SeriesFrom; x++) ratio *= x / (x + 0.5);
        double sum = 0;
        for (int n = GammaRatio.Length - 1; n >= 0; n--) sum = (sum + GammaRatio[n]) / x;
        return ratio * Math.Sqrt(2 * x / degreesOfFreedom) * (1 + sum);
    }

    /// <summary>Mean and standard deviation of the range from its tail: ∫P(W > w)dw and ∫2w P(W > w)dw.</summary>
    private static (double Mean, double Deviation) RangeMoments(int size)
    {
        // The least of many readings lies in a narrower band than that of a few.
        int panels = size > 30 ? 48 : 16;
        (double[] starts, double[] weights) = GaussPanels.Over(-9, 9, panels);
        (double[] ranges, double[] steps) = GaussPanels.Over(0, 20, panels / 2 + 8);
        double mean = 0, square = 0;
        for (int i = 0; i < ranges.Length; i++)
        {
            // P(W ≤ w): the least reading at x, the others between x and x + w.
            double inside = 0;
            for (int j = 0; j < starts.Length; j++)
            {
                double x = starts[j];
                inside += weights[j] * NormalCurve.Density(x) * Math.Pow(NormalCurve.Between(x, x + ranges[i]), size - 1);
            }

            double tail = 1 - size * inside;
            mean += steps[i] * tail;
            square += steps[i] * 2 * ranges[i] * tail;
        }

        return (mean, Math.Sqrt(square - mean * mean));
    }
}
