using Fastening;
using UnitsNet;

namespace PumpCover;

/// <summary>Bolt, friction and what the joint asks for.</summary>
internal sealed class BoltedJoint
{
    public BoltedJoint(
        ScrewThread thread, PropertyClass propertyClass, BoltStrength strength,
        BearingSurface bearing, FrictionRange friction, Torque? prevailing, double utilisation)
    {
        PropertyClass = propertyClass;
        Strength = strength;
        Friction = friction;
        Prevailing = prevailing;
        Utilisation = utilisation;
        AtLowestFriction = TorquePreloadModel.FromFriction(thread, bearing, friction.Low).WithPrevailing(prevailing ?? Torque.Zero);
        AtHighestFriction = AtLowestFriction.WithFriction(friction.High);
        PermittedPreload = AssemblyStress.PermittedPreload(AtLowestFriction, Strength, utilisation);
    }

    public ScrewThread Thread => AtLowestFriction.Thread;

    public PropertyClass PropertyClass { get; }

    public BoltStrength Strength { get; }

    public FrictionRange Friction { get; }

    public required string FrictionOrigin { get; init; }

    public Torque? Prevailing { get; }

    public double Utilisation { get; }

    public required Force RequiredPreload { get; init; }

    /// <summary>Highest preload at a torque, and the highest stress: the bolt is not to be overstressed.</summary>
    public FrictionTorqueModel AtLowestFriction { get; }

    /// <summary>Lowest preload at a torque: the joint is to hold.</summary>
    public FrictionTorqueModel AtHighestFriction { get; }

    /// <summary>Preload at which the equivalent stress reaches the utilisation of the yield strength (VDI 2230).</summary>
    public Force PermittedPreload { get; }

    public Pressure PermittedStress => Strength.YieldStrength * Utilisation;
}
