using Fastening.Internals;

namespace Fastening;

/// <summary>The range in which values of one kind are published, with the source of its ends.</summary>
internal sealed class PlausibleRange
{
    private const string FrictionSource =
        "VDI 2230-1:2015 Table A5, class A, read in a secondary source, to Machinery's Handbook 31st ed. p. 1662 after JIS B 1083; class E is open above 0.30";

    private const string Practice = "common practice, no source";

    private readonly Interval _values;

    private PlausibleRange(PlausibilityKind kind, string name, double low, double high, string unit, string source)
    {
        _values = new Interval(low, high);
        (Kind, Name, Unit, Source) = (kind, name, unit, source);
    }

    public static PlausibleRange ThreadFriction { get; } = new(PlausibilityKind.ThreadFriction, "thread friction", 0.04, 0.45, "", FrictionSource);

    public static PlausibleRange BearingFriction { get; } = new(PlausibilityKind.BearingFriction, "bearing friction", 0.04, 0.45, "", FrictionSource);

    public static PlausibleRange NutFactor { get; } = new(
        PlausibilityKind.NutFactor, "nut factor", 0.09, 0.553, "", "Shigley 9th ed. (2011) Table 8-15 to Machinery's Handbook 31st ed. p. 1662 after JIS B 1083");

    public static PlausibleRange LeverLength { get; } = new(PlausibilityKind.LeverLength, "lever length", 100, 3000, "mm", Practice);

    public static PlausibleRange TorqueRatio { get; } = new(PlausibilityKind.TorqueRatio, "torque ratio", 0.5, 2, "", Practice);

    public static PlausibleRange GearRatio { get; } = new(PlausibilityKind.GearRatio, "gear ratio", 2, 150, "", Practice);

    public static PlausibleRange Efficiency { get; } = new(PlausibilityKind.Efficiency, "efficiency", 0.6, 0.98, "", Practice);

    public PlausibilityKind Kind { get; }

    public string Name { get; }

    public double Low => _values.Low;

    public double High => _values.High;

    public string Unit { get; }

    public string Source { get; }

    public bool Contains(double value) => _values.Contains(value);
}
