namespace Fastening;

/// <summary>What the profiles of power screws fix: load flank, pitches, crest clearance. ISO 2901, ISO 2902 and ASME B1.5 from memory.</summary>
internal static class PowerScrewProfile
{
    private const double Inch = 0.0254, Millimeter = 1e-3, Rounding = 1e-9;

    private static readonly double[] IsoPitchesInMillimeters =
        [1.5, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22, 24, 28, 32, 36, 40, 44];

    /// <summary>The pitches of ISO 2902, as a refusal lists them.</summary>
    public const string IsoPitches = "1.5, 2 to 10, 12 to 24 by twos, 28 to 44 by fours";

    public static bool IsIsoPitch(double pitch)
    {
        foreach (double listed in IsoPitchesInMillimeters)
        {
            if (Math.Abs(pitch / Millimeter - listed) <= Rounding) return true;
        }

        return false;
    }

    /// <summary>Clearance between the crest of one thread and the root of the other, on the radius; none in the square thread of the textbooks.</summary>
    public static double CrestClearance(ThreadProfile profile, double pitch) => profile switch
    {
        ThreadProfile.IsoTrapezoidal => Millimeter * (pitch / Millimeter) switch
        {
            <= 1.5 + Rounding => 0.15,
            <= 5 + Rounding => 0.25,
            <= 12 + Rounding => 0.5,
            _ => 1,
        },
        ThreadProfile.Acme => pitch >= Inch / 10 * (1 - Rounding) ? 0.010 * Inch : 0.005 * Inch,
        _ => 0,
    };

    public static double LoadFlankDegrees(ThreadProfile profile) => profile switch
    {
        ThreadProfile.IsoTrapezoidal => 15,
        ThreadProfile.Acme => 14.5,
        _ => 0,
    };
}
