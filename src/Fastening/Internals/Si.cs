using System.Runtime.CompilerServices;
using Fastening.Equations;
using UnitsNet;
using UnitsNet.Units;

namespace Fastening.Internals;

/// <summary>
/// The only file that turns quantities into doubles and back. SI throughout, except that rotation stays in degrees
/// (and degrees per second) outside the equations: the unit of every log, and exact where radians are not.
/// </summary>
internal static class Si
{
    public const double RadiansPerDegree = Math.PI / 180;

    // Beyond every domain in every unit, and so far from the end of a double that no unit's factor takes it over.
    private const double Furthest = 1e250;

    public static double Of(Length value) => value.Unit == LengthUnit.Meter ? value.Value : Converted(value);
    public static double Of(Torque value) => value.Unit == TorqueUnit.NewtonMeter ? value.Value : Converted(value);
    public static double Of(Force value) => value.Unit == ForceUnit.Newton ? value.Value : Converted(value);
    public static double Of(Area value) => IsConvertible(value.Value) ? value.SquareMeters : Beyond(value.Value);
    public static double Of(Pressure value) => IsConvertible(value.Value) ? value.Pascals : Beyond(value.Value);
    public static double Of(Angle value) => value.Unit == AngleUnit.Degree ? value.Value : Converted(value);
    public static double Of(Duration value) => IsConvertible(value.Value) ? value.Seconds : Beyond(value.Value);
    public static double Of(RotationalSpeed value) => IsConvertible(value.Value) ? value.DegreesPerSecond : Beyond(value.Value);
    public static double Of(Ratio value) => IsConvertible(value.Value) ? value.DecimalFractions : Beyond(value.Value);
    public static double Of(CoefficientOfThermalExpansion value) => IsConvertible(value.Value) ? value.PerKelvin : Beyond(value.Value);
    public static double Of(TorquePerLength value) => IsConvertible(value.Value) ? value.NewtonMetersPerMeter : Beyond(value.Value);
    public static double Of(RotationalStiffness value) => IsConvertible(value.Value) ? value.NewtonMetersPerRadian : Beyond(value.Value);
    public static double Of(ForcePerLength value) => IsConvertible(value.Value) ? value.NewtonsPerMeter : Beyond(value.Value);
    public static double Of(Energy value) => IsConvertible(value.Value) ? value.Joules : Beyond(value.Value);
    public static double Of(TemperatureDelta value) => IsConvertible(value.Value) ? value.Kelvins : Beyond(value.Value);

    /// <summary>In degrees Celsius, the unit of every table of the trade and exact there.</summary>
    public static double Of(Temperature value) => IsConvertible(value.Value) ? value.DegreesCelsius : Beyond(value.Value);

    // The quantities of hot calls: in their own unit there is nothing to convert, and nothing to overflow.
    private static double Converted(Length value) => IsConvertible(value.Value) ? value.Meters : Beyond(value.Value);
    private static double Converted(Torque value) => IsConvertible(value.Value) ? value.NewtonMeters : Beyond(value.Value);
    private static double Converted(Force value) => IsConvertible(value.Value) ? value.Newtons : Beyond(value.Value);
    private static double Converted(Angle value) => IsConvertible(value.Value) ? value.Degrees : Beyond(value.Value);

    public static double Millimeters(Length value) => IsConvertible(value.Value) ? value.Millimeters : Beyond(value.Value);
    public static double Radians(Angle value) => Of(value) * RadiansPerDegree;
    public static double ToRadians(double degrees) => degrees * RadiansPerDegree;
    public static double ToDegrees(double radians) => radians / RadiansPerDegree;

