using UnitsNet;

namespace Fastening;

/// <summary>Every spelling of every unit, looked up by its text with one middle dot for whatever joins the parts.</summary>
internal static class UnitSpellings
{
    /// <summary>No spelling is longer; pounds·inches has 13.</summary>
    private const int Longest = 16;

    private static readonly string[] Pounds = ["lbf", "lb", "lbs", "lbfs", "pound", "pounds"];
    private static readonly string[] Ounces = ["ozf", "oz"];
    private static readonly string[] Feet = ["ft", "foot", "feet"];
    private static readonly string[] Inches = ["in", "inch", "inches"];

    /// <summary>SI, where m and M differ.</summary>
    private static readonly Dictionary<string, object> Exact = new(StringComparer.Ordinal);

    /// <summary>Inch-pound units, kgf and words; they may end in an abbreviation point.</summary>
    private static readonly Dictionary<string, object> AnyCase = new(StringComparer.OrdinalIgnoreCase);

    static UnitSpellings()
    {
        AddTorques();
        AddInAnyCase(ShopUnit.Degree, "°", "º", "deg", "degree", "degrees");
        AddInAnyCase(ShopUnit.Turn, "turn", "turns", "rev", "revs", "revolution", "revolutions");
        AddInAnyCase(ShopUnit.Radian, "rad", "radian", "radians");
        AddExact(ShopUnit.Newton, "N");
        AddExact(ShopUnit.Kilonewton, "kN", "KN");
        AddInAnyCase(ShopUnit.PoundForce, "lbf", "lbfs");
        AddInAnyCase(ShopUnit.Kip, "kip", "kips");
        AddInAnyCase(ShopUnit.KilogramForce, "kgf");
        AddExact(ShopUnit.Millimeter, "mm", "MM");
        AddExact(ShopUnit.Centimeter, "cm", "CM");
        AddExact(ShopUnit.Meter, "m");
        AddInAnyCase(ShopUnit.Inch, "in", "inch", "inches", "\"", "″");
        AddInAnyCase(ShopUnit.Foot, "ft", "foot", "feet", "'", "′");
    }

    /// <summary>The unit written between two places of a text, spaces around it ignored; null where it is none.</summary>
    public static object? Find(string text, int start, int end)
    {
        string? key = Key(text, start, end, out bool abbreviated);
        if (key is null) return null;
        if (!abbreviated && Exact.TryGetValue(key, out object? unit)) return unit;
        return AnyCase.TryGetValue(key, out unit) ? unit : null;
    }

    /// <summary>The print spellings of one quantity, in the order of the table.</summary>
    public static string Symbols<TQuantity>()
        where TQuantity : struct, IQuantity =>
        string.Join(", ", Exact.Values.Concat(AnyCase.Values).OfType<ShopUnit<TQuantity>>().Distinct().Select(unit => unit.Symbol));

    private static void AddTorques()
    {
        AddJoined(Exact, ShopUnit.NewtonMeter, "N·m", "N·M");
        AddJoined(Exact, ShopUnit.DecinewtonMeter, "dN·m", "DN·M");
        AddJoined(Exact, ShopUnit.NewtonCentimeter, "N·cm", "N·CM", "cN·m", "CN·M");
        AddJoined(Exact, ShopUnit.NewtonMillimeter, "N·mm", "N·MM", "mN·m");
        AddJoined(Exact, ShopUnit.DecanewtonMeter, "daN·m", "DAN·M");
        AddJoined(Exact, ShopUnit.KilonewtonMeter, "kN·m", "KN·m", "KN·M");
        AddJoined(AnyCase, ShopUnit.KilogramForceMeter, "kgf·m");
        AddJoined(AnyCase, ShopUnit.KilogramForceCentimeter, "kgf·cm");
        AddInEitherOrder(ShopUnit.PoundForceFoot, Pounds, Feet);
        AddInEitherOrder(ShopUnit.PoundForceInch, Pounds, Inches);
        AddInEitherOrder(ShopUnit.OunceForceInch, Ounces, Inches);
    }

    private static void AddExact(object unit, params string[] spellings) => Array.ForEach(spellings, spelling => Exact.Add(spelling, unit));

    private static void AddInAnyCase(object unit, params string[] spellings) => Array.ForEach(spellings, spelling => AnyCase.Add(spelling, unit));

    private static void AddJoined(Dictionary<string, object> table, object unit, params string[] spellings)
    {
        foreach (string spelling in spellings)
        {
            table.Add(spelling, unit);
            table.Add(spelling.Replace("·", ""), unit);
        }
    }

    private static void AddInEitherOrder(object unit, string[] forces, string[] arms)
    {
        foreach (string force in forces)
        {
            foreach (string arm in arms)
            {
                AddJoined(AnyCase, unit, force + "·" + arm, arm + "·" + force);
            }
        }
    }

    /// <summary>One middle dot for one mark (or an abbreviation point and one mark) with its spaces; null for anything a unit is not.</summary>
    private static string? Key(string text, int start, int end, out bool abbreviated)
    {
        Span<char> key = stackalloc char[Longest];
        int length = 0, marks = 0;
        bool gap = false, afterPoint = abbreviated = false;
        for (int i = NumberText.SkipSpace(text, start); i < end; i++)
        {
            char c = text[i];
            if (IsMark(c))
            {
                if (length == 0 || marks == 2 || (marks == 1 && !afterPoint)) return null;
                marks++;
                afterPoint = c == '.';
            }
            else if (!char.IsWhiteSpace(c))
            {
                if (length + 2 > Longest) return null;
                if (gap || marks > 0) key[length++] = '·';
                key[length++] = c;
                (gap, marks, afterPoint) = (false, 0, false);
                continue;
            }

            gap = true;
        }

        abbreviated = marks == 1 && afterPoint;
        return length == 0 || (marks > 0 && !abbreviated) ? null : key.Slice(0, length).ToString();
    }

    private static bool IsMark(char c) => c is '·' or '⋅' or '•' or '.' or '*' or '-' or '\u2010' or '\u2011' or '\u2013';
}
