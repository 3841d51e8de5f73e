using System.Globalization;
using Fastening;

namespace TwoDayJob;

/// <summary>What a quality file needs of the job: program, what happened, counts by day, and the state of every bolt with its reading.</summary>
internal sealed class QualityRecord(DigesterCover cover, RunJob run)
{
    private static readonly string[] Cautions =
    [
        "Cautions",
        "  Torque is not preload. A reading that conforms says nothing of friction, settling, a crossed thread or a bolt that yields.",
        "  The procedure of the joint, local codes and the instructions of the makers of joint and tool come before this record.",
        "  A pressure-bearing cover needs a qualified procedure and a qualified person. Relieve pressure before a bolt is touched.",
        "  A bolt that went above its window may have yielded: loosening does not undo that.",
    ];

    public JobProgress Job => run.Replayed;

    public void Write(TextWriter to)
    {
        to.WriteLine("RECORD OF A TIGHTENING: manhole cover of a digester, 48 bolts M27, sewage works");
        to.WriteLine("This job, its tools and every reading are invented. Do not tighten a real joint by it.");
        to.WriteLine();
        to.WriteLine($"First entry {Show.Time(run.Updates[0].Entry.Time)}");
        to.WriteLine($"Last entry  {Show.Time(run.Updates[^1].Entry.Time)}");
        to.WriteLine($"Sources: {string.Join(", ", run.Updates.GroupBy(u => u.Entry.Source).Select(g => $"{g.Key} ({g.Count()} lines)"))}");
        to.WriteLine("Times are local, with their offset from UTC; summer time ended in the night between the two days.");
        to.WriteLine();
        foreach (string line in Cautions) to.WriteLine(line);
        WriteProgram(to);
        WriteEvents(to);
        WriteDays(to);
        WriteBolts(to);
        WriteVerdict(to);
    }

    private void WriteProgram(TextWriter to)
    {
        Show.Heading(to, "Program");
        to.WriteLine($"{cover.Program}");
        foreach (TighteningStep step in cover.Program.Steps) to.WriteLine($"  {step}");
        to.WriteLine($"Order of every pass: {string.Join(" ", cover.Program.FastenersOf(cover.Program.Steps[0].Name))}");
    }

    /// <summary>Everything but plain acceptance: a file has to show what went wrong, too.</summary>
    private void WriteEvents(TextWriter to)
    {
        Show.Heading(to, "What happened besides pulls accepted without remark");
        to.WriteLine("In the order in which the lines came in, each with the verdict of that moment; a late line can change it.");
        foreach (JobUpdate update in run.Updates)
        {
            JobEntry entry = update.Entry;
            if (entry.Kind == JobEntryKind.Pulled && update.Verdict == JobVerdict.Accepted && !update.WasLate) continue;
            to.WriteLine($"{Show.Time(entry.Time)}  {entry.Source} #{entry.Sequence}");
            string measured = entry.Torque is UnitsNet.Torque torque ? $" at {Show.Number(torque.NewtonMeters)} N·m" : "";
            string who = entry.Operator is null ? "" : $" by {entry.Operator}";
            to.WriteLine($"    {entry.Kind.ToString().ToLowerInvariant()}{measured}{who}{(entry.Reason is null ? "" : $" ({entry.Reason})")}: {update}");
        }
    }

    private void WriteDays(TextWriter to)
    {
        foreach ((DateOnly day, JobProgress progress) in run.EndsOfDays)
        {
            Show.Heading(to, $"At the end of {day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}");
            foreach (TighteningStep step in cover.Program.Steps) to.WriteLine($"  {progress.CountsOf(step.Name)}");
            to.WriteLine($"  next: {progress.NextFastener ?? "nothing"}; entries {progress.EntryCount}, repeats {progress.Repeats}, withdrawn {progress.WithdrawnCount}, of unknown bolts {progress.Strays}");
            to.WriteLine($"  missing lines: {(progress.Gaps.Count == 0 ? "none" : string.Join(", ", progress.Gaps))}");
            to.WriteLine($"  to be loosened: {Names(progress.ToLoosen.Concat(progress.WaitingForLines))}; to be looked at: {Names(progress.ToLookAt.Select(state => state.Fastener))}");
        }
    }

    private void WriteBolts(TextWriter to)
    {
        TighteningStep last = cover.Program.Steps[^1];
        Show.Heading(to, $"Every bolt after {last.Name}");
        to.WriteLine("bolt  status    N·m     °   pulls  loosened  tool   time                        remark");
        foreach (string bolt in cover.Program.Fasteners)
        {
            FastenerState state = Job.StateOf(bolt);
            StepState end = state.In(last.Name);
            JobEntry? pull = end.Pull;
            int pulls = state.Steps.Sum(step => step.Pulls);
            string remark = string.Join("; ", Remarks(state));
            to.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{bolt}   {end.Status,-8} {pull?.Torque?.NewtonMeters,6:0.0} {pull?.Rotation?.Degrees,5:0}  {pulls,6}  {state.Loosenings,8}  {pull?.Source,-6} {(pull is null ? "" : Show.Time(pull.Time))}  {remark}").TrimEnd());
        }
    }

    private static IEnumerable<string> Remarks(FastenerState state)
    {
        foreach (StepState step in state.Steps)
        {
            foreach (JobFinding found in step.Findings) yield return $"{step.Step.Name}: {found.Fact}";
            if (step.Skip is JobEntry skip) yield return $"{(step.Status == FastenerStatus.Skipped ? "skipped" : "had been skipped")}: {skip.Reason}";
        }

        if (state.Loosening is JobEntry loosened) yield return $"had been loosened: {loosened.Reason}";
        if (state.Replacements > 0) yield return "is a new bolt";
        if (state.Decision is JobEntry decision) yield return $"accepted by {decision.Operator}: {decision.Reason}";
    }

    private void WriteVerdict(TextWriter to)
    {
        Show.Heading(to, "Result of the job, as the tools showed it");
        to.WriteLine($"{(Job.IsConforming ? "CONFORMING" : "NOT CONFORMING")}: {Job}.");
        to.WriteLine($"  The log is {(Job.IsComplete ? "whole" : "not whole")}; run and replay agree: {(Job.ToString() == run.EndsOfDays[^1].Progress.ToString() ? "yes" : "no")}.");
        to.WriteLine("  Not included: friction of each bolt, settling, neighbours tightened later, condition of the threads, the error of the tools (see below).");
        foreach (FastenerState state in Job.ToLookAt)
        {
            to.WriteLine($"  To be looked at: {state.Fastener}, highest torque ever stated {Show.Number(state.PeakEver.NewtonMeters)} N·m; last: {state.Cause}");
            foreach (JobFinding found in state.ToLookAtFor) to.WriteLine($"    {found}");
            to.WriteLine($"    Looked at by: ____________________   on: ____________   what was seen: {state.Facts.ToString(CultureInfo.InvariantCulture)}");
        }

        foreach (StepState step in Job.Remarks) to.WriteLine($"  Remark: {step}");
        foreach (FastenerState state in cover.Program.Fasteners.Select(Job.StateOf).Where(state => state.Decision is not null)) to.WriteLine($"  Decided: {state.Decision}");
    }

    private static string Names(IEnumerable<string> names) => names.Any() ? string.Join(" ", names) : "none";
}
