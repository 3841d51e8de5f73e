using UnitsNet;

namespace Fastening.Tests.House;

/// <summary>A valid value for every parameter of the public face, so that one of them at a time can be made hostile.</summary>
internal static partial class Samples
{
    private static readonly ScrewThread M16 = ScrewThread.Parse("M16");
    private static readonly ThreadEngagement Engagement = ThreadEngagement.For(M16, Length.FromMillimeters(16));
    private static readonly FrictionCoefficients Friction = new(thread: 0.12, bearing: 0.10);
    private static readonly FrictionTorqueModel Model = TorquePreloadModel.ForHexagonBolt(M16, Friction);

    /// <summary>One instance per type; windows, units and entered values stand for all quantities with Torque.</summary>
    private static readonly Dictionary<Type, object> Instances = new(
        Joints().Concat(RotationTightenings()).Concat(Traces()).Concat(Uncertainties()).Concat(Decisions()).Concat(Qualities()).Concat(Calibrations()).Concat(Procedures())
            .DistinctBy(pair => pair.Key))
    {
        [typeof(ScrewThread)] = M16,
        [typeof(ThreadLimits)] = ThreadLimits.ForMediumFit(M16),
        [typeof(ThreadEngagement)] = Engagement,
        [typeof(EngagementStrength)] = Engagement.StrengthFor(
            Pressure.FromMegapascals(800), Pressure.FromMegapascals(960), Pressure.FromMegapascals(500), Pressure.FromMegapascals(400)),
        [typeof(HotStrength)] = new HotStrength(Temperature.FromDegreesCelsius(150), Pressure.FromMegapascals(500)),
        [typeof(PropertyClass)] = PropertyClass.Parse("8.8"),
        [typeof(BoltStrength)] = PropertyClass.Parse("8.8").StrengthFor(M16),
        [typeof(BoltGrade)] = BoltGrade.Parse("ASTM A325M"),
        [typeof(ElasticMaterial)] = ElasticMaterial.GreyCastIron,
        [typeof(PublishedPreload)] = PublishedPreload.ReusableJoint(PropertyClass.Parse("8.8").StrengthFor(M16), M16),
        [typeof(FrictionCoefficients)] = Friction,
        [typeof(FrictionRange)] = new FrictionRange(Friction, new FrictionCoefficients(0.16, 0.14)),
        [typeof(BearingSurface)] = BearingSurface.ForHexagonHead(M16),
        [typeof(TorqueConvention)] = TorqueConvention.Iso16047,
        [typeof(TorquePreloadModel)] = Model,
        [typeof(FrictionTorqueModel)] = Model,
        [typeof(TorquePreloadRange)] = TorquePreloadRange.OfFriction(Model, new FrictionRange(Friction, new FrictionCoefficients(0.16, 0.14))),
        [typeof(NutFactorModel)] = TorquePreloadModel.FromNutFactor(0.18, Length.FromMillimeters(16)),
        [typeof(TorqueWrench)] = new TorqueWrench(Length.FromMillimeters(400)).WithAccuracy(Ratio.FromPercent(4)),
        [typeof(PreloadScatter)] = PreloadScatter.FromPlusMinus(Ratio.FromPercent(25)),
        [typeof(TorqueMultiplier)] = new TorqueMultiplier(gearRatio: 5, efficiency: 0.92),
        [typeof(CoaxialExtension)] = CoaxialExtension.Round(Length.FromMillimeters(200), Length.FromMillimeters(12), Pressure.FromGigapascals(79)),
        [typeof(WrenchFit)] = new TorqueWrench(Length.FromMillimeters(400)).FitOf(Torque.FromNewtonMeters(100)),
        [typeof(ToleranceWindow<Torque>)] = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(48), Torque.FromNewtonMeters(52)),
        [typeof(RotationRateLimit)] = RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(30)),
        [typeof(ShopUnit<Torque>)] = ShopUnit.PoundForceFoot,
        [typeof(Entered<Torque>)] = new Entered<Torque>(85, ShopUnit.PoundForceFoot),
    };

    private static readonly Dictionary<Type, object> Quantities = new()
    {
        [typeof(Length)] = Length.FromMillimeters(10),
        [typeof(Torque)] = Torque.FromNewtonMeters(50),
        [typeof(Force)] = Force.FromKilonewtons(20),
        [typeof(Pressure)] = Pressure.FromMegapascals(500),
        [typeof(Angle)] = Angle.FromDegrees(30),
        [typeof(Duration)] = Duration.FromSeconds(3),
        [typeof(RotationalSpeed)] = RotationalSpeed.FromDegreesPerSecond(20),
        [typeof(Ratio)] = Ratio.FromPercent(4),
        [typeof(ForcePerLength)] = ForcePerLength.FromKilonewtonsPerMillimeter(400),
        [typeof(Temperature)] = Temperature.FromDegreesCelsius(60),
        [typeof(TemperatureDelta)] = TemperatureDelta.FromKelvins(40),
        [typeof(CoefficientOfThermalExpansion)] = CoefficientOfThermalExpansion.FromPpmPerKelvin(12),
    };

    /// <summary>Where a parameter's name decides what is valid: what must be larger or smaller than its neighbour.</summary>
    private static readonly Dictionary<(Type, string), object> ByName = new(
        JointNames().Concat(RotationTighteningNames()).Concat(TraceNames()).Concat(UncertaintyNames()).Concat(DecisionNames()).Concat(QualityNames()).Concat(CalibrationNames())
            .Concat(ProcedureNames()).DistinctBy(pair => pair.Key))
    {
        [(typeof(Length), "outer")] = Length.FromMillimeters(22),
        [(typeof(Length), "inner")] = Length.FromMillimeters(17),
        [(typeof(Length), "outerDiameter")] = Length.FromMillimeters(30),
        [(typeof(Length), "hole")] = Length.FromMillimeters(18),
        [(typeof(Length), "leverLength")] = Length.FromMillimeters(400),
        [(typeof(Length), "diameter")] = Length.FromMillimeters(36),
        [(typeof(Length), "pitch")] = Length.FromMillimeters(4),
        [(typeof(Length), "pitchDiameter")] = Length.FromMillimeters(30),
        [(typeof(Length), "rootDiameter")] = Length.FromMillimeters(28),
        [(typeof(Length), "externalMajorMinimum")] = Length.FromMillimeters(15.7),
        [(typeof(Length), "externalPitchMinimum")] = Length.FromMillimeters(14.5),
        [(typeof(Length), "internalMinorMaximum")] = Length.FromMillimeters(14.2),
        [(typeof(Length), "internalPitchMaximum")] = Length.FromMillimeters(14.9),
        [(typeof(Length), "widthAcrossFlats")] = Length.FromMillimeters(24),
        [(typeof(Length), "nutHeight")] = Length.FromMillimeters(18),
        [(typeof(Length), "threadDepth")] = Length.FromMillimeters(30),
        [(typeof(Torque), "upper")] = Torque.FromNewtonMeters(60),
        [(typeof(Torque), "lower")] = Torque.FromNewtonMeters(40),
        [(typeof(Torque), "maximum")] = Torque.FromNewtonMeters(90),
        [(typeof(Torque), "high")] = Torque.FromNewtonMeters(90),
        [(typeof(Torque), "minus")] = Torque.FromNewtonMeters(2),
        [(typeof(Torque), "plus")] = Torque.FromNewtonMeters(2),
        [(typeof(Torque), "guardBand")] = Torque.FromNewtonMeters(0.5),
        [(typeof(Torque), "resolution")] = Torque.FromNewtonMeters(0.5),
        [(typeof(Pressure), "tensileStrength")] = Pressure.FromMegapascals(800),
        [(typeof(Pressure), "shearModulus")] = Pressure.FromGigapascals(79),
        [(typeof(double), "threadsPerInch")] = 8.0,
        [(typeof(double), "lowNutFactor")] = 0.1,
        [(typeof(double), "highNutFactor")] = 0.3,
        [(typeof(double), "gearRatio")] = 5.0,
        [(typeof(double), "tighteningFactor")] = 1.6,
        [(typeof(double), "value")] = 85.0,
        [(typeof(Ratio), "utilisation")] = Ratio.FromPercent(90),
        [(typeof(Ratio), "residualTorsion")] = Ratio.FromPercent(50),
        [(typeof(string), "designation")] = "M16",
        [(typeof(string), "name")] = "36 % nickel steel",
    };

    public static object? InstanceOf(Type type) => Instances.GetValueOrDefault(type);

    public static object? For(Type type, string name)
    {
        Type bare = Nullable.GetUnderlyingType(type) ?? type;
        if (ByName.TryGetValue((bare, name), out object? named)) return named;
        if (Quantities.TryGetValue(bare, out object? quantity)) return quantity;
        if (Instances.TryGetValue(bare, out object? instance)) return instance;
        if (bare == typeof(double)) return 0.15;
        if (bare == typeof(int)) return 2;
        return bare.IsEnum ? Enum.ToObject(bare, 0) : null;
    }

    /// <summary>Values of a type that no domain of the trade holds: not finite, far too large, far below zero.</summary>
    public static object[] HostileFor(Type type)
    {
        Type bare = Nullable.GetUnderlyingType(type) ?? type;
        if (bare == typeof(double)) return [double.NaN, double.PositiveInfinity, double.NegativeInfinity, 1e200, -1e200];
        if (bare == typeof(int)) return [int.MinValue, int.MaxValue];
        if (bare.IsEnum) return [Enum.ToObject(bare, 99), Enum.ToObject(bare, -1 & 0xFF)];
        if (!Quantities.TryGetValue(bare, out object? sample)) return [];
        var unit = ((IQuantity)sample).QuantityInfo.BaseUnitInfo.Value;
        return [Quantity.From(1e200, unit), Quantity.From(-1e200, unit)];
    }
}
