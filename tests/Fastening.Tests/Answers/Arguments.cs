using System.Reflection;
using UnitsNet;

namespace Fastening.Tests.Answers;

/// <summary>Random values of parameters, by type and by the name the parameter had when the record was first written.</summary>
internal static class Arguments
{
    /// <summary>Low and high, in the unit that the sample bears.</summary>
    private static readonly Dictionary<Type, (IQuantity Low, IQuantity High)> Quantities = new()
    {
        [typeof(Length)] = (Length.FromMillimeters(8), Length.FromMillimeters(30)),
        [typeof(Area)] = (Area.FromSquareMillimeters(80), Area.FromSquareMillimeters(250)),
        [typeof(Torque)] = (Torque.FromNewtonMeters(44), Torque.FromNewtonMeters(56)),
        [typeof(Force)] = (Force.FromKilonewtons(15), Force.FromKilonewtons(60)),
        [typeof(Pressure)] = (Pressure.FromMegapascals(300), Pressure.FromMegapascals(900)),
        [typeof(Angle)] = (Angle.FromDegrees(10), Angle.FromDegrees(90)),
        [typeof(Duration)] = (Duration.FromSeconds(0.3), Duration.FromSeconds(3)),
        [typeof(RotationalSpeed)] = (RotationalSpeed.FromDegreesPerSecond(5), RotationalSpeed.FromDegreesPerSecond(60)),
        [typeof(RotationalStiffness)] = (RotationalStiffness.FromNewtonMetersPerDegree(20), RotationalStiffness.FromNewtonMetersPerDegree(90)),
        [typeof(Ratio)] = (Ratio.FromPercent(2), Ratio.FromPercent(20)),
        [typeof(ForcePerLength)] = (ForcePerLength.FromKilonewtonsPerMillimeter(200), ForcePerLength.FromKilonewtonsPerMillimeter(900)),
        [typeof(Temperature)] = (Temperature.FromDegreesCelsius(25), Temperature.FromDegreesCelsius(280)),
        [typeof(TemperatureDelta)] = (TemperatureDelta.FromKelvins(10), TemperatureDelta.FromKelvins(80)),
        [typeof(CoefficientOfThermalExpansion)] = (CoefficientOfThermalExpansion.FromPpmPerKelvin(5), CoefficientOfThermalExpansion.FromPpmPerKelvin(24)),
    };

