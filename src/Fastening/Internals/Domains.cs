namespace Fastening.Internals;

/// <summary>The engineering domains of the trade's quantities, in SI. They are wide: their work is to catch the slipped decimal and the wrong unit.</summary>
internal static class Domains
{
    public static readonly Interval Length = new(1e-6, 1e3);
    public static readonly Interval LengthOrZero = new(0, 1e3);
    public static readonly Interval Area = new(1e-12, 1e6);
    public static readonly Interval Torque = new(0, 1e7);
    public static readonly Interval PositiveTorque = new(1e-6, 1e7);
    public static readonly Interval Force = new(0, 1e9);
    public static readonly Interval Stress = new(1e3, 1e11);
    public static readonly Interval Modulus = new(1e3, 1e13);
    public static readonly Interval Duration = new(1e-4, 1e7);
    public static readonly Interval PoissonRatio = new(0, 0.5, highOpen: true);
    public static readonly Interval ThermalExpansion = new(-1e-3, 1e-3);
    public static readonly Interval Rotation = new(0, 1e7);
    public static readonly Interval PositiveRotation = new(1e-4, 1e7);
    public static readonly Interval RotationRate = new(1e-12, 1e12);
    public static readonly Interval Direction = new(-360, 360);
    public static readonly Interval BelowRightAngle = new(-90, 90, lowOpen: true, highOpen: true);
    public static readonly Interval FlankAngle = new(0, 90, highOpen: true);
    public static readonly Interval SeatAngle = new(1, 180);
    public static readonly Interval Friction = new(0, 2);
    public static readonly Interval NutFactor = new(1e-4, 10);
    public static readonly Interval Utilisation = new(0, 1, lowOpen: true);
    public static readonly Interval Accuracy = new(0, 0.5);
    public static readonly Interval Percent = new(0, 1e6);
    public static readonly Interval PercentBelow = new(0, 100);
    public static readonly Interval Sample = new(-1e10, 1e10);
    public static readonly Interval Factor = new(1e-9, 1e9);
    public static readonly Interval ClockReading = new(0, 1e10);
    public static readonly Interval SamplingInterval = new(1e-9, 1e3);
    public static readonly Interval SmoothingWindow = new(1e-3, 1e4);
    public static readonly Interval SlopeFraction = new(0.01, 0.99);
    public static readonly Interval RateMargin = new(1e-6, 1, highOpen: true);
}
