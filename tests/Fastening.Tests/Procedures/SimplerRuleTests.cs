#if !NETSTANDARD_ASSET
namespace Fastening.Tests.Procedures;

/// <summary>Each simpler rule is put into the library, and the named cases, or else the random days, must object to it.</summary>
public class SimplerRuleTests
{
    [Fact]
    public void The_library_as_it_is_gives_no_complaint() =>
        Assert.Equal("", ChangedLibrary.ComplaintsAbout("FastenerLedger.cs", "Run = default;\n        Peak", "Run = default;\n        Peak", firstSeed: 0, days: 3));

    [Theory]
    [InlineData("reasons end with the loosening", "FastenerLedger.cs", "Run = default;\n        Peak", "Run = Unsettled = default;\n        Peak")]
    [InlineData("a decision lifts the loosening", "FastenerLedger.cs", "        Unsettled = default;\n        Decision", "        Run = Unsettled = default;\n        Decision")]
    [InlineData("a decision settles all before it", "JobLedger.cs", "entry.Seen != (long)row.Facts", "entry.Seen == 1")]
    [InlineData("facts are counted", "FastenerLedger.cs", "Facts = Fingerprint.Mix(Facts, fact)", "Facts = Facts + 1 + 0 * fact")]
    [InlineData("lines count in the order in which they came", "LogReplay.cs", "if (!merged.IsBehindAll(place, entry)) return null;", "")]
    [InlineData("a run takes lines as they come", "JobRun.cs", "_now.IsBehindAll(line.Place, entry) ? Append(line) : Insert(line)", "Append(line)")]
    [InlineData("an unknown step is ignored", "JobLedger.Pull.cs", "reasons |= TorqueFacts(fastener, step, pull.Torque);", "if (step >= 0) reasons |= TorqueFacts(fastener, step, pull.Torque);")]
    [InlineData("an unknown step turns nothing", "JobLedger.Pull.cs", "reasons.When(plan.IsTurned && !IsHarmless(row, plan, pull, moved), JobReason.TurnUnknown);", "reasons;")]
    [InlineData("a missing torque only rejects", "JobLedger.Pull.cs", "isAsked && !double.IsInfinity(plan.TorqueLimit)", "isAsked && double.IsNaN(plan.TorqueLimit)")]
    [InlineData("a missing rotation is none", "JobLedger.Pull.cs", "? 0 : double.NaN;", "? 0 : 0;")]
    [InlineData("skipped is ready", "JobLedger.Order.cs", "is not (FastenerStatus.Done or FastenerStatus.NotInStep)", "is not (FastenerStatus.Done or FastenerStatus.NotInStep or FastenerStatus.Skipped)")]
    [InlineData("an empty line is a look", "JobLedger.Pull.cs", " && double.IsNaN(pull.Move) && !double.IsNaN(pull.Contact)", " && double.IsNaN(pull.Move)")]
    [InlineData("a withdrawn loosening loosens", "JobLedger.cs", "if (reasons.Meets(NotFirm)) row.OpenSteps", "if (reasons.Meets(NotFirm) && !reasons.Has(JobReason.Withdrawn)) row.OpenSteps")]
    [InlineData("a withdrawn loosening leaves the steps done", "JobLedger.cs", "_ => Free(", "_ when reasons.Meets(NotFirm) => new(entry, reasons),\n            _ => Free(")]
    [InlineData("a withdrawn turn counts", "JobLedger.Pull.cs", "bool counts = step >= 0 && !reasons.Meets(NotFirm);", "bool counts = step >= 0;")]
    [InlineData("a withdrawn pull says nothing", "JobLedger.cs", "JobEntryKind.Pulled => Pull(", "JobEntryKind.Pulled when reasons.Meets(NotReal) => new(entry, reasons),\n            JobEntryKind.Pulled => Pull(")]
    [InlineData("stamps only: a clock ahead is right", "LogSource.cs", "received != NotReceived && stamp - tolerance > received", "received == 1 && stamp > tolerance")]
    [InlineData("stamps only: a clock set back is right", "LogSource.cs", "|| LastSequence >= 0 && entry.Ticks < _place - tolerance;", ";")]
    [InlineData("close lines have an order", "JobLedger.cs", "reasons.When(isClose, JobReason.OrderUnsure)", "reasons.When(false && isClose, JobReason.OrderUnsure)")]
    [InlineData("a used number is only counted", "JobProgress.cs", "Gaps.Count == 0 && Conflicts == 0 && !NeedsReplay", "Gaps.Count == 0 && !NeedsReplay")]
    [InlineData("gaps do not matter", "JobProgress.cs", "Gaps.Count == 0 && Conflicts == 0 && !NeedsReplay", "Conflicts == 0 && !NeedsReplay")]
    [InlineData("a line that is too late does not matter", "JobProgress.cs", "Gaps.Count == 0 && Conflicts == 0 && !NeedsReplay", "Gaps.Count == 0 && Conflicts == 0")]
    [InlineData("what asks for a look does not hold", "JobProgress.cs", " && !row.Unsettled.Meets(Program.Effects.LookedAt)", "")]
    [InlineData("what asks for a loosening does not hold", "JobProgress.cs", "!row.Run.Meets(Program.Effects.Loosening) && ", "")]
    [InlineData("pulled too high is not seen", "JobLedger.Pull.cs", "open >= 0 && Tolerance.Exceeds(torque, plan.Upper[open])", "open > 99")]
    [InlineData("strokes are not added up", "JobLedger.Pull.cs", "if (asked.IsByTurn) cell.Turn += turned;", "if (asked.IsByTurn) cell.Turn = turned;")]
    [InlineData("an audit need not be measured", "JobLedger.Pull.cs", "asked.LimitsMove ? TurnFact.Unknown : TurnFact.None", "TurnFact.None")]
    [InlineData("a look after a turn counts anew", "JobLedger.Pull.cs", "mustBeLoosened || wasDone && asked.IsByTurn && moved == 0", "mustBeLoosened && wasDone")]
    public void A_simpler_rule_is_caught(string rule, string file, string text, string simpler)
    {
        string complaints = ChangedLibrary.ComplaintsAbout(file, text, simpler, firstSeed: 0, days: 0);
        if (complaints.Length == 0) complaints = ChangedLibrary.ComplaintsAbout(file, text, simpler, firstSeed: 0, days: 60);
        Assert.True(complaints.Length > 0, $"nothing objects to: {rule}");
    }
}
#endif
