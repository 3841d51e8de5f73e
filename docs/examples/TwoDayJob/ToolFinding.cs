using Fastening;
using Fastening.Quality;
using UnitsNet;

namespace TwoDayJob;

/// <summary>
/// What the calibration laboratory found after the job, and what it makes of the readings: a wrench that showed more than it gave since its
/// last good calibration. Every reading of it is judged again at the torque that it gave, the uncertainty of the calibration counted.
/// </summary>
internal sealed class ToolFinding(DigesterCover cover, JobProgress job)
{
    private static readonly DateTimeOffset LastGood = new(2025, 4, 14, 9, 30, 0, TimeSpan.FromHours(2));
    private static readonly DateTimeOffset Found = new(2025, 10, 27, 13, 10, 0, TimeSpan.FromHours(1));
    private static readonly DateTimeOffset FirstUse = new(2025, 4, 22, 7, 0, 0, TimeSpan.FromHours(2));
    private const int Cycles = 2_310;
    private static readonly DecisionRule Rule = DecisionRule.IlacG8;

    private static readonly TorqueTool Wrench = TorqueTool.WithRange(
        "TW-12", TorqueToolClass.Parse("II A"), Torque.FromNewtonMeters(80), Torque.FromNewtonMeters(420));

    public void Write(TextWriter to)
    {
        ToolCalibration found = AsFound();
        Show.Heading(to, "Afterwards: a tool out of tolerance");
        to.WriteLine($"{found.Tool}, as found {Show.Time(found.Performed)}, last found good {Show.Time(LastGood)}");
        foreach (CalibrationPoint point in found.Points) to.WriteLine($"  {point}");
        CalibrationVerdict verdict = found.Judge(Rule);
        to.WriteLine($"  {verdict}");
        foreach (CalibrationReason reason in verdict.Reasons) to.WriteLine($"  - {reason}");
        to.WriteLine("A positive deviation gives less than it shows. Limits of ISO 6789-1:2017 as recalled, provisional.");
        DueStatus due = CalibrationInterval.Iso6789.StatusAt(FirstUse, Cycles, Found);
        to.WriteLine(FormattableString.Invariant($"In use since {FirstUse:yyyy-MM-dd}, {Cycles} cycles by its card: by interval and cycles the wrench was {due}."));
        WriteRecall(to, found);
    }

    private void WriteRecall(TextWriter to, ToolCalibration found)
    {
        string last = cover.Program.Steps[^1].Name;
        ToolRecall recall = found.Rejudge(LastGood, job.ReadingsOf(last, tool: Wrench.Name), Rule);

        Show.Heading(to, $"Its readings in {last} judged again");
        to.WriteLine("No adapter was used, so the torque at the tool is that at the bolt. Torque given = torque shown/(1 + deviation); from the reading of");
        to.WriteLine("the calibration that gave least to the one that gave most.");
        foreach (RejudgedReading reading in recall.Readings) to.WriteLine($"  {reading}");

        Show.Heading(to, "Result of the job, with the tool's error");
        to.WriteLine(Result(recall));
    }

    private string Result(ToolRecall recall)
    {
        string bolts = string.Join(" ", recall.ToRevisit.Select(reading => reading.Reading.Fastener));
        string tool = recall.Readings.Count == 0 ? $"No bolt is done by a reading of {Wrench.Name}."
            : recall.ToRevisit.Count == 0 ? $"All {recall.Readings.Count} bolts of {Wrench.Name} conform for certain."
            : $"Of the {recall.Readings.Count} bolts of {Wrench.Name}, {recall.ToRevisit.Count} are not certain to conform; to be checked with a good tool: {bolts}.";
        bool stands = job.IsConforming && recall.ToRevisit.Count == 0;
        return $"{(stands ? "CONFORMING" : "NOT CONFORMING")}: {job}. {tool}";
    }

    private static ToolCalibration AsFound() => new(
        Wrench, CalibrationState.AsFound, Found,
        [
            Point(80, [77.2, 76.9, 77.4, 77.0, 77.1]),
            Point(252, [240.4, 240.1, 241.0, 240.6, 240.2]),
            Point(420, [399.6, 398.9, 400.2, 399.1, 399.4]),
        ],
        new CalibrationUncertainty(MeasurementUncertainty.Expanded(Ratio.FromPercent(0.4), coverageFactor: 2)).WithResolution(Torque.FromNewtonMeters(0.5))
            .WithReproducibility(Torque.FromNewtonMeters(0.3), at: Torque.FromNewtonMeters(77)));

    private static CalibrationPoint Point(double set, double[] references) =>
        CalibrationPoint.At(Torque.FromNewtonMeters(set), [.. references.Select(x => Torque.FromNewtonMeters(x))]);
}
