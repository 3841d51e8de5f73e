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
        LinesOfNoBolt = [.. refused.Where(line => line.Bolt is not int bolt || plan.Job.GroupOf(bolt) is null)];
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

    /// <summary>Lines that cannot be led to a bolt of the job: what they say may be of any of them, so they hold back all.</summary>
    public IReadOnlyList<RefusedLine> LinesOfNoBolt { get; }

    public IReadOnlyList<int> BoltsConforming => LinesOfNoBolt.Count == 0 ? BoltsWithGoodLines : [];

    /// <summary>Bolts that would conform if every line could be led to its bolt.</summary>
    public IReadOnlyList<int> BoltsHeldBack => LinesOfNoBolt.Count == 0 ? [] : BoltsWithGoodLines;

    /// <summary>Bolts of which an earlier torque was above the window: a good one afterwards does not undo it.</summary>
    public IReadOnlyList<int> BoltsOnceHigh => BoltsOnce(j => j.Has(FindingKind.High));

    /// <summary>Bolts of which an earlier rotation was above its window: a bolt that yielded stays so.</summary>
    public IReadOnlyList<int> BoltsOnceOverRotated => BoltsOnce(j => j.Has(FindingKind.OverRotated));

    /// <summary>Bolts that count by a pull from rest after one that was too low; the log has no line for a loosening between the two.</summary>
    public IReadOnlyList<int> BoltsRestarted => [.. Counting.Where(IsRestart).Select(j => j.Reading.Bolt)];

    /// <summary>A pull that took a bolt on from where a low one had left it: static friction may have stopped it before the preload rose.</summary>
    public bool IsRestart(Judgement later) => later.Torque != Fastening.Conformity.Below && ReplacedBy(later).Any(j => j.Has(FindingKind.Low));

    private int[] BoltsWithGoodLines =>
        [.. Counting.Where(j => j.Conforms).Select(j => j.Reading.Bolt).Except(BoltsOnceHigh).Except(BoltsOnceOverRotated).Except(BoltsRefused)];

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
            catch (Exception fault) when (fault is LineRefusedException or FormatException or ArgumentException or ArithmeticException)
            {
                refused.Add(new RefusedLine(line, BoltOf(line), Reason(fault)));
            }
        }

        return new JudgedLog(log, plan, judgements, refused);
    }

    public IReadOnlyList<int> BoltsWith(FindingKind kind) => [.. Counting.Where(j => j.Has(kind)).Select(j => j.Reading.Bolt)];

    public Judgement? Replacement(Judgement earlier) => _replacedBy.GetValueOrDefault(earlier);

    /// <summary>Earlier readings of the same bolt, however often they were replaced, that nothing undoes.</summary>
    public IEnumerable<Judgement> LastingBefore(Judgement later) =>
        _replacedBy.Keys.Where(j => j.Lasts && j.Reading.Bolt == later.Reading.Bolt && j.Reading.Instant <= later.Reading.Instant && j != later);

    public IEnumerable<Judgement> ReplacedBy(Judgement later) => _replacedBy.Where(pair => pair.Value == later).Select(pair => pair.Key);

    private int[] BoltsOnce(Func<Judgement, bool> wasSo) => [.. _replacedBy.Keys.Where(wasSo).Select(j => j.Reading.Bolt).Distinct().Order()];

    private static int? BoltOf(LogLine line) =>
        int.TryParse(line.Text.Split(',', ';', '\t')[0].Trim('"', ' '), NumberStyles.None, CultureInfo.InvariantCulture, out int bolt) ? bolt : null;

    private static string Reason(Exception fault) => Refused.Parameter(fault) switch
    {
        "setting" => Refused.Naming("torque", fault),
        "travel" => Refused.Naming("rotation_deg", fault),
        "duration" => Refused.Naming("duration_s", fault),
        _ => Refused.Sentence(fault),
    };
}
