using System.Globalization;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Numbers as designations write them, kept exact as whole millionths.</summary>
internal static class ThreadNumber
{
    private const string Form = "0.######";

    public static string Show(double value) => value.ToString(Form, CultureInfo.InvariantCulture);

    public static string Show(long millionths) => Show(FromMillionths(millionths));

    public static string ShowMillimeters(Length length) => Show(Si.Millimeters(length));

    public static string ShowStarts(int starts) => $"{starts.ToString(CultureInfo.InvariantCulture)} start{(starts == 1 ? "" : "s")}";

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
