namespace Fastening;

/// <summary>Places that are found from the torque alone.</summary>
internal static class TorqueExtremes
{
    private const double ShareOfTorque = 0.5;

    /// <summary>The last sample that still carries half the highest torque that two neighbouring samples share.</summary>
    public static int ShutOff(ReadOnlySpan<double> torques)
    {
        double highest = HighestShared(torques, 1);
        int last = torques.Length - 1;
        if (highest <= 0) return last;
        while (torques[last] < ShareOfTorque * highest) last--;
        return last;
    }

    /// <summary>Whether the torque reaches further below 0 than above, each as two neighbouring samples share it.</summary>
    public static bool IsMainlyNegative(ReadOnlySpan<double> torques) => HighestShared(torques, -1) > Math.Max(HighestShared(torques, 1), 0);

    public static double Highest(ReadOnlySpan<double> torques) => torques[FirstHighest(torques)];

    public static int FirstHighest(ReadOnlySpan<double> torques) => FirstHighest(torques, 1);

    public static int FirstLowest(ReadOnlySpan<double> torques) => FirstHighest(torques, -1);

    private static int FirstHighest(ReadOnlySpan<double> torques, double sign)
    {
        int best = 0;
        double highest = sign * torques[0];
        for (int i = 1; i < torques.Length; i++)
        {
            if (sign * torques[i] <= highest) continue;
            (best, highest) = (i, sign * torques[i]);
        }

        return best;
    }

    private static double HighestShared(ReadOnlySpan<double> torques, double sign)
    {
        double highest = double.NegativeInfinity;
        for (int i = 1; i < torques.Length; i++) highest = Math.Max(highest, Math.Min(sign * torques[i], sign * torques[i - 1]));
        return highest;
    }
}
