using System.Globalization;

namespace TwoDayJob;

/// <summary>How figures and times stand in the record.</summary>
internal static class Show
{
    public static string Time(DateTimeOffset time) => time.ToString("yyyy-MM-dd HH:mm:ss zzz", CultureInfo.InvariantCulture);

    public static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    public static void Heading(TextWriter to, string text)
    {
        to.WriteLine();
        to.WriteLine(text);
        to.WriteLine(new string('-', text.Length));
    }
}