    // What goes out while a derivation listens is heard: a later argument that equals it is the same value.
    public static Length Length(Term meters) => Heard(Length(meters.Value), meters.Origin);
    public static Area Area(Term squareMeters) => Heard(Area(squareMeters.Value), squareMeters.Origin);
    public static Torque Torque(Term newtonMeters) => Heard(Torque(newtonMeters.Value), newtonMeters.Origin);
    public static Force Force(Term newtons) => Heard(Force(newtons.Value), newtons.Origin);
    public static Pressure Pressure(Term pascals) => Heard(Pressure(pascals.Value), pascals.Origin);
    public static Angle AngleFromRadians(Term radians) => Heard(AngleFromRadians(radians.Value), radians.Origin);
    public static Ratio Ratio(Term fraction) => Heard(Ratio(fraction.Value), fraction.Origin);
    public static Duration Duration(Term seconds) => Heard(Duration(seconds.Value), seconds.Origin);
    public static ForcePerLength Stiffness(Term newtonsPerMeter) => Heard(Stiffness(newtonsPerMeter.Value), newtonsPerMeter.Origin);
    public static TemperatureDelta TemperatureDelta(Term kelvins) => Heard(TemperatureDelta(kelvins.Value), kelvins.Origin);
    public static RotationalStiffness RotationalStiffness(Term newtonMetersPerRadian) => Heard(RotationalStiffness(newtonMetersPerRadian.Value), newtonMetersPerRadian.Origin);
    public static RotationalSpeed RotationalSpeedFromRadians(Term radiansPerSecond) =>
        Heard(RotationalSpeed(radiansPerSecond.Value / RadiansPerDegree), radiansPerSecond.Origin);

    /// <summary>A pure number that goes out.</summary>
    public static double Number(Term number)
    {
        if (Recording.IsAnywhere) Recording.Answer(typeof(double), number.Value, number.Origin);
        return number.Value;
    }

    public static Length Length(double meters) => UnitsNet.Length.FromMeters(meters);
    public static Area Area(double squareMeters) => UnitsNet.Area.FromSquareMeters(squareMeters);
    public static ForcePerLength Stiffness(double newtonsPerMeter) => ForcePerLength.FromNewtonsPerMeter(newtonsPerMeter);
    public static Torque Torque(double newtonMeters) => UnitsNet.Torque.FromNewtonMeters(newtonMeters);
    public static Force Force(double newtons) => UnitsNet.Force.FromNewtons(newtons);
    public static Pressure Pressure(double pascals) => UnitsNet.Pressure.FromPascals(pascals);
    public static Angle Angle(double degrees) => UnitsNet.Angle.FromDegrees(degrees);
    public static Angle AngleFromRadians(double radians) => UnitsNet.Angle.FromDegrees(radians / RadiansPerDegree);
    public static RotationalStiffness RotationalStiffness(double newtonMetersPerRadian) =>
        UnitsNet.RotationalStiffness.FromNewtonMetersPerRadian(newtonMetersPerRadian);
    public static Duration Duration(double seconds) => UnitsNet.Duration.FromSeconds(seconds);
    public static RotationalSpeed RotationalSpeed(double degreesPerSecond) => UnitsNet.RotationalSpeed.FromDegreesPerSecond(degreesPerSecond);
    public static TemperatureDelta TemperatureDelta(double kelvins) => UnitsNet.TemperatureDelta.FromKelvins(kelvins);
    public static Temperature Temperature(double celsius) => UnitsNet.Temperature.FromDegreesCelsius(celsius);
    public static Energy Energy(double joules) => UnitsNet.Energy.FromJoules(joules);
    public static RotationalStiffness RotationalStiffnessPerDegree(double newtonMetersPerDegree) => UnitsNet.RotationalStiffness.FromNewtonMetersPerDegree(newtonMetersPerDegree);
    public static Ratio Ratio(double fraction) => UnitsNet.Ratio.FromDecimalFractions(fraction);

    /// <summary>Without boxing: the JIT keeps one branch per closed type, on both targets and ahead of time.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Of<T>(T value) where T : struct, IQuantity
    {
        if (typeof(T) == typeof(Torque)) return Of(Unsafe.As<T, Torque>(ref value));
        if (typeof(T) == typeof(Angle)) return Of(Unsafe.As<T, Angle>(ref value));
        if (typeof(T) == typeof(Force)) return Of(Unsafe.As<T, Force>(ref value));
        if (typeof(T) == typeof(RotationalSpeed)) return Of(Unsafe.As<T, RotationalSpeed>(ref value));
        if (typeof(T) == typeof(Length)) return Of(Unsafe.As<T, Length>(ref value));
        throw Unsupported(typeof(T));
    }

