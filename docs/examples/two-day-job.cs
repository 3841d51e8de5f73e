#!/usr/bin/env dotnet
#:project ../../src/Fastening/Fastening.csproj
#:include TwoDayJob/*.cs

// The manhole cover of a digester at a sewage works: 48 bolts in three passes, over the two days on which summer time ends. The case, the tools and
// every reading are invented.
//
//   dotnet run docs/examples/two-day-job.cs                      from the root of the repository
//   dotnet run docs/examples/two-day-job.cs -- log.csv           another log for the same cover
//
// Exit codes: 0 record printed; 2 log refused.

using System.Globalization;
using System.Text;
using Fastening;
using TwoDayJob;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
try
{
    IReadOnlyList<JobEntry> log = JobLog.Read(args.Length > 0 ? args[0] : "docs/examples/two-day-job-log.csv");
    DigesterCover cover = DigesterCover.Planned();
    var record = new QualityRecord(cover, RunJob.Through(cover.Program, log));
    record.Write(Console.Out);
    new ToolFinding(cover, record.Job).Write(Console.Out);
    return 0;
}
catch (Exception fault) when (fault is FormatException or ArgumentException or IOException or UnauthorizedAccessException)
{
    Console.Error.WriteLine($"error: {fault.Message}");
    return 2;
}