    /// <summary>Where a name decides what is valid; numbers in mm, N·m, kN, MPa, degrees, seconds, per cent.</summary>
    private static readonly Dictionary<(Type Type, string Name), (double Low, double High)> ByName = new()
    {
        [(typeof(Length), "outer")] = (22, 40),
        [(typeof(Length), "inner")] = (16, 20),
        [(typeof(Length), "outerDiameter")] = (40, 70),
        [(typeof(Length), "hole")] = (16.8, 18),
        [(typeof(Length), "bore")] = (8, 20),
        [(typeof(Length), "leverLength")] = (200, 700),
        [(typeof(Length), "diameter")] = (14, 36),
        [(typeof(Length), "pitch")] = (1, 4),
        [(typeof(Length), "pitchDiameter")] = (12, 14),
        [(typeof(Length), "rootDiameter")] = (10, 12),
        [(typeof(Length), "externalMajorMinimum")] = (15.6, 15.8),
        [(typeof(Length), "externalPitchMinimum")] = (14.4, 14.6),
        [(typeof(Length), "internalMinorMaximum")] = (14.1, 14.3),
        [(typeof(Length), "internalPitchMaximum")] = (14.8, 15),
        [(typeof(Length), "widthAcrossFlats")] = (24, 50),
        [(typeof(Length), "nutHeight")] = (12, 40),
        [(typeof(Length), "threadDepth")] = (30, 60),
        [(typeof(Length), "length")] = (30, 80),
        [(typeof(Length), "grip")] = (30, 60),
        [(typeof(Length), "boltLength")] = (30, 160),
        [(typeof(Length), "clampedThickness")] = (20, 120),
        [(typeof(Length), "tappedThickness")] = (8, 20),
        [(typeof(Length), "bearingDiameter")] = (20, 26),
        [(typeof(Length), "smallDiameter")] = (20, 26),
        [(typeof(Length), "interfaceDiameter")] = (30, 60),
        [(typeof(Length), "waistDiameter")] = (5, 9),
        [(typeof(Length), "error")] = (0.5, 2),
        [(typeof(Length), "lengthError")] = (0.5, 2),
        [(typeof(Length), "frictionRadius")] = (20, 60),
        [(typeof(Length), "total")] = (0.003, 0.02),
        [(typeof(Torque), "upper")] = (57, 65),
        [(typeof(Torque), "lower")] = (35, 43),
        [(typeof(Torque), "low")] = (1, 4),
        [(typeof(Torque), "high")] = (4, 9),
        [(typeof(Torque), "maximum")] = (90, 220),
        [(typeof(Torque), "minus")] = (1, 4),
        [(typeof(Torque), "plus")] = (1, 4),
        [(typeof(Torque), "guardBand")] = (0.2, 1.5),
        [(typeof(Torque), "resolution")] = (0.1, 1),
        [(typeof(Torque), "range")] = (0.2, 1),
        [(typeof(Torque), "expandedUncertainty")] = (0.2, 1.2),
        [(typeof(Torque), "standardUncertainty")] = (0.1, 0.6),
        [(typeof(Torque), "standardDeviation")] = (0.3, 1.5),
        [(typeof(Torque), "prevailingTorque")] = (1, 9),
        [(typeof(Torque), "threadTorque")] = (20, 30),
        [(typeof(Torque), "snugTorque")] = (10, 40),
        [(typeof(Torque), "peakToPeak")] = (0.5, 3),
        [(typeof(Torque), "torqueDrop")] = (0.5, 3),
        [(typeof(Torque), "runningTorque")] = (0.5, 2),
        [(typeof(Torque), "startTorque")] = (5, 30),
        [(typeof(Force), "maximum")] = (61, 100),
        [(typeof(Force), "leastAxialLoad")] = (-6, 3),
        [(typeof(Force), "greatestAxialLoad")] = (4, 24),
        [(typeof(Force), "axialLoad")] = (-5, 15),
        [(typeof(Force), "load")] = (1, 6),
        [(typeof(Force), "elasticLimit")] = (60, 200),
        [(typeof(Force), "appliedTension")] = (1, 14),
        [(typeof(Pressure), "tensileStrength")] = (820, 1200),
        [(typeof(Pressure), "yieldStrength")] = (500, 800),
        [(typeof(Pressure), "proofLoadStress")] = (400, 600),
        [(typeof(Pressure), "greatestTensileStrength")] = (900, 1200),
        [(typeof(Pressure), "shearModulus")] = (75_000, 82_000),
        [(typeof(Pressure), "youngsModulus")] = (100_000, 210_000),
        [(typeof(Pressure), "amplitude")] = (20, 60),
        [(typeof(Angle), "includedAngle")] = (60, 170),
        [(typeof(Angle), "loadFlankAngle")] = (5, 40),
        [(typeof(Angle), "halfAngle")] = (25, 35),
        [(typeof(Angle), "pullOffSquare")] = (-12, 12),
        [(typeof(Angle), "angleFromHandle")] = (-120, 120),
        [(typeof(Angle), "windUp")] = (1, 4),
        [(typeof(Angle), "toolRotation")] = (40, 90),
        [(typeof(Angle), "smoothingWindow")] = (5, 12),
        [(typeof(Angle), "offset")] = (1, 6),
        [(typeof(Angle), "angleResolution")] = (0.1, 1),
        [(typeof(Angle), "angleError")] = (0.2, 2),
        [(typeof(Angle), "minus")] = (1, 4),
        [(typeof(Angle), "plus")] = (1, 4),
        [(typeof(Angle), "error")] = (0.5, 2),
        [(typeof(Duration), "samplingInterval")] = (0.005, 0.02),
        [(typeof(Duration), "window")] = (0.2, 0.6),
        [(typeof(Ratio), "utilisation")] = (60, 100),
        [(typeof(Ratio), "residualTorsion")] = (30, 100),
        [(typeof(Ratio), "populationShare")] = (80, 98),
        [(typeof(Ratio), "slopeFraction")] = (30, 70),
        [(typeof(Ratio), "share")] = (20, 80),
        [(typeof(Ratio), "flatShare")] = (10, 90),
    };

