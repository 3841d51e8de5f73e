using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>An entry of a job's log, with its source, its sequence number and its time. Everything in it can be read back as it was entered.</summary>
/// <remarks>
/// A source is whatever numbers its own entries: a wrench, a controller, a person with a form. Source and number name the entry for ever. The time
/// is the caller's; nothing here reads a clock.
/// </remarks>
/// <example><code>JobEntry pull = JobEntry.Pulled("wrench 7", sequence: 118, time, fastener: "B3")
///     .WithTorque(Torque.FromNewtonMeters(121)).WithRotation(Angle.FromDegrees(64)).WithDuration(Duration.FromSeconds(3.2));</code></example>
public sealed partial class JobEntry
{
    private JobEntry(JobEntryKind kind, string source, long sequence, DateTimeOffset time)
    {
        if (sequence < 0) Guard.RefuseAgainst(nameof(sequence), sequence, "at least 0");
        Kind = kind;
        Source = source;
        Sequence = sequence;
        Time = time;
        Ticks = time.UtcTicks;
    }

    private JobEntry(JobEntry entry)
    {
        Kind = entry.Kind;
        Source = entry.Source;
        Sequence = entry.Sequence;
        Time = entry.Time;
        Ticks = entry.Ticks;
        Received = entry.Received;
        Fastener = entry.Fastener;
        Step = entry.Step;
        Tool = entry.Tool;
        Operator = entry.Operator;
        Reason = entry.Reason;
        OfSource = entry.OfSource;
        OfSequence = entry.OfSequence;
        ToSequence = entry.ToSequence;
        Seen = entry.Seen;
        Torque = entry.Torque;
        TorqueAtTool = entry.TorqueAtTool;
        Rotation = entry.Rotation;
        Duration = entry.Duration;
        HasContact = entry.HasContact;
        IsReadInMotion = entry.IsReadInMotion;
        InNewtonMeters = entry.InNewtonMeters;
        InDegrees = entry.InDegrees;
        InSeconds = entry.InSeconds;
    }

    /// <summary>What is reported.</summary>
    public JobEntryKind Kind { get; }

    /// <summary>Who numbers the entry.</summary>
    public string Source { get; }

    /// <summary>The number of the entry; each is greater than the one before from the same source.</summary>
    public long Sequence { get; }

    /// <summary>When it happened by the clock of the source, with its offset from UTC as the caller gave it.</summary>
    public DateTimeOffset Time { get; }

    /// <summary>When the line came in, by the clock of the one who keeps the log; null when it was not stated.</summary>
    public DateTimeOffset? Received { get; private init; }

    /// <summary>The fastener; null for what concerns none.</summary>
    public string? Fastener { get; private init; }

    /// <summary>The step, where the source knows it; null when the job is to find it.</summary>
    public string? Step { get; private init; }

    /// <summary>Why; null for a pull.</summary>
    public string? Reason { get; private init; }

    /// <summary>The tool, where it is not the source that numbers the entries; null when it was not stated.</summary>
    public string? Tool { get; private init; }

    /// <summary>Who did or decided it; null when it was not stated.</summary>
    public string? Operator { get; private init; }

    /// <summary>The source of the entry that is withdrawn, or of the numbers that are explained; null for other kinds.</summary>
    public string? OfSource { get; private init; }

    /// <summary>The number that is withdrawn, or the first of those that are explained; null for other kinds.</summary>
    public long? OfSequence { get; private init; }

    /// <summary>The last of the numbers that are explained; null for other kinds.</summary>
    public long? ToSequence { get; private init; }

    /// <summary>What was known when a person accepted: <see cref="FastenerState.Facts"/> of the fastener; null for other kinds.</summary>
    public long? Seen { get; private init; }

    /// <summary>The torque at the fastener, as entered; null when it was not measured.</summary>
    public Torque? Torque { get; private init; }

    /// <summary>The torque that the tool showed or was set to, where an adapter stood between it and the fastener; null when it was not stated.</summary>
    public Torque? TorqueAtTool { get; private init; }

