namespace Fastening.Tests.Procedures;

/// <summary>
/// The rules of a job written a second time, as simply as they can be said: the whole log is kept, undo strikes out the last line, and everything
/// is worked out anew from the lines that are left. No counts, no cursors, no shared rows.
/// </summary>
public sealed class NaiveJob(string[] fasteners, NaiveStep[] steps, TighteningOrder order)
{
    private readonly List<(JobEntry Entry, bool WentBack)> _lines = [];
    private readonly Dictionary<string, (long Sequence, DateTimeOffset Time)> _last = [];
    private JobEntry? _undoable;

    public Dictionary<(string Step, string Fastener), NaiveCell> Cells { get; private set; } = [];

    public HashSet<string> MustBeLoosened { get; private set; } = [];

    public Dictionary<string, (int Count, string Reason)> Loosenings { get; private set; } = [];

    public int Entries { get; private set; }

    public int Strays { get; private set; }

    public int Undone { get; private set; }

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
        bool known = _last.TryGetValue(entry.Source, out var last);
        if (known && entry.Sequence <= last.Sequence) return (JobVerdict.Ignored, [JobReason.SequenceNotNew]);
        bool wentBack = known && entry.Time < last.Time;
        _last[entry.Source] = (entry.Sequence, entry.Time);
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
            if (harm.Length > 0)
            {
                _undoable = entry;
                _lines.Add((entry, wentBack));
                MustBeLoosened.Add(entry.Fastener!);
            }

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
        NaiveStep[] own = [.. steps.Where(step => step.Order.Contains(entry.Fastener))];
        if (own.Any(step => step.NeedsRotation) && entry.Rotation?.Degrees > 0) yield return JobReason.RotationUncounted;
        if (own.Length > 0 && own.All(step => entry.Torque?.NewtonMeters > step.Torque?.High)) yield return JobReason.TorqueAboveProgram;
    }

    /// <summary>Steps that tighten the fastener: of those from the open one on, the first; when there is none, the last of all.</summary>
    private NaiveStep StepOf(JobEntry entry)
    {
        if (entry.Step is not null) return steps.Single(step => step.Name == entry.Step);
        NaiveStep[] own = [.. steps.Where(step => step.Order.Contains(entry.Fastener))];
        if (order == TighteningOrder.Free) return own.FirstOrDefault(step => !Cells[(step.Name, entry.Fastener!)].Settled) ?? own[^1];
        int open = OpenStep is NaiveStep step ? Array.IndexOf(steps, step) : steps.Length;
        return own.FirstOrDefault(s => Array.IndexOf(steps, s) >= open) ?? own[^1];
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
        if (Misfit(entry) is not null)
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
        bool offBeat = done || reasons.Overlaps([JobReason.StepNotReached, JobReason.FastenerNotNext]) || found.Contains(JobReason.TorqueMissing);
        bool wasted = offBeat && step.NeedsRotation && entry.Rotation?.Degrees > 0 && !found.Contains(JobReason.ThresholdNotReached);
        if (wasted) reasons.Add(JobReason.RotationUncounted);
        bool refused = wasted || step.Refuses(reasons) || reasons.Overlaps([JobReason.StepNotReached, JobReason.FastenerNotNext, JobReason.MustBeLoosened]);
        JobVerdict verdict = refused ? JobVerdict.Rejected : reasons.Count > 0 ? JobVerdict.Flagged : JobVerdict.Accepted;

        bool tooMuch = found.Contains(JobReason.TorqueAbove) || step.NeedsRotation && found.Contains(JobReason.RotationAbove);
        bool unknown = step.NeedsRotation && !found.Contains(JobReason.ThresholdNotReached)
            && found.Overlaps([JobReason.RotationMissing, JobReason.TooFast, JobReason.RateUnknown]);
        cell.Readings++;
        if (done && !tooMuch && !wasted) return (verdict, reasons);
        if (tooMuch || unknown || wasted) MustBeLoosened.Add(fastener);
        cell.Status = refused ? FastenerStatus.Rejected : FastenerStatus.Done;
        cell.Reading = entry;
        cell.Reasons = [.. reasons];
        return (verdict, reasons);
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
