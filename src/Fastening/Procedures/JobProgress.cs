using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>How far a job is: a state that never changes, and the rules that make the next one from an entry of the log.</summary>
/// <remarks>
/// <para>Pure: the same entries give the same progress, in one go or in parts. An entry whose sequence number is not greater than the last of its
/// source changes nothing, unless it is plainly another one (<see cref="ConflictCount"/>); a time before that of the source's last entry is flagged,
/// and the entry counts.</para>
/// <para>A fastener is done in a step when a reading is accepted. What is too little is repeated; what is too much, or a rotation that nobody
/// knows where one is required, must be loosened, and until then no reading of that fastener is accepted. A loosened fastener begins with its first
/// step. A skip lets the job go on, and a skipped fastener may be tightened later by naming the step.</para>
/// <para>A further reading of a fastener that is done is flagged. Where torque decides, it takes the place of the one before when it is accepted, and
/// the fastener is not done any more when it is too low. Where a rotation was required, a further turn, or a harder pull of which the turn is not
/// known, asks for loosening; nothing else changes.</para>
/// <para>Memory: fasteners × steps, and one mark for each source, however long the log. Only the last entry can be undone.</para>
/// </remarks>
/// <example><code>JobProgress job = JobProgress.Start(program);
/// JobUpdate update = job.Apply(JobEntry.Tightened("wrench 7", 118, time, "B3").WithTorque(Torque.FromNewtonMeters(121)));
/// Console.WriteLine(update);       // B3, full: accepted
/// job = update.Progress;</code></example>
public sealed class JobProgress
{
    private readonly JobState _state;

    private JobProgress(TighteningProgram program, JobState state)
    {
        Program = program;
        _state = state;
    }

    /// <summary>The program.</summary>
    public TighteningProgram Program { get; }

    /// <summary>How many entries counted: all whose number was new.</summary>
    public long EntryCount => _state.Entries;

    /// <summary>How many of them named a fastener or a step that the program does not have, or not together.</summary>
    public long StrayCount => _state.Strays;

    /// <summary>
    /// How many entries were refused because another one had used their number: they are later than all of their source, so they are no repeats. What
    /// they report counts in no step, though a turn or a torque too high asks for loosening; number the source apart and go through the log again.
    /// </summary>
    public long ConflictCount => _state.Conflicts;

    /// <summary>How many entries were undone.</summary>
    public long UndoneCount => _state.Undone;

    /// <summary>The first step with fasteners that are neither done nor skipped; null when there is none.</summary>
    public TighteningStep? OpenStep => JobState.OpenStep(_state.Unsettled) is >= 0 and int step ? Program.Steps[step] : null;

    /// <summary>The fastener that comes next in the order of <see cref="OpenStep"/>; null when there is none. It may have to be loosened first.</summary>
    public string? NextFastener => JobState.OpenStep(_state.Unsettled) is >= 0 and int step
        ? Program.Fasteners[Program.OrderOf(step).First(fastener => !_state.Rows[fastener].Cells[step].IsSettled)]
        : null;

    /// <summary>The fasteners that hold too much, or a rotation that nobody knows, in the program's order: no reading of theirs counts before they are loosened.</summary>
    public IReadOnlyList<string> ToLoosen => Array.AsReadOnly([.. Program.Fasteners.Where((_, fastener) => _state.Rows[fastener].MustBeLoosened)]);

    /// <summary>What was accepted with a remark, step by step: somebody has to look at it, and nothing here knows whether that was done.</summary>
    public IReadOnlyList<FastenerState> ToLookAt => Array.AsReadOnly(
        [.. Program.Steps.SelectMany(step => Program.FastenersOf(step.Name).Select(fastener => StateOf(step.Name, fastener))).Where(state => state.IsToLookAt)]);

    /// <summary>Whether nothing is left to do: every fastener of every step is done or skipped, and none is to be loosened.</summary>
    public bool IsSettled => JobState.OpenStep(_state.Unsettled) < 0 && !Array.Exists(_state.Rows, row => row.MustBeLoosened);

    /// <summary>
    /// Whether every fastener of every step is done, and none skipped or to be loosened. Remarks (<see cref="ToLookAt"/>), strays and conflicts of
    /// numbers do not stand against it: look at them.
    /// </summary>
    public bool IsConforming => Array.TrueForAll(
        _state.Rows, row => !row.MustBeLoosened && Array.TrueForAll(row.Cells, cell => cell.Status is FastenerStatus.Done or FastenerStatus.NotInStep));

