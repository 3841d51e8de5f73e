using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>What a rotation past snug leaves in the joint, and whether the elastic line still holds there.</summary>
/// <example><code>PreloadAfterRotation after = tightening.PreloadAt(Angle.FromDegrees(60));
/// Force preload = after.IsElastic ? after.Preload : throw new InvalidOperationException($"{after}");</code></example>
public sealed class PreloadAfterRotation : IDerived
{
    private readonly double _degrees;
    private readonly Term _snug, _gain, _preload, _limit;

    internal PreloadAfterRotation(double degrees, Term snug, Term gain, Term limit, double boltTwistPerPreload, double toolPerPreload)
    {
        _degrees = degrees;
        _snug = snug;
        _gain = gain;
        _preload = RotationTighteningEquations.TurnedPreloadEquation.Of(snug, gain);
        _limit = limit;
        BoltTwist = Si.AngleFromRadians(gain.Value * boltTwistPerPreload);
        ToolWindUp = Si.AngleFromRadians(gain.Value * toolPerPreload);
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
    public bool IsElastic => Tolerance.IsAtMost(_preload.Value, _limit.Value);

    /// <summary>The part of the rotation that went into the twist of the bolt; zero unless bolt twist was stated.</summary>
    public Angle BoltTwist { get; }

    /// <summary>The part of the rotation that went into the wind-up of the tool; zero unless a tool was stated.</summary>
    public Angle ToolWindUp { get; }

    Term IDerived.Answer => _preload;

    internal double PreloadSi => _preload.Value;

    internal double SnugSi => _snug.Value;

    internal double LimitSi => _limit.Value;

    /// <inheritdoc />
    public override string ToString() => IsElastic
        ? Print.Text($"{Si.Force(_preload.Value):0.0} ({Si.Force(_snug.Value):0.0} snug, {Si.Force(_gain.Value):0.0} from {_degrees:0.#}°)")
        : Print.Text($"yields: {_degrees:0.#}° carry the joint past its elastic limit of {Si.Force(_limit.Value):0.0}; the elastic line would give {Si.Force(_preload.Value):0.0}, which is not reached");
}
