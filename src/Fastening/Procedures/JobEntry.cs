using System.Globalization;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>An entry of a job's log: a reading, a loosening, a skip or an undo, with its source, its sequence number and its time.</summary>
/// <remarks>
/// A source is whatever numbers its own entries: a wrench, a controller, a person with a form. Its numbers increase, with gaps or without. The time
/// is the caller's; nothing here reads a clock.
/// </remarks>
/// <example><code>JobEntry reading = JobEntry.Tightened("wrench 7", sequence: 118, time, fastener: "B3")
///     .WithTorque(Torque.FromNewtonMeters(121)).WithRotation(Angle.FromDegrees(64)).WithDuration(Duration.FromSeconds(3.2));</code></example>
public sealed class JobEntry
{
    private JobEntry(JobEntryKind kind, string source, long sequence, DateTimeOffset time, string? fastener, string? reason)
    {
        if (sequence < 0) Guard.RefuseAgainst(nameof(sequence), sequence, "at least 0");
        Kind = kind;
        Source = source;
        Sequence = sequence;
        Time = time;
        Fastener = fastener;
        Reason = reason;
    }

    private JobEntry(JobEntry entry)
    {
        Kind = entry.Kind;
        Source = entry.Source;
        Sequence = entry.Sequence;
        Time = entry.Time;
        Fastener = entry.Fastener;
        Reason = entry.Reason;
        Step = entry.Step;
        Tool = entry.Tool;
        Operator = entry.Operator;
        InNewtonMeters = entry.InNewtonMeters;
        AtToolInNewtonMeters = entry.AtToolInNewtonMeters;
        InDegrees = entry.InDegrees;
        InSeconds = entry.InSeconds;
    }

    /// <summary>What is reported.</summary>
    public JobEntryKind Kind { get; }

    /// <summary>Who numbers the entry.</summary>
    public string Source { get; }

    /// <summary>The number of the entry; each is greater than the one before from the same source.</summary>
    public long Sequence { get; }

    /// <summary>When it happened, with its offset from UTC as the caller gave it.</summary>
    public DateTimeOffset Time { get; }

    /// <summary>The fastener; null for an undo.</summary>
    public string? Fastener { get; }

    /// <summary>The step, where the source knows it; null when the job is to find it.</summary>
    public string? Step { get; private init; }

    /// <summary>Why it was loosened, skipped or undone; null for a reading.</summary>
    public string? Reason { get; }

    /// <summary>The tool, where it is not the source that numbers the entries; null when it was not stated.</summary>
    public string? Tool { get; private init; }

    /// <summary>Who did it; null when it was not stated.</summary>
    public string? Operator { get; private init; }

    /// <summary>The torque at the fastener of a reading; null when it was not measured.</summary>
    public Torque? Torque => double.IsNaN(InNewtonMeters) ? null : Si.Torque(InNewtonMeters);

    /// <summary>The torque that the tool showed or was set to, where an adapter stood between it and the fastener; null when it was not stated.</summary>
    public Torque? TorqueAtTool => double.IsNaN(AtToolInNewtonMeters) ? null : Si.Torque(AtToolInNewtonMeters);

    /// <summary>The rotation of a reading; null when it was not measured.</summary>
    public Angle? Rotation => double.IsNaN(InDegrees) ? null : Si.Angle(InDegrees);

    /// <summary>The time the rotation took; null when it was not measured.</summary>
    public Duration? Duration => double.IsNaN(InSeconds) ? null : Si.Duration(InSeconds);

    internal double InNewtonMeters { get; private init; } = double.NaN;

    internal double AtToolInNewtonMeters { get; private init; } = double.NaN;

    internal double InDegrees { get; private init; } = double.NaN;

    internal double InSeconds { get; private init; } = double.NaN;

