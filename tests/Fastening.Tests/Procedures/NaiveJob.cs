namespace Fastening.Tests.Procedures;

/// <summary>
/// The rules of a job written a second time, as simply as they can be said: the whole log is kept, undo strikes out the last line, and everything
/// is worked out anew from the lines that are left. No counts, no cursors, no shared rows.
/// </summary>
public sealed class NaiveJob(string[] fasteners, NaiveStep[] steps, TighteningOrder order)
{
    private readonly List<(JobEntry Entry, bool WentBack)> _lines = [];
    private readonly Dictionary<string, List<JobEntry>> _sent = [];
    private readonly Dictionary<string, List<DateTimeOffset>> _times = [];
    private readonly HashSet<JobEntry> _condemning = [];
    private JobEntry? _undoable;

    public Dictionary<(string Step, string Fastener), NaiveCell> Cells { get; private set; } = [];

    public HashSet<string> MustBeLoosened { get; private set; } = [];

    public Dictionary<string, (int Count, string Reason)> Loosenings { get; private set; } = [];

    public int Entries { get; private set; }

    public int Strays { get; private set; }

    public int Undone { get; private set; }

    public int Conflicts { get; private set; }

    public NaiveStep? OpenStep => steps.FirstOrDefault(step => step.Order.Any(f => !Cells[(step.Name, f)].Settled));

    public string? NextFastener => OpenStep is NaiveStep step ? step.Order.First(f => !Cells[(step.Name, f)].Settled) : null;

    public static NaiveJob Start(string[] fasteners, NaiveStep[] steps, TighteningOrder order)
    {
        var job = new NaiveJob(fasteners, steps, order);
        job.WorkOutAnew();
        return job;
    }

    public (JobVerdict Verdict, HashSet<JobReason> Reasons) Take(JobEntry entry)
    {
        List<JobEntry> sent = _sent.TryGetValue(entry.Source, out List<JobEntry>? before) ? before : _sent[entry.Source] = [];
        if (sent.Count > 0 && entry.Sequence <= sent[^1].Sequence)
        {
            if (_times[entry.Source].Exists(time => time >= entry.Time)) return (JobVerdict.Ignored, [JobReason.SequenceNotNew]);
            _times[entry.Source].Add(entry.Time);
            Conflicts++;
            JobReason[] left = entry.Kind == JobEntryKind.Tightened && fasteners.Contains(entry.Fastener) && !Holds(entry) ? [.. HarmOf(entry)] : [];
            if (left.Length > 0) Condemn(entry, false);
            _undoable = null;
            return (JobVerdict.Rejected, [JobReason.SequenceNotNew, JobReason.NumberUsedByAnother, .. left]);
        }

        bool wentBack = sent.Count > 0 && entry.Time < sent[^1].Time;
        sent.Add(entry);
        if (sent.Count == 1) _times[entry.Source] = [];
        _times[entry.Source].Add(entry.Time);
        Entries++;
        JobEntry? undoable = _undoable;
        _undoable = null;
        if (entry.Kind == JobEntryKind.Undone)
        {
            if (undoable?.Source != entry.Source) return (JobVerdict.Rejected, Remarks(wentBack, JobReason.NothingToUndo));
            Undone++;
            _lines.RemoveAt(_lines.Count - 1);
            WorkOutAnew();
            return (wentBack ? JobVerdict.Flagged : JobVerdict.Accepted, Remarks(wentBack));
        }

        if (Misfit(entry) is JobReason misfit)
        {
            Strays++;
            JobReason[] harm = [.. HarmOf(entry)];
            if (harm.Length > 0) Condemn(entry, wentBack);
            return (JobVerdict.Rejected, Remarks(wentBack, [misfit, .. harm]));
        }

        if (entry.Kind == JobEntryKind.Skipped && Cells[(StepOf(entry).Name, entry.Fastener!)].Status == FastenerStatus.Done)
        {
            return (JobVerdict.Rejected, Remarks(wentBack, JobReason.AlreadyDone));
        }

        _undoable = entry;
        _lines.Add((entry, wentBack));
        return Carry(entry, wentBack);
    }

    private static HashSet<JobReason> Remarks(bool wentBack, params JobReason[] others) => wentBack ? [JobReason.TimeWentBack, .. others] : [.. others];

    private JobReason? Misfit(JobEntry entry)
    {
        if (!fasteners.Contains(entry.Fastener)) return JobReason.UnknownFastener;
        if (entry.Step is null || entry.Kind == JobEntryKind.Loosened) return null;
        NaiveStep? named = steps.FirstOrDefault(step => step.Name == entry.Step);
        if (named is null) return JobReason.UnknownStep;
        return named.Order.Contains(entry.Fastener) ? null : JobReason.FastenerNotInStep;
    }

