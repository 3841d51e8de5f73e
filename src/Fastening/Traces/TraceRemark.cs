namespace Fastening;

/// <summary>A flag and where on the trace it was raised first.</summary>
/// <example><code>foreach (TraceRemark remark in analysis.Remarks) Console.WriteLine(remark);</code></example>
public sealed class TraceRemark
{
    internal TraceRemark(TraceFlag flag, TracePoint at)
    {
        Flag = flag;
        At = at;
    }

    /// <summary>What was noticed.</summary>
    public TraceFlag Flag { get; }

    /// <summary>Where it was noticed first.</summary>
    public TracePoint At { get; }

    /// <inheritdoc />
    public override string ToString() => $"{Name(Flag)}: {At}";

    private static string Name(TraceFlag flag) => flag switch
    {
        TraceFlag.NoElasticRegion => "no elastic region",
        TraceFlag.NoRunDown => "no run-down",
        TraceFlag.StickSlip => "stick–slip",
        TraceFlag.Reversal => "reversal",
        TraceFlag.EarlyPeak => "early peak",
        _ => "torque drop",
    };
}
