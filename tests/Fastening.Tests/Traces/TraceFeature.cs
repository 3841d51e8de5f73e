namespace Fastening.Tests.Traces;

/// <summary>What is done to a known curve before it is read: thirty features, one of them none.</summary>
internal enum TraceFeature
{
    None,

    /// <summary>A dip of 10 to 60 % over 1° to 5°.</summary>
    Dip,

    /// <summary>A change of speed: the torque steps by −25 to 4 % and comes back, from below at two to four times the slope.</summary>
    ChangeOfSpeed,

    /// <summary>Let go by 30 to 100 % once or twice, angle at the fastener.</summary>
    LetGoRigid,

    /// <summary>Let go, the angle with the wind-up of the tool.</summary>
    LetGoWoundUp,

    /// <summary>Let go, the wind-up taken off.</summary>
    LetGoCorrected,

    /// <summary>One sample for 1° to 2.5°.</summary>
    CoarseSampling,

    /// <summary>Angles in steps of 0.5° to 2.5°.</summary>
    AngleSteps,

    /// <summary>A drop of 8 to 30 % that stays.</summary>
    LastingDrop,

    /// <summary>A drop of 8 to 30 % that heals over 2° to 12°.</summary>
    HealingBreak,

    /// <summary>No torque over 2° to 8°.</summary>
    ZeroTorque,

    /// <summary>A torque spike every 83 samples.</summary>
    Spikes,

    /// <summary>One angle 10° to 400° off.</summary>
    OneWildAngle,

    /// <summary>A bump of 20 to 90 % of the peak torque in the run-down.</summary>
    RunDownBump,

    /// <summary>Two to four ratchet strokes, the angle standing.</summary>
    RatchetFixed,

    /// <summary>Ratchet strokes, the angle with the wind-up of the tool.</summary>
    RatchetWoundUp,

    /// <summary>Ratchet strokes, the angle going back by 15° to 60°.</summary>
    RatchetBack,

    /// <summary>A pause, in which the torque sinks by up to 8 %.</summary>
    Pause,

    /// <summary>The record ends within the knee.</summary>
    EndInKnee,

    /// <summary>A straight part of 2° to 8°.</summary>
    ShortStraightPart,

    /// <summary>3 % noise.</summary>
    Noise,

    /// <summary>A run-down that climbs by 2 to 12 % of the peak torque a turn.</summary>
    ClimbingRunDown,

    /// <summary>A record that begins on the rise.</summary>
    NoRunDown,

    /// <summary>A soft layer of a tenth to three tenths of the slope over 20° to 60° before the rise.</summary>
    Gasket,

    /// <summary>A thread that strips: the torque falls to 5 to 45 %.</summary>
    Stripping,

    /// <summary>Constant torque, no rise.</summary>
    ConstantTorque,

    /// <summary>A loosening, angle and torque counted positive.</summary>
    LooseningPositive,

    /// <summary>A loosening with negative torque, the angle rising or falling.</summary>
    LooseningNegative,

    /// <summary>A left-hand thread: tightened with angle and torque negative.</summary>
    LeftHand,

    /// <summary>A tightening whose angle falls.</summary>
    FallingAngle,
}
