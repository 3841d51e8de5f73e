namespace Fastening;

/// <summary>How the preload is brought in and judged while tightening.</summary>
public enum TighteningMethod
{
    /// <summary>By hand, by feel.</summary>
    ByFeel = 0,

    /// <summary>Torque, with a torque wrench.</summary>
    TorqueWrench = 1,

    /// <summary>Torque, with a power screwdriver or an impulse tool.</summary>
    PowerTool = 2,

    /// <summary>Impact wrench.</summary>
    ImpactTool = 3,

    /// <summary>Snug torque, then an angle (turn of the nut).</summary>
    AngleControlled = 4,

    /// <summary>To the onset of yield.</summary>
    YieldControlled = 5,

    /// <summary>Hydraulic tensioner.</summary>
    HydraulicTensioner = 6,

    /// <summary>Load-indicating (preload-indicating) washer.</summary>
    LoadIndicatingWasher = 7,

    /// <summary>Measured elongation of the bolt.</summary>
    Elongation = 8,

    /// <summary>Ultrasonic measurement of the bolt.</summary>
    Ultrasonic = 9,

    /// <summary>Bolt with a strain gauge or load cell.</summary>
    InstrumentedBolt = 10,
}
