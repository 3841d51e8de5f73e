namespace Fastening.Benchmarks;

/// <summary>What a careful engineer writes for one joint without a library: no units, no refusals, no work shown, the worst safety alone.</summary>
internal sealed record HandWrittenJoint(double Bolt, double Parts, double StressArea, double StressDiameter, double ThreadArm, double Yield)
{
    public static HandWrittenJoint Like(Joint joint, BoltStrength strength) => new(
        joint.Bolt.MetersPerNewton, joint.Parts.MetersPerNewton, joint.Bolt.Thread.StressArea.SquareMeters, joint.Bolt.Thread.StressDiameter.Meters,
        Job.Model.BreakdownAt(UnitsNet.Torque.FromNewtonMeters(100)) is var parts
            ? (parts.PitchTorque + parts.ThreadFrictionTorque).NewtonMeters / Job.Model.PreloadAt(UnitsNet.Torque.FromNewtonMeters(100)).Newtons
            : 0,
        strength.YieldStrength.Pascals);

    public double LeastSafety()
    {
        double total = Bolt + Parts, lowest = 95_000 / 1.6 - 21.5e-6 / total;
        double grown = (0.060 * 11.5e-6 * 40 - (0.004 * 11.5e-6 * 45 + 0.026 * 23.4e-6 * 60 + 0.030 * 10.8e-6 * 50)) / total;
        double low = 0.3 * Parts / total, high = 0.7 * Parts / total;
        double keptLow = lowest - Math.Max(grown, 0), keptHigh = 95_000 - Math.Min(grown, 0);
        double clamp = Math.Max(keptLow - (1 - low) * 18_000, 0), bolt = Math.Max(keptHigh + high * 18_000, 18_000);
        double slip = 3000 / 0.14 + 10 / (0.016 * 0.14);
        double sigma = bolt / StressArea, tau = 0.5 * ThreadArm * 95_000 / (Math.PI * StressDiameter * StressDiameter * StressDiameter / 12);
        double least = Math.Min(clamp / 6000, clamp / slip);
        least = Math.Min(least, keptLow / (1 - low) / 18_000);
        least = Math.Min(least, Yield / Math.Sqrt(sigma * sigma + 3 * tau * tau));
        least = Math.Min(least, 45e6 / (high * 21_000 / (2 * StressArea)));
        return Math.Min(least, 760e6 / (bolt / (Math.PI / 4 * (22.5e-3 * 22.5e-3 - 17.5e-3 * 17.5e-3))));
    }
}
