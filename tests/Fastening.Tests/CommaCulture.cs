using System.Globalization;

namespace Fastening.Tests;

/// <summary>Runs a test in a culture with a decimal comma, made here so that it exists on machines without culture data.</summary>
internal static class CommaCulture
{
    public static void Run(Action test)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        comma.NumberFormat.NumberDecimalSeparator = ",";
        comma.NumberFormat.NumberGroupSeparator = ".";
        CultureInfo.CurrentCulture = comma;
        try
        {
            test();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
