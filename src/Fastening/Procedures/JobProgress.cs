using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>How far a job is, from its program and its log alone: a state that never changes.</summary>
/// <remarks>
/// <para>The state follows from the set of the entries, and not from the order in which they came: sources are merged by time, a late line is put in its
/// place, and a repeat changes nothing. Nothing here reads a clock.</para>
/// <para>A fastener is done in a step when a pull is accepted. What its pulls did is kept apart from the order of the work: each reason
/// (<see cref="JobReason"/>) has an effect (<see cref="JobEffect"/>), and lasts until the cure of that effect.</para>
/// </remarks>
/// <example><code>JobProgress job = JobProgress.Replay(program, entries);
/// Console.WriteLine(job);
/// foreach (FastenerState state in job.ToLookAt) Console.WriteLine(state);</code></example>
public sealed class JobProgress
{
    private readonly MergedLog _log;
    private readonly JobLedger _ledger;

    internal JobProgress(MergedLog log, long repeats, bool needsReplay, long assumedRepeats)
    {
        _log = log;
        _ledger = log.Ledger;
        Repeats = repeats;
        NeedsReplay = needsReplay;
        AssumedRepeats = assumedRepeats;
        Gaps = log.Gaps;
    }

    /// <summary>The program.</summary>
    public TighteningProgram Program => _log.Program;

    /// <summary>How many entries the log holds, repeats not counted.</summary>
    public long EntryCount => _ledger.Entries;

    /// <summary>How many lines repeated another one.</summary>
    public long Repeats { get; }

    /// <summary>How many lines a run took for repeats of lines older than its tail; only a replay can prove that they are.</summary>
    public long AssumedRepeats { get; }

    /// <summary>How many entries name a fastener that the program does not have, those withdrawn not counted: whatever was pulled there is not known.</summary>
    public long Strays => _ledger.Strays;

    /// <summary>How many entries are withdrawn.</summary>
    public long WithdrawnCount => _ledger.WithdrawnEntries;

    /// <summary>
    /// How many entries use a number that another one holds: a counter began again, or two sources share a name. They only warn. Give the restarted counter a
    /// new source name, and replay the log.
    /// </summary>
    public long Conflicts => _log.Conflicts;

    /// <summary>Numbers that are missing and that nobody has explained.</summary>
    public IReadOnlyList<JobGap> Gaps { get; }

    /// <summary>Whether a line came that is older than the run could place: replay the log.</summary>
    public bool NeedsReplay { get; }

    /// <summary>Whether the log is whole: no gap, no conflict of numbers, and no line that waits for a replay.</summary>
    public bool IsComplete => Gaps.Count == 0 && Conflicts == 0 && !NeedsReplay;

    /// <summary>Whether the log is whole, every fastener of every step is done, and none is to be loosened or looked at. Remarks do not stand against it.</summary>
    public bool IsConforming => IsComplete && _ledger.Rows.All(Conforms);

    /// <summary>The first step with fasteners that are neither done nor skipped; null when there is none.</summary>
    public TighteningStep? OpenStep => _ledger.OpenStep is >= 0 and int step ? Program.Steps[step] : null;

    /// <summary>The fastener that comes next in the order of <see cref="OpenStep"/>; null when there is none. It may have to be loosened first.</summary>
    public string? NextFastener => _ledger.NextFastener is >= 0 and int fastener ? Program.Fasteners[fastener] : null;

    /// <summary>The fasteners of which no pull counts before they are loosened, in the program's order; empty while lines are missing.</summary>
    public IReadOnlyList<string> ToLoosen => Gaps.Count == 0 ? MustBeLoosened : [];

    /// <summary>The same fasteners while lines are missing, which may show why: get the lines first.</summary>
    public IReadOnlyList<string> WaitingForLines => Gaps.Count == 0 ? [] : MustBeLoosened;

    /// <summary>The fasteners that cannot conform before a person has decided, in the program's order.</summary>
    public IReadOnlyList<FastenerState> ToLookAt => Array.AsReadOnly(
        Enumerable.Range(0, _ledger.Rows.Count).Where(f => _ledger.Rows[f].Unsettled.Meets(Program.Effects.LookedAt)).Select(State).ToArray());

