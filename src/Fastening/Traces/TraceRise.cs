namespace Fastening;

/// <summary>The rise of a curve, from the run-down torque to the highest smoothed torque, and the falls in it.</summary>
internal readonly struct TraceRise
{
    public const double NoisesOfFall = 6;

    private readonly SmoothedCurve _curve;

    public TraceRise(SmoothedCurve curve, double running, int peak)
    {
        _curve = curve;
        Running = running;
        Highest = curve.Level(peak);
        Peak = peak;
    }

    public double Running { get; }

    public double Highest { get; }

    public int Peak { get; }

    public double Height => Highest - Running;

    /// <summary>The share of the rise that is made at a torque.</summary>
    public double ShareAt(double torque) => (torque - Running) / Height;

    /// <summary>A share of the rise, and not less than noise can make.</summary>
    public double Significant(double share) => Math.Max(share * Height, NoisesOfFall * _curve.Noise);

    /// <summary>The first step from one to another at which the mean over the quarter of a window behind it is lower by more than a limit than one before; −1 when there is none.</summary>
    public static int FirstFall(SmoothedCurve curve, int from, int to, double limit)
    {
        double highest = double.NegativeInfinity;
        for (int k = Math.Max(from, 0) + SmoothedCurve.Quarter; k <= Math.Min(to, curve.Steps); k++)
        {
            double mean = curve.Bins.Mean(k - SmoothedCurve.Quarter, k);
            if (mean > highest) highest = mean;
            else if (highest - mean > limit) return k;
        }

        return -1;
    }
}
