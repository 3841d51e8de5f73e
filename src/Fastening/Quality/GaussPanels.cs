using MathNet.Numerics.Integration;

namespace Fastening.Quality;

/// <summary>Gauss–Legendre over equal panels: for smooth functions whose width is known, to the last digits.</summary>
internal static class GaussPanels
{
    private const int Order = 16;

    private static readonly double[] Abscissas = Rule().Abscissas;
    private static readonly double[] Weights = Rule().Weights;

    public static double Integrate(Func<double, double> function, double low, double high, int panels)
    {
        double sum = 0;
        Visit(low, high, panels, (x, weight) => sum += weight * function(x));
        return sum;
    }

    /// <summary>The nodes with their weights, for those that are used again and again.</summary>
    public static (double[] Nodes, double[] Weights) Over(double low, double high, int panels)
    {
        var nodes = new List<double>(panels * Order);
        var weights = new List<double>(panels * Order);
        Visit(low, high, panels, (x, weight) =>
        {
            nodes.Add(x);
            weights.Add(weight);
        });
        return ([.. nodes], [.. weights]);
    }

    private static void Visit(double low, double high, int panels, Action<double, double> visit)
    {
        double half = (high - low) / panels / 2;
        for (int panel = 0; panel < panels; panel++)
        {
            double middle = low + half * (2 * panel + 1);
            for (int i = 0; i < Order; i++) visit(middle + half * Abscissas[i], half * Weights[i]);
        }
    }

    private static GaussLegendreRule Rule() => new(-1, 1, Order);
}
