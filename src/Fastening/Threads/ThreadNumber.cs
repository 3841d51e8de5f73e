using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Numbers as designations write them, kept exact as whole millionths.</summary>
internal static class ThreadNumber
{
    public static string Show(long millionths) => Print.Number(FromMillionths(millionths));

    public static string ShowMillimeters(Length length) => Print.Number(Si.Millimeters(length));

    public static string ShowStarts(int starts) => $"{starts} start{(starts == 1 ? "" : "s")}";

    public static double FromMillionths(long millionths) => millionths / (double)TextCursor.Million;

    public static long Millionths(double number) => (long)Math.Round(number * TextCursor.Million);

    /// <summary>Whether the number is one of whole millionths.</summary>
    public static bool TryMillionths(double number, out long millionths)
    {
        double scaled = number * TextCursor.Million;
        millionths = (long)Math.Round(scaled);
        return Math.Abs(scaled - millionths) <= 1e-12 * scaled;
    }
}