    /// <summary>The same for a quantity of which only the interface is known; NaN for one that is not of the trade.</summary>
    public static double ValueOf(IQuantity value) => value switch
    {
        Torque quantity => Of(quantity),
        Force quantity => Of(quantity),
        Length quantity => Of(quantity),
        Angle quantity => Of(quantity),
        RotationalSpeed quantity => Of(quantity),
        Ratio quantity => Of(quantity),
        Pressure quantity => Of(quantity),
        Area quantity => Of(quantity),
        Duration quantity => Of(quantity),
        ForcePerLength quantity => Of(quantity),
        RotationalStiffness quantity => Of(quantity),
        CoefficientOfThermalExpansion quantity => Of(quantity),
        TemperatureDelta quantity => Of(quantity),
        Temperature quantity => Of(quantity),
        _ => double.NaN,
    };

    /// <summary>From the unit of <see cref="ValueOf{T}(T)"/> to that of symbols: equations take radians.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double ForSymbols<T>(double value) where T : struct, IQuantity =>
        typeof(T) == typeof(Angle) || typeof(T) == typeof(RotationalSpeed) ? value * RadiansPerDegree : value;

    /// <summary>The inverse of <see cref="Of{T}(T)"/>.</summary>
    public static T Make<T>(double value) where T : struct, IQuantity
    {
        if (typeof(T) == typeof(Torque)) return As<Torque, T>(Torque(value));
        if (typeof(T) == typeof(Angle)) return As<Angle, T>(Angle(value));
        if (typeof(T) == typeof(Force)) return As<Force, T>(Force(value));
        if (typeof(T) == typeof(RotationalSpeed)) return As<RotationalSpeed, T>(RotationalSpeed(value));
        if (typeof(T) == typeof(Length)) return As<Length, T>(Length(value));
        throw Unsupported(typeof(T));
    }

    /// <summary>The same for every quantity of the trade; <see cref="Of{T}(T)"/> keeps to those that a window can have.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double ValueOf<T>(T value) where T : struct, IQuantity
    {
        if (typeof(T) == typeof(Torque)) return Of(Unsafe.As<T, Torque>(ref value));
        if (typeof(T) == typeof(Force)) return Of(Unsafe.As<T, Force>(ref value));
        if (typeof(T) == typeof(Length)) return Of(Unsafe.As<T, Length>(ref value));
        if (typeof(T) == typeof(Angle)) return Of(Unsafe.As<T, Angle>(ref value));
        if (typeof(T) == typeof(RotationalSpeed)) return Of(Unsafe.As<T, RotationalSpeed>(ref value));
        if (typeof(T) == typeof(Ratio)) return Of(Unsafe.As<T, Ratio>(ref value));
        if (typeof(T) == typeof(Pressure)) return Of(Unsafe.As<T, Pressure>(ref value));
        if (typeof(T) == typeof(Area)) return Of(Unsafe.As<T, Area>(ref value));
        if (typeof(T) == typeof(Duration)) return Of(Unsafe.As<T, Duration>(ref value));
        if (typeof(T) == typeof(ForcePerLength)) return Of(Unsafe.As<T, ForcePerLength>(ref value));
        if (typeof(T) == typeof(RotationalStiffness)) return Of(Unsafe.As<T, RotationalStiffness>(ref value));
        if (typeof(T) == typeof(CoefficientOfThermalExpansion)) return Of(Unsafe.As<T, CoefficientOfThermalExpansion>(ref value));
        if (typeof(T) == typeof(TemperatureDelta)) return Of(Unsafe.As<T, TemperatureDelta>(ref value));
        if (typeof(T) == typeof(Temperature)) return Of(Unsafe.As<T, Temperature>(ref value));
        throw Unsupported(typeof(T));
    }

    /// <summary>The inverse of <see cref="Of{T}(T)"/>, and a ratio: what is relative has no window, but it has an uncertainty.</summary>
    public static T MakeOrRatio<T>(double value) where T : struct, IQuantity =>
        typeof(T) == typeof(Ratio) ? As<Ratio, T>(Ratio(value)) : Make<T>(value);

