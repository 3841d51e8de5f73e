using UnitsNet;

namespace Fastening.Internals;

/// <summary>The shop unit of a quantity and how many of it make one unit of <see cref="Si"/>: what bounds, refusals and texts are stated in.</summary>
internal sealed class ShopScale
{
    private static readonly Dictionary<Type, ShopScale> All = new()
    {
        [typeof(Length)] = new("mm", 1e3, value => Si.Of((Length)value)),
        [typeof(Area)] = new("mm²", 1e6, value => Si.Of((Area)value)),
        [typeof(Torque)] = new("N·m", 1, value => Si.Of((Torque)value)),
        [typeof(Force)] = new("kN", 1e-3, value => Si.Of((Force)value)),
        [typeof(Pressure)] = new("MPa", 1e-6, value => Si.Of((Pressure)value)),
        [typeof(Angle)] = new("°", 1, value => Si.Of((Angle)value)),
        [typeof(Duration)] = new("s", 1, value => Si.Of((Duration)value)),
        [typeof(RotationalSpeed)] = new("°/s", 1, value => Si.Of((RotationalSpeed)value)),
        [typeof(RotationalStiffness)] = new("N·m/°", Si.RadiansPerDegree, value => Si.Of((RotationalStiffness)value)),
        [typeof(TorquePerLength)] = new("N·m/mm", 1e-3, value => Si.Of((TorquePerLength)value)),
        [typeof(Energy)] = new("J", 1, value => Si.Of((Energy)value)),
        [typeof(ForcePerLength)] = new("kN/mm", 1e-6, value => Si.Of((ForcePerLength)value)),
        [typeof(Ratio)] = new("%", 100, value => Si.Of((Ratio)value)),
        [typeof(CoefficientOfThermalExpansion)] = new("1/K", 1, value => Si.Of((CoefficientOfThermalExpansion)value)),
        [typeof(TemperatureDelta)] = new("K", 1, value => Si.Of((TemperatureDelta)value)),
        [typeof(Temperature)] = new("°C", 1, value => Si.Of((Temperature)value)),
    };

    private readonly Func<IQuantity, double> _si;

    private ShopScale(string unit, double perSi, Func<IQuantity, double> si)
    {
        Unit = unit;
        PerSi = perSi;
        _si = si;
    }

    /// <summary>The unit as printed, for example <c>mm</c>.</summary>
    public string Unit { get; }

    /// <summary>Shop units in one unit of <see cref="Si"/>.</summary>
    public double PerSi { get; }

    /// <summary>The scale of a quantity known by its type.</summary>
    public static ShopScale Of<T>() where T : struct, IQuantity => Kept<T>.Scale;

    /// <summary>The scale of a quantity met at run time; null when no text of the library states such a quantity.</summary>
    public static ShopScale? Of(IQuantity value) => All.TryGetValue(value.GetType(), out ShopScale? scale) ? scale : null;

    /// <summary>Bounds in words, in shop units.</summary>
    public string Describe(in Interval si) => si.Describe(PerSi, Unit);

    /// <summary>A quantity of this kind in the unit of <see cref="Si"/>.</summary>
    public double Value(IQuantity value) => _si(value);

    /// <summary>A quantity of this kind in shop units.</summary>
    public double Number(IQuantity value) => _si(value) * PerSi;

    private static class Kept<T> where T : struct, IQuantity
    {
        public static readonly ShopScale Scale =
            All.TryGetValue(typeof(T), out ShopScale? scale) ? scale : throw new NotSupportedException($"{typeof(T).Name} has no shop unit.");
    }
}
