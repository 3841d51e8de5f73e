using Fastening;
using UnitsNet;

namespace PumpCover;

/// <summary>Bolt, friction and what the joint asks for.</summary>
internal sealed class BoltedJoint
{
    public BoltedJoint(
        ScrewThread thread, PropertyClass propertyClass, BoltStrength strength,
        HeadRing head, FrictionRange friction, PrevailingTorque prevailing, Ratio utilisation)
    {
        PropertyClass = propertyClass;
        Strength = strength;
        Head = head;
        Friction = friction;
        Prevailing = prevailing;
        Utilisation = utilisation;
        AtLowestFriction = TorquePreloadModel.FromFriction(thread, head.Surface, friction.Low).WithPrevailing(prevailing.Low);
        AtHighestFriction = AtLowestFriction.WithFriction(friction.High).WithPrevailing(prevailing.High);
        AtMostTwist = AtHighestFriction.WithFriction(new FrictionCoefficients(friction.High.Thread, friction.Low.Bearing));
        PermittedPreload = AtLowestFriction.PermittedPreload(Strength, utilisation);
    }

    public ScrewThread Thread => AtLowestFriction.Thread;

    public PropertyClass PropertyClass { get; }

    public BoltStrength Strength { get; }

    public HeadRing Head { get; }

    public FrictionRange Friction { get; }

    public required string FrictionOrigin { get; init; }

    public PrevailingTorque Prevailing { get; }

    public Ratio Utilisation { get; }

    public required Force RequiredPreload { get; init; }

    /// <summary>Lowest friction and prevailing torque, highest preload at a torque: the bolt is not to be overstressed.</summary>
    public FrictionTorqueModel AtLowestFriction { get; }

    /// <summary>Highest friction and prevailing torque, lowest preload at a torque: the joint is to hold.</summary>
    public FrictionTorqueModel AtHighestFriction { get; }

    /// <summary>Highest thread friction and prevailing torque, lowest bearing friction: the most twist in the shank at a torque.</summary>
    /// <remarks>
    /// What bearing friction leaves of the torque twists the shank, M − λ_b F; so at a torque the equivalent stress is convex in the preload,
    /// and its maximum lies here or at <see cref="AtLowestFriction"/>.
    /// </remarks>
    public FrictionTorqueModel AtMostTwist { get; }

    /// <summary>Preload at which the equivalent stress reaches the utilisation of the yield strength (VDI 2230).</summary>
    public Force PermittedPreload { get; }

    public Pressure PermittedStress => Strength.YieldStrength * Utilisation.DecimalFractions;
}