    /// <summary>A reading; what was measured is added with <see cref="WithTorque"/>, <see cref="WithRotation"/>, <see cref="WithDuration"/>.</summary>
    /// <param name="source">Who numbers the entry.</param>
    /// <param name="sequence">Its number, 0 or more.</param>
    /// <param name="time">When.</param>
    /// <param name="fastener">The fastener.</param>
    /// <returns>The entry.</returns>
    /// <exception cref="ArgumentNullException">A text is null.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="sequence"/> is negative.</exception>
    /// <example><code>JobEntry entry = JobEntry.Tightened("wrench 7", sequence: 118, time, fastener: "B3").WithTorque(Torque.FromNewtonMeters(121));</code></example>
    public static JobEntry Tightened(string source, long sequence, DateTimeOffset time, string fastener) =>
        new(JobEntryKind.Tightened, Naming.Check(source), sequence, time, Naming.Check(fastener), null);

    /// <summary>A loosening: the fastener holds nothing now and begins again with its first step.</summary>
    /// <param name="source">Who numbers the entry.</param>
    /// <param name="sequence">Its number, 0 or more.</param>
    /// <param name="time">When.</param>
    /// <param name="fastener">The fastener.</param>
    /// <param name="reason">Why, for the record.</param>
    /// <returns>The entry.</returns>
    /// <exception cref="ArgumentNullException">A text is null.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="sequence"/> is negative.</exception>
    /// <example><code>JobEntry entry = JobEntry.Loosened("wrench 7", sequence: 119, time, fastener: "B3", reason: "turned too far");</code></example>
    public static JobEntry Loosened(string source, long sequence, DateTimeOffset time, string fastener, string reason) =>
        new(JobEntryKind.Loosened, Naming.Check(source), sequence, time, Naming.Check(fastener), Naming.Check(reason));

    /// <summary>A skip: the fastener is left out of a step, and the job goes on without it. It does not count as done.</summary>
    /// <param name="source">Who numbers the entry.</param>
    /// <param name="sequence">Its number, 0 or more.</param>
    /// <param name="time">When.</param>
    /// <param name="fastener">The fastener.</param>
    /// <param name="reason">Why, for the record.</param>
    /// <returns>The entry.</returns>
    /// <exception cref="ArgumentNullException">A text is null.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="sequence"/> is negative.</exception>
    /// <example><code>JobEntry entry = JobEntry.Skipped("form", sequence: 12, time, fastener: "B6", reason: "stud damaged, new one ordered");</code></example>
    public static JobEntry Skipped(string source, long sequence, DateTimeOffset time, string fastener, string reason) =>
        new(JobEntryKind.Skipped, Naming.Check(source), sequence, time, Naming.Check(fastener), Naming.Check(reason));

    /// <summary>An undo: the last entry of the job, if it is of this source, is taken back. There is no second undo behind it.</summary>
    /// <param name="source">Who numbers the entry, and made the mistake.</param>
    /// <param name="sequence">Its number, 0 or more.</param>
    /// <param name="time">When.</param>
    /// <param name="reason">Why, for the record.</param>
    /// <returns>The entry.</returns>
    /// <exception cref="ArgumentNullException">A text is null.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="sequence"/> is negative.</exception>
    /// <example><code>JobEntry entry = JobEntry.Undone("form", sequence: 13, time, reason: "skipped the wrong bolt");</code></example>
    public static JobEntry Undone(string source, long sequence, DateTimeOffset time, string reason) =>
        new(JobEntryKind.Undone, Naming.Check(source), sequence, time, null, Naming.Check(reason));

    /// <summary>Adds the torque to a reading.</summary>
    /// <param name="torque">The torque at the fastener.</param>
    /// <returns>A new entry.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="torque"/> is outside its domain.</exception>
    /// <exception cref="InvalidOperationException">The entry is not a reading.</exception>
    /// <example><code>entry = entry.WithTorque(Torque.FromNewtonMeters(121));</code></example>
    public JobEntry WithTorque(Torque torque) =>
        new(AsReading()) { InNewtonMeters = Domains.Torque.Check(torque), AtToolInNewtonMeters = double.NaN };

