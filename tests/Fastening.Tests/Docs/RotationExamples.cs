using UnitsNet;

namespace Fastening.Tests.Docs;

/// <summary>The code of the guide on tightening by rotation, asserted.</summary>
public class RotationExamples
{
    private static readonly ScrewThread Thread = ScrewThread.Parse("M20");
    private static readonly BoltStrength Strength = PropertyClass.Parse("8.8").StrengthFor(Thread);
    private static readonly FrictionRange Friction = new(new FrictionCoefficients(0.10, 0.09), new FrictionCoefficients(0.16, 0.15));

    private static Joint ExampleJoint
    {
        get
        {
            BoltCompliance bolt = BoltCompliance.Vdi2230(
                Thread, Length.FromMillimeters(110), Length.FromMillimeters(46), Length.FromMillimeters(81), BoltHead.Hexagon, ElasticMaterial.Steel);
            return new Joint(bolt, ClampedStack.Vdi2230Cone(
                [new ClampedLayer(Length.FromMillimeters(51), ElasticMaterial.GreyCastIron), new ClampedLayer(Length.FromMillimeters(30), ElasticMaterial.Steel)],
                Length.FromMillimeters(28.2), Length.FromMillimeters(22), Length.FromMillimeters(64), JointForm.ThroughBolt));
        }
    }

    private static RotationTightening ExampleTightening => new(
        ExampleJoint, TorquePreloadModel.ForHexagonBolt(Thread, Friction.Low), Torque.FromNewtonMeters(80),
        TorquePreloadModel.ForHexagonBolt(Thread, Friction.High).PermittedPreload(Strength, utilisation: Ratio.FromPercent(90)));

    [Fact]
    public void Snug_then_rotation_example()
    {
        ScrewThread thread = Thread;
        FrictionRange friction = Friction;
        BoltStrength strength = Strength;

        #region snug-then-rotation
        BoltCompliance bolt = BoltCompliance.Vdi2230(
            thread, length: Length.FromMillimeters(110), threadedLength: Length.FromMillimeters(46),
            grip: Length.FromMillimeters(81), BoltHead.Hexagon, ElasticMaterial.Steel);
        ClampedStack parts = ClampedStack.Vdi2230Cone(
            [
                new ClampedLayer(Length.FromMillimeters(51), ElasticMaterial.GreyCastIron),
                new ClampedLayer(Length.FromMillimeters(30), ElasticMaterial.Steel),
            ],
            bearingDiameter: Length.FromMillimeters(28.2), hole: Length.FromMillimeters(22), outerDiameter: Length.FromMillimeters(64), JointForm.ThroughBolt);

        FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(thread, friction.Low);
        Force limit = model.WithFriction(friction.High).PermittedPreload(strength, utilisation: Ratio.FromPercent(90));
        var tightening = new RotationTightening(new Joint(bolt, parts), model, snugTorque: Torque.FromNewtonMeters(80), elasticLimit: limit);

        Angle toSet = tightening.RotationFor(Force.FromKilonewtons(100));       // refused below snug and past the limit
        PreloadAfterRotation there = tightening.PreloadAt(Angle.FromDegrees(60));
        bool holds = there.IsElastic;                                           // false: the bolt yields before
        #endregion

        // By hand: (100 kN less the snug preload) times 360°/2.5 mm times the two compliances.
        double snug = tightening.SnugPreload.Newtons;
        Close.To((100_000 - snug) * (bolt.MetersPerNewton + parts.MetersPerNewton) * 360 / 0.0025, toSet.Degrees);
        Assert.False(holds);
    }

    [Fact]
    public void Range_example()
    {
        RotationTightening tightening = ExampleTightening;
        FrictionRange friction = Friction;

        #region rotation-range
        ToleranceWindow<Angle> rotation = ToleranceWindow.FromDeviations(Angle.FromDegrees(28), Angle.FromDegrees(3), Angle.FromDegrees(3));
        ToleranceWindow<Torque> snug = ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(80), minus: Ratio.FromPercent(6), plus: Ratio.FromPercent(6));
        PreloadRangeAfterRotation range = tightening
            .WithStiffnessError(Ratio.FromPercent(16))                          // limit of error of the calculated stiffness
            .PreloadRangeAt(rotation, snug, friction);                          // before embedding and neighbours
        bool staysElastic = range.IsElastic;
        Force uncertainty = tightening.StandardUncertaintyAt(
            rotation.TwoSided.Target,
            snugPreloadUncertainty: MeasurementUncertainty.Standard(Force.FromKilonewtons(2.4)),
            rotationUncertainty: MeasurementUncertainty.Standard(Angle.FromDegrees(1.2)),
            complianceUncertainty: MeasurementUncertainty.Standard(Ratio.FromPercent(8)));
        #endregion