    /// <summary>The rotation of this pull, as entered; null when it was not measured.</summary>
    public Angle? Rotation { get; private init; }

    /// <summary>The time the rotation took, as entered; null when it was not measured.</summary>
    public Duration? Duration { get; private init; }

    /// <summary>Whether the parts are in firm contact; null when it was not stated.</summary>
    public bool? HasContact { get; private init; }

    /// <summary>Whether the torque was read while the fastener turned.</summary>
    public bool IsReadInMotion { get; private init; }

    internal long Ticks { get; }

    internal double InNewtonMeters { get; private init; } = double.NaN;

    internal double InDegrees { get; private init; } = double.NaN;

    internal double InSeconds { get; private init; } = double.NaN;

    internal PullFigures Figures => new(InNewtonMeters, InDegrees, InSeconds, HasContact is bool firm ? firm ? 1 : 0 : double.NaN);

    /// <summary>Adds the torque to a pull.</summary>
    /// <param name="atFastener">The torque at the fastener.</param>
    /// <returns>A new entry.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="atFastener"/> is outside its domain.</exception>
    /// <exception cref="InvalidOperationException">The entry is not a pull.</exception>
    /// <example><code>entry = entry.WithTorque(Torque.FromNewtonMeters(121));</code></example>
    public JobEntry WithTorque(Torque atFastener) =>
        new(AsPull()) { InNewtonMeters = Domains.Torque.Check(atFastener), Torque = atFastener, TorqueAtTool = null };

    /// <summary>Adds the torque to a pull where an adapter stood between tool and fastener; both are kept.</summary>
    /// <param name="atFastener">The torque at the fastener, from <see cref="TorqueWrench.FastenerTorqueAt"/>.</param>
    /// <param name="shown">The torque that the tool showed or was set to.</param>
    /// <returns>A new entry.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A torque is outside its domain.</exception>
    /// <exception cref="InvalidOperationException">The entry is not a pull.</exception>
    /// <example><code>var shown = Torque.FromNewtonMeters(98);
    /// entry = entry.WithTorque(wrench.FastenerTorqueAt(shown), shown);</code></example>
    public JobEntry WithTorque(Torque atFastener, Torque shown)
    {
        Domains.Torque.Check(shown);
        return new(WithTorque(atFastener)) { TorqueAtTool = shown };
    }

    /// <summary>Adds the rotation to a pull: that of this pull alone, past the threshold where the step has one.</summary>
    /// <param name="rotation">The rotation; 0 for a pull that moved nothing.</param>
    /// <returns>A new entry.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="rotation"/> is outside its domain.</exception>
    /// <exception cref="InvalidOperationException">The entry is not a pull.</exception>
    /// <example><code>entry = entry.WithRotation(Angle.FromDegrees(64));</code></example>
    public JobEntry WithRotation(Angle rotation) => new(AsPull()) { InDegrees = Domains.Rotation.Check(rotation), Rotation = rotation };

    /// <summary>Adds the time that the rotation took to a pull.</summary>
    /// <param name="duration">The time.</param>
    /// <returns>A new entry.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="duration"/> is outside its domain.</exception>
    /// <exception cref="InvalidOperationException">The entry is not a pull.</exception>
    /// <example><code>entry = entry.WithDuration(Duration.FromSeconds(3.2));</code></example>
    public JobEntry WithDuration(Duration duration) => new(AsPull()) { InSeconds = Domains.Duration.Check(duration), Duration = duration };

    /// <summary>States whether the parts are in firm contact, by eye or by hand.</summary>
    /// <param name="isFirm">Whether they are.</param>
    /// <returns>A new entry.</returns>
    /// <exception cref="InvalidOperationException">The entry is not a pull.</exception>
    /// <example><code>JobEntry snug = JobEntry.Pulled("form", sequence: 12, time, fastener: "B6").WithContact(true);</code></example>
    public JobEntry WithContact(bool isFirm) => new(AsPull()) { HasContact = isFirm };