    /// <summary>The steps that are done with a remark, fastener by fastener: they stand, and somebody should read them.</summary>
    public IReadOnlyList<StepState> Remarks => Array.AsReadOnly(
        Enumerable.Range(0, _ledger.Rows.Count)
            .Where(f => Array.Exists(_ledger.Rows[f].Cells, cell => cell.Status == FastenerStatus.Done && !cell.Reasons.IsEmpty))
            .SelectMany(f => State(f).Steps.Where(step => step.Status == FastenerStatus.Done && step.HasFindings)).ToArray());

    private string[] MustBeLoosened => [.. Program.Fasteners.Where((_, f) => _ledger.Rows[f].Run.Meets(Program.Effects.Loosening))];

    /// <summary>The progress after a whole log, with options of <see cref="JobOptions.Default"/>.</summary>
    /// <param name="program">The program.</param>
    /// <param name="log">The entries, in any order; those in order are the fastest.</param>
    /// <returns>The progress.</returns>
    /// <exception cref="ArgumentNullException">An argument or an entry is null.</exception>
    /// <example><code>JobProgress job = JobProgress.Replay(program, entries);</code></example>
    public static JobProgress Replay(TighteningProgram program, IEnumerable<JobEntry> log) => Replay(program, log, JobOptions.Default);

    /// <summary>The progress after a whole log.</summary>
    /// <param name="program">The program.</param>
    /// <param name="log">The entries, in any order; those in order are the fastest.</param>
    /// <param name="options">How they are put in order.</param>
    /// <returns>The progress.</returns>
    /// <exception cref="ArgumentNullException">An argument or an entry is null.</exception>
    /// <example><code>JobProgress job = JobProgress.Replay(program, entries, JobOptions.Default.WithSources(JobSource.Sparse("shared controller")));</code></example>
    public static JobProgress Replay(TighteningProgram program, IEnumerable<JobEntry> log, JobOptions options)
    {
        IReadOnlyList<JobEntry> list = Guard.NotNull(log) as IReadOnlyList<JobEntry> ?? [.. log];
        MergedLog merged = LogReplay.Of(Guard.NotNull(program), list, Guard.NotNull(options), out long repeats);
        return new(merged, repeats, needsReplay: false, assumedRepeats: 0);
    }

    /// <summary>How many fasteners stand where in a step.</summary>
    /// <param name="step">The name of the step.</param>
    /// <returns>The counts.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="step"/> is null.</exception>
    /// <exception cref="ArgumentException">The program has no such step.</exception>
    /// <example><code>Console.WriteLine(job.CountsOf("half"));     // half: 1 of 4 done, 3 open, 0 rejected, 0 skipped</code></example>
    public StepCounts CountsOf(string step)
    {
        int index = Program.StepIndex(step);
        int[] counts = new int[(int)FastenerStatus.Skipped + 1];
        foreach (FastenerLedger row in _ledger.Rows) counts[(int)row.Cells[index].Status]++;
        return new(step, counts[(int)FastenerStatus.Open], counts[(int)FastenerStatus.Done], counts[(int)FastenerStatus.Rejected], counts[(int)FastenerStatus.Skipped]);
    }

    /// <summary>The fasteners of a step that are neither done nor skipped, in its order.</summary>
    /// <param name="step">The name of the step.</param>
    /// <returns>Their names.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="step"/> is null.</exception>
    /// <exception cref="ArgumentException">The program has no such step.</exception>
    /// <example><code>Console.WriteLine(string.Join(" ", job.RemainingIn("full")));</code></example>
    public IReadOnlyList<string> RemainingIn(string step)
    {
        int index = Program.StepIndex(step);
        return Array.AsReadOnly(Program.OrderOf(index).Where(f => !_ledger.Rows[f].Cells[index].IsSettled).Select(f => Program.Fasteners[f]).ToArray());
    }

