using Fastening.Internals;

namespace Fastening;

/// <content>The kinds of entries.</content>
public sealed partial class JobEntry
{
    /// <summary>A pull, or a look at a fastener; what was measured is added with <see cref="WithTorque(UnitsNet.Torque)"/> and its like.</summary>
    /// <param name="source">Who numbers the entry.</param>
    /// <param name="sequence">Its number, 0 or more.</param>
    /// <param name="time">When.</param>
    /// <param name="fastener">The fastener.</param>
    /// <returns>The entry.</returns>
    /// <exception cref="ArgumentNullException">A text is null.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="sequence"/> is negative.</exception>
    /// <example><code>JobEntry entry = JobEntry.Pulled("wrench 7", sequence: 118, time, fastener: "B3").WithTorque(Torque.FromNewtonMeters(121));</code></example>
    public static JobEntry Pulled(string source, long sequence, DateTimeOffset time, string fastener) =>
        new(JobEntryKind.Pulled, Naming.Check(source), sequence, time) { Fastener = Naming.Check(fastener) };

    /// <summary>A loosening: the fastener begins again with its first step. What asks for a look goes on asking.</summary>
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
        new(JobEntryKind.Loosened, Naming.Check(source), sequence, time) { Fastener = Naming.Check(fastener), Reason = Naming.Check(reason) };

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
        new(JobEntryKind.Skipped, Naming.Check(source), sequence, time) { Fastener = Naming.Check(fastener), Reason = Naming.Check(reason) };

    /// <summary>A replacement: bolt, nut and what is worn with them are new, and nothing of the old ones counts.</summary>
    /// <param name="source">Who numbers the entry.</param>
    /// <param name="sequence">Its number, 0 or more.</param>
    /// <param name="time">When.</param>
    /// <param name="fastener">The fastener.</param>
    /// <param name="reason">Why, for the record.</param>
    /// <returns>The entry.</returns>
    /// <exception cref="ArgumentNullException">A text is null.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="sequence"/> is negative.</exception>
    /// <example><code>JobEntry entry = JobEntry.Replaced("form", sequence: 13, time, fastener: "B6", reason: "pulled beyond the limit");</code></example>
    public static JobEntry Replaced(string source, long sequence, DateTimeOffset time, string fastener, string reason) =>
        new(JobEntryKind.Replaced, Naming.Check(source), sequence, time) { Fastener = Naming.Check(fastener), Reason = Naming.Check(reason) };

    /// <summary>A decision: a person has looked at a fastener, and accepts what is known of it. It makes no step done and lifts no loosening.</summary>
    /// <param name="source">Who numbers the entry.</param>
    /// <param name="sequence">Its number, 0 or more.</param>
    /// <param name="time">When.</param>
    /// <param name="fastener">The fastener.</param>
    /// <param name="person">Who decided.</param>
    /// <param name="reason">Why.</param>
    /// <param name="seen">What was known: <see cref="FastenerState.Facts"/>. When the log says more by then, the decision does not count.</param>
    /// <returns>The entry.</returns>
    /// <exception cref="ArgumentNullException">A text is null.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="sequence"/> is negative.</exception>
    /// <example><code>JobEntry entry = JobEntry.Accepted(
    ///     "office", sequence: 4, time, fastener: "B3", person: "engineer 2", reason: "thread gauged, sound", seen: job.StateOf("B3").Facts);</code></example>
    public static JobEntry Accepted(string source, long sequence, DateTimeOffset time, string fastener, string person, string reason, long seen) =>
        new(JobEntryKind.Accepted, Naming.Check(source), sequence, time)
        {
            Fastener = Naming.Check(fastener),
            Operator = Naming.Check(person),
            Reason = Naming.Check(reason),
            Seen = seen,
        };

    /// <summary>A withdrawal: an entry was a mistake. It proves nothing any more, and what it warns of stays.</summary>
    /// <param name="source">Who numbers this entry.</param>
    /// <param name="sequence">Its number, 0 or more.</param>
    /// <param name="time">When.</param>
    /// <param name="ofSource">The source of the mistake.</param>
    /// <param name="ofSequence">The number of the mistake.</param>
    /// <param name="person">Who withdraws it.</param>
    /// <param name="reason">Why.</param>
    /// <returns>The entry.</returns>
    /// <exception cref="ArgumentNullException">A text is null.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative.</exception>
    /// <example><code>JobEntry entry = JobEntry.Withdrawn(
    ///     "office", sequence: 5, time, ofSource: "wrench 7", ofSequence: 118, person: "engineer 2", reason: "trial pull on the bench");</code></example>
    public static JobEntry Withdrawn(string source, long sequence, DateTimeOffset time, string ofSource, long ofSequence, string person, string reason)
    {
        if (ofSequence < 0) Guard.RefuseAgainst(nameof(ofSequence), ofSequence, "at least 0");
        return new(JobEntryKind.Withdrawn, Naming.Check(source), sequence, time)
        {
            OfSource = Naming.Check(ofSource),
            OfSequence = ofSequence,
            Operator = Naming.Check(person),
            Reason = Naming.Check(reason),
        };
    }

    /// <summary>An explanation: numbers of a source are missing, and a person says why none of them concerns this job.</summary>
    /// <param name="source">Who numbers this entry.</param>
    /// <param name="sequence">Its number, 0 or more.</param>
    /// <param name="time">When.</param>
    /// <param name="ofSource">The source whose numbers are missing.</param>
    /// <param name="from">The first of them.</param>
    /// <param name="to">The last of them.</param>
    /// <param name="person">Who says so.</param>
    /// <param name="reason">Why.</param>
    /// <returns>The entry.</returns>
    /// <exception cref="ArgumentNullException">A text is null.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is negative, or <paramref name="to"/> is less than <paramref name="from"/>.</exception>
    /// <example><code>JobEntry entry = JobEntry.Explained(
    ///     "office", sequence: 6, time, ofSource: "wrench 7", from: 131, to: 140, person: "engineer 2", reason: "pulls on another cover");</code></example>
    public static JobEntry Explained(string source, long sequence, DateTimeOffset time, string ofSource, long from, long to, string person, string reason)
    {
        if (from < 0) Guard.RefuseAgainst(nameof(from), from, "at least 0");
        if (to < from) Guard.RefuseAgainst(nameof(to), to, Print.Text($"at least the first, {from}"));
        return new(JobEntryKind.Explained, Naming.Check(source), sequence, time)
        {
            OfSource = Naming.Check(ofSource),
            OfSequence = from,
            ToSequence = to,
            Operator = Naming.Check(person),
            Reason = Naming.Check(reason),
        };
    }

    /// <summary>A note. As the last line of a source it shows that no line behind it is lost.</summary>
    /// <param name="source">Who numbers the entry.</param>
    /// <param name="sequence">Its number, 0 or more.</param>
    /// <param name="time">When.</param>
    /// <param name="reason">The note.</param>
    /// <returns>The entry.</returns>
    /// <exception cref="ArgumentNullException">A text is null.</exception>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="sequence"/> is negative.</exception>
    /// <example><code>JobEntry entry = JobEntry.Noted("wrench 7", sequence: 412, time, reason: "end of the shift");</code></example>
    public static JobEntry Noted(string source, long sequence, DateTimeOffset time, string reason) =>
        new(JobEntryKind.Noted, Naming.Check(source), sequence, time) { Reason = Naming.Check(reason) };
}
