using Fastening;
using UnitsNet;

namespace GearboxFoot;

/// <summary>The rotation to set, the band that it gives, and the band of a torque alone, for the same bolt.</summary>
internal sealed class FootPlan
{
    public FootPlan(FootJoint stated)
    {
        Stated = stated;
        Tightening = new RotationTightening(stated.Joint, stated.AtLowestFriction, stated.SnugTorque.Target!.Value, stated.PermittedForRotation)
            .WithBoltTwist().WithCoaxialExtension(stated.Extension);
        Rotation = GreatestRotation();
        ByRotation = BandAt(Rotation.Target!.Value);
        TorqueAlone = ToleranceWindow.FromPercent(
            Torque.FromNewtonMeters(Math.Floor(stated.AtLowestFriction.TorqueFor(stated.PermittedForTorque).NewtonMeters * 100 / (100 + stated.TorqueTolerancePercent))),
            stated.TorqueTolerancePercent, stated.TorqueTolerancePercent);
        LowestByTorque = stated.AtHighestFriction.PreloadAt(TorqueAlone.Lower!.Value);
        HighestByTorque = stated.AtLowestFriction.PreloadAt(TorqueAlone.Upper!.Value);
        EmbeddingLoss = stated.Joint.EmbeddingLossOf(stated.Embedding);
    }

    public FootJoint Stated { get; }

    /// <summary>With the friction at its lowest; rotation is read at the wrench.</summary>
    public RotationTightening Tightening { get; }

    /// <summary>The corner that needs the greatest rotation: highest friction, lowest snug torque; rotation is that of the nut.</summary>
    public RotationTightening LeastSnug => new RotationTightening(
        Stated.Joint, Stated.AtHighestFriction, Stated.SnugTorque.Lower!.Value, Stated.PermittedForRotation).WithBoltTwist();

    public ToleranceWindow<Angle> Rotation { get; }

    public PreloadRangeAfterRotation ByRotation { get; }

    public ToleranceWindow<Torque> TorqueAlone { get; }

    public Force LowestByTorque { get; }

    public Force HighestByTorque { get; }

    public Force EmbeddingLoss { get; }

    public bool KeepsRequiredClamp =>
        ByRotation.IsElastic && Stated.Temperatures.All(state => Left(ByRotation.Range.Minimum, state.Temperatures) >= Stated.RequiredClamp);

    /// <summary>What is left of an assembly preload after embedding and a change of temperature.</summary>
    public Force Left(Force assembly, JointTemperatures temperatures)
    {
        Force settled = assembly - EmbeddingLoss;
        return settled - Stated.Joint.ThermalLossAt(settled, temperatures);
    }

    private PreloadRangeAfterRotation BandAt(Angle rotation) => Tightening.PreloadRangeAt(WindowAround(rotation), Stated.SnugTorque, Stated.Friction);

    /// <summary>The greatest whole degree whose highest corner stays within the permitted preload.</summary>
    private ToleranceWindow<Angle> GreatestRotation()
    {
        double degrees = Math.Floor(Tightening.ElasticRotation.Degrees);
        while (!BandAt(Angle.FromDegrees(degrees)).IsElastic) degrees--;
        return WindowAround(Angle.FromDegrees(degrees));
    }

    private ToleranceWindow<Angle> WindowAround(Angle rotation) =>
        ToleranceWindow.FromDeviations(rotation, Stated.RotationTolerance, Stated.RotationTolerance);
}
