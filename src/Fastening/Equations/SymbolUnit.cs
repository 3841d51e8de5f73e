using Fastening.Internals;

namespace Fastening.Equations;

/// <summary>The SI unit of a symbol, the shop unit it is printed in, and its dimension.</summary>
/// <remarks>Shape: a fixed set of named instances. Angles and ratios have no dimension.</remarks>
/// <example><code>SymbolUnit.Force.ToShop(12_000)   // 12, printed "12 kN"</code></example>
public sealed class SymbolUnit
{
    private SymbolUnit(string si, string shop, double shopPerSi, int length = 0, int mass = 0, int time = 0)
    {
        Si = si;
        Shop = shop;
        ShopPerSi = shopPerSi;
        LengthExponent = length;
        MassExponent = mass;
        TimeExponent = time;
    }

    /// <summary>A pure number.</summary>
    public static SymbolUnit Ratio { get; } = new("", "", 1);

    /// <summary>A whole number: counts and starts.</summary>
    public static SymbolUnit Count { get; } = new("", "", 1);

    /// <summary>Radian, printed in degrees.</summary>
    public static SymbolUnit Angle { get; } = new("rad", "°", 180 / Math.PI);

    /// <summary>Metre, printed in millimetres.</summary>
    public static SymbolUnit Length { get; } = new("m", "mm", 1e3, length: 1);

    /// <summary>Metre (growth, embedding), printed in micrometres.</summary>
    public static SymbolUnit Deflection { get; } = new("m", "µm", 1e6, length: 1);

    /// <summary>Square metre, printed in square millimetres.</summary>
    public static SymbolUnit Area { get; } = new("m²", "mm²", 1e6, length: 2);

    /// <summary>Cubic metre (section modulus), printed in cubic millimetres.</summary>
    public static SymbolUnit SectionModulus { get; } = new("m³", "mm³", 1e9, length: 3);

    /// <summary>Metre to the fourth (torsion constant), printed in mm⁴.</summary>
    public static SymbolUnit TorsionConstant { get; } = new("m⁴", "mm⁴", 1e12, length: 4);

    /// <summary>Newton, printed in kilonewtons.</summary>
    public static SymbolUnit Force { get; } = new("N", "kN", 1e-3, length: 1, mass: 1, time: -2);

    /// <summary>Newton-metre.</summary>
    public static SymbolUnit Torque { get; } = new("N·m", "N·m", 1, length: 2, mass: 1, time: -2);

    /// <summary>An arm: metres of torque per newton, printed in newton-metres per kilonewton.</summary>
    public static SymbolUnit Arm { get; } = new("m", "N·m/kN", 1e3, length: 1);

    /// <summary>Pascal, printed in megapascals.</summary>
    public static SymbolUnit Stress { get; } = new("Pa", "MPa", 1e-6, length: -1, mass: 1, time: -2);

    /// <summary>Pascal per newton, printed in megapascals per kilonewton.</summary>
    public static SymbolUnit StressPerForce { get; } = new("Pa/N", "MPa/kN", 1e-3, length: -2);

    /// <summary>Radian per newton-metre, printed in degrees per newton-metre.</summary>
    public static SymbolUnit TorsionalCompliance { get; } = new("rad/(N·m)", "°/(N·m)", 180 / Math.PI, length: -2, mass: -1, time: 2);

    /// <summary>Newton-metre per radian, printed in newton-metres per degree.</summary>
    public static SymbolUnit TorsionalStiffness { get; } = new("N·m/rad", "N·m/°", Math.PI / 180, length: 2, mass: 1, time: -2);

    /// <summary>Radian per newton of preload, printed in degrees per kilonewton.</summary>
    public static SymbolUnit RotationPerForce { get; } = new("rad/N", "°/kN", 180e3 / Math.PI, length: -1, mass: -1, time: 2);

    /// <summary>Newton per metre (stiffness), printed in kilonewtons per millimetre.</summary>
    public static SymbolUnit Stiffness { get; } = new("N/m", "kN/mm", 1e-6, mass: 1, time: -2);

    /// <summary>Metre per newton (elastic resilience), printed in micrometres per kilonewton.</summary>
    public static SymbolUnit Resilience { get; } = new("m/N", "µm/kN", 1e9, mass: -1, time: 2);

    /// <summary>One per metre, printed per millimetre.</summary>
    public static SymbolUnit PerLength { get; } = new("1/m", "1/mm", 1e-3, length: -1);

    /// <summary>Kelvin, as a difference.</summary>
    public static SymbolUnit TemperatureChange { get; } = new("K", "K", 1);

    /// <summary>Degree Celsius: the temperature of a table that is printed in it.</summary>
    public static SymbolUnit Celsius { get; } = new("°C", "°C", 1);

    /// <summary>One per kelvin, printed in micrometres per metre and kelvin.</summary>
    public static SymbolUnit ThermalExpansion { get; } = new("1/K", "µm/(m·K)", 1e6);

    /// <summary>Second.</summary>
    public static SymbolUnit Time { get; } = new("s", "s", 1, time: 1);

    /// <summary>Radian per second, printed in degrees per second.</summary>
    public static SymbolUnit RotationRate { get; } = new("rad/s", "°/s", 180 / Math.PI, time: -1);

    /// <summary>The SI unit, for example <c>N·m</c>; empty for a ratio.</summary>
    public string Si { get; }

    /// <summary>The unit printed on the shop floor, for example <c>mm</c>.</summary>
    public string Shop { get; }

    /// <summary>Shop units in one SI unit.</summary>
    public double ShopPerSi { get; }

    /// <summary>Exponent of the metre.</summary>
    public int LengthExponent { get; }

    /// <summary>Exponent of the kilogram.</summary>
    public int MassExponent { get; }

    /// <summary>Exponent of the second.</summary>
    public int TimeExponent { get; }

    /// <summary>Converts an SI value to the shop unit.</summary>
    public double ToShop(double si) => si * ShopPerSi;

    /// <summary>An SI value in the shop unit, six significant digits: <c>126 N·m</c>.</summary>
    internal string Text(double si) => Print.Number(ToShop(si), Shop, "G6");

    /// <summary>The same as LaTeX.</summary>
    internal string Latex(double si) => LatexNumber(Print.Number(ToShop(si), "", "G6")) + LatexUnit(Shop);

    private static string LatexNumber(string number)
    {
        string[] parts = number.Split('E');
        if (parts.Length == 1) return number;
        string sign = parts[1][0] == '-' ? "-" : "";
        return parts[0] + @" \times 10^{" + sign + parts[1].TrimStart('+', '-', '0') + "}";
    }

    private static string LatexUnit(string unit) => unit.Length == 0
        ? ""
        : unit == "°" ? @"^{\circ}"
        : @"\,\mathrm{" + unit.Replace("°", @"^{\circ}").Replace("µ", @"\mu{}").Replace("·", @"{\cdot}").Replace("²", "^{2}").Replace("³", "^{3}").Replace("⁴", "^{4}") + "}";
}
