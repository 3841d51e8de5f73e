using System.Globalization;
using Fastening;
using UnitsNet;

namespace PumpCover;

/// <summary>Numbers in the units and digits of the sheet.</summary>
internal static class Show
{
    private const int MostDecimals = 12;
    private const int LimitDecimals = 4;
    private const int DisplayDecimals = 6;

    /// <summary>A number as it was stated: no digit that counts is dropped, whatever the usual size of such a number.</summary>
    public static string Stated(double value) => $"{value:G15}";

    public static string Torque(Torque torque, int decimals, MidpointRounding rounding = MidpointRounding.AwayFromZero) =>
        $"{Fixed(torque.NewtonMeters, decimals, rounding)} N·m";

    /// <summary>A torque as the display shows it.</summary>
    public static string Torque(Torque torque, TorqueWrench wrench) => Torque(torque, Decimals(wrench));

    /// <summary>A torque that was held against a window, with as many decimals as it takes to see on which side of a limit it lies.</summary>
    public static string Torque(Torque torque, ToleranceWindow<Torque> window) => Torque(torque, DecimalsThatTell(
        torque.NewtonMeters, 2, shown => window.Classify(UnitsNet.Torque.FromNewtonMeters(shown)) == window.Classify(torque)));

    /// <summary>How far a torque lies beyond a limit: never 0.</summary>
    public static string Beyond(Torque difference) => Torque(difference, DecimalsThatTell(difference.NewtonMeters, 2, shown => shown > 0));

    /// <summary>A rate that was held against a limit, with as many decimals as it takes to see on which side it lies.</summary>
    public static string Rate(RotationRateCheck check)
    {
        double rate = check.HighestRate.DegreesPerSecond, limit = check.Limit.DegreesPerSecond;
        int decimals = DecimalsThatTell(rate, 1, shown => shown <= limit == check.Conforms || (check.Conforms && rate >= limit));
        return $"{Fixed(rate, decimals, MidpointRounding.AwayFromZero)}°/s";
    }

    /// <summary>Decimals of the display: 0 for steps of 1 N·m, 1 for 0.5 N·m.</summary>
    public static int Decimals(TorqueWrench wrench)
    {
        string step = $"{(decimal)wrench.Resolution!.Value.NewtonMeters}";
        int point = step.IndexOf('.');
        return point < 0 ? 0 : Math.Min(step.Length - point - 1, DisplayDecimals);
    }

    public static string Force(Force force, MidpointRounding rounding = MidpointRounding.AwayFromZero) => $"{Fixed(force.Kilonewtons, 1, rounding)} kN";

    public static string Stress(Pressure stress, MidpointRounding rounding = MidpointRounding.AwayFromZero) =>
        $"{Fixed(stress.Megapascals, 1, rounding)} MPa";

    public static string Percent(double share, MidpointRounding rounding = MidpointRounding.AwayFromZero) => $"{Fixed(share * 100, 1, rounding)} %";

    public static string Lower(ToleranceWindow<Torque> window, int decimals = 2) =>
        Torque(window.Lower!.Value, LimitDecimalsOf(window, decimals), MidpointRounding.ToPositiveInfinity);

    public static string Upper(ToleranceWindow<Torque> window, int decimals = 2) =>
        Torque(window.Upper!.Value, LimitDecimalsOf(window, decimals), MidpointRounding.ToNegativeInfinity);

    public static string Limits(ToleranceWindow<Torque> window, int decimals = 2) => $"{Lower(window, decimals)} to {Upper(window, decimals)}";

    public static string Limits(ToleranceWindow<Angle> window) => $"{Stated(window.Lower!.Value.Degrees)} to {Stated(window.Upper!.Value.Degrees)}°";

    public static string Range(TorqueWrench wrench) => $"{Stated(wrench.LowTorque!.Value.NewtonMeters)} to {Stated(wrench.HighTorque!.Value.NewtonMeters)} N·m";

    public static string Bolts(IReadOnlyCollection<int> bolts) => $"bolt{(bolts.Count == 1 ? "" : "s")} {List(bolts)}";

    public static string Count(int number, string noun) => $"{number} {noun}{(number == 1 ? "" : "s")}";

    /// <summary>Bolt numbers with runs of three and more drawn together: 1 to 4, 9.</summary>
    public static string List(IEnumerable<int> numbers)
    {
        List<string> parts = [];
        int[] sorted = [.. numbers.Order()];
        for (int first = 0, next; first < sorted.Length; first = next)
        {
            next = first + 1;
            while (next < sorted.Length && sorted[next] == sorted[next - 1] + 1) next++;
            if (next - first >= 3) parts.Add($"{sorted[first]} to {sorted[next - 1]}");
            else parts.AddRange(sorted[first..next].Select(number => $"{number}"));
        }

        return parts.Count == 0 ? "none" : string.Join(", ", parts);
    }

    /// <summary>Decimals at which both limits are exact, and at which the rounded limits do not cross; limits are then rounded inward.</summary>
    private static int LimitDecimalsOf(ToleranceWindow<Torque> window, int least)
    {
        double lower = window.Lower!.Value.NewtonMeters, upper = window.Upper!.Value.NewtonMeters;
        int most = Math.Max(least, LimitDecimals);
        for (int decimals = least; decimals < most; decimals++)
        {
            if (IsExact(lower, decimals) && IsExact(upper, decimals)) return decimals;
        }

        while (most < MostDecimals && DoCross(most)) most++;
        return most;

        bool DoCross(int decimals) =>
            Rounded(lower, decimals, MidpointRounding.ToPositiveInfinity) > Rounded(upper, decimals, MidpointRounding.ToNegativeInfinity);
    }

    private static bool IsExact(double value, int decimals) => Rounded(value, decimals, MidpointRounding.AwayFromZero) == (decimal)value;

    private static int DecimalsThatTell(double value, int least, Predicate<double> tells)
    {
        int decimals = least;
        while (decimals < MostDecimals && !tells((double)Rounded(value, decimals, MidpointRounding.AwayFromZero))) decimals++;
        return decimals;
    }

    private static string Fixed(double value, int decimals, MidpointRounding rounding) =>
        Rounded(value, decimals, rounding).ToString($"F{decimals}", CultureInfo.InvariantCulture);

    /// <summary>By way of decimal, whose 15 digits drop what binary adds to a number such as 148.2.</summary>
    private static decimal Rounded(double value, int decimals, MidpointRounding rounding) => Math.Round((decimal)value, decimals, rounding);
}