    /// <summary>A job of which nothing is done.</summary>
    /// <param name="program">The program.</param>
    /// <returns>The progress.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="program"/> is null.</exception>
    /// <example><code>JobProgress job = JobProgress.Start(program);</code></example>
    public static JobProgress Start(TighteningProgram program) => new(Guard.NotNull(program), JobState.Begin(program));

    /// <summary>The progress after an entry, with the verdict on it. Takes time in proportion to the number of fasteners; for whole logs see <see cref="ApplyAll"/>.</summary>
    /// <param name="entry">The entry.</param>
    /// <returns>The new progress and the verdict; this progress is as it was.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="entry"/> is null.</exception>
    /// <example><code>JobUpdate update = job.Apply(entry);
    /// job = update.Progress;</code></example>
    public JobUpdate Apply(JobEntry entry)
    {
        var work = new JobWork(Program, _state);
        JobOutcome outcome = work.Take(Guard.NotNull(entry));
        return new(outcome.Verdict == JobVerdict.Ignored ? this : new(Program, work.Finish()), entry, outcome);
    }

    /// <summary>The progress after many entries: what <see cref="Apply"/> gives, one after the other, and much faster.</summary>
    /// <param name="entries">The entries in their order.</param>
    /// <returns>The new progress; this one is as it was.</returns>
    /// <exception cref="ArgumentNullException">The entries or one of them is null.</exception>
    /// <example><code>JobProgress replayed = JobProgress.Start(program).ApplyAll(entries);</code></example>
    public JobProgress ApplyAll(IEnumerable<JobEntry> entries)
    {
        var work = new JobWork(Program, _state);
        foreach (JobEntry entry in Guard.NotNull(entries)) work.Take(Guard.NotNull(entry));
        return new(Program, work.Finish());
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
        foreach (FastenerRow row in _state.Rows) counts[(int)row.Cells[index].Status]++;
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
        return Array.AsReadOnly([.. Program.OrderOf(index).Where(fastener => !_state.Rows[fastener].Cells[index].IsSettled).Select(fastener => Program.Fasteners[fastener])]);
    }

    /// <summary>Where a fastener stands in a step.</summary>
    /// <param name="step">The name of the step.</param>
    /// <param name="fastener">The name of the fastener.</param>
    /// <returns>Its state; <see cref="FastenerStatus.NotInStep"/> when the step does not tighten it.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">The program has no such step or fastener.</exception>
    /// <example><code>if (job.StateOf("full", "B3").MustBeLoosened) Console.WriteLine("loosen B3");</code></example>
    public FastenerState StateOf(string step, string fastener)
    {
        int index = Program.StepIndex(step);
        FastenerRow row = _state.Rows[Program.FastenerIndex(fastener)];
        return new(Program.Steps[index], fastener, row.Cells[index], row);
    }

    /// <summary>What a tool did in a step as it stands now, for <see cref="ToolCalibration.Rejudge"/>: every fastener that is done by a reading of it.</summary>
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
            ?? throw new ArgumentException($"step is {Quoted.Text(step)}; it goes by rotation alone and has no torque window to judge a tool by.", nameof(step));
        return Array.AsReadOnly(
            [.. Program.OrderOf(index).Select(fastener => _state.Rows[fastener].Cells[index])
                .Where(cell => cell.Status == FastenerStatus.Done && (cell.Reading!.Tool ?? cell.Reading.Source) == tool && cell.Reading.InNewtonMeters > 0)
                .Select(cell => AtTool(cell.Reading!, window))]);
    }

    /// <inheritdoc />
    public override string ToString()
    {
        string where = OpenStep is TighteningStep open ? FormattableString.Invariant($"{CountsOf(open.Name)}; next: {NextFastener}")
            : IsConforming ? "every fastener is done"
            : Array.Exists(_state.Rows, row => Array.Exists(row.Cells, cell => cell.Status == FastenerStatus.Skipped)) ? "some fasteners were skipped, the others are done"
            : "every fastener was tightened";
        return where + Also($"to be loosened: {string.Join(", ", ToLoosen)}", ToLoosen.Count) + Also($"to be looked at: {ToLookAt.Count}", ToLookAt.Count)
            + Also($"entries that fit no fastener or step: {StrayCount}", StrayCount) + Also($"numbers used by another entry: {ConflictCount}", ConflictCount);
    }

    private static ToolReading AtTool(JobEntry reading, ToleranceWindow<Torque> window) => reading.TorqueAtTool is not Torque shown
        ? new(reading.Fastener!, reading.Time, reading.Torque!.Value, window)
        : new(reading.Fastener!, reading.Time, shown, window.Scale(reading.AtToolInNewtonMeters / reading.InNewtonMeters));

    private static string Also(FormattableString text, long count) => count == 0 ? "" : "; " + FormattableString.Invariant(text);
}
