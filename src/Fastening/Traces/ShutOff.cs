namespace Fastening;

/// <summary>
/// Where the tool stopped turning the fastener: the sample at which the angle first reaches its furthest, the tail left out. The tail begins
/// after the last sample within one window of the furthest angle that still carries half the torque of that stretch, so that an angle that
/// dithers while the torque has gone does not move it.
/// </summary>
internal static class ShutOff
{
    private const double ShareOfTorque = 0.5;

    public static int Of(ReadOnlySpan<double> angles, ReadOnlySpan<double> torques, double window)
    {
        double near = angles[FirstHighest(angles, angles.Length)] - window;
        double highest = double.NegativeInfinity;
        int last = 0;
        for (int i = 0; i < angles.Length; i++)
        {
            if (angles[i] < near) continue;
            highest = Math.Max(highest, torques[i]);
            last = i;
        }

        if (highest <= 0) return FirstHighest(angles, angles.Length);
        while (angles[last] < near || torques[last] < ShareOfTorque * highest) last--;
        return FirstHighest(angles, last + 1);
    }

    /// <summary>From torque alone: the last sample that still carries half the peak torque.</summary>
    public static int Of(ReadOnlySpan<double> torques)
    {
        double highest = torques[FirstHighest(torques, torques.Length)];
        int last = torques.Length - 1;
        if (highest <= 0) return last;
        while (torques[last] < ShareOfTorque * highest) last--;
        return last;
    }

    public static int FirstHighest(ReadOnlySpan<double> values, int count)
    {
        int best = 0;
        double highest = values[0];
        for (int i = 1; i < count; i++)
        {
            if (values[i] <= highest) continue;
            (best, highest) = (i, values[i]);
        }

        return best;
    }
}
