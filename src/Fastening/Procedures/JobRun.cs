using Fastening.Internals;

namespace Fastening;

/// <summary>A job while it runs: takes one entry after the other, and gives the verdict on each at once.</summary>
/// <remarks>
/// <para>It holds the state of every fastener, and of the log only a tail of the latest lines (<see cref="JobOptions.TailLength"/>). A late line within the
/// tail is put in its place; one before it sets <see cref="NeedsReplay"/>, and nothing conforms before the log is replayed. The state is that of
/// <see cref="JobProgress.Replay(TighteningProgram, IEnumerable{JobEntry})"/> of the same entries, in whatever order they came, unless <see cref="NeedsReplay"/>,
/// <see cref="AssumedRepeats"/> or a conflict of numbers says otherwise.</para>
/// <para>This type changes; <see cref="Progress"/> is a copy. One thread at a time.</para>
/// </remarks>
/// <example><code>var run = new JobRun(program);
/// JobUpdate update = run.Apply(JobEntry.Pulled("wrench 7", 118, time, "B3").WithTorque(Torque.FromNewtonMeters(121)));
/// Console.WriteLine(update);       // B3, full: accepted</code></example>
public sealed class JobRun
{
    private readonly List<LogLine> _tail = [];
    private readonly Dictionary<(string Source, long Sequence), LogLine> _held = [];
    private readonly HashSet<(string Source, long Sequence)> _withdrawn = [];
    private readonly MergedLog _before;
    private MergedLog _now;
    private long _repeats;

    /// <summary>A job of which nothing is done.</summary>
    /// <param name="program">The program.</param>
    /// <exception cref="ArgumentNullException"><paramref name="program"/> is null.</exception>
    /// <example><code>var run = new JobRun(program);</code></example>
    public JobRun(TighteningProgram program)
        : this(program, JobOptions.Default)
    {
    }

    /// <summary>A job of which nothing is done, with options.</summary>
    /// <param name="program">The program.</param>
    /// <param name="options">How lines are put in order.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <example><code>var run = new JobRun(program, JobOptions.Default.WithSources(JobSource.Counting("wrench 7", first: 411)));</code></example>
    public JobRun(TighteningProgram program, JobOptions options)
    {
        Program = Guard.NotNull(program);
        Options = Guard.NotNull(options);
        _before = new MergedLog(program, options);
        _now = new MergedLog(program, options);
    }

    /// <summary>The program.</summary>
    public TighteningProgram Program { get; }

    /// <summary>How lines are put in order.</summary>
    public JobOptions Options { get; }

    /// <summary>Whether a line came that is older than the tail: replay the log.</summary>
    public bool NeedsReplay { get; private set; }

    /// <summary>How many lines were taken for repeats of lines that are older than the tail; only a replay can prove that they are.</summary>
    public long AssumedRepeats { get; private set; }

    /// <summary>The first step with fasteners that are neither done nor skipped; null when there is none.</summary>
    public TighteningStep? OpenStep => _now.Ledger.OpenStep is >= 0 and int step ? Program.Steps[step] : null;

    /// <summary>The fastener that comes next in the order of <see cref="OpenStep"/>; null when there is none. It may have to be loosened first.</summary>
    public string? NextFastener => _now.Ledger.NextFastener is >= 0 and int fastener ? Program.Fasteners[fastener] : null;

    /// <summary>How far the job is: a copy that stays as it is. Takes time in proportion to fasteners × steps.</summary>
    public JobProgress Progress => new(_now.Copy(), _repeats, NeedsReplay, AssumedRepeats);

    /// <summary>Takes an entry.</summary>
    /// <param name="entry">The entry.</param>
    /// <returns>The verdict, with every finding.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="entry"/> is null.</exception>
    /// <example><code>JobUpdate update = run.Apply(entry);</code></example>
    public JobUpdate Apply(JobEntry entry)
    {
        LogSource source = _now.Sources.Of(Guard.NotNull(entry).Source);
        if (entry.Sequence <= source.LastSequence) return TakeOldNumber(entry);
        var line = new LogLine(entry);
        if (entry.Kind == JobEntryKind.Withdrawn) return TakeWithdrawal(line);
        LineFlags flags = _withdrawn.Contains((entry.Source, entry.Sequence)) ? LineFlags.Withdrawn : LineFlags.None;
        line.Place = source.Next(entry, line.Received, flags, Options.ToleranceTicks);
        return _now.IsBehindAll(line.Place, entry) ? Append(line) : Insert(line);
    }

