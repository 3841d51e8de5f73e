using Fastening;
using UnitsNet;

namespace TwoDayJob;

/// <summary>
/// What the calibration laboratory found two days later, and what it makes of the readings: a wrench that showed more than it gave since its
/// last good calibration. Every reading of it is judged again at the torque that it gave.
/// </summary>
internal sealed class ToolFinding(DigesterCover cover, JobProgress job)
{
    private const string Tool = "TW-12";
    private const double DeviationPercent = 5.2;

    private static readonly DateTimeOffset LastGood = new(2025, 4, 14, 9, 30, 0, TimeSpan.FromHours(2));
    private static readonly DateTimeOffset Found = new(2025, 10, 27, 13, 10, 0, TimeSpan.FromHours(1));

    public void Write(TextWriter to)
    {
        Show.Heading(to, "Afterwards: a tool out of tolerance");
        to.WriteLine($"{Tool}, last found good {Show.Time(LastGood)}, as found {Show.Time(Found)}:");
        to.WriteLine($"  deviation +{Show.Number(DeviationPercent)} % at 400 N·m (it shows more than it gives), permitted ±4 %: out of tolerance.");
        TighteningStep last = cover.Program.Steps[^1];
        var bad = new List<string>();
        to.WriteLine($"Its readings in {last.Name} judged again, torque given = torque shown / (1 + deviation):");
        foreach (FastenerState state in cover.Program.FastenersOf(last.Name).Select(bolt => job.StateOf(last.Name, bolt)).Where(IsSuspect))
        {
            Torque given = state.Torque!.Value / (1 + DeviationPercent / 100);
            StepJudgement judgement = last.Judge(given, state.Rotation, duration: null);
            if (judgement.Verdict == JobVerdict.Rejected) bad.Add(state.Fastener);
            to.WriteLine($"  {state.Fastener}  shown {Show.Number(state.Torque.Value.NewtonMeters)} N·m, gave {Show.Number(given.NewtonMeters)} N·m: {judgement}");
        }

        Show.Heading(to, "Result of the job, with the tool's error");
        to.WriteLine(bad.Count == 0
            ? "The result stands."
            : $"NOT CONFORMING: {bad.Count} bolts of {DigesterCover.Bolts} to be tightened again with a good tool: {string.Join(" ", bad)}.");
    }

    private static bool IsSuspect(FastenerState state) =>
        state.Reading is JobEntry reading && reading.Source == Tool && reading.Time > LastGood && reading.Time < Found;
}
