namespace Fastening;

/// <summary>The findings of a trace that a remark puts in doubt.</summary>
/// <example><code>if (analysis.Doubts.HasFlag(TraceDoubts.Snug)) Console.WriteLine("look at the curve before snug is used");</code></example>
[Flags]
public enum TraceDoubts : byte
{
    /// <summary>No finding.</summary>
    None = 0,

    /// <summary>Snug, and with it the rotation past snug and the preload from rotation.</summary>
    Snug = 1,

    /// <summary>The elastic region, its line and its slope, and with them the friction.</summary>
    Slope = 2,

    /// <summary>Yield: that it was found, where, and also that none was found.</summary>
    Yield = 4,

    /// <summary>The run-down and its torque.</summary>
    RunningTorque = 8,

    /// <summary>All of them.</summary>
    All = Snug | Slope | Yield | RunningTorque,
}
