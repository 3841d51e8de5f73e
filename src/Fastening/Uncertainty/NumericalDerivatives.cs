namespace Fastening.Quality;

/// <summary>Central differences of the measurement function, refined by Richardson's extrapolation (Ridders 1982).</summary>
internal sealed class NumericalDerivatives(UncertaintyContribution[] inputs, Func<InputValues, double> function)
{
    private const int Levels = 10;

    private readonly double[] _point = Array.ConvertAll(inputs, input => input.Value);
    private readonly string[] _names = Array.ConvertAll(inputs, input => input.Name);

    public double Value() => function(new InputValues(_point, _names));

    /// <summary>∂f/∂x_i; not a number when the function has no values about the point.</summary>
    public double First(int i) => Extrapolate(Step(i), (h) => (At(i, h) - At(i, -h)) / (2 * h));

    /// <summary>∂²f/∂x_i∂x_j, times u_i u_j: differences over steps of the uncertainties.</summary>
    public double SecondPart(int i, int j)
    {
        double a = inputs[i].StandardUncertainty, b = inputs[j].StandardUncertainty;
        if (a == 0 || b == 0) return 0;
        double middle = Value();
        return Extrapolate(0.5, s => i == j
            ? (At(i, s * a) - 2 * middle + At(i, -s * a)) / (s * s)
            : (At(i, s * a, j, s * b) - At(i, s * a, j, -s * b) - At(i, -s * a, j, s * b) + At(i, -s * a, j, -s * b)) / (4 * s * s));
    }

    /// <summary>
    /// Differences over ever smaller steps, extrapolated to none. The answer is the entry of the table whose adjacent entries agree best;
    /// a step that leaves the function's domain is passed over.
    /// </summary>
    private static double Extrapolate(double step, Func<double, double> difference)
    {
        double best = double.NaN, leastError = double.PositiveInfinity;
        double[] previous = [];
        for (int level = 0; level < Levels; level++)
        {
            double first = difference(step);
            step /= 2;
            if (double.IsNaN(first) || double.IsInfinity(first))
            {
                previous = [];
                continue;
            }

            double[] row = new double[previous.Length + 1];
            row[0] = first;
            for (int k = 1; k < row.Length; k++)
            {
                double factor = Math.Pow(4, k);
                row[k] = (factor * row[k - 1] - previous[k - 1]) / (factor - 1);
                double error = Math.Max(Math.Abs(row[k] - row[k - 1]), Math.Abs(row[k] - previous[k - 1]));
                if (error < leastError) (best, leastError) = (row[k], error);
            }

            previous = row;
        }

        return best;
    }

    private double Step(int i)
    {
        double u = inputs[i].StandardUncertainty;
        return u > 0 ? u : Math.Max(Math.Abs(_point[i]), 1) * 1e-3;
    }

    private double At(int i, double stepOfI, int j = -1, double stepOfJ = 0)
    {
        double[] point = (double[])_point.Clone();
        point[i] += stepOfI;
        if (j >= 0) point[j] += stepOfJ;
        return function(new InputValues(point, _names));
    }
}
