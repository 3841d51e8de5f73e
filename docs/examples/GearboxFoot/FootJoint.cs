using Fastening;
using UnitsNet;

namespace GearboxFoot;

/// <summary>What is stated: bolt, parts, friction, tool and temperatures. Everything here is invented.</summary>
internal sealed class FootJoint
{
    public FootJoint()
    {
        Length grip = Length.FromMillimeters(2 * WasherMm + FootMm + FrameMm);
        Bolt = BoltCompliance.Vdi2230(
            Thread, length: Length.FromMillimeters(110), threadedLength: Length.FromMillimeters(46), grip, BoltHead.Hexagon, ElasticMaterial.Steel);
        var washer = new ClampedLayer(Length.FromMillimeters(WasherMm), ElasticMaterial.Steel);
        Parts = ClampedStack.Vdi2230Cone(
            [
                washer, new ClampedLayer(Length.FromMillimeters(FootMm), ElasticMaterial.GreyCastIron),
                new ClampedLayer(Length.FromMillimeters(FrameMm), ElasticMaterial.Steel), washer,
            ],
            bearingDiameter: Length.FromMillimeters(28.2), hole: Length.FromMillimeters(22), outerDiameter: Length.FromMillimeters(64), JointForm.ThroughBolt);
        Joint = new Joint(Bolt, Parts);
        AtLowestFriction = TorquePreloadModel.FromFriction(Thread, BearingSurface.ForHexagonNut(Thread), Friction.Low);
        PermittedForTorque = AtLowestFriction.PermittedPreload(Strength, Utilisation);
        PermittedForRotation = AtHighestFriction.PermittedPreload(Strength, Utilisation);
    }

    public static double WasherMm => 3;

    public static double FootMm => 45;

    public static double FrameMm => 30;

    public ScrewThread Thread { get; } = ScrewThread.Parse("M20");

    public PropertyClass PropertyClass { get; } = PropertyClass.Parse("8.8");

    public BoltStrength Strength => PropertyClass.StrengthFor(Thread);

    public Ratio Utilisation { get; } = Ratio.FromPercent(90);

    public FrictionRange Friction { get; } = new(
        low: new FrictionCoefficients(thread: 0.10, bearing: 0.09), high: new FrictionCoefficients(thread: 0.16, bearing: 0.15));

    public BoltCompliance Bolt { get; }

    public ClampedStack Parts { get; }

    public Joint Joint { get; }

    public FrictionTorqueModel AtLowestFriction { get; }

    public FrictionTorqueModel AtHighestFriction => AtLowestFriction.WithFriction(Friction.High);

    /// <summary>A torque is chosen at the lowest friction: there it gives most preload.</summary>
    public Force PermittedForTorque { get; }

    /// <summary>A rotation gives its preload at any friction, so the bolt is judged where it is twisted most: at the highest.</summary>
    public Force PermittedForRotation { get; }

    public Force RequiredClamp { get; } = Force.FromKilonewtons(72);

    /// <summary>Wrench accuracy included.</summary>
    public ToleranceWindow<Torque> SnugTorque { get; } = ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(80), minus: Ratio.FromPercent(6), plus: Ratio.FromPercent(6));

    /// <summary>How far the angle reached may be from the angle set, start at snug and reading together.</summary>
    public Angle RotationTolerance { get; } = Angle.FromDegrees(3);

    public double TorqueTolerancePercent { get; } = 6;

    /// <summary>Of the stiffness of bolt and parts: two standard uncertainties of 8 %, calculated and not yet measured.</summary>
    public Ratio StiffnessError { get; } = Ratio.FromPercent(16);

    public CoaxialExtension Extension { get; } = CoaxialExtension.Square(
        Length.FromMillimeters(150), side: Length.FromMillimeters(19.05), shearModulus: Pressure.FromGigapascals(79));

    public Embedding Embedding { get; } = Embedding.ForRoughness(SurfaceRoughness.Rz10To40, EmbeddingLoad.Shear, threads: 1, bearingFaces: 2, interfaces: 3);

    /// <summary>Rises since the joint was tightened, layers from the head on.</summary>
    public IReadOnlyList<(string State, JointTemperatures Temperatures)> Temperatures { get; } =
    [
        ("cold, as tightened", Rises(0, 0, 0, 0, 0)),
        ("running, oil warm", Rises(30, 38, 42, 20, 18)),
        ("warm start, the bolt lags", Rises(10, 28, 34, 8, 4)),
        ("washed down cold, the bolt still warm", Rises(28, 14, 16, 12, 12)),
    ];

    private static JointTemperatures Rises(double bolt, params double[] layers) =>
        JointTemperatures.ByLayer(TemperatureDelta.FromKelvins(bolt), [.. layers.Select(rise => TemperatureDelta.FromKelvins(rise))]);
}