    /// <summary>What a pull in a step that the fastener does not have leaves behind in it.</summary>
    private IEnumerable<JobReason> HarmOf(JobEntry entry)
    {
        NaiveStep[] own = OwnSteps(entry.Fastener!);
        if (own.Any(step => step.NeedsRotation))
        {
            double?[] snug = [.. own.TakeWhile(step => !step.NeedsRotation).Select(step => step.Torque?.High), 0];
            if (entry.Rotation?.Degrees > 0 || entry.Torque?.NewtonMeters > Math.Max(snug.Max()!.Value, Held(entry.Fastener!))) yield return JobReason.RotationUncounted;
        }
        else if (own.Length > 0 && own.All(step => entry.Torque?.NewtonMeters > step.Torque?.High))
        {
            yield return JobReason.PulledTooHigh;
        }
    }

    private void Condemn(JobEntry entry, bool wentBack)
    {
        _undoable = entry;
        _condemning.Add(entry);
        _lines.Add((entry, wentBack));
        MustBeLoosened.Add(entry.Fastener!);
    }

    private double Held(string fastener) => OwnSteps(fastener).Select(s => Cells[(s.Name, fastener)])
        .Where(c => c.Status == FastenerStatus.Done).Select(c => c.Reading!.Torque?.NewtonMeters ?? 0).Append(0).Max();

    private bool Holds(JobEntry entry) => OwnSteps(entry.Fastener!).Select(s => Cells[(s.Name, entry.Fastener!)].Reading)
        .Any(held => held is not null && held.Torque?.NewtonMeters == entry.Torque?.NewtonMeters && held.Rotation?.Degrees == entry.Rotation?.Degrees);

    private NaiveStep[] OwnSteps(string fastener) => [.. steps.Where(step => step.Order.Contains(fastener))];

    /// <summary>
    /// Steps that tighten the fastener: of those from the open one on, the first; when there is none, the last of all. Where that is done and the
    /// reading does not fit it, the next that is not.
    /// </summary>
    private NaiveStep StepOf(JobEntry entry)
    {
        if (entry.Step is not null) return steps.Single(step => step.Name == entry.Step);
        NaiveStep[] own = OwnSteps(entry.Fastener!);
        int open = OpenStep is NaiveStep step ? Array.IndexOf(steps, step) : steps.Length;
        NaiveStep first = (order == TighteningOrder.Free
            ? own.FirstOrDefault(s => !Cells[(s.Name, entry.Fastener!)].Settled)
            : own.FirstOrDefault(s => Array.IndexOf(steps, s) >= open)) ?? own[^1];
        NaiveCell CellOf(NaiveStep s) => Cells[(s.Name, entry.Fastener!)];
        bool Fits(NaiveStep s) => !s.Refuses(s.ReasonsFor(entry.Torque?.NewtonMeters, entry.Rotation?.Degrees, entry.Duration?.Seconds));
        if (entry.Kind != JobEntryKind.Tightened || Fits(first)) return first;
        if (CellOf(first).Status == FastenerStatus.Done) return own.SkipWhile(s => s != first).FirstOrDefault(s => !CellOf(s).Settled) ?? first;
        NaiveStep? before = own.TakeWhile(s => s != first).LastOrDefault();
        return before is not null && CellOf(before).Status == FastenerStatus.Done && !before.NeedsRotation && Fits(before) ? before : first;
    }

    private void WorkOutAnew()
    {
        Cells = steps.SelectMany(step => step.Order.Select(f => (step.Name, f))).ToDictionary(key => key, _ => new NaiveCell());
        MustBeLoosened = [];
        Loosenings = fasteners.ToDictionary(f => f, _ => (0, ""));
        foreach ((JobEntry entry, bool wentBack) in _lines) Carry(entry, wentBack);
    }

    private (JobVerdict Verdict, HashSet<JobReason> Reasons) Carry(JobEntry entry, bool wentBack)
    {
        string fastener = entry.Fastener!;
        HashSet<JobReason> reasons = Remarks(wentBack);
        if (_condemning.Contains(entry))
        {
            MustBeLoosened.Add(fastener);
            return (JobVerdict.Rejected, reasons);
        }

        JobVerdict kind = wentBack ? JobVerdict.Flagged : JobVerdict.Accepted;
        if (entry.Kind == JobEntryKind.Loosened)
        {
            MustBeLoosened.Remove(fastener);
            Loosenings[fastener] = (Loosenings[fastener].Count + 1, entry.Reason!);
            foreach (NaiveStep own in steps.Where(s => s.Order.Contains(fastener)))
            {
                NaiveCell old = Cells[(own.Name, fastener)];
                Cells[(own.Name, fastener)] = new NaiveCell { Readings = old.Readings, SkipReason = old.SkipReason };
            }

            return (kind, reasons);
        }

        NaiveStep step = StepOf(entry);
        NaiveCell cell = Cells[(step.Name, fastener)];
        if (entry.Kind == JobEntryKind.Skipped)
        {
            cell.Status = FastenerStatus.Skipped;
            cell.SkipReason = entry.Reason;
            return (kind, reasons);
        }

        return Tighten(entry, step, cell, reasons);
    }

