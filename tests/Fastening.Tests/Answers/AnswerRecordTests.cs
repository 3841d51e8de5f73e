using Fastening.Tests.House;
using UnitsNet;
using Xunit.Abstractions;

namespace Fastening.Tests.Answers;

/// <summary>
/// A regression record, no proof of correctness: what the library answered when the record was written it still answers, over random values of every
/// public scalar member and every equation. Whether the answers are right is the matter of the published values and of the second routes.
/// </summary>
/// <remarks>
/// Left out: texts, readings of texts (Parse), batches over spans, and derivations. The bits are compared where the C library gives the bits it gave
/// where the record was written (a probe says so), nine digits elsewhere. To write the keys of new members into the record:
/// <c>FASTENING_WRITE_DOCS=1</c>; a line that is there already is never written over: whoever means to change an answer deletes its lines by hand.
/// FASTENING_EXACT_ANSWERS=path writes every bit into a file that does not exist yet, or compares with it.
/// </remarks>
public class AnswerRecordTests(ITestOutputHelper output)
{
    private const double LeastAnswered = 0.5;

    /// <summary>More often refused than answered: most of what can be drawn is refused by the nature of the call. Each answers some.</summary>
    private static readonly string[] Scarce =
    [
        "AssemblyStress.HighestAt(", "AssemblyStress.PermittedTorque(", "TorquePreloadRange.PermittedTorque(", "BearingSurface.WithHole(", "BearingSurface.WithWasher(",
        "BoltGrade.StrengthFor(", "BoltStrength.AtTemperature(", "BoltStrength.PublishedProofLoad(", "BoltStrength.PublishedUltimateLoad(",
        "CalibrationInterval.StatusAt(", "ClampedStack.Wileman(", "Joint.ShigleyFactorsAt(", "JointTemperatures.AssembledAt(",
        "PreloadBandInputs.WithBearingDiameterError(", "PreloadBandInputs.WithFrictionCorrelation(", "Range<Torque>.new(", "ThreadEngagement.StrengthFor(", "TighteningProgram.WithEffect(", "TighteningStep.After(",
        "ToolCalibration.Rejudge(", "TorqueTool.SetTo(", "UncertaintyBudget.CorrelationWith(",
    ];

    /// <summary>Properties that no random object shows and no answer holds: input values exist only within a function that is handed over.</summary>
    private static readonly string[] Unread = ["InputValues.Count"];

    [Fact]
    public void Answers_are_those_of_the_record()
    {
        string file = Path.Combine([Repository.Root, .. AnswerRecord.Path]);
        if (Environment.GetEnvironmentVariable("FASTENING_WRITE_DOCS") == "1") Complete(file);
        Dictionary<string, string[]> record = AnswerRecord.Read(Repository.Read(AnswerRecord.Path));
        bool exact = record["probe of the C library"][0] == AnswerRecord.Probe();
        output.WriteLine(exact ? "compared by bits" : "compared to nine digits");
        Compare(record, exact ? 0 : 1);
    }

    [Fact]
    public void Bits_are_those_of_a_file_named_from_outside()
    {
        string? file = Environment.GetEnvironmentVariable("FASTENING_EXACT_ANSWERS");
        if (file is null) return;
        if (!File.Exists(file)) Complete(file);
        Compare(AnswerRecord.Read(File.ReadAllText(file)), 0);
    }

    [Fact]
    public void The_record_is_no_list_of_refusals()
    {
        (string Call, int Answered, int Refused)[] calls =
        [
            .. AnswerRecord.Now.GroupBy(pair => pair.Key.Split(" | ")[0])
                .Select(group => (group.Key, group.Max(pair => pair.Value.Answered), group.First().Value.Refused)),
        ];
        output.WriteLine($"{calls.Length} calls, {AnswerRecord.Now.Count} keys, {calls.Sum(call => call.Answered)} answered, {calls.Sum(call => call.Refused)} refused");
        string[] scarce = [.. calls.Where(call => call.Answered < LeastAnswered * (call.Answered + call.Refused)).Select(call => $"{call.Call}: {call.Answered}/{call.Refused}")];
        string[] silent = [.. calls.Where(call => call.Answered == 0).Select(call => call.Call)];
        Assert.True(silent.Length == 0, string.Join('\n', silent));
        string[] unlisted = [.. scarce.Where(call => !Scarce.Any(listed => call.StartsWith(listed, StringComparison.Ordinal)))];
        Assert.True(unlisted.Length == 0, string.Join('\n', unlisted));
    }

    [Fact]
    public void Every_property_is_read()
    {
        Assert.NotEmpty(AnswerRecord.Now);
        string[] unread =
        [
            .. typeof(ScrewThread).Assembly.GetExportedTypes()
                .Where(type => type.Namespace != "Fastening.Equations" && !type.IsEnum)
                .SelectMany(type => AnswerReader.PropertiesOf(type.IsGenericTypeDefinition ? type.MakeGenericType(typeof(Torque)) : type))
                .Select(AnswerReader.NameOf).Distinct().Where(name => !AnswerReader.WasRead(name)).Order(StringComparer.Ordinal),
        ];
        Assert.Equal(Unread, unread);
    }

    private void Compare(Dictionary<string, string[]> record, int column)
    {
        var wrong = new List<string>();
        foreach ((string key, string[] written) in record)
        {
            if (key == "probe of the C library" || FormerNames.Gone.Any(gone => key.StartsWith(gone.Key, StringComparison.Ordinal))) continue;
            if (!AnswerRecord.Now.TryGetValue(key, out Fold? fold)) wrong.Add($"gone: {key}");
            else if (written[column] != (column == 0 ? fold.Exact : fold.Rounded)) wrong.Add($"other answers: {key} {written[2]} -> {fold.Answered}/{fold.Refused}");
        }

        output.WriteLine($"{record.Count} keys compared");
        Assert.True(wrong.Count == 0, "A renamed type or member goes into FormerNames.\n" + string.Join('\n', wrong));
    }

    private static void Complete(string file)
    {
        string kept = File.Exists(file) ? File.ReadAllText(file) : "";
        Dictionary<string, string[]> record = AnswerRecord.Read(kept);
        var lines = new List<string>(kept.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        if (lines.Count == 0) lines.Add($"probe of the C library\t{AnswerRecord.Probe()}\t\t");
        lines.AddRange(AnswerRecord.Now.Where(pair => !record.ContainsKey(pair.Key)).Select(pair => AnswerRecord.Line(pair.Key, pair.Value)));
        File.WriteAllText(file, string.Join('\n', lines) + "\n");
    }
}
