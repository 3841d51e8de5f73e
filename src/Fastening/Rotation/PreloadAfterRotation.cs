using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>What a rotation past snug leaves in the joint, and whether the elastic line still holds there.</summary>
/// <example><code>PreloadAfterRotation after = tightening.PreloadAt(Angle.FromDegrees(60));
/// Force preload = after.IsElastic ? after.Preload : throw new InvalidOperationException($"{after}");</code></example>
public sealed class PreloadAfterRotation
{
    private readonly double _degrees;
    private readonly double _snug;
    private readonly double _gain;
    private readonly double _preload;
    private readonly double _limit;

    internal PreloadAfterRotation(double degrees, double snug, double gain, double limit, double boltTwistPerPreload, double toolPerPreload)
    {
        _degrees = degrees;
        _snug = snug;
        _gain = gain;
        _preload = RotationTighteningEquations.TurnedPreload(snug, gain);
        _limit = limit;
        BoltTwist = Si.AngleFromRadians(gain * boltTwistPerPreload);
        ToolWindUp = Si.AngleFromRadians(gain * toolPerPreload);
    }

    /// <summary>The rotation past snug; as read at the tool if wind-up was stated.</summary>
    public Angle Rotation => Si.Angle(_degrees);

    /// <summary>Preload at the snug torque.</summary>
    public Force SnugPreload => Si.Force(_snug);

    /// <summary>Preload gained by the rotation, by the elastic line.</summary>
    public Force PreloadGain => Si.Force(_gain);

    /// <summary>Preload by the elastic line. When not <see cref="IsElastic"/> it is not reached: the joint yields before.</summary>
    public Force Preload => Si.Force(_preload);

    /// <summary>The preload up to which the elastic line holds.</summary>
    public Force ElasticLimit => Si.Force(_limit);

    /// <summary>Whether the preload is within the elastic limit.</summary>
    public bool IsElastic => Tolerance.IsAtMost(_preload, _limit);

    /// <summary>The part of the rotation that went into the twist of the bolt; zero unless bolt twist was stated.</summary>
    public Angle BoltTwist { get; }

    /// <summary>The part of the rotation that went into the wind-up of the tool; zero unless a tool was stated.</summary>
    public Angle ToolWindUp { get; }

    /// <inheritdoc />
    public override string ToString() => IsElastic
        ? Print.Text($"{Si.Force(_preload):0.0} ({Si.Force(_snug):0.0} snug, {Si.Force(_gain):0.0} from {_degrees:0.#}°)")
        : Print.Text($"yields: {_degrees:0.#}° carry the joint past its elastic limit of {Si.Force(_limit):0.0}; the elastic line would give {Si.Force(_preload):0.0}, which is not reached");
}
