using System.Runtime.CompilerServices;

namespace Fastening.Internals;

/// <summary>
/// The interval of doubles under every window. The limits are widened by 1e-12 of the largest of them and the target, because decimal
/// limits, deviations, percentages and unit changes miss each other in the last bits: a reading equal to a limit, in any unit, conforms.
/// </summary>
internal readonly struct WindowLimits
{
    public WindowLimits(double lower, double target, double upper)
    {
        Lower = lower;
        Target = target;
        Upper = upper;
        double slack = Math.Max(Math.Max(Math.Abs(lower), Math.Abs(upper)), Math.Abs(target)) * Tolerance.Widening;
        Lowest = lower - slack;
        Highest = upper + slack;
    }

    public double Lower { get; }

    public double Target { get; }

    public double Upper { get; }

    /// <summary>The lower limit, widened.</summary>
    public double Lowest { get; }

    /// <summary>The upper limit, widened.</summary>
    public double Highest { get; }

    /// <summary>Half the width between the limits.</summary>
    public double HalfWidth => (Upper - Lower) / 2;

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
        return Between(lower, Target, upper);
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

    public WindowLimits? Shrink(double guardBand) => Between(Lower + guardBand, Target, Upper - guardBand);

    /// <summary>The limits with the target moved inside; null when they have crossed.</summary>
    public static WindowLimits? Between(double lower, double target, double upper)
    {
        // Two limits that are the same decimal, reached in two ways, still meet.
        if (lower > upper && lower - upper <= Tolerance.Widening * Math.Max(Math.Abs(lower), Math.Abs(upper))) lower = upper;
        return lower > upper ? null : new WindowLimits(lower, Math.Min(Math.Max(target, lower), upper), upper);
    }
}
