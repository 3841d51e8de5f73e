namespace Fastening.Tests.Wrenches;

/// <summary>
/// Torsion constant of a hexagon of unit width across flats by finite differences: an independent route to a tabulated constant. Prandtl's
/// stress function, ∇²ψ = −2 inside and 0 on the edge, by over-relaxation; where the edge is nearer than the grid step, the five-point star
/// takes the true distance (Shortley–Weller). J = 2∫ψ dA.
/// </summary>
internal static class PrandtlHexagon
{
    private static readonly (double X, double Y)[] Normals = [.. Enumerable.Range(0, 6).Select(k => (Math.Cos(k * Math.PI / 3), Math.Sin(k * Math.PI / 3)))];

    public static double TorsionConstant(int cells)
    {
        double h = 0.5 / cells;
        int half = (int)Math.Ceiling(1 / Math.Sqrt(3) / h) + 1, size = 2 * half + 1;
        double[,] psi = new double[size, size];
        (int I, int J, double[] Weights, double Source)[] stars =
        [
            .. from i in Enumerable.Range(1, size - 2)
               from j in Enumerable.Range(1, size - 2)
               where Inside((i - half) * h, (j - half) * h)
               select Star(i, j, half, h),
        ];
        double omega = 2 / (1 + Math.Sin(Math.PI / (2 * half)));
        for (int sweep = 0; sweep < 12 * half; sweep++)
        {
            foreach ((int i, int j, double[] w, double source) in stars)
            {
                double wanted = w[0] * psi[i + 1, j] + w[1] * psi[i - 1, j] + w[2] * psi[i, j + 1] + w[3] * psi[i, j - 1] + source;
                psi[i, j] += omega * (wanted - psi[i, j]);
            }
        }

        return 2 * h * h * psi.Cast<double>().Sum();
    }

    private static (int I, int J, double[] Weights, double Source) Star(int i, int j, int half, double h)
    {
        double x = (i - half) * h, y = (j - half) * h;
        double e = Arm(x, y, 1, 0, h), w = Arm(x, y, -1, 0, h), n = Arm(x, y, 0, 1, h), s = Arm(x, y, 0, -1, h);
        double centre = 2 / (e * w) + 2 / (n * s);

        // A neighbour cut off by the edge has ψ = 0, so its weight does not matter.
        return (i, j, [Weight(e, w), Weight(w, e), Weight(n, s), Weight(s, n)], 2 / centre);

        double Weight(double arm, double opposite) => arm < h ? 0 : 2 / (arm * (arm + opposite)) / centre;
    }

    private static bool Inside(double x, double y) => Normals.All(n => n.X * x + n.Y * y < 0.5 - 1e-12);

    /// <summary>Distance to the neighbour, or to the edge where that is nearer.</summary>
    private static double Arm(double x, double y, int dx, int dy, double h)
    {
        double arm = h;
        foreach ((double nx, double ny) in Normals)
        {
            double towards = nx * dx + ny * dy;
            if (towards > 1e-12) arm = Math.Min(arm, (0.5 - nx * x - ny * y) / towards);
        }

        return arm;
    }
}
