using UnitsNet;

namespace Fastening.Internals;

/// <summary>The unit in which the trade states a quantity, and how many of it make one SI unit of <see cref="Si"/> (degrees for rotation, °C for temperature).</summary>
internal readonly record struct ShopScale(double PerSi, string Unit)
{
    public static ShopScale Of<T>() where T : struct, IQuantity =>
        typeof(T) == typeof(Length) ? new(1e3, "mm")
        : typeof(T) == typeof(Torque) ? new(1, "N·m")
        : typeof(T) == typeof(Force) ? new(1e-3, "kN")
        : typeof(T) == typeof(Angle) ? new(1, "°")
        : typeof(T) == typeof(Pressure) ? new(1e-6, "MPa")
        : typeof(T) == typeof(Area) ? new(1e6, "mm²")
        : typeof(T) == typeof(Ratio) ? new(100, "%")
        : typeof(T) == typeof(Duration) ? new(1, "s")
        : typeof(T) == typeof(RotationalSpeed) ? new(1, "°/s")
        : typeof(T) == typeof(RotationalStiffness) ? new(Si.RadiansPerDegree, "N·m/°")
        : typeof(T) == typeof(ForcePerLength) ? new(1e-6, "kN/mm")
        : typeof(T) == typeof(CoefficientOfThermalExpansion) ? new(1, "1/K")
        : typeof(T) == typeof(TemperatureDelta) ? new(1, "K")
        : typeof(T) == typeof(Temperature) ? new(1, "°C")
        : throw Si.Unsupported(typeof(T));
}