        Range<Force> torqueAlone = TorquePreloadModel.ForHexagonBolt(Thread, friction.Low).PreloadRangeAt(Torque.FromNewtonMeters(320), friction);
        PreloadRangeAfterRotation asCalculated = tightening.PreloadRangeAt(rotation, snug, friction);
        Assert.True(asCalculated.Range.HighOverLow < torqueAlone.HighOverLow);
        Assert.True(range.Range.Low < asCalculated.Range.Low);
        Assert.Equal(range.Range.High <= tightening.ElasticLimit, staysElastic);
        Assert.InRange(uncertainty.Kilonewtons, 2.4, 10);
    }

    [Fact]
    public void Twist_example()
    {
        RotationTightening tightening = ExampleTightening;

        #region rotation-twist
        RotationTightening atTheWrench = tightening
            .WithBoltTwist()
            .WithCoaxialExtension(CoaxialExtension.Square(
                Length.FromMillimeters(150), side: Length.FromMillimeters(19.05), shearModulus: Pressure.FromGigapascals(79)));
        Angle further = atTheWrench.RotationFor(Force.FromKilonewtons(100));    // more than without the extension
        double slope = atTheWrench.ElasticSlope.NewtonMetersPerDegree;          // what the tool shows while all is elastic
        Angle ofTheNut = atTheWrench.FastenerRotationAt(
            Angle.FromDegrees(31), startTorque: Torque.FromNewtonMeters(80), endTorque: Torque.FromNewtonMeters(295));
        #endregion

        Assert.True(further > tightening.RotationFor(Force.FromKilonewtons(100)));
        Assert.True(slope < tightening.ElasticSlope.NewtonMetersPerDegree);
        Close.To(31 - 215 * 0.15 / (79e9 * 0.140577 * Math.Pow(0.01905, 4)) * 180 / Math.PI, ofTheNut.Degrees);
    }

    [Fact]
    public void Published_example()
    {
        RotationTightening tightening = ExampleTightening;
        FrictionRange friction = Friction;

        #region rotation-published
        PublishedRotation american = PublishedRotation.Rcsc2014(
            boltLength: Length.FromMillimeters(110), diameter: Length.FromMillimeters(20), SlopedFaces.None);
        PublishedRotation european = PublishedRotation.En1090Part2(
            clampedThickness: Length.FromMillimeters(81), diameter: Length.FromMillimeters(20));
        RotationComparison comparison = tightening.Compare(european, requiredPreload: Force.FromKilonewtons(90));
        bool yields = comparison.CarriesPastElasticLimit;                       // true, and it is meant to
        bool applies = comparison.HasSteelGrip;                                 // false: cast iron in the grip
        RotationComparison worst = tightening.Compare(european, Force.FromKilonewtons(90), friction);
        bool reached = worst.ReachesRequired;                                   // at the least turn and the highest friction
        #endregion

        Assert.True(reached);
        Assert.True(worst.AtLeast.Preload < comparison.AtLeast.Preload);
        Assert.Equal((180, 90), (american.Rotation.Degrees, european.Rotation.Degrees));
        Assert.True(yields);
        Assert.False(applies);
    }

    [Fact]
    public void Structural_example()
    {
        #region rotation-structural
        StructuralTightening combined = StructuralTightening.CombinedMethodK2(
            PropertyClass.Parse("10.9"), ScrewThread.Parse("M20"), meanNutFactor: 0.119, clampedThickness: Length.FromMillimeters(60));
        Torque first = combined.FirstTorque;                                    // 306 N·m, every bolt of the joint
        Angle then = combined.FurtherRotation!.Rotation;                        // 90° further
        #endregion

        Assert.Equal(306.1, first.NewtonMeters, 0.05);
        Assert.Equal(90, then.Degrees);
    }
}
