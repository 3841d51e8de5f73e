using Fastening;
using UnitsNet;

namespace PumpCover;

/// <summary>Numbers in the units and digits of the sheet.</summary>
internal static class Show
{
    public static string Torque(Torque torque, int decimals) => ShopUnit.NewtonMeter.Format(torque, decimals);

    /// <summary>A torque as the display shows it.</summary>
    public static string Torque(Torque torque, TorqueWrench wrench) => Torque(torque, Decimals(wrench));

    /// <summary>Decimals of the display: 0 for steps of 1 N·m, 1 for 0.5 N·m.</summary>
    public static int Decimals(TorqueWrench wrench)
    {
        string step = $"{(decimal)wrench.Resolution!.Value.NewtonMeters}";
        int point = step.IndexOf('.');
        return point < 0 ? 0 : step.Length - point - 1;
    }

    public static string Force(Force force) => ShopUnit.Kilonewton.Format(force, 1);

    public static string Limits(ToleranceWindow<Torque> window, int decimals = 2) =>
        $"{Torque(window.Lower, decimals)} to {Torque(window.Upper, decimals)}";

    public static string Limits(ToleranceWindow<Angle> window) => $"{window.Lower.Degrees:0.##} to {window.Upper.Degrees:0.##}°";

    public static string Range(TorqueWrench wrench) => $"{wrench.Minimum!.Value.NewtonMeters:0.##} to {wrench.Maximum!.Value.NewtonMeters:0.##} N·m";

    public static string Bolts(IReadOnlyCollection<int> bolts) => $"bolt{(bolts.Count == 1 ? "" : "s")} {List(bolts)}";

    public static string Percent(double share) => $"{share * 100:0.0} %";

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
}
