using UnitsNet;

namespace Fastening.Tests.Procedures;

/// <summary>A short log of one joint, written line by line: half a minute from one line to the next, every source counting from 1.</summary>
internal sealed class CaseLog(TighteningProgram program)
{
    private readonly Dictionary<string, long> _numbers = [];
    private long _seconds;

    public static DateTimeOffset Morning { get; } = new(2025, 3, 4, 7, 0, 0, TimeSpan.FromHours(1));

    public List<JobEntry> Entries { get; } = [];

    public JobOptions Options { get; set; } = JobOptions.Default;

    public JobProgress Job => JobProgress.Replay(program, Entries, Options);

    public CaseLog Pull(string bolt, double? torque, double? degrees = null, string? step = null, string source = "wrench", bool? contact = null)
    {
        JobEntry entry = JobEntry.Pulled(source, Next(source), Time(), bolt);
        if (step is not null) entry = entry.AtStep(step);
        if (torque is double newtonMeters) entry = entry.WithTorque(Torque.FromNewtonMeters(newtonMeters));
        if (degrees is double rotation) entry = entry.WithRotation(Angle.FromDegrees(rotation));
        return Add(contact is bool firm ? entry.WithContact(firm) : entry);
    }

    public CaseLog Loosen(string bolt, string source = "form") => Add(JobEntry.Loosened(source, Next(source), Time(), bolt, "r"));

    public CaseLog Replace(string bolt, string source = "form") => Add(JobEntry.Replaced(source, Next(source), Time(), bolt, "r"));

    public CaseLog Skip(string bolt, string step) => Add(JobEntry.Skipped("form", Next("form"), Time(), bolt, "r").AtStep(step));

    public CaseLog Withdraw(JobEntry entry) => Add(JobEntry.Withdrawn("form", Next("form"), Time(), entry.Source, entry.Sequence, "p", "r"));

    /// <summary>A decision that knows all that the log says so far, or what is stated.</summary>
    public CaseLog Accept(string bolt, long? seen = null)
    {
        long facts = seen ?? Job.StateOf(bolt).Facts;
        return Add(JobEntry.Accepted("form", Next("form"), Time(), bolt, "p", "r", facts));
    }

    public CaseLog Add(JobEntry entry)
    {
        Entries.Add(entry);
        return this;
    }

    /// <summary>The last line, to be sent, withdrawn or changed.</summary>
    public JobEntry Last => Entries[^1];

    public long Next(string source) => _numbers[source] = _numbers.GetValueOrDefault(source) + 1;

    public DateTimeOffset Time() => Morning.AddSeconds(_seconds += 30);
}
