using Fastening.Internals;

namespace Fastening;

/// <summary>Says why a trapezoidal or Acme designation that can be read names no thread.</summary>
internal static class PowerScrewRefusal
{
    public static string Explain(string shown, in ThreadDesignation wanted)
    {
        if (wanted.Profile == ThreadProfile.Acme)
        {
            return $"{shown}: an Acme thread of {Show(wanted.Pitch)} threads per inch leaves no core in {Show(wanted.Diameter)} in; "
                + "the size stands before the hyphen, the threads per inch after it, as in 1 1/2-4 ACME.";
        }

        if (wanted.Starts == 0)
        {
            return $"{shown}: the lead, {Show(wanted.Lead)} mm, is no multiple of the pitch, {Show(wanted.Pitch)} mm; "
                + "the lead stands before the pitch, as in Tr40x14 (P7).";
        }

        return PowerScrewProfile.IsIsoPitch(wanted.Pitch / (double)TextCursor.Million / 1000)
            ? $"{shown}: a trapezoidal thread of {Show(wanted.Diameter)} mm with {wanted.Starts} starts of pitch "
                + $"{Show(wanted.Pitch)} mm is outside what is computed: the diameter goes to 2 m, the starts to 100, and the root must leave a tenth of the diameter."
            : $"{shown}: ISO 2902 has no pitch of {Show(wanted.Pitch)} mm, only {PowerScrewProfile.IsoPitches} mm; "
                + "any other profile is given by its diameters with ScrewThread.FromProfile.";
    }

    private static string Show(long millionths) => Print.Number(millionths / (double)TextCursor.Million);
}