    /// <summary>The unit of <see cref="Of{T}(T)"/>, as printed.</summary>
    public static string BaseUnit<T>() where T : struct, IQuantity =>
        typeof(T) == typeof(Torque) ? "N·m"
        : typeof(T) == typeof(Angle) ? "°"
        : typeof(T) == typeof(Force) ? "N"
        : typeof(T) == typeof(RotationalSpeed) ? "°/s"
        : typeof(T) == typeof(Length) ? "m"
        : throw Unsupported(typeof(T));

    /// <summary>A share in percent, a temperature in °C, a stiffness per degree, as a refusal shows them; every other quantity, and one too large to convert, as given.</summary>
    public static IQuantity InStatedUnit(IQuantity value) => value switch
    {
        _ when !IsConvertible((double)value.Value) => value,
        Ratio ratio => ratio.ToUnit(RatioUnit.Percent),
        Temperature temperature => temperature.ToUnit(TemperatureUnit.DegreeCelsius),
        RotationalStiffness stiffness => stiffness.ToUnit(RotationalStiffnessUnit.NewtonMeterPerDegree),
        _ => value,
    };

    /// <summary>A quantity, known at run time, in the unit of this file, or a number as it is.</summary>
    public static double NumberOf<T>(T value) where T : struct => value switch
    {
        double number => number,
        IQuantity quantity when ShopScale.Of(quantity) is ShopScale scale => scale.Value(quantity),
        _ => throw Unsupported(typeof(T)),
    };

    /// <summary>A value in the unit of <see cref="ValueOf{T}(T)"/> as the trade writes it: a length in millimetres, a force in kilonewtons.</summary>
    public static T InShopUnit<T>(double value) where T : struct, IQuantity
    {
        if (typeof(T) == typeof(Length)) return As<Length, T>(UnitsNet.Length.FromMillimeters(value * 1e3));
        if (typeof(T) == typeof(Force)) return As<Force, T>(UnitsNet.Force.FromKilonewtons(value * 1e-3));
        if (typeof(T) == typeof(Pressure)) return As<Pressure, T>(UnitsNet.Pressure.FromMegapascals(value * 1e-6));
        if (typeof(T) == typeof(Area)) return As<Area, T>(UnitsNet.Area.FromSquareMillimeters(value * 1e6));
        if (typeof(T) == typeof(ForcePerLength)) return As<ForcePerLength, T>(ForcePerLength.FromKilonewtonsPerMillimeter(value * 1e-6));
        if (typeof(T) == typeof(Ratio)) return As<Ratio, T>(UnitsNet.Ratio.FromPercent(value * 100));
        if (typeof(T) == typeof(CoefficientOfThermalExpansion)) return As<CoefficientOfThermalExpansion, T>(CoefficientOfThermalExpansion.FromPerKelvin(value));
        if (typeof(T) == typeof(TemperatureDelta)) return As<TemperatureDelta, T>(TemperatureDelta(value));
        if (typeof(T) == typeof(Temperature)) return As<Temperature, T>(Temperature(value));
        return Make<T>(value);
    }

    /// <summary>Whether a number of any unit can be converted: beyond, UnitsNet would refuse it in words that name neither the argument nor what is permitted.</summary>
    public static bool IsConvertible(double value) => Math.Abs(value) < Furthest;

    /// <summary>An answer in another unit than the one above.</summary>
    public static T Heard<T>(T answer, Term term) where T : struct, IQuantity => Heard(answer, term.Origin);

    private static T Heard<T>(T answer, long origin) where T : struct, IQuantity
    {
        if (Recording.IsAnywhere) Recording.Answer(typeof(T), ValueOf(answer), origin);
        return answer;
    }

    private static double Beyond(double value) => value > 0 ? double.MaxValue : -double.MaxValue;

    private static TTo As<TFrom, TTo>(TFrom value) => Unsafe.As<TFrom, TTo>(ref value);

    public static NotSupportedException Unsupported(Type type) =>
        new($"{type.Name} is not a quantity of tightening: use Torque, Angle, Force, RotationalSpeed or Length.");
}