    private static readonly Dictionary<string, (double Low, double High)> Numbers = new(StringComparer.Ordinal)
    {
        ["threadsPerInch"] = (6, 14),
        ["nutFactor"] = (0.1, 0.3),
        ["meanNutFactor"] = (0.1, 0.16),
        ["lowNutFactor"] = (0.08, 0.15),
        ["highNutFactor"] = (0.16, 0.3),
        ["gearRatio"] = (2, 25),
        ["efficiency"] = (0.7, 0.99),
        ["tighteningFactor"] = (1.1, 3),
        ["value"] = (1, 100),
        ["factor"] = (0.1, 0.95),
        ["low"] = (0.1, 0.4),
        ["high"] = (0.5, 0.9),
        ["safety"] = (1, 2),
        ["partialFactor"] = (1.1, 1.4),
        ["holeFactor"] = (0.6, 1),
        ["slipFactor"] = (0.2, 0.5),
        ["poissonRatio"] = (0.25, 0.34),
        ["guardBandFactor"] = (0.2, 1),
        ["probability"] = (0.9, 0.99),
        ["coverageProbability"] = (0.8, 0.99),
        ["confidence"] = (0.8, 0.99),
        ["coverageFactor"] = (1.5, 3),
        ["degreesOfFreedom"] = (3, 40),
        ["loadIntroductionFactor"] = (0.2, 0.9),
        ["bolt"] = (0.8, 1),
        ["parts"] = (0.8, 1),
        ["estimate"] = (1, 3),
        ["limit"] = (1, 4),
        ["sensitivity"] = (0.5, 2),
    };

    private static readonly Dictionary<string, (int Low, int High)> Counts = new(StringComparer.Ordinal)
    {
        ["count"] = (5, 40),
        ["subgroupSize"] = (2, 5),
        ["months"] = (6, 18),
        ["cycles"] = (1000, 6000),
        ["draws"] = (1000, 3000),
        ["capacity"] = (8, 32),
        ["index"] = (0, 200),
        ["start"] = (0, 100),
        ["readingsPerPoint"] = (3, 10),
        ["rows"] = (2, 4),
        ["columns"] = (2, 4),
    };

    private static readonly Dictionary<string, string> Texts = new(StringComparer.Ordinal)
    {
        ["step"] = "turn",
        ["fastener"] = "B2",
        ["tool"] = "W-17",
        ["designation"] = "II A",
        ["unit"] = "mm",
    };

    public static bool Knows(ParameterInfo parameter)
    {
        Type bare = Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType;
        return bare == typeof(double) || bare == typeof(int) || bare == typeof(long) || bare == typeof(ulong) || bare == typeof(bool) || bare == typeof(string)
            || bare == typeof(DateTimeOffset) || bare == typeof(TemperatureDelta[]) || bare.IsEnum || Quantities.ContainsKey(bare) || RandomObjects.Makers.ContainsKey(TypeNames.InRecord(bare));
    }

    public static object? For(Type type, string name, Draw draw)
    {
        Type? nullable = Nullable.GetUnderlyingType(type);
        if (nullable is not null && draw.Chance(0.3)) return null;
        Type bare = nullable ?? type;
        if (Quantities.TryGetValue(bare, out (IQuantity Low, IQuantity High) span))
        {
            (double low, double high) = ByName.TryGetValue((bare, name), out (double, double) named) ? named : ((double)span.Low.Value, (double)span.High.Value);
            Enum unit = span.Low is Pressure { Unit: not UnitsNet.Units.PressureUnit.Megapascal } ? UnitsNet.Units.PressureUnit.Megapascal : span.Low.Unit;
            return Quantity.From(draw.Between(low, high), unit);
        }

        if (bare == typeof(double))
        {
            (double low, double high) = Numbers.GetValueOrDefault(name, (0.08, 0.2));
            return draw.Between(low, high);
        }

        if (bare == typeof(int))
        {
            (int low, int high) = Counts.GetValueOrDefault(name, (1, 3));
            return low + draw.Next(high - low + 1);
        }

        if (bare == typeof(long)) return (long)(1 + draw.Next(50));
        if (bare == typeof(ulong)) return (ulong)draw.Next(1000);
        if (bare == typeof(bool)) return draw.Chance(0.5);
        if (bare == typeof(string)) return Texts.GetValueOrDefault(name, "x");
        if (bare == typeof(DateTimeOffset)) return new DateTimeOffset(2025, 9, 1, 8, 0, 0, TimeSpan.Zero).AddDays(draw.Next(300));
        if (bare == typeof(TemperatureDelta[])) return Enumerable.Range(0, 2).Select(_ => TemperatureDelta.FromKelvins(draw.Between(10, 80))).ToArray();
        return bare.IsEnum ? draw.Of(Enum.GetValues(bare).Cast<object>().ToArray()) : draw.Of(RandomObjects.Pool(TypeNames.InRecord(bare)));
    }
}
