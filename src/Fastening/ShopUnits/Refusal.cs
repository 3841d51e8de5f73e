using UnitsNet;

namespace Fastening;

/// <summary>Says why a text was refused and what to write; runs only after reading has failed.</summary>
internal static class Refusal<TQuantity>
    where TQuantity : struct, IQuantity
{
    private const int LongestQuote = 60;

    private static bool IsTorque => typeof(TQuantity) == typeof(Torque);

    private static bool IsForce => typeof(TQuantity) == typeof(Force);

    private static bool IsAngle => typeof(TQuantity) == typeof(Angle);

    private static ShopUnit<TQuantity> Usual => (ShopUnit<TQuantity>)(object)(
        IsTorque ? ShopUnit.NewtonMeter : IsForce ? ShopUnit.Kilonewton : IsAngle ? ShopUnit.Degree : ShopUnit.Millimeter);

    public static FormatException OfText(string text) => Of(text, ReasonForText(text));

    public static FormatException OfColumns(string number, string unit)
    {
        string text = number + " " + unit;
        return Of(text, Entered.TryParse<TQuantity>(text, out _)
            ? "write the number alone in its column, and the unit in its own"
            : ReasonForText(text));
    }

    public static FormatException OfUnit(string text) =>
        new($"{Quote(text)} is not a unit for {QuantityWords.Of(Usual)}: {ReasonForUnit(text.Trim())}.");

    private static FormatException Of(string text, string reason) => new($"{Quote(text)} is not {QuantityWords.Of(Usual)}: {reason}.");

    private static string ReasonForText(string text)
    {
        if (text.Contains(',')) return "a comma reads two ways (1,500 is 1500 here and 1.5 there); write a decimal point and no thousands separators";
        int start = NumberText.SkipSpace(text, 0);
        int end = NumberText.End(text, start);
        string number = text.Substring(start, end - start), rest = text.Substring(end).Trim();
        if (number.Length == 0) return ReasonForNoNumber(rest);
        if (rest.Length == 0) return $"the unit is missing; write for example {Usual.WithSymbol(number)}";
        if (rest[0] == '.') return "a decimal point stands between digits, once; write 1.5 or 2";
        if (number is "0" && rest[0] is 'x' or 'X') return "hexadecimal is not read; write a decimal number";
        if (rest[0] == '/') return $"a fraction is not read; write a decimal number, such as {Usual.WithSymbol("0.5")}";
        if (rest.Any(NumberText.IsDigit)) return $"it holds more than one number; write one number and one unit, such as {Usual.WithSymbol("85")}";
        return UnitSpellings.Find(rest, 0, rest.Length) is ShopUnit<TQuantity>
            ? "the number is beyond 1e100, or too small to be distinguished from zero"
            : ReasonForUnit(rest);
    }

    private static string ReasonForNoNumber(string rest)
    {
        string capitals = rest.ToUpperInvariant();
        return capitals.Contains("NAN") || capitals.Contains("INF") || capitals.Contains('∞')
            ? "only finite numbers are read; leave out what was not measured"
            : $"the number is missing; write for example {Usual.WithSymbol("85")}";
    }

    private static string ReasonForUnit(string unit)
    {
        if (unit.Contains('/')) return $"'/' divides; write {Choices()}";
        if (UnitSpellings.Find(unit, 0, unit.Length) is { } other)
        {
            return $"{unit} is {QuantityWords.Of(other)}; write {Choices()}";
        }

        string bare = string.Concat(unit.Split(' ', '·', '⋅', '•', '.', '*', '-'));
        return ReasonForPrefix(bare) ?? ReasonForMass(bare.ToUpperInvariant())
            ?? $"{Quote(unit)} is not a unit read here; write {UnitSpellings.Symbols<TQuantity>()}";
    }

    private static string? ReasonForPrefix(string bare) => bare switch
    {
        "MN" or "MNm" or "MNM" or "mNM" =>
            $"milli (m) and mega (M) differ by a factor of 10⁹; write {(IsTorque ? "N·mm, N·m or kN·m" : Choices())}",
        "mN" => $"mN is the millinewton; write {Choices()}",
        "nm" or "nM" => $"n is nano, newton is N; write {Choices()}",
        "M" => $"M is mega, metre is m; write {Choices()}",
        _ => null,
    };

    private static string? ReasonForMass(string bare) => bare switch
    {
        "LB" or "LBS" or "POUND" or "POUNDS" or "#" when IsTorque || IsForce =>
            $"lb is a mass or a force; write {(IsTorque ? "lbf·ft or lbf·in" : "lbf")}",
        "OZ" or "OZF" or "OUNCE" or "OUNCES" when IsTorque || IsForce => $"oz is a mass or a force; write {(IsTorque ? "ozf·in" : "lbf")}",
        "KG" or "KGS" or "KILO" or "KILOS" when IsTorque || IsForce => $"kg is a mass; write {(IsTorque ? "kgf·m or kgf·cm" : "kgf")}",
        "KGM" or "MKG" when IsTorque => "kg is a mass; write kgf·m",
        "KGCM" or "CMKG" when IsTorque => "kg is a mass; write kgf·cm",
        "T" or "TON" or "TONS" or "TONNE" or "TONNES" when IsForce => "there are several tons; write kN, kgf or kip",
        _ => null,
    };

    private static string Choices() => IsTorque ? "N·m, lbf·ft or lbf·in" : IsForce ? "kN, N or lbf" : IsAngle ? "°, turn or rad" : "mm, m or in";

    private static string Quote(string text) => text.Length > LongestQuote ? $"'{text.Substring(0, LongestQuote)}…'" : $"'{text}'";
}