    /// <summary>States that the torque of a pull was read while the fastener turned, and not when it began to.</summary>
    /// <returns>A new entry.</returns>
    /// <exception cref="InvalidOperationException">The entry is not a pull.</exception>
    /// <example><code>entry = entry.WithTorque(Torque.FromNewtonMeters(121)).ReadInMotion();</code></example>
    public JobEntry ReadInMotion() => new(AsPull()) { IsReadInMotion = true };

    /// <summary>Names the step of a pull or a skip; without it the job takes the first of the fastener that is neither done nor skipped.</summary>
    /// <param name="step">The name of the step.</param>
    /// <returns>A new entry.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="step"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="step"/> is empty.</exception>
    /// <exception cref="InvalidOperationException">The entry is neither a pull nor a skip, and belongs to no step.</exception>
    /// <example><code>entry = entry.AtStep("full");</code></example>
    public JobEntry AtStep(string step) => Kind is JobEntryKind.Pulled or JobEntryKind.Skipped
        ? new(this) { Step = Naming.Check(step) }
        : throw new InvalidOperationException($"An entry of the kind {Kind} belongs to no step: name a step for a pull or a skip.");

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

    /// <summary>States when the line came in, by the clock of the one who keeps the log: it bounds a source's clock that is wrong.</summary>
    /// <param name="time">The time.</param>
    /// <returns>A new entry.</returns>
    /// <example><code>entry = entry.WithReceived(time);</code></example>
    public JobEntry WithReceived(DateTimeOffset time) => new(this) { Received = time };

    /// <inheritdoc />
    public override string ToString()
    {
        string measured = string.Concat(
            double.IsNaN(InNewtonMeters) ? "" : Print.Text($", {Si.Torque(InNewtonMeters)}"),
            double.IsNaN(InDegrees) ? "" : Print.Text($", {Si.Angle(InDegrees)}"),
            double.IsNaN(InSeconds) ? "" : Print.Text($", {Print.Number(InSeconds, "s")}"),
            HasContact is bool firm ? firm ? ", firm contact" : ", no firm contact" : "");
        string of = OfSource is null ? "" : Print.Text($" {OfSource} #{OfSequence}{(ToSequence > OfSequence ? Print.Text($" to #{ToSequence}") : "")}");
        return Print.Text($"{Source} #{Sequence} {Time:yyyy-MM-dd HH:mm:ss zzz}: {Kind}{(Fastener is null ? "" : " " + Fastener)}{of}")
            + $"{(Step is null ? "" : " at " + Step)}{measured}{(Operator is null ? "" : ", by " + Operator)}{(Reason is null ? "" : ", " + Reason)}";
    }

    /// <summary>Whether another entry says the same, bit for bit in value and unit; when the lines came in does not matter.</summary>
    internal bool SaysTheSameAs(JobEntry other) =>
        Kind == other.Kind && Sequence == other.Sequence && Source == other.Source && Time.EqualsExact(other.Time)
        && Fastener == other.Fastener && Step == other.Step && Tool == other.Tool && Operator == other.Operator && Reason == other.Reason
        && OfSource == other.OfSource && OfSequence == other.OfSequence && ToSequence == other.ToSequence && Seen == other.Seen
        && HasContact == other.HasContact && IsReadInMotion == other.IsReadInMotion
        && AreSame(Torque, other.Torque) && AreSame(TorqueAtTool, other.TorqueAtTool) && AreSame(Rotation, other.Rotation) && AreSame(Duration, other.Duration);

    private static bool AreSame<T>(T? one, T? other)
        where T : struct, IQuantity =>
        one is T a && other is T b
            ? a.Unit.Equals(b.Unit) && ((double)a.Value).Equals((double)b.Value)
            : one is null && other is null;

    private JobEntry AsPull() => Kind == JobEntryKind.Pulled
        ? this
        : throw new InvalidOperationException($"{Kind} is not a pull: it has no torque, no rotation, no duration and no contact.");
}
