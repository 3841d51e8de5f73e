using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The findings on a tightening curve. Every finding carries the index of its sample; what was not found is null, and <see cref="Doubts"/> names the findings not to be used before the curve was looked at.</summary>
/// <remarks>
/// Peak, shut-off and end are three places: after shut-off the torque falls and the angle recoils, so that the last sample is neither. Without
/// angles only peak, shut-off, end and snug at a threshold torque are found.
/// </remarks>
/// <example><code>TraceAnalysis analysis = trace.Analyze(TraceOptions.SnugByProjection(smoothingWindow: Angle.FromDegrees(8)));
/// if (analysis.YieldOnset is TracePoint onset) Console.WriteLine($"yields from {onset}");</code></example>
public sealed partial class TraceAnalysis
{
    private readonly TighteningTrace _trace;
    private readonly TraceFindings _found;

    internal TraceAnalysis(TighteningTrace trace, TraceOptions options, TraceFindings found)
    {
        _trace = trace;
        _found = found;
        Options = options;
    }

    /// <summary>How the trace was read.</summary>
    public TraceOptions Options { get; }

    /// <summary>Where the fastener is snug: by the threshold torque or by the elastic line extended back to the running torque, as the options say.</summary>
    public TracePoint? Snug => _found.Snug;

    /// <summary>The stretch that rises along a line, with its slope.</summary>
    public ElasticRegion? ElasticRegion => _found.Elastic;

    /// <summary>The run-down before the rise, with the prevailing torque.</summary>
    public RunDown? RunDown => _found.RunDown;

    /// <summary>Where the local slope fell below the stated share of the elastic slope, for good; null when it did not. Where that cannot be decided, <see cref="Doubts"/> has <see cref="TraceDoubts.Yield"/> and a remark says why.</summary>
    public TracePoint? YieldOnset => _found.YieldOnset;

    /// <summary>Where the torque fell below the elastic line moved along by the stated offset, for good; null when no offset was stated.</summary>
    public TracePoint? OffsetYield => _found.OffsetYield;

    /// <summary>The sample of the greatest torque in the sense of the record: the highest, or the lowest where the torque is mainly negative.</summary>
    public TracePoint Peak => _found.Peak;

    /// <summary>The sample at which the angle first reached its furthest, before the torque fell.</summary>
    public TracePoint ShutOff => _found.ShutOff;

    /// <summary>The last sample.</summary>
    public TracePoint Final => _found.Final;

    /// <summary>Rotation from snug to shut-off.</summary>
    public Angle? RotationPastSnug =>
        Snug?.Angle is null ? null : Si.Angle(ShutOff.AngleDegrees - Snug.AngleDegrees);

    /// <summary>Work done on the fastener up to shut-off, ∫ M dθ by trapezoids over the samples.</summary>
    public Energy? Energy => _found.Energy is double energy ? Si.Energy(Si.ToRadians(energy)) : null;

    /// <summary>What is irregular about the record.</summary>
    public TraceIrregularities Irregularities => _found.Irregularities;

    /// <summary>What is wrong with the curve or hinders its reading, and yield; each with the place where it was noticed first and the findings it puts in doubt.</summary>
    public IReadOnlyList<TraceRemark> Remarks => _found.Remarks;

    /// <summary>The findings that any remark puts in doubt: look at the curve before they are used. Without angles yield always is, for it was not looked for.</summary>
    public TraceDoubts Doubts
    {
        get
        {
            TraceDoubts doubts = _trace.HasAngles ? TraceDoubts.None : TraceDoubts.Yield;
            foreach (TraceRemark remark in Remarks) doubts |= remark.Doubts;
            return doubts;
        }
    }

    /// <summary>Whether something was noticed.</summary>
    /// <param name="kind">What.</param>
    /// <returns>True when it was; false also when it was not looked for.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is none of them.</exception>
    /// <example><code>if (analysis.Has(TraceRemarkKind.Reversal)) Console.WriteLine("turned back before shut-off");</code></example>
    public bool Has(TraceRemarkKind kind)
    {
        if (kind is < TraceRemarkKind.NoElasticRegion or > TraceRemarkKind.HeldTorque) Guard.RefuseAgainst(nameof(kind), (double)kind, "one of the kinds of remark");
        foreach (TraceRemark remark in Remarks)
        {
            if (remark.Kind == kind) return true;
        }

        return false;
    }

    /// <inheritdoc />
    public override string ToString() =>
        $"snug {Snug?.ToString() ?? "not found"}; {ElasticRegion?.ToString() ?? "no elastic region"}; yield {Yield}; peak {Peak}; shut-off {ShutOff}; {InDoubt}";

    private string Yield => YieldOnset?.ToString() ?? ((Doubts & TraceDoubts.Yield) == 0 ? "none" : "cannot be told");

    private string InDoubt => Doubts == TraceDoubts.None ? "nothing in doubt" : $"in doubt: {TraceRemarkText.NameOf(Doubts)}";
}
