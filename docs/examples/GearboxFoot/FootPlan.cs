using Fastening;
using UnitsNet;

namespace GearboxFoot;

/// <summary>The greatest rotation that the bolt permits while the stiffness of the joint is known to a stated error, and what it leaves in service.</summary>
internal sealed class FootPlan
{
    private readonly Ratio _stiffnessError;

    public FootPlan(FootJoint stated, Ratio stiffnessError)
    {
        Stated = stated;
        _stiffnessError = stiffnessError;
        Tightening = new RotationTightening(stated.Joint, stated.AtLowestFriction, stated.SnugTorque.Target!.Value, stated.PermittedForRotation)
            .WithBoltTwist().WithCoaxialExtension(stated.Extension).WithStiffnessError(stiffnessError);
        Rotation = GreatestRotation();
        ByRotation = BandAt(Rotation.Target!.Value);
        TorqueAlone = ToleranceWindow.FromDeviations(
            Torque.FromNewtonMeters(Math.Floor(stated.AtLowestFriction.TorqueFor(stated.PermittedForTorque).NewtonMeters * 100 / (100 + stated.TorqueTolerancePercent))),
            Ratio.FromPercent(stated.TorqueTolerancePercent), Ratio.FromPercent(stated.TorqueTolerancePercent));
        LowestByTorque = stated.AtHighestFriction.PreloadAt(TorqueAlone.Lower!.Value);
        HighestByTorque = stated.AtLowestFriction.PreloadAt(TorqueAlone.Upper!.Value);
    }

    public FootJoint Stated { get; }

    /// <summary>With the friction at its lowest; rotation is read at the wrench.</summary>
    public RotationTightening Tightening { get; }

    /// <summary>The corner that needs the greatest rotation: highest friction, lowest snug torque; rotation is that of the nut.</summary>
    public RotationTightening LeastSnug => new RotationTightening(
        Stated.Joint, Stated.AtHighestFriction, Stated.SnugTorque.Lower!.Value, Stated.PermittedForRotation).WithBoltTwist().WithStiffnessError(_stiffnessError);

    public ToleranceWindow<Angle> Rotation { get; }

    public PreloadRangeAfterRotation ByRotation { get; }

    public ToleranceWindow<Torque> TorqueAlone { get; }

    public Force LowestByTorque { get; }

    public Force HighestByTorque { get; }

    /// <summary>The clamp force that the joint keeps at the least, in the state that takes most.</summary>
    public Force LeastLeft => Stated.Temperatures.Select(state => LeastLeftOf(ByRotation.Range.Low, state.Temperatures)).Min();

    public bool KeepsRequiredClamp => ByRotation.IsElastic && LeastLeft >= Stated.RequiredClamp;

    /// <summary>A sheet does not advise what holds by less than a hundredth.</summary>
    private bool KeepsWithReserve => ByRotation.IsElastic && LeastLeft >= Stated.RequiredClamp * 1.01;

    /// <summary>What embedding costs where the joint is stiffest.</summary>
    public Force GreatestEmbeddingLoss => Stated.Joint.EmbeddingLossOf(Stated.Embedding) / (1 - _stiffnessError.DecimalFractions);

    /// <summary>What is left of the lowest preload, which a joint has that is as soft as the error permits; such a joint also loses least.</summary>
    public Force LeastLeftOf(Force assembly, JointTemperatures temperatures) => assembly - LossOf(temperatures) * (1 - _stiffnessError.DecimalFractions);

    /// <summary>What is left of the highest preload, which a joint has that is as stiff as the error permits.</summary>
    public Force MostLeftOf(Force assembly, JointTemperatures temperatures) => assembly - LossOf(temperatures) / (1 - _stiffnessError.DecimalFractions);

    /// <summary>The plan with the greatest error of stiffness, in whole percent, with which the required clamp force is kept and a hundredth more; null when none is.</summary>
    public FootPlan? FirstThatKeeps()
    {
        for (double percent = Math.Floor(_stiffnessError.Percent); percent >= 0; percent--)
        {
            var plan = new FootPlan(Stated, Ratio.FromPercent(percent));
            if (plan.KeepsWithReserve) return plan;
        }

        return null;
    }

    /// <summary>Embedding and temperature at the stiffness as calculated; moduli stay as at assembly, so both go with one over the resilience.</summary>
    private Force LossOf(JointTemperatures temperatures) =>
        Stated.Joint.EmbeddingLossOf(Stated.Embedding) + Stated.Joint.ThermalLossAt(ByRotation.Range.Low, temperatures);

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
