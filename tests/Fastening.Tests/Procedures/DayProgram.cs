using System.Collections.Concurrent;
using UnitsNet;

namespace Fastening.Tests.Procedures;

/// <summary>A program of the random days, the good pulls of its steps, and when a bolt is as the program wants it.</summary>
internal sealed record DayProgram(string Name, TighteningStep[] Steps, (double Torque, double Degrees)[] Good, double LeastTorque, double MostTorque, double LeastTurn, double MostTurn)
{
    public const double NoLimit = double.PositiveInfinity;

    public static readonly string[] Bolts = ["B1", "B2"];

    private readonly ConcurrentDictionary<TighteningOrder, TighteningProgram> _built = new();

    /// <summary>Tightened by a hand and seen by an eye: no torque is stated, and 60 N·m is what it came to.</summary>
    public bool SnugByEye => Name == "eye";

    public static DayProgram[] All { get; } =
    [
        new("torque", [By("full", 95, 105)], [(100, 40)], 95, 105, 0, NoLimit),
        new("passes", [By("half", 47, 53), By("full", 95, 105)], [(50, 10), (100, 40)], 95, 105, 0, NoLimit),
        new("turn", [By("snug", 57, 63), TighteningStep.ByRotation("turn", Newtons(55), Turned)], [(60, 0), (118, 130)], 57, NoLimit, 90, 180),
        new("eye", [new("snug", Criterion.FirmContact()), new("turn", Criterion.Turn(Turned))], [(60, 0), (118, 130)], 0, NoLimit, 90, 180),
        new("both", [By("snug", 57, 63), TighteningStep.ByTorqueAndRotation("turn", Window(100, 140), Turned)], [(60, 0), (118, 130)], 100, 140, 90, 180),
        new("audit", [By("snug", 57, 63), TighteningStep.ByRotation("turn", Newtons(55), Turned),
            new("audit", Criterion.Torque(Window(95, 125)), Criterion.MoveAtMost(Angle.FromDegrees(2)))], [(60, 0), (118, 130), (110, 0)], 57, NoLimit, 90, 182),
    ];

    public TighteningProgram Build(TighteningOrder order) => _built.GetOrAdd(order, one => new(Bolts, Steps, one));

    /// <summary>Null when the bolt is as the program wants it; else what is wrong.</summary>
    public string? ObjectionTo(RealBolt bolt)
    {
        if (bolt.Peak < LeastTorque || bolt.Peak > MostTorque) return "torque";
        if (MostTorque < NoLimit && bolt.WorstUnknown > MostTorque) return "pulled too hard, and nobody knows";
        if (bolt.Turned < LeastTurn || bolt.Turned > MostTurn) return "turn";
        return LeastTurn > 0 && bolt.WasTurnedLoose ? "turned before it was snug" : null;
    }

    private static ToleranceWindow<Angle> Turned => ToleranceWindow.FromLimits(Angle.FromDegrees(90), Angle.FromDegrees(180));

    private static TighteningStep By(string name, double low, double high) => TighteningStep.ByTorque(name, Window(low, high));

    private static ToleranceWindow<Torque> Window(double low, double high) => ToleranceWindow.FromLimits(Newtons(low), Newtons(high));

    private static Torque Newtons(double value) => Torque.FromNewtonMeters(value);
}