    /// <inheritdoc />
    public override string ToString() => Progress.ToString();

    private JobUpdate Append(LogLine line)
    {
        _tail.Add(line);
        _held[(line.Entry.Source, line.Entry.Sequence)] = line;
        JobOutcome outcome = _now.Take(line.Entry, line.Place);
        if (_tail.Count > 2 * Options.TailLength) SettleOldest();
        return Told(outcome, wasLate: false);
    }

    private JobUpdate TakeOldNumber(JobEntry entry)
    {
        if (_held.TryGetValue((entry.Source, entry.Sequence), out LogLine? held))
        {
            LogLine? same = held.Entry.SaysTheSameAs(entry) ? held : _tail.Find(line => line.IsReused && line.Entry.SaysTheSameAs(entry));
            if (same is null) return Insert(new LogLine(entry));
            _repeats++;
            if (LogLine.ReceivedOf(entry) >= same.Received) return Told(entry, JobVerdict.Ignored);
            same.Received = LogLine.ReceivedOf(entry);
            WorkOutAgain(same);
            return Told(entry, JobVerdict.Ignored);
        }

        LogSource before = _before.Sources.Of(entry.Source);
        if (entry.Sequence > before.LastSequence) return Insert(new LogLine(entry));
        bool mayBeNew = before.IsSparse || entry.Sequence < before.First || before.Missing.Any(range => range.Holds(entry.Sequence));
        if (!mayBeNew)
        {
            AssumedRepeats++;
            return Told(entry, JobVerdict.Ignored);
        }

        NeedsReplay = true;
        return Told(entry, JobVerdict.NeedsReplay);
    }

    private JobUpdate TakeWithdrawal(LogLine line)
    {
        (string Source, long Sequence) of = (line.Entry.OfSource!, line.Entry.OfSequence!.Value);
        if (!_held.ContainsKey(of) && of.Sequence <= _before.Sources.Of(of.Source).LastSequence) NeedsReplay = true;
        return Insert(line);
    }

    /// <summary>Puts a line in its place, and works out again what came after.</summary>
    private JobUpdate Insert(LogLine line)
    {
        _tail.Add(line);
        JobOutcome outcome = WorkOutAgain(line);
        if (_tail.Count > 2 * Options.TailLength) SettleOldest();
        bool isLast = ReferenceEquals(_tail[_tail.Count - 1], line);
        return Told(outcome, wasLate: !isLast);
    }

    private JobOutcome WorkOutAgain(LogLine asked)
    {
        LogSources sources = _before.Sources.Copy();
        List<LogLine> lines = LogOrder.Arrange(_tail, sources, _withdrawn);
        if (lines.Count > 0 && !_before.IsBehindAll(lines[0].Place, lines[0].Entry)) NeedsReplay = true;
        IEnumerable<int> touched = _tail.Select(line => line.Entry.Fastener is string name && Program.TryFindFastener(name, out int fastener) ? fastener : -1);
        _now = _before.CopyInto(_now.Ledger, touched.Distinct(), sources);
        _tail.Clear();
        _tail.AddRange(lines);
        _held.Clear();
        JobOutcome told = default;
        foreach (LogLine line in lines)
        {
            if (!line.IsReused) _held[(line.Entry.Source, line.Entry.Sequence)] = line;
            JobOutcome outcome = _now.Take(line.Entry, line.Place);
            if (ReferenceEquals(line, asked)) told = outcome;
        }

        return told;
    }

    /// <summary>The oldest lines of the tail become part of what came before, and are let go.</summary>
    private void SettleOldest()
    {
        for (int i = 0; i < Options.TailLength; i++)
        {
            LogLine line = _tail[i];
            if (!line.IsReused)
            {
                _before.Sources.Of(line.Entry.Source).Next(line.Entry, line.Received, LineFlags.None, Options.ToleranceTicks);
                _held.Remove((line.Entry.Source, line.Entry.Sequence));
            }

            _before.Take(line.Entry, line.Place);
        }

        _tail.RemoveRange(0, Options.TailLength);
    }

    private JobUpdate Told(in JobOutcome outcome, bool wasLate) =>
        new(Program, _now.Ledger, outcome.Entry, outcome, Program.Effects.VerdictOn(outcome.Reasons), wasLate);

    private JobUpdate Told(JobEntry entry, JobVerdict verdict) => new(Program, _now.Ledger, entry, new JobOutcome(entry, default), verdict, wasLate: false);
}
