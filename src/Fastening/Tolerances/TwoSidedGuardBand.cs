using MathNet.Numerics.RootFinding;

namespace Fastening.Internals;

/// <summary>
/// The guard band w at which a reading on the acceptance limit conforms with a given probability, both limits counted:
/// Φ(w/u) − Φ((w − T)/u) = p, T being the full width of the window (derived).
/// </summary>
internal sealed class TwoSidedGuardBand(double probability)
{
    private const double NoOtherTail = 9;
    private const double Residual = 1e-12;

    /// <summary>The band in units of u where the other limit is far away.</summary>
    public double OneSided { get; } = NormalCurve.Quantile(probability);

    /// <summary>The band in the unit of the window; NaN when even the middle of the window conforms with less than the probability.</summary>
    public double For(double width, double u)
    {
        double inUncertainties = width / u;
        return inUncertainties > OneSided + NoOtherTail ? OneSided * u : Solve(inUncertainties) * u;
    }

    /// <summary>The probability grows from the limit to the middle, where it is greatest.</summary>
    private double Solve(double width)
    {
        double middle = width / 2;
        double Excess(double band) => NormalCurve.Between(band - width, band) - probability;
        double most = Excess(middle);
        if (most < 0) return double.NaN;
        if (most <= Residual) return middle;
        return Brent.TryFindRoot(Excess, 0, middle, 1e-14, 100, out double root) && Math.Abs(Excess(root)) <= Residual
            ? root
            : throw new ArithmeticException(Print.Text($"no guard band found for a window of {width:R} u"));
    }
}