    private (JobVerdict Verdict, HashSet<JobReason> Reasons) Tighten(JobEntry entry, NaiveStep step, NaiveCell cell, HashSet<JobReason> reasons)
    {
        string fastener = entry.Fastener!;
        HashSet<JobReason> found = step.ReasonsFor(entry.Torque?.NewtonMeters, entry.Rotation?.Degrees, entry.Duration?.Seconds);
        reasons.UnionWith(found);
        bool done = cell.Status == FastenerStatus.Done;
        if (done) reasons.Add(JobReason.AlreadyDone);
        if (cell.Status == FastenerStatus.Skipped) reasons.Add(JobReason.WasSkipped);
        if (MustBeLoosened.Contains(fastener)) reasons.Add(JobReason.MustBeLoosened);
        if (!done && OutOfOrder(step, fastener, cell) is JobReason disorder) reasons.Add(disorder);
        if (Wasted(entry, step, cell, reasons)) reasons.Add(JobReason.RotationUncounted);
        NaiveStep? next = OwnSteps(fastener).FirstOrDefault(s => !Cells[(s.Name, fastener)].Settled);
        if (reasons.Contains(JobReason.StepNotReached) && entry.Torque?.NewtonMeters > next?.Torque?.High) reasons.Add(JobReason.PulledTooHigh);
        bool wasted = reasons.Overlaps([JobReason.RotationUncounted, JobReason.PulledTooHigh]);
        bool refused = wasted || step.Refuses(reasons) || reasons.Overlaps([JobReason.StepNotReached, JobReason.FastenerNotNext, JobReason.MustBeLoosened]);
        JobVerdict verdict = refused ? JobVerdict.Rejected : reasons.Count > 0 ? JobVerdict.Flagged : JobVerdict.Accepted;

        bool tooMuch = found.Contains(JobReason.TorqueAbove) || step.NeedsRotation && found.Contains(JobReason.RotationAbove);
        bool unknown = step.NeedsRotation && !found.Contains(JobReason.ThresholdNotReached)
            && found.Overlaps([JobReason.RotationMissing, JobReason.TooFast, JobReason.RateUnknown]);
        if (done) unknown = false;
        bool says = !step.NeedsRotation && (!refused || found.Contains(JobReason.TorqueBelow));
        bool before = MustBeLoosened.Contains(fastener);
        cell.Readings++;
        if (entry.Rotation?.Degrees > cell.Most && !found.Contains(JobReason.ThresholdNotReached)) cell.Most = entry.Rotation.Value.Degrees;
        if (tooMuch || unknown || wasted) MustBeLoosened.Add(fastener);
        if (before || done && !(tooMuch || unknown || wasted) && !says) return (verdict, reasons);
        cell.Status = refused ? FastenerStatus.Rejected : FastenerStatus.Done;
        cell.Reading = entry;
        cell.Reasons = [.. reasons];
        return (verdict, reasons);
    }

    /// <summary>A turn of the bolt that no accepted rotation will hold.</summary>
    private bool Wasted(JobEntry entry, NaiveStep step, NaiveCell cell, HashSet<JobReason> reasons)
    {
        NaiveStep[] own = OwnSteps(entry.Fastener!);
        NaiveStep[] turns = [.. own.SkipWhile(s => s != step).Skip(1).Where(s => s.NeedsRotation)];
        bool turnedLater = turns.Any(s => Cells[(s.Name, entry.Fastener!)].Status == FastenerStatus.Done);
        if (cell.Status == FastenerStatus.Skipped && (turnedLater || turns.Any(s => Cells[(s.Name, entry.Fastener!)].Most > 0))) return true;
        bool turned = entry.Rotation?.Degrees > 0;
        if (!step.NeedsRotation) return turned && (turnedLater || reasons.Contains(JobReason.TorqueMissing) && own.Any(s => s.NeedsRotation));
        if (cell.Status == FastenerStatus.Done) return turned || entry.Rotation is null && entry.Torque?.NewtonMeters > Held(entry.Fastener!);
        if (reasons.Contains(JobReason.ThresholdNotReached)) return false;
        return entry.Rotation?.Degrees < cell.Most || turned && reasons.Overlaps([JobReason.StepNotReached, JobReason.FastenerNotNext, JobReason.TorqueMissing]);
    }

    private JobReason? OutOfOrder(NaiveStep step, string fastener, NaiveCell cell)
    {
        NaiveStep[] before = [.. steps.TakeWhile(s => s != step)];
        IEnumerable<NaiveCell> unfinished = order == TighteningOrder.Free
            ? before.Where(s => s.Order.Contains(fastener)).Select(s => Cells[(s.Name, fastener)])
            : before.SelectMany(s => s.Order.Select(f => Cells[(s.Name, f)]));
        if (unfinished.Any(c => !c.Settled)) return JobReason.StepNotReached;
        if (order != TighteningOrder.InSequence || cell.Settled) return null;
        return step.Order.TakeWhile(f => f != fastener).Any(f => !Cells[(step.Name, f)].Settled) ? JobReason.FastenerNotNext : null;
    }
}
