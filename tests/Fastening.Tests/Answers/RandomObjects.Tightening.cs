using UnitsNet;
using UnitsNet.Units;

namespace Fastening.Tests.Answers;

/// <content>Torque and preload, wrenches, rotation.</content>
internal static partial class RandomObjects
{
    private static (string Name, Func<Draw, object> Make)[] TighteningMakers() =>
    [
        Maker("FrictionTorqueModel", Model),
        Maker("NutFactorModel", NutFactor),
        Maker("TorquePreloadModel", draw => draw.Chance(0.5) ? Model(draw) : NutFactor(draw)),
        Maker("TorquePreloadRange", draw => (draw.Chance(0.6)
            ? TorquePreloadRange.OfFriction(draw.Any<FrictionTorqueModel>("FrictionTorqueModel"), draw.Any<FrictionRange>("FrictionRange"))
            : TorquePreloadRange.OfNutFactor(draw.Between(0.1, 0.16), draw.Between(0.18, 0.3), draw.Millimeters(8, 24)))),
        Maker("PreloadRange", draw => new Range<Force>(draw.Kilonewtons(20, 60).ToUnit(ForceUnit.Newton), draw.Kilonewtons(61, 110).ToUnit(ForceUnit.Newton))),
        Maker("PreloadScatter", draw => draw.Chance(0.5) ? PreloadScatter.FromPlusMinus(draw.Percent(5, 40)) : PreloadScatter.FromTighteningFactor(draw.Between(1.1, 3))),
        Maker("TorqueWrench", Wrench),
        Maker("TorqueMultiplier", draw => new TorqueMultiplier(draw.Between(2, 25), draw.Between(0.7, 0.98))),
        Maker("CoaxialExtension", Extension),
        Maker("WrenchFit", draw => draw.Any<TorqueWrench>("TorqueWrench").FitOf(draw.NewtonMeters(10, 400))),
        Maker("RotationTightening", Rotation),
        Maker("PublishedRotation", draw => draw.Of(PublishedRotation.All)),
        Maker("RotationRateLimit", draw => RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(draw.Between(5, 90)))),
        Maker("RotationRateMonitor", draw =>
        {
            var monitor = new RotationRateMonitor(draw.Any<RotationRateLimit>("RotationRateLimit"), Duration.FromSeconds(draw.Between(0.2, 0.6)), 8 + draw.Next(20));
            double time = 0;
            double angle = 0;
            for (int i = 0; i < 40; i++) monitor.TryAdd(Duration.FromSeconds(time += draw.Between(0.02, 0.06)), Angle.FromDegrees(angle += draw.Between(0, 3)));
            return monitor;
        }),
    ];

    private static FrictionTorqueModel Model(Draw draw)
    {
        FrictionTorqueModel model = draw.Chance(0.5)
            ? TorquePreloadModel.ForHexagonBolt(draw.Any<ScrewThread>("ScrewThread"), draw.Any<FrictionCoefficients>("FrictionCoefficients"))
            : TorquePreloadModel.FromFriction(draw.Any<ScrewThread>("ScrewThread"), draw.Any<BearingSurface>("BearingSurface"), draw.Any<FrictionCoefficients>("FrictionCoefficients"));
        if (draw.Chance(0.4)) model = model.WithConvention(draw.Any<TorqueConvention>("TorqueConvention"));
        return draw.Chance(0.3) ? model.WithPrevailing(draw.NewtonMeters(1, 8)) : model;
    }

    private static NutFactorModel NutFactor(Draw draw)
    {
        NutFactorModel model = TorquePreloadModel.FromNutFactor(draw.Between(0.1, 0.3), draw.Millimeters(6, 30));
        return draw.Chance(0.3) ? model.WithPrevailing(draw.NewtonMeters(1, 8)) : model;
    }

    private static TorqueWrench Wrench(Draw draw)
    {
        var wrench = new TorqueWrench(draw.Millimeters(250, 700));
        int adapters = draw.Next(3);
        for (int i = 0; i < adapters; i++) wrench = wrench.WithAdapter(draw.Millimeters(30, 90), draw.Degrees(-120, 120));
        if (draw.Chance(0.5)) wrench = wrench.WithPullOffSquare(draw.Degrees(-12, 12));
        if (draw.Chance(0.7)) wrench = wrench.WithAccuracy(draw.Percent(1, 6));
        if (draw.Chance(0.6)) wrench = wrench.WithRange(draw.NewtonMeters(10, 40), draw.NewtonMeters(150, 400));
        if (draw.Chance(0.6)) wrench = wrench.WithResolution(draw.NewtonMeters(0.1, 1));
        return draw.Chance(0.3) ? wrench.WithCoaxialExtension(Extension(draw)) : wrench;
    }

    private static CoaxialExtension Extension(Draw draw)
    {
        Length length = draw.Millimeters(80, 400);
        Pressure modulus = Pressure.FromGigapascals(draw.Between(75, 82));
        return draw.Next(4) switch
        {
            0 => CoaxialExtension.Round(length, draw.Millimeters(10, 20), modulus),
            1 => CoaxialExtension.Hexagon(length, draw.Millimeters(10, 20), modulus),
            2 => CoaxialExtension.Square(length, draw.Millimeters(10, 20), modulus),
            _ => CoaxialExtension.Tube(length, draw.Millimeters(18, 26), draw.Millimeters(8, 14), modulus),
        };
    }

    private static RotationTightening Rotation(Draw draw)
    {
        var joint = draw.Any<Joint>("Joint");
        TorquePreloadModel model = draw.Chance(0.3) ? NutFactor(draw)
            : TorquePreloadModel.FromFriction(joint.Bolt.Thread, draw.Any<BearingSurface>("BearingSurface"), draw.Any<FrictionCoefficients>("FrictionCoefficients"));
        var tightening = new RotationTightening(
            joint, model, draw.NewtonMeters(10, 40), draw.Kilonewtons(60, 200));
        if (draw.Chance(0.4)) tightening = tightening.WithBoltTwist();
        if (draw.Chance(0.3)) tightening = tightening.WithCoaxialExtension(Extension(draw));
        if (draw.Chance(0.3)) tightening = tightening.WithToolWindUp(draw.Degrees(1, 4), draw.NewtonMeters(50, 150));
        return draw.Chance(0.4) ? tightening.WithStiffnessError(draw.Percent(5, 20)) : tightening;
    }
}
