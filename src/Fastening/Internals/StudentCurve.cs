namespace Fastening.Internals;

/// <summary>
/// Student's t with any number of degrees of freedom from 1 on: tails by the regularised incomplete beta function, quantiles by Newton
/// on the logarithm of the tail against the logarithm of t, where the curve is concave and the steps cannot run away.
/// </summary>
internal static class StudentCurve
{
    private const double LargestLogT = 700;
    private const int Steps = 60;
    private const int Terms = 20_000;

    /// <summary>P(T > t) for t ≥ 0, with all its digits however far out.</summary>
    public static double Above(double t, double freedom) =>
        t > 0 ? Math.Exp(LogAbove(Math.Log(t), freedom, out _)) : 0.5;

    /// <summary>The t above which a share s of the curve lies, 0 &lt; s ≤ ½: the small tail is given, so that nothing cancels next to a share of 1.</summary>
    public static double FromTail(double tail, double freedom)
    {
        if (tail > 0.25) return FromCentre(0.5 - tail, freedom);
        double z = NormalCurve.Quantile(tail), shrink = (8 * freedom + 3) / (8 * freedom + 1);

        // Wallace's approximation (1959) to begin with.
        double spread = z * z * shrink * shrink / freedom;
        double start = 0.5 * (Math.Log(freedom) + (spread > 30 ? spread : Math.Log(Math.Exp(spread) - 1)));
        double logT = Math.Min(spread > 1e-6 ? start : Math.Log(-z), LargestLogT), target = Math.Log(tail);
        for (int step = 0; step < Steps; step++)
        {
            double change = (LogAbove(logT, freedom, out double slope) - target) / slope;
            logT = Math.Min(logT - change, LargestLogT);
            if (Math.Abs(change) < 1e-11) break;
        }

        return Math.Exp(logT);
    }

    /// <summary>The t with P(|T| &lt; t) = p: the coverage factor.</summary>
    public static double FromCoverage(double coverage, double freedom) =>
        coverage < 0.5 ? FromCentre(coverage / 2, freedom) : FromTail((1 - coverage) / 2, freedom);

    /// <summary>The t with P(0 &lt; T &lt; t) = a, a ≤ ¼.</summary>
    private static double FromCentre(double centre, double freedom)
    {
        if (centre <= 0) return 0;
        double logT = Math.Log(centre / PeakDensity(freedom)), target = Math.Log(centre);
        for (int step = 0; step < Steps; step++)
        {
            double t = Math.Exp(logT), series = CentreSeries(t, freedom);
            double change = (Math.Log(t * Density(t, freedom) * series) - target) * series;
            logT -= change;
            if (Math.Abs(change) < 1e-11) break;
        }

        return Math.Exp(logT);
    }

    /// <summary>ln P(T > t), and its slope against ln t.</summary>
    private static double LogAbove(double logT, double freedom, out double slope)
    {
        double t = Math.Exp(logT), square = t * t;
        if (square * (freedom + 2) <= 3 * freedom)
        {
            double density = t * Density(t, freedom), tail = 0.5 - density * CentreSeries(t, freedom);
            slope = -density / tail;
            return Math.Log(tail);
        }

        // t times the density, in logarithms: neither t² nor the density need be in the range of doubles.
        double ratio = logT - 0.5 * Math.Log(freedom);
        double growth = ratio > 20 ? 2 * ratio : LogOnePlus(square / freedom);
        double logDensity = logT + Math.Log(PeakDensity(freedom)) - (freedom + 1) / 2 * growth;
        double fraction = TailFraction(logT, freedom);
        slope = -2 * fraction;
        return logDensity - Math.Log(2 * fraction);
    }

    private static double Density(double t, double freedom) => PeakDensity(freedom) * Math.Exp(-(freedom + 1) / 2 * LogOnePlus(t * t / freedom));

    /// <summary>Γ((ν + 1)/2)/(√(ν π) Γ(ν/2)): by the series of ln Γ(a + ½) − ln Γ(a) far out, and from there back.</summary>
    private static double PeakDensity(double freedom)
    {
        double a = freedom / 2, back = 1;
        for (; a < 16; a++) back *= a / (a + 0.5);
        double b = 1 / (a * a);
        double log = -(1 - b * (1.0 / 24 - b * (1.0 / 80 - b * (17.0 / 1792 - b * (31.0 / 2304 - b * 691.0 / 22528))))) / (8 * a);
        return back * Math.Sqrt(a / (freedom * Math.PI)) * Math.Exp(log);
    }

    /// <summary>P(0 &lt; T &lt; t) over t times the density: the hypergeometric series of the incomplete beta function, all terms positive.</summary>
    private static double CentreSeries(double t, double freedom)
    {
        double y = t * t / (freedom + t * t), term = 1, sum = 1;
        for (int n = 0; n < Terms && term > 1e-17 * sum; n++)
        {
            term *= (freedom + 1 + 2 * n) / (3 + 2 * n) * y;
            sum += term;
        }

        return sum;
    }

    /// <summary>The continued fraction of I_x(ν/2, ½) of Didonato and Morris (1992), summed by Lentz's method; it has no difference of large numbers.</summary>
    private static double TailFraction(double logT, double freedom)
    {
        double a = freedom / 2, odds = Math.Exp(2 * logT) / freedom;
        double x = 1 / (1 + odds), y = double.IsInfinity(odds) ? 1 : odds * x;
        double excess = a * y - x / 2;
        double first = a / (a + 1) * (excess + 1), value = first, c = first, d = 0;
        for (int n = 1; n < Terms; n++)
        {
            double s = a + 2 * n;
            double numerator = (a + n - 1) * (a + n - 0.5) * n * (0.5 - n) * x * x / ((s - 1) * (s - 1));
            double denominator = n + n * (0.5 - n) * x / (s - 1) + (a + n) * (excess + 1 + n * (1 + y)) / (s + 1);
            d = 1 / (denominator + numerator * d);
            c = denominator + numerator / c;
            double factor = c * d;
            value *= factor;
            if (Math.Abs(factor - 1) < 4e-16) break;
        }

        return value;
    }

    /// <summary>ln(1 + x) without the loss of 1 + x (Kahan), at any size.</summary>
    private static double LogOnePlus(double x)
    {
        double sum = 1 + x;
        return sum == 1 ? x : Math.Log(sum) * (x / (sum - 1));
    }
}
