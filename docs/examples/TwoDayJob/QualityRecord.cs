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

    public JobProgress Job => run.End;

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
        Show.Heading(to, "What happened besides readings accepted without remark");
        to.WriteLine("In the order in which the lines came in.");
        foreach (JobUpdate update in run.Updates)
        {
            JobEntry entry = update.Entry;
            bool plain = entry.Kind == JobEntryKind.Tightened && update.Verdict == JobVerdict.Accepted;
            if (plain) continue;
            to.WriteLine($"{Show.Time(entry.Time)}  {entry.Source} #{entry.Sequence}");
            string measured = entry.Torque is UnitsNet.Torque torque ? $" at {Show.Number(torque.NewtonMeters)} N·m" : "";
            to.WriteLine($"    {entry.Kind.ToString().ToLowerInvariant()}{measured}{(entry.Reason is null ? "" : $" ({entry.Reason})")}: {update}");
        }
    }

    private void WriteDays(TextWriter to)
    {
        foreach ((DateOnly day, JobProgress progress) in run.EndsOfDays)
        {
            Show.Heading(to, $"At the end of {day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}");
            foreach (TighteningStep step in cover.Program.Steps) to.WriteLine($"  {progress.CountsOf(step.Name)}");
            to.WriteLine($"  next: {progress.NextFastener ?? "nothing"}; entries {progress.EntryCount}, fitting no bolt or step {progress.StrayCount}, undone {progress.UndoneCount}");
        }
    }

    private void WriteBolts(TextWriter to)
    {
        TighteningStep last = cover.Program.Steps[^1];
        Show.Heading(to, $"Every bolt after {last.Name}");
        to.WriteLine("bolt  status    N·m     °   pulls  loosened  tool   time                        remark");
        foreach (string bolt in cover.Program.Fasteners)
        {
            FastenerState state = Job.StateOf(last.Name, bolt);
            int pulls = cover.Program.Steps.Sum(step => Job.StateOf(step.Name, bolt).Readings);
            string remark = string.Join("; ", Remarks(state));
            to.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{bolt}   {state.Status,-8} {state.Torque?.NewtonMeters,6:0.0} {state.Rotation?.Degrees,5:0}  {pulls,6}  {state.Loosenings,8}  {state.Reading?.Source,-6} {(state.Reading is null ? "" : Show.Time(state.Reading.Time))}  {remark}").TrimEnd());
        }
    }

    private static IEnumerable<string> Remarks(FastenerState state)
    {
        if (state.ReasonsInWords.Length > 0) yield return state.ReasonsInWords;
        if (state.SkipReason is string skipped) yield return $"{(state.Status == FastenerStatus.Skipped ? "skipped" : "had been skipped")}: {skipped}";
        if (state.LooseningReason is string loosened) yield return $"had been loosened: {loosened}";
    }

    private void WriteVerdict(TextWriter to)
    {
        Show.Heading(to, "Result of the job, as the tools showed it");
        to.WriteLine($"{(Job.IsConforming ? "CONFORMING" : "NOT CONFORMING")}: {Job}.");
        to.WriteLine("  Not included: friction of each bolt, settling, neighbours tightened later, condition of the threads, the error of the tools (see below).");
        foreach (FastenerState state in Job.ToLookAt) to.WriteLine($"  {state.Fastener}, {state.Step}: {state.ReasonsInWords}");
        if (Job.ToLookAt.Count > 0) to.WriteLine("  Looked at by: ____________________   on: ____________");
    }
}
