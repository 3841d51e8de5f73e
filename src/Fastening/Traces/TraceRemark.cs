namespace Fastening;

/// <summary>Something noticed on a trace, and where it was noticed first.</summary>
/// <example><code>foreach (TraceRemark remark in analysis.Remarks) Console.WriteLine(remark);</code></example>
public sealed class TraceRemark
{
    internal TraceRemark(TraceRemarkKind kind, TracePoint at)
    {
        Kind = kind;
        At = at;
    }

    /// <summary>What was noticed.</summary>
    public TraceRemarkKind Kind { get; }

    /// <summary>Where it was noticed first.</summary>
    public TracePoint At { get; }

    /// <inheritdoc />
    public override string ToString() => $"{Name(Kind)}: {At}";

    private static string Name(TraceRemarkKind kind) => kind switch
    {
        TraceRemarkKind.NoElasticRegion => "no elastic region",
        TraceRemarkKind.NoRunDown => "no run-down",
        TraceRemarkKind.StickSlip => "stick–slip",
        TraceRemarkKind.Reversal => "reversal",
        TraceRemarkKind.EarlyPeak => "early peak",
        _ => "torque drop",
    };
}
