using Fastening.Internals;
using MathNet.Numerics.Distributions;

namespace Fastening.Quality;

/// <summary>Draws values of all inputs of a budget, a column each: independent ones by their distribution, correlated ones through a Gaussian copula.</summary>
internal sealed class InputSampler
{
    /// <summary>Draws at a time: the columns of a usual budget stay in the first-level cache.</summary>
    public const int Rows = 256;

    private readonly UncertaintyContribution[] _inputs;
    private readonly int[] _independent;
    private readonly int[] _correlated;
    private readonly double[,] _correlatedRoot;
    private readonly (int[] Places, double[,] Root)[] _joint;

    public InputSampler(UncertaintyBudget budget)
    {
        _inputs = budget.InputArray;
        int[] all = [.. Enumerable.Range(0, _inputs.Length)];
        _correlated = [.. all.Where(budget.Correlations.IsStated)];
        if (Array.Find(_inputs, input => input is { WidthDoubt: > 0, Distribution: not UncertaintyDistribution.Rectangular }) is { } doubtful
            && _correlated.Contains(Array.IndexOf(_inputs, doubtful)))
        {
            throw new InvalidOperationException(
                $"{doubtful.Name} is {doubtful.Shape} of doubtful width and correlated, which Monte Carlo does not draw; leave its degrees of freedom out, or state it as a rectangle.");
        }

        _independent = [.. all.Where(i => !budget.Correlations.IsStated(i) && _inputs[i].Joint is null)];
        _correlatedRoot = budget.Correlations.Root(_correlated)!;
        _joint = [.. all.Where(i => _inputs[i].Joint is not null).GroupBy(i => _inputs[i].Joint).Select(group =>
        {
            int[] places = [.. group];
            return (places, budget.Correlations.Root(places)!);
        })];
    }

    /// <summary>Fills every column whole, also where fewer draws are left: a longer run then begins with the draws of a shorter one.</summary>
    public void Fill(RandomStream random, double[] columns)
    {
        foreach (int i in _independent) Fill(random, _inputs[i], columns.AsSpan(i * Rows, Rows));
        if (_correlated.Length > 0) FillCorrelated(random, columns);
        foreach ((int[] places, double[,] root) in _joint) FillJoint(random, places, root, columns);
    }

    private static void Fill(RandomStream random, UncertaintyContribution input, Span<double> column)
    {
        double middle = input.Value, u = input.DrawnScale, a = input.HalfWidth, flat = input.FlatShare, freedom = input.TailFreedom;
        switch (input.Distribution)
        {
            case UncertaintyDistribution.Normal:
                random.FillNormal(column, middle, u);
                break;
            case UncertaintyDistribution.Rectangular:
                random.FillUniform(column, middle, a);
                break;
            case UncertaintyDistribution.Triangular:
                for (int i = 0; i < column.Length; i++) column[i] = middle + a * (random.Uniform() + random.Uniform() - 1);
                break;
            case UncertaintyDistribution.Trapezoidal:
                for (int i = 0; i < column.Length; i++)
                {
                    column[i] = middle + a * ((1 + flat) * (random.Uniform() - 0.5) + (1 - flat) * (random.Uniform() - 0.5));
                }

                break;
            case UncertaintyDistribution.Arcsine:
                for (int i = 0; i < column.Length; i++) column[i] = middle + a * Math.Cos(Math.PI * random.Uniform());
                break;
            default:
                random.FillNormal(column, 0, 1);
                for (int i = 0; i < column.Length; i++) column[i] = middle + u * column[i] / Math.Sqrt(random.ChiSquareOverFreedom(freedom));
                break;
        }

        if (input.WidthDoubt > 0) Widen(random, column, middle, input.WidthDoubt);
    }

    /// <summary>The limits a ± d as JCGM 101:2008 §6.4.3.4 (from memory) draws them about a middle that stands; all shapes scale with them.</summary>
    private static void Widen(RandomStream random, Span<double> column, double middle, double doubt)
    {
        for (int i = 0; i < column.Length; i++) column[i] = middle + (column[i] - middle) * (1 + doubt * (2 * random.Uniform() - 1));
    }

    private void FillCorrelated(RandomStream random, double[] columns)
    {
        foreach (int place in _correlated) random.FillNormal(columns.AsSpan(place * Rows, Rows), 0, 1);

        Mix(_correlated, _correlatedRoot, columns);
        foreach (int place in _correlated)
        {
            UncertaintyContribution input = _inputs[place];
            Span<double> column = columns.AsSpan(place * Rows, Rows);
            for (int row = 0; row < Rows; row++) column[row] = input.Value + FromNormal(input, column[row]);
        }
    }

    private void FillJoint(RandomStream random, int[] places, double[,] root, double[] columns)
    {
        foreach (int place in places) random.FillNormal(columns.AsSpan(place * Rows, Rows), 0, 1);

        Mix(places, root, columns);
        for (int row = 0; row < Rows; row++)
        {
            double spread = 1 / Math.Sqrt(random.ChiSquareOverFreedom(_inputs[places[0]].DegreesOfFreedom));
            foreach (int place in places)
            {
                ref double value = ref columns[place * Rows + row];
                value = _inputs[place].Value + _inputs[place].StandardUncertainty * spread * value;
            }
        }
    }

    /// <summary>Times the lower triangle, the last input first so that each still finds the unmixed values before it.</summary>
    private static void Mix(int[] places, double[,] root, double[] columns)
    {
        for (int i = places.Length - 1; i >= 0; i--)
        {
            for (int row = 0; row < Rows; row++)
            {
                double sum = 0;
                for (int j = 0; j <= i; j++) sum += root[i, j] * columns[places[j] * Rows + row];
                columns[places[i] * Rows + row] = sum;
            }
        }
    }

    /// <summary>The deviation from the best value that has the same probability below it as a standard normal number.</summary>
    private static double FromNormal(UncertaintyContribution input, double normal)
    {
        if (input.Distribution is UncertaintyDistribution.Normal) return input.StandardUncertainty * normal;
        if (input.Distribution is UncertaintyDistribution.StudentByScale or UncertaintyDistribution.StudentByStandardDeviation or UncertaintyDistribution.Readings)
        {
            return Math.Sign(normal) * input.DrawnScale * StudentCurve.FromTail(NormalCurve.Below(-Math.Abs(normal)), input.TailFreedom);
        }

        if (input.WidthDoubt > 0) return Math.Sign(normal) * input.HalfWidth * CurvilinearTrapezoid.FromTail(NormalCurve.Below(-Math.Abs(normal)), input.WidthDoubt);
        double p = Math.Min(Math.Max(Normal.CDF(0, 1, normal), double.Epsilon), 1 - 1e-16);
        return input.Distribution switch
        {
            UncertaintyDistribution.Rectangular => input.HalfWidth * (2 * p - 1),
            UncertaintyDistribution.Arcsine => -input.HalfWidth * Math.Cos(Math.PI * p),
            _ => input.HalfWidth * TrapezoidQuantile(input.FlatShare, p),
        };
    }

    /// <summary>Quantile of the trapezoid on −1 to 1 whose flat top is from −β to β.</summary>
    private static double TrapezoidQuantile(double flat, double p)
    {
        if (p > 0.5) return -TrapezoidQuantile(flat, 1 - p);
        double slope = (1 - flat) / (2 * (1 + flat));
        return p < slope ? Math.Sqrt(2 * p * (1 - flat * flat)) - 1 : p * (1 + flat) - 1 + (1 - flat) / 2;
    }
}
