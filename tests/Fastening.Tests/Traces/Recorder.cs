namespace Fastening.Tests.Traces;

/// <summary>What a measuring chain makes of a curve: sampling with jitter, noise, quantisation, stick–slip, the tail after shut-off.</summary>
internal sealed record Recorder
{
    /// <summary>Standard deviation of the torque as a share of the peak torque, the same all along.</summary>
    public double Noise { get; init; } = 0.01;

    public double AngleResolution { get; init; } = 0.1;

    public double TorqueResolutionShare { get; init; } = 1e-4;

    public double SamplesPerDegree { get; init; } = 10;

    public double DegreesPerSecond { get; init; } = 120;

    /// <summary>Sampling interval varies by this share to either side.</summary>
    public double Jitter { get; init; } = 0.4;

    /// <summary>Peak to peak of stick–slip on the rise, as a share of the peak torque.</summary>
    public double StickSlip { get; init; }

    public double StickSlipPeriod { get; init; } = 1.5;

    /// <summary>Degrees by which the angle recoils after shut-off; 0 for no tail.</summary>
    public double Recoil { get; init; } = 3;

    /// <summary>Chance that a sample carries the time stamp of the one before.</summary>
    public double RepeatedStamps { get; init; } = 0.002;

    public static Recorder Random(Dice dice) => new()
    {
        SamplesPerDegree = dice.Uniform(6, 20),
        DegreesPerSecond = dice.Uniform(20, 240),
        StickSlip = dice.Chance(0.25) ? dice.Uniform(0.03, 0.06) : 0,
        StickSlipPeriod = dice.Uniform(0.8, 2),
        Recoil = dice.Chance(0.9) ? dice.Uniform(2, 4) : 0,
    };

    public TighteningTrace Record(KnownCurve curve, Dice dice)
    {
        List<double> times = [], angles = [], torques = [];
        double peak = curve.Peak, interval = 1 / (SamplesPerDegree * DegreesPerSecond), time = 0, angle = 0;
        while (angle < curve.End)
        {
            Add(angle, curve.TorqueAt(angle) + Ripple(angle, curve) * peak);
            double step = interval * (1 + dice.Uniform(-Jitter, Jitter));
            time += dice.Chance(RepeatedStamps) ? 0 : step;
            angle += step * DegreesPerSecond;
        }

        Add(curve.End, peak);
        int tail = Recoil > 0 ? 80 : 0;
        for (int i = 1; i <= tail; i++)
        {
            time += 0.001;
            Add(curve.End - Recoil * Math.Min(i / 40.0, 1), peak * Math.Pow(0.85, i));
        }

        return TighteningTrace.FromSamples(times.ToArray(), angles.ToArray(), torques.ToArray());

        void Add(double trueAngle, double trueTorque)
        {
            times.Add(Math.Round(time, 6));
            angles.Add(Rounded(trueAngle, AngleResolution));
            torques.Add(Rounded(trueTorque + Noise * peak * dice.Normal(), TorqueResolutionShare * peak));
        }
    }

    /// <summary>The torque climbs while the joint sticks and falls when it slips: a saw-tooth, four parts up, one down.</summary>
    private double Ripple(double angle, KnownCurve curve)
    {
        if (StickSlip == 0 || angle < curve.RunDown) return 0;
        double phase = angle / StickSlipPeriod % 1;
        return StickSlip * ((phase < 0.8 ? phase / 0.8 : (1 - phase) / 0.2) - 0.5);
    }

    private static double Rounded(double value, double resolution) => resolution > 0 ? Math.Round(value / resolution) * resolution : value;
}
