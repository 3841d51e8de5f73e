namespace Fastening.Tests.Procedures;

/// <summary>What was really done to one bolt since it was last loosened. It knows nothing of programs, orders and verdicts.</summary>
public sealed record RealBolt(double TurnedDegrees, double PeakNewtonMeters, bool IsSnug, bool WasTurnedLoose)
{
    private const double LeastSnug = 57, MostSnug = 63;

    public static RealBolt Loose { get; } = new(0, 0, false, false);

    /// <summary>
    /// A pull: the highest torque stays, and a turn adds to those before. Turning at a torque that a loose nut or the snugging itself has is no turn; one
    /// of unknown torque is.
    /// </summary>
    public RealBolt Pulled(double? newtonMeters, double? degrees)
    {
        double turn = newtonMeters is null or > MostSnug ? degrees ?? 0 : 0;
        return new(TurnedDegrees + turn, Math.Max(PeakNewtonMeters, newtonMeters ?? 0), IsSnug || newtonMeters >= LeastSnug, WasTurnedLoose || turn > 0 && !IsSnug);
    }
}