    /// <summary>The facts of a fastener.</summary>
    /// <param name="fastener">The name of the fastener.</param>
    /// <returns>Its state.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="fastener"/> is null.</exception>
    /// <exception cref="ArgumentException">The program has no such fastener.</exception>
    /// <example><code>if (job.StateOf("B3").MustBeLoosened) Console.WriteLine("loosen B3");</code></example>
    public FastenerState StateOf(string fastener) => State(Program.FastenerIndex(fastener));

    /// <summary>What a tool did in a step as it stands now, for <see cref="ToolCalibration.Rejudge"/>: every fastener that is done by a pull of it.</summary>
    /// <remarks>Where an adapter was stated, torque and window are those at the tool. The tool of an entry that names none is its source.</remarks>
    /// <param name="step">The name of a step with a torque window.</param>
    /// <param name="tool">The name of the tool.</param>
    /// <returns>The readings, in the order of the step.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">The program has no such step, or the step has no torque window to judge a tool by.</exception>
    /// <example><code>ToolRecall recall = found.Rejudge(lastGood, job.ReadingsOf("full", tool: "W-17"), DecisionRule.IlacG8);</code></example>
    public IReadOnlyList<ToolReading> ReadingsOf(string step, string tool)
    {
        int index = Program.StepIndex(step);
        Guard.NotNull(tool);
        ToleranceWindow<Torque> window = Program.Steps[index].TorqueWindow
            ?? throw new ArgumentException($"step is {Quoted.Text(step)}; it has no torque window to judge a tool by.", nameof(step));
        return Array.AsReadOnly(
            Program.OrderOf(index).Select(f => _ledger.Rows[f].Cells[index])
                .Where(cell => cell.Status == FastenerStatus.Done && (cell.Pull!.Tool ?? cell.Pull.Source) == tool && cell.Pull.InNewtonMeters > 0)
                .Select(cell => AtTool(cell.Pull!, window)).ToArray());
    }

    /// <inheritdoc />
    public override string ToString()
    {
        string where = OpenStep is TighteningStep open ? Print.Text($"{CountsOf(open.Name)}; next: {NextFastener}")
            : _ledger.Rows.All(row => Array.TrueForAll(row.Cells, IsDone)) ? "every fastener is done"
            : "some fasteners were skipped, the others are done";
        return where
            + Also($"to be loosened: {string.Join(", ", ToLoosen)}", ToLoosen.Count)
            + Also($"missing lines: {string.Join(", ", Gaps)}: have them sent again, or explain them", Gaps.Count)
            + Also($"waiting for lines: {string.Join(", ", WaitingForLines)}", WaitingForLines.Count)
            + Also($"to be looked at: {string.Join(", ", ToLookAt.Select(state => state.Fastener))}", ToLookAt.Count)
            + Also(Print.Text($"remarks: {Remarks.Count}"), Remarks.Count)
            + Also(Print.Text($"entries of unknown fasteners: {Strays}"), Strays)
            + Also(Print.Text($"numbers used twice: {Conflicts}: name the restarted counter anew, and replay"), Conflicts)
            + Also(Print.Text($"repeats that only a replay can prove: {AssumedRepeats}"), AssumedRepeats)
            + Also("a line came too late for this run: replay the log", NeedsReplay ? 1 : 0);
    }

    private static bool IsDone(StepCell cell) => cell.Status is FastenerStatus.Done or FastenerStatus.NotInStep;

    private bool Conforms(FastenerLedger row) =>
        !row.Run.Meets(Program.Effects.Loosening) && !row.Unsettled.Meets(Program.Effects.LookedAt) && Array.TrueForAll(row.Cells, IsDone);

    private FastenerState State(int fastener) => new(Program, fastener, _ledger.Rows[fastener], Gaps.Count > 0);

    private static ToolReading AtTool(JobEntry pull, ToleranceWindow<Torque> window) => pull.TorqueAtTool is not Torque shown
        ? new(pull.Fastener!, pull.Time, Si.Torque(pull.InNewtonMeters), window)
        : new(pull.Fastener!, pull.Time, shown, window.Scale(Si.Of(shown) / pull.InNewtonMeters));

    private static string Also(string text, long count) => count == 0 ? "" : "; " + text;
}
