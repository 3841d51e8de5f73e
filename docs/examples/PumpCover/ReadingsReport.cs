using Fastening;

namespace PumpCover;

/// <summary>The verdicts, line by line, and what they come to.</summary>
internal sealed class ReadingsReport(JudgedLog judged, TighteningPlan plan, ISheetWriter writer)
{
    public static void WriteUnjudged(ReadingLog log, ISheetWriter writer)
    {
        writer.Heading($"Readings in {log.File}");
        writer.Paragraph($"None of the {Show.Count(log.Lines.Count, "reading")} was judged: the sheet is NOT SUITABLE, so its window is none to conform to.");
    }

    public void Write()
    {
        WriteVerdicts();
        WriteSummary();
    }

    private void WriteVerdicts()
    {
        writer.Heading($"Readings in {judged.Log.File}");
        writer.Paragraph(
            $"What the wrench showed, times the torque ratio of the group, against {Show.Limits(plan.Window)} at the fastener. "
            + "The window was chosen with accuracy and calibration of the wrench in mind, so readings are judged by its limits as they stand. "
            + "Torque, rate and rotation must all conform.");
        writer.Table(
            ["line ", "bolt ", "time", "wrench showed ", "ratio ", "at the fastener ", "torque", "rate ", "rotation ", "verdict"],
            judged.Judgements.Select(Row));
        foreach (Judgement judgement in judged.Judgements) WriteReasons(judgement);
        if (judged.RefusedLines.Count == 0) return;
        writer.Heading("Lines that were NOT JUDGED");
        writer.Bullets(judged.RefusedLines.Select(line => $"line {line.Line.Number}: {line.Reason}. [{line.Line.Text}]"));
        if (judged.LinesOfNoBolt.Count == 0) return;
        writer.Paragraph(
            $"NO BOLT COUNTS AS CONFORMING: {LinesOfNoBolt} cannot be led to a bolt of the job, and may be of any of them. "
            + "Put the log right and judge it again.");
    }

    private void WriteSummary()
    {
        int all = plan.Job.Bolts.Count;
        writer.Heading("Summary");
        writer.Table(["", "bolts ", "which"],
        [
            Count($"conforming, of {all}", judged.BoltsConforming),
            Count("held back by lines of no bolt", judged.BoltsHeldBack),
            Count("low", judged.BoltsWith(FindingKind.Low)),
            Count("high", judged.BoltsWith(FindingKind.High)),
            Count("too fast", judged.BoltsWith(FindingKind.TooFast)),
            Count("pulled again from rest after a low one", judged.BoltsRestarted),
            Count("rotation below its window", judged.BoltsWith(FindingKind.UnderRotated)),
            Count("rotation above its window", judged.BoltsWith(FindingKind.OverRotated)),
            Count("not judged in full", judged.BoltsWith(FindingKind.NotJudged)),
            Count("once above the torque window", judged.BoltsOnceHigh),
            Count("once above its rotation window", judged.BoltsOnceOverRotated),
            Count("with a line that could not be judged", judged.BoltsRefused),
            Count("without a reading", judged.BoltsWithout),
        ]);
        writer.Paragraph(
            "A bolt that fails in two ways stands in two rows. Where a bolt was read more than once, its last reading counts; "
            + "what was once above a window stays. Conforming means that torque, rate and rotation as read lie within their windows; "
            + "it says nothing of the friction of that bolt, of settling, of neighbours tightened later, of a crossed thread. "
            + (judged.LinesOfNoBolt.Count == 0
                ? "Every line could be led to a bolt of the job."
                : $"Lines whose bolt could not be read, or is not in the job: {judged.LinesOfNoBolt.Count} ({LinesOfNoBolt}). "
                    + "While they stand, no bolt conforms."));
        ReadingLog log = judged.Log;
        writer.Paragraph(
            $"Lines in the file: {log.Total} = 1 header + {Show.Count(log.Comments, "comment")} + {log.Empty} empty + {judged.Judgements.Count} judged"
            + $" + {judged.RefusedLines.Count} reported as not judged. Nothing was left out.");
    }

    private static string[] Count(string name, IReadOnlyList<int> bolts) => [name, $"{bolts.Count}", bolts.Count == 0 ? "" : Show.List(bolts)];

    private string LinesOfNoBolt => $"line{(judged.LinesOfNoBolt.Count == 1 ? "" : "s")} {Show.List(judged.LinesOfNoBolt.Select(line => line.Line.Number))}";

    private string[] Row(Judgement judgement)
    {
        Reading reading = judgement.Reading;
        return
        [
            $"{reading.Line}", $"{reading.Bolt}", reading.Time, reading.Shown.ToString(), $"{judgement.Group.Wrench.TorqueRatio:0.0000}",
            Show.Torque(judgement.AtFastener, plan.Window), Word(judgement.Torque),
            judgement.Rate is RotationRateCheck rate ? Show.Rate(rate) : "-", judgement.RotationText, Verdict(judgement),
        ];
    }

    private void WriteReasons(Judgement judgement)
    {
        List<string> remarks = [.. judgement.Findings.Select(finding => finding.Reason)];
        remarks.AddRange(judged.ReplacedBy(judgement).Select(earlier => $"repeat: replaces the reading of line {earlier.Reading.Line}"));
        remarks.AddRange(judged.LastingBefore(judgement).Select(earlier =>
            $"{(earlier.Has(FindingKind.High) ? "torque" : "rotation")} was above its window in line {earlier.Reading.Line}, "
            + "so the bolt is not counted as conforming"));
        if (judged.IsRestart(judgement))
        {
            remarks.Add("pulled again from rest: unless the bolt was loosened in between or the torque read while it turned, its preload may still be the lower one");
        }

        if (judged.Replacement(judgement) is Judgement later) remarks.Add($"replaced by the reading of line {later.Reading.Line}");
        if (judged.BoltsRefused.Contains(judgement.Reading.Bolt))
        {
            remarks.Add("another line of this bolt could not be judged, so the bolt is not counted as conforming");
        }

        if (remarks.Count > 0) writer.Bullets([$"line {judgement.Reading.Line}, bolt {judgement.Reading.Bolt}: {string.Join("; ", remarks)}"]);
    }

    private string Verdict(Judgement judgement)
    {
        if (!judgement.Conforms) return string.Join(", ", judgement.Findings.Select(finding => Word(finding.Kind)).Distinct());
        return judged.BoltsConforming.Contains(judgement.Reading.Bolt) ? "conforms" : "conforms, the bolt does NOT";
    }

    private static string Word(FindingKind kind) => kind switch
    {
        FindingKind.Low => "LOW",
        FindingKind.High => "HIGH",
        FindingKind.TooFast => "TOO FAST",
        FindingKind.UnderRotated => "ROTATION BELOW",
        FindingKind.OverRotated => "ROTATION ABOVE",
        _ => "NOT JUDGED IN FULL",
    };

    private static string Word(Conformity conformity) => conformity switch
    {
        Conformity.Below => "low",
        Conformity.Within => "within",
        Conformity.Above => "high",
        _ => "undefined",
    };
}
