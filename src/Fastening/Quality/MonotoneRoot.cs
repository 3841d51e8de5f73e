using MathNet.Numerics.RootFinding;

namespace Fastening.Quality;

/// <summary>The root of a monotone function, found outwards from a guess.</summary>
internal static class MonotoneRoot
{
    private const double Accuracy = 1e-15;
    private const int Iterations = 200;
    private const double Furthest = 1e100;

    /// <param name="rising">A function that rises from below zero to above it.</param>
    /// <param name="guess">A point near the root.</param>
    /// <param name="step">A first step, which is doubled until the root is between two points.</param>
    public static double Of(Func<double, double> rising, double guess, double step)
    {
        double low = guess, high = guess;
        for (double reach = step; reach < Furthest && rising(low) > 0; reach *= 2) low -= reach;
        for (double reach = step; reach < Furthest && rising(high) < 0; reach *= 2) high += reach;

        // The method also says no when it has come down to neighbouring doubles; the root that it then holds is the answer.
        Brent.TryFindRoot(rising, low, high, Accuracy, Iterations, out double root);
        return root;
    }
}
