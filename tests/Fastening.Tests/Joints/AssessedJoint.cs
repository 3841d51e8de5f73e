using UnitsNet;

namespace Fastening.Tests.Joints;

/// <summary>The joint of the assessment tests: M12 in steel on cast iron, all kinds of load, everything stated.</summary>
internal static class AssessedJoint
{
    public const double Embedded = 9e-6, HeadOuter = 16.6, HeadInner = 13.5, NutOuter = 17, NutInner = 13.8;

    public static AnySleeveJoint Springs { get; } = new([(20, 10), (30, 9.2)], [(18, 205, 11.5), (32, 110, 10)], 207, 12, 13.5, 32, 30_000, 0.5);

    public static Joint Joint { get; } = Springs.Joint;

    public static FrictionTorqueModel Model { get; } = TorquePreloadModel.FromFriction(
        ScrewThread.Parse("M12"), BearingSurface.Annulus(Length.FromMillimeters(HeadOuter), Length.FromMillimeters(HeadInner)), new FrictionCoefficients(0.11, 0.13));

    public static BoltStrength Strength { get; } = PropertyClass.Parse("8.8").StrengthFor(ScrewThread.Parse("M12"));

    public static EngagementStrength Engagement { get; } = ThreadEngagement.For(ScrewThread.Parse("M12"), Length.FromMillimeters(9))
        .StrengthFor(Pressure.FromMegapascals(830), Pressure.FromMegapascals(1000), Pressure.FromMegapascals(520), Pressure.FromMegapascals(330));

    public static Range<Force> Assembly { get; } = new Range<Force>(Force.FromKilonewtons(28), Force.FromKilonewtons(39));

    public static JointDuty Duty(double low, double high, LoadIntroduction introduction) =>
        new JointDuty(Force.FromKilonewtons(low), Force.FromKilonewtons(high), introduction, Embedding.Of(Length.FromMeters(Embedded)))
            .WithTransverseLoad(Force.FromKilonewtons(1.5), slipFaces: 1, lowestFriction: 0.16)
            .WithInterfaceTorque(Torque.FromNewtonMeters(4), Length.FromMillimeters(11), slipFaces: 2, lowestFriction: 0.16)
            .WithRequiredClamp(Force.FromKilonewtons(3));

    public static JointCapacity Capacity { get; } = JointCapacity.NothingStated
        .WithPermittedPreload(Force.FromKilonewtons(41))
        .WithBolt(Model, Strength, residualTorsion: Ratio.FromPercent(50))
        .WithPermittedAmplitude(Pressure.FromMegapascals(50))
        .WithHeadBearing(BearingSurface.Annulus(Length.FromMillimeters(HeadOuter), Length.FromMillimeters(HeadInner)), Pressure.FromMegapascals(700))
        .WithNutBearing(BearingSurface.Annulus(Length.FromMillimeters(NutOuter), Length.FromMillimeters(NutInner)), Pressure.FromMegapascals(600))
        .WithEngagement(Engagement);
}
