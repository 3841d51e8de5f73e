namespace Fastening;

/// <summary>The findings while they are gathered.</summary>
internal sealed class TraceFindings
{
    private readonly List<TraceRemark> _remarks = [];

    public required TraceIrregularities Irregularities { get; init; }

    public required TracePoint Peak { get; init; }

    public required TracePoint ShutOff { get; init; }

    public required TracePoint Final { get; init; }

    public TracePoint? Snug { get; set; }

    public ElasticRegion? Elastic { get; set; }

    public RunDown? RunDown { get; set; }

    public TracePoint? YieldOnset { get; set; }

    public TracePoint? OffsetYield { get; set; }

    /// <summary>In N·m·°; null without angles.</summary>
    public double? Energy { get; set; }

    /// <summary>Whether the angle begins again at a full turn; a lone wild angle comes back and leaves the end where it belongs.</summary>
    public bool Wraps => Irregularities.StepsBackHalfATurn && Final.AngleDegrees < ShutOff.AngleDegrees - 180;

    public IReadOnlyList<TraceRemark> Remarks => _remarks.AsReadOnly();

    public void Remark(TraceRemarkKind kind, TracePoint at, TraceDoubts doubts = TraceDoubts.None) => _remarks.Add(new TraceRemark(kind, at, doubts));
}
