using Fastening.Equations;
using Fastening.Internals;

namespace Fastening.Quality;

/// <summary>Tolerance factors of a normal sample: exact ones by quadrature, approximate ones from their equations.</summary>
internal static class ToleranceFactors
{
    private const double Reach = 8.5;
    private const int Panels = 12;

    /// <summary>k √n is the γ-quantile of the noncentral t with n − 1 degrees of freedom and the shift z_p √n.</summary>
    public static double OneSided(int count, double share, double confidence)
    {
        double root = Math.Sqrt(count), quantile = NormalCurve.Quantile(share);
        double factor = MonotoneRoot.Of(k => NoncentralT.Below(k * root, count - 1, quantile * root) - confidence, quantile, 1 / root);
        return Math.Max(0, factor);
    }

    /// <summary>2∫₀^∞ φ(u) P[χ² > (n − 1) r(u/√n)²/k²] du = γ, where mean ± r holds the share p when the mean is off by u/√n.</summary>
    public static double TwoSided(int count, double share, double confidence)
    {
        (double[] nodes, double[] weights) = GaussPanels.Over(0, Reach, Panels);
        var squares = new double[nodes.Length];
        double centred = NormalCurve.Quantile((1 + share) / 2);
        for (int i = 0; i < nodes.Length; i++)
        {
            double off = nodes[i] / Math.Sqrt(count);
            double half = MonotoneRoot.Of(r => NormalCurve.Between(off - r, off + r) - share, centred, 0.25);
            squares[i] = (count - 1) * half * half;
            weights[i] *= 2 * NormalCurve.Density(nodes[i]);
        }

        double Missing(double factor)
        {
            double held = 0;
            for (int i = 0; i < squares.Length; i++) held += weights[i] * ChiSquaredTail.Above(squares[i] / (factor * factor), count - 1);
            return held - confidence;
        }

        // In the logarithm, which keeps the steps of the search above zero.
        return Math.Exp(MonotoneRoot.Of(log => Missing(Math.Exp(log)), Math.Log(Howe(count, share, confidence)), 0.02));
    }

    public static double Howe(int count, double share, double confidence) => ToleranceFactorEquations.HoweFactor(
        NormalCurve.Quantile((1 + share) / 2), count, ChiSquaredTail.Quantile(1 - confidence, count - 1));

    /// <summary>Null near the pole of the approximation: too few readings for the confidence.</summary>
    public static double? Natrella(int count, double share, double confidence)
    {
        double a = ToleranceFactorEquations.NatrellaA(NormalCurve.Quantile(confidence), count);
        double b = ToleranceFactorEquations.NatrellaB(NormalCurve.Quantile(share), NormalCurve.Quantile(confidence), count);
        return a >= Symbols.NatrellaA.Low ? ToleranceFactorEquations.NatrellaFactor(NormalCurve.Quantile(share), a, b) : null;
    }
}
