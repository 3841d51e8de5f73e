namespace Fastening;

/// <summary>
/// A single angle that was never reached: more than half a window beyond the sample before it, and half of that taken back by the next sample.
/// </summary>
internal static class LoneAngle
{
    private const double ShareTakenBack = 0.5;

    public static bool IsAt(ReadOnlySpan<double> angles, int index, double halfWindow)
    {
        if (index + 1 >= angles.Length) return false;
        double back = angles[index] - angles[index + 1];
        if (index == 0) return back > halfWindow;
        double forward = angles[index] - angles[index - 1];
        return forward > halfWindow && back > ShareTakenBack * forward;
    }
}