    /// <summary>Adds the torque to a reading as the tool had it; the one at the fastener follows from what stands between them, and both are kept.</summary>
    /// <param name="shown">The torque that the tool showed or was set to.</param>
    /// <param name="wrench">The wrench with its adapters.</param>
    /// <returns>A new entry.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="wrench"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="shown"/>, or what it gives at the fastener, is outside its domain.</exception>
    /// <exception cref="InvalidOperationException">The entry is not a reading.</exception>
    /// <example><code>entry = entry.WithTorqueAtTool(Torque.FromNewtonMeters(98), wrench.WithAdapter(Length.FromMillimeters(80), Angle.FromDegrees(30)));</code></example>
    public JobEntry WithTorqueAtTool(Torque shown, TorqueWrench wrench)
    {
        Torque atFastener = Guard.NotNull(wrench).FastenerTorqueAt(Si.Torque(Domains.Torque.Check(shown)));
        return new(AsReading()) { InNewtonMeters = Domains.Torque.Check(atFastener, nameof(shown)), AtToolInNewtonMeters = Si.Of(shown) };
    }

    /// <summary>Names the tool, where it is not the source that numbers the entries.</summary>
    /// <param name="tool">Its name in the store.</param>
    /// <returns>A new entry.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="tool"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="tool"/> is empty.</exception>
    /// <example><code>entry = entry.WithTool("W-17");</code></example>
    public JobEntry WithTool(string tool) => new(this) { Tool = Naming.Check(tool) };

    /// <summary>Names who did it, for the record.</summary>
    /// <param name="person">A name, or a number that stands for one.</param>
    /// <returns>A new entry.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="person"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="person"/> is empty.</exception>
    /// <example><code>entry = entry.WithOperator("fitter 12");</code></example>
    public JobEntry WithOperator(string person) => new(this) { Operator = Naming.Check(person) };

    /// <summary>Adds the rotation to a reading.</summary>
    /// <param name="rotation">The rotation from where the step counts it: past the threshold, or over the whole step; all of it, further turns included.</param>
    /// <returns>A new entry.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="rotation"/> is outside its domain.</exception>
    /// <exception cref="InvalidOperationException">The entry is not a reading.</exception>
    /// <example><code>entry = entry.WithRotation(Angle.FromDegrees(64));</code></example>
    public JobEntry WithRotation(Angle rotation) => new(AsReading()) { InDegrees = Domains.Rotation.Check(rotation) };

    /// <summary>Adds the time that the rotation took to a reading.</summary>
    /// <param name="duration">The time.</param>
    /// <returns>A new entry.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="duration"/> is outside its domain.</exception>
    /// <exception cref="InvalidOperationException">The entry is not a reading.</exception>
    /// <example><code>entry = entry.WithDuration(Duration.FromSeconds(3.2));</code></example>
    public JobEntry WithDuration(Duration duration) => new(AsReading()) { InSeconds = Domains.Duration.Check(duration) };

    /// <summary>Names the step of a reading or a skip; without it the job takes the one that is open for the fastener.</summary>
    /// <param name="step">The name of the step.</param>
    /// <returns>A new entry.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="step"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="step"/> is empty.</exception>
    /// <exception cref="InvalidOperationException">The entry is a loosening or an undo, which belong to no step.</exception>
    /// <example><code>entry = entry.AtStep("full");</code></example>
    public JobEntry AtStep(string step) => Kind is JobEntryKind.Tightened or JobEntryKind.Skipped
        ? new(this) { Step = Naming.Check(step) }
        : throw new InvalidOperationException("A loosening or an undo belongs to no step.");

    /// <inheritdoc />
    public override string ToString()
    {
        string measured = string.Concat(
            double.IsNaN(InNewtonMeters) ? "" : ", " + Interval.Format(InNewtonMeters, "N·m"),
            double.IsNaN(InDegrees) ? "" : ", " + Interval.Format(InDegrees, "°"),
            double.IsNaN(InSeconds) ? "" : ", " + Interval.Format(InSeconds, "s"));
        return FormattableString.Invariant($"{Source} #{Sequence} ") + Time.ToString("yyyy-MM-dd HH:mm:ss zzz", CultureInfo.InvariantCulture)
            + $": {Kind}{(Fastener is null ? "" : " " + Fastener)}{(Step is null ? "" : " at " + Step)}{measured}{(Reason is null ? "" : ", " + Reason)}";
    }

    private JobEntry AsReading() => Kind == JobEntryKind.Tightened
        ? this
        : throw new InvalidOperationException($"{Kind} is not a reading: it has no torque, no rotation and no duration.");
}
