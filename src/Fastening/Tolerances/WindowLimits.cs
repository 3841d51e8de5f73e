using System.Runtime.CompilerServices;

namespace Fastening.Internals;

/// <summary>
/// The interval of doubles under every window. The limits are widened by 1e-12 of the largest of them and the target, because decimal
/// limits, deviations, percentages and unit changes miss each other in the last bits: a reading equal to a limit, in any unit, conforms.
/// A side without a limit is infinite; a target that was not stated is NaN.
/// </summary>
internal readonly struct WindowLimits
{
    public WindowLimits(double lower, double target, double upper)
    {
        Lower = lower;
        Target = target;
        Upper = upper;
        double slack = Slack(lower, upper, target);

        // The widest finite numbers on an open side: an infinite reading then has no verdict there either.
        Lowest = Math.Max(lower - slack, double.MinValue);
        Highest = Math.Min(upper + slack, double.MaxValue);
    }

    public double Lower { get; }

    public double Target { get; }

    public double Upper { get; }

    /// <summary>The lower limit, widened.</summary>
    public double Lowest { get; }

    /// <summary>The upper limit, widened.</summary>
    public double Highest { get; }

    /// <summary>Half the width between the limits; infinite with one limit.</summary>
    public double HalfWidth => (Upper - Lower) / 2;

    public bool HasLower => Lower >= double.MinValue;

    public bool HasUpper => Upper <= double.MaxValue;

    public bool IsOneSided => !(HasLower && HasUpper);

    /// <summary>A reading that is not finite has no verdict; NaN fails every comparison and ends as the infinities do.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Conformity Classify(double reading)
    {
        if (reading >= Lowest)
        {
            return reading <= Highest ? Conformity.Within : reading <= double.MaxValue ? Conformity.Above : Conformity.Undefined;
        }

        return reading >= double.MinValue ? Conformity.Below : Conformity.Undefined;
    }

    public WindowLimits? Intersect(in WindowLimits other)
    {
        double lower = Math.Max(Lower, other.Lower);
        double upper = Math.Min(Upper, other.Upper);
        return Between(lower, double.IsNaN(Target) ? other.Target : Target, upper);
    }

    public WindowLimits Scale(double factor) => new(Lower * factor, Target * factor, Upper * factor);

    /// <summary>Whole steps inside the window; a limit that misses a whole number only in its last bits counts as that number.</summary>
    public WindowLimits? RoundInward(double step)
    {
        double first = Math.Ceiling(Tolerance.SnapToWhole(Lower / step));
        double last = Math.Floor(Tolerance.SnapToWhole(Upper / step));

        // Snapping saves exact decimals; it must not carry a step out of the window.
        if (first * step < Lowest) first++;
        if (last * step > Highest) last--;
        if (first > last) return null;
        double target = Math.Min(Math.Max(Math.Round(Target / step), first), last);
        return new WindowLimits(first * step, target * step, last * step);
    }

    /// <summary>By how much the limits are widened: relative to the largest number that the window has.</summary>
    public static double Slack(double lower, double upper, double target = double.NaN) =>
        Math.Max(Math.Max(Size(lower), Size(upper)), Size(target)) * Tolerance.Widening;

    public WindowLimits? Shrink(double guardBand) => Between(Lower + guardBand, Target, Upper - guardBand);

    /// <summary>The limits with the target moved inside; null when they have crossed.</summary>
    public static WindowLimits? Between(double lower, double target, double upper)
    {
        // Two limits that are the same decimal, reached in two ways, still meet.
        if (lower > upper && lower - upper <= Tolerance.Widening * Math.Max(Math.Abs(lower), Math.Abs(upper))) lower = upper;
        return lower > upper ? null : new WindowLimits(lower, Math.Min(Math.Max(target, lower), upper), upper);
    }

    /// <summary>Neither a limit that is not there nor a target that was not stated has a size.</summary>
    private static double Size(double value) => Math.Abs(value) is var size and <= double.MaxValue ? size : 0;
}
