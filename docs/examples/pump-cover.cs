#!/usr/bin/env dotnet
#:project ../../src/Fastening/Fastening.csproj
#:package ScottPlot
#:include PumpCover/*.cs

// The cover of a raw-water pump at a municipal waterworks, from joint to verdict. The case is invented.
//
//   dotnet run docs/examples/pump-cover.cs                                       from the root of the repository
//   dotnet run docs/examples/pump-cover.cs -- job.json readings.csv [output folder]
//
// Signs in the job file: angle_deg of an adapter is taken from the line of the handle produced beyond the drive, positive to the side the hand
// moves to; pull_off_square_deg is positive when the pull leans towards the head of the wrench. The sheet says both in words. A prevailing torque
// is a range, { "low": …, "high": … }; without it there is none. calibration_uncertainty_percent is the expanded uncertainty (k = 2) of the
// certificate; without it 0 is used, and the sheet says so.
//
// Exit codes: 0 every line judged; 2 job file, log or argument refused, nothing written; 3 some lines of the log not judged;
// 4 the sheet is not suitable (preload, stress or wrench), whatever the lines.

using System.Globalization;
using System.Text;
using PumpCover;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
try
{
    Files files = Files.Of(args);
    Job job = JobFile.Read(files.Job);
    ReadingLog log = ReadingLog.Read(files.Readings);

    TighteningPlan plan = TighteningPlan.For(job, files.Job);
    JudgedLog? judged = plan.JointProblems.Count == 0 ? JudgedLog.Of(log, plan) : null;

    PreloadOutlook outlook = PreloadOutlook.Of(plan);
    var console = new PlainTextWriter();
    var sheet = new TighteningSheet(plan, outlook, console);
    sheet.WriteForConsole();
    if (judged is null) ReadingsReport.WriteUnjudged(log, console);
    else new ReadingsReport(judged, plan, console).Write();
    sheet.WriteCautions();

    var document = new MarkdownWriter();
    new TighteningSheet(plan, outlook, document).WriteForFile();
    string? chart = judged is null ? null : ReadingsChart.Of(judged, plan);
    files.Write(document.ToString(), BandChart.Of(outlook, plan), chart);
    if (chart?.Contains("<text") == false) Console.Error.WriteLine($"warning: {files.Chart} has no words in it: this machine has no font.");
    console.Heading("Written");
    console.Bullets(judged is null ? [files.Sheet, files.Band] : [files.Sheet, files.Band, files.Chart]);
    Console.Write(console);
    return !plan.IsSuitable ? 4 : judged!.RefusedLines.Count > 0 ? 3 : 0;
}
catch (InputRefusedException refusal)
{
    Console.Error.WriteLine($"error: {refusal.Message}");
    return 2;
}
catch (Exception fault) when (fault is ArgumentException or ArithmeticException or FormatException or InvalidOperationException or NotSupportedException)
{
    Console.Error.WriteLine($"error: this job cannot be worked out: {Refused.Sentence(fault)}.");
    return 2;
}
