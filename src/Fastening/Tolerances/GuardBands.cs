namespace Fastening.Internals;

/// <summary>Width of the guard band inside a limit, NaN when no band keeps the rule, and of the zone beyond the limit in which rejection is not certain.</summary>
internal readonly struct GuardBands(double inside, double outside)
{
    public double Inside { get; } = inside;

    public double Outside { get; } = outside;
}
