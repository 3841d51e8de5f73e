using System.Globalization;

namespace PumpCover;

/// <summary>A whole log, judged: the last reading of each bolt counts, by its time; earlier ones are kept and shown.</summary>
internal sealed class JudgedLog
{
    private readonly Dictionary<Judgement, Judgement> _replacedBy = [];

    private JudgedLog(ReadingLog log, TighteningPlan plan, List<Judgement> judgements, List<RefusedLine> refused)
    {
        Log = log;
        Judgements = judgements;
        RefusedLines = refused;
        Judgement[][] perBolt = [.. judgements.GroupBy(j => j.Reading.Bolt)
            .Select(readings => readings.OrderBy(j => j.Reading.Instant).ThenBy(j => j.Reading.Line).ToArray())];
        foreach (Judgement[] readings in perBolt)
        {
            for (int i = 0; i < readings.Length - 1; i++) _replacedBy.Add(readings[i], readings[i + 1]);
        }

        Counting = [.. perBolt.Select(readings => readings[^1]).OrderBy(j => j.Reading.Bolt)];
        BoltsRefused = [.. plan.Job.Bolts.Where(bolt => refused.Any(line => line.Bolt == bolt))];
        BoltsWithout = [.. plan.Job.Bolts.Except(BoltsRefused).Except(Counting.Select(j => j.Reading.Bolt))];
    }

    public ReadingLog Log { get; }

    /// <summary>Every judged line, in the order of the file.</summary>
    public IReadOnlyList<Judgement> Judgements { get; }

    public IReadOnlyList<RefusedLine> RefusedLines { get; }

    /// <summary>The reading that counts, for each bolt that has one.</summary>
    public IReadOnlyList<Judgement> Counting { get; }

    /// <summary>Bolts with a line that could not be judged: what it would have said is not known.</summary>
    public IReadOnlyList<int> BoltsRefused { get; }

    public IReadOnlyList<int> BoltsWithout { get; }

    public IReadOnlyList<int> BoltsConforming =>
        [.. Counting.Where(j => j.Conforms).Select(j => j.Reading.Bolt).Except(BoltsOnceHigh).Except(BoltsRefused)];

    /// <summary>Bolts of which an earlier reading was above the window: a good one afterwards does not undo it.</summary>
    public IReadOnlyList<int> BoltsOnceHigh => [.. _replacedBy.Keys.Where(j => j.Has(FindingKind.High)).Select(j => j.Reading.Bolt).Distinct().Order()];

    public static JudgedLog Of(ReadingLog log, TighteningPlan plan)
    {
        List<Judgement> judgements = [];
        List<RefusedLine> refused = [];
        foreach (LogLine line in log.Lines)
        {
            try
            {
                judgements.Add(Judgement.Of(Reading.Parse(line), plan));
            }
            catch (Exception fault) when (fault is LineRefusedException or FormatException or ArgumentException)
            {
                refused.Add(new RefusedLine(line, BoltOf(line), Reason(fault)));
            }
        }

        return new JudgedLog(log, plan, judgements, refused);
    }

    public IReadOnlyList<int> BoltsWith(FindingKind kind) => [.. Counting.Where(j => j.Has(kind)).Select(j => j.Reading.Bolt)];

    public Judgement? Replacement(Judgement earlier) => _replacedBy.GetValueOrDefault(earlier);

    public IEnumerable<Judgement> ReplacedBy(Judgement later) => _replacedBy.Where(pair => pair.Value == later).Select(pair => pair.Key);

    private static int? BoltOf(LogLine line) =>
        int.TryParse(line.Text.Split(',', ';', '\t')[0], NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out int bolt) ? bolt : null;

    private static string Reason(Exception fault) => Refused.Parameter(fault) switch
    {
        "setting" => Refused.Naming("torque", fault),
        "travel" => Refused.Naming("rotation_deg", fault),
        "duration" => Refused.Naming("duration_s", fault),
        _ => Refused.Sentence(fault),
    };
}
