namespace Fastening;

/// <summary>Something noticed on a trace, where it was noticed first, and which findings it puts in doubt.</summary>
/// <example><code>foreach (TraceRemark remark in analysis.Remarks) Console.WriteLine(remark);</code></example>
public sealed class TraceRemark
{
    internal TraceRemark(TraceRemarkKind kind, TracePoint at, TraceDoubts doubts)
    {
        Kind = kind;
        At = at;
        Doubts = doubts;
    }

    /// <summary>What was noticed.</summary>
    public TraceRemarkKind Kind { get; }

    /// <summary>Where it was noticed first.</summary>
    public TracePoint At { get; }

    /// <summary>The findings that it puts in doubt.</summary>
    public TraceDoubts Doubts { get; }

    /// <summary>What to record or state better, where that helps; null otherwise.</summary>
    public string? Advice => TraceRemarkText.AdviceOn(Kind);

    /// <inheritdoc />
    public override string ToString() =>
        $"{TraceRemarkText.NameOf(Kind)}: {At}{(Doubts == TraceDoubts.None ? "" : $"; in doubt: {TraceRemarkText.NameOf(Doubts)}")}{(Advice is null ? "" : $"; {Advice}")}";
}
