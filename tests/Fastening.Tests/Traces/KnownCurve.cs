namespace Fastening.Tests.Traces;

/// <summary>
/// A tightening curve of which everything is known: start-up ramp, run-down at the prevailing torque, a toe in which the slope grows linearly to
/// that of the elastic line, the line, and, if it yields, a slope that falls linearly to a plateau's. In closed form, from the definitions.
/// </summary>
internal sealed record KnownCurve
{
    public double Prevailing { get; init; }

    public double Slope { get; init; }

    /// <summary>Rotation over which the torque starts up from nothing.</summary>
    public double StartUp { get; init; }

    /// <summary>Rotation of the run-down, start-up included.</summary>
    public double RunDown { get; init; }

    public double Toe { get; init; }

    /// <summary>Rotation of the straight part.</summary>
    public double Elastic { get; init; }

    /// <summary>Rotation over which the slope falls; 0 when the curve does not yield.</summary>
    public double Knee { get; init; }

    /// <summary>Slope beyond the knee, as a share of the elastic slope.</summary>
    public double PlateauShare { get; init; }

    public double Plateau { get; init; }

    public bool Yields => Knee > 0;

    public double End => RunDown + Toe + Elastic + Knee + Plateau;

    /// <summary>Where the elastic line meets the prevailing torque: half-way along a toe whose slope grows linearly.</summary>
    public double Snug => RunDown + Toe / 2;

    public double YieldOnset(double share) => RunDown + Toe + Elastic + Knee * (1 - share) / (1 - PlateauShare);

    public double Peak => TorqueAt(End);

    public double TorqueAt(double angle)
    {
        if (angle < StartUp) return Prevailing * Math.Max(angle, 0) / StartUp;
        double x = angle - RunDown;
        if (x <= 0) return Prevailing;
        if (x <= Toe) return Prevailing + Slope * x * x / (2 * Toe);
        double line = Prevailing + Slope * (x - Toe / 2);
        double past = x - Toe - Elastic;
        if (!Yields || past <= 0) return line;
        double inKnee = Math.Min(past, Knee);
        double lost = Slope * (1 - PlateauShare) * (inKnee * inKnee / (2 * Knee) + Math.Max(past - Knee, 0));
        return line - lost;
    }

    public static KnownCurve Random(Dice dice)
    {
        double slope = dice.LogUniform(0.05, 5), elastic = dice.Uniform(40, 80);
        bool yields = dice.Chance(0.5);
        return new KnownCurve
        {
            Slope = slope,
            Elastic = elastic,
            Prevailing = slope * elastic * dice.Uniform(0, 0.35),
            StartUp = dice.Uniform(1, 4),
            RunDown = dice.Uniform(60, 500),
            Toe = dice.Uniform(2, 12),
            Knee = yields ? dice.Uniform(2, 20) : 0,
            PlateauShare = dice.Uniform(0, 0.25),
            Plateau = yields ? dice.Uniform(12, 60) : 0,
        };
    }
}
