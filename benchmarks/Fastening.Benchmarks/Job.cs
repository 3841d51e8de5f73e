using UnitsNet;

namespace Fastening.Benchmarks;

/// <summary>One joint, wrench and window, and 1024 random inputs, so that branches cannot be learnt by heart.</summary>
internal static class Job
{
    public const int Count = 1024;

    public static FrictionTorqueModel Model { get; } = TorquePreloadModel
        .ForHexagonBolt(ScrewThread.Parse("M16"), new FrictionCoefficients(thread: 0.12, bearing: 0.10))
        .WithPrevailing(Torque.FromNewtonMeters(2));

    public static TorqueWrench Wrench { get; } = new TorqueWrench(Length.FromMillimeters(400))
        .WithAdapter(Length.FromMillimeters(75), Angle.FromDegrees(45));

    public static ToleranceWindow<Torque> Window { get; } = ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(150), Ratio.FromPercent(4), Ratio.FromPercent(4));

    public static HandWritten Hand { get; } = new(
        Model.NutFactor * 0.016, 2, Wrench.TorqueRatio, Window.Lower!.Value.NewtonMeters * (1 - 1e-12), Window.Upper!.Value.NewtonMeters * (1 + 1e-12));

    public static Torque[] Torques { get; } = [.. Numbers(135, 165).Select(x => Torque.FromNewtonMeters(x))];

    public static Force[] Preloads { get; } = [.. Numbers(20_000, 90_000).Select(x => Force.FromNewtons(x))];

    public static double[] Numbers(double low, double high)
    {
        var random = new Random(16);
        return [.. Enumerable.Range(0, Count).Select(_ => low + (high - low) * random.NextDouble())];
    }
}
