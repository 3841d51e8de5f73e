#!/usr/bin/env dotnet
#:project ../../src/Fastening/Fastening.csproj
#:include ReadATrace/*.cs

// A recorded tightening, from samples to findings and a picture. The record beside it is invented: no fastener was turned.
//
//   dotnet run docs/examples/read-a-trace.cs                                       from the root of the repository
//   dotnet run docs/examples/read-a-trace.cs -- trace.csv [output folder]
//
// The file: comments (#), then time_s,angle_deg,torque_nm, one sample a line. What is looked for is stated below and goes with the job.
//
// Exit codes: 0 read, whatever was found; 2 file or argument refused, nothing written.

using System.Text;
using Fastening;
using ReadATrace;
using UnitsNet;

Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
string file = args.Length > 0 ? args[0] : "docs/examples/read-a-trace.csv";
string folder = args.Length > 1 ? args[1] : "docs/examples/out";
TraceOptions options = TraceOptions.SnugByProjection(smoothingWindow: Angle.FromDegrees(8))
    .WithYieldOffset(Angle.FromDegrees(3))
    .WithStickSlip(Torque.FromNewtonMeters(5))
    .WithReversal(Angle.FromDegrees(1))
    .WithTorqueDrop(Torque.FromNewtonMeters(5));
RotationRateLimit limit = RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(70));

try
{
    TighteningTrace trace = TraceFile.Read(file);
    TraceAnalysis analysis = trace.Analyze(options);
    Duration window = limit.SmallestSafeWindow(Angle.FromDegrees(0.1), Duration.FromMilliseconds(4), margin: Ratio.FromPercent(10));
    RotationRateCheck rate = analysis.Snug is TracePoint snug ? limit.Check(trace, window, snug, analysis.ShutOff) : limit.Check(trace, window);
    foreach (string line in Findings.Lines(analysis, rate, window)) Console.WriteLine(line);

    Directory.CreateDirectory(folder);
    string picture = $"{folder.TrimEnd('/', '\\')}/{Path.GetFileNameWithoutExtension(file)}.svg";
    File.WriteAllText(picture, TraceDrawing.Of(trace, analysis, Path.GetFileName(file), [.. TraceFile.Comments(file), $"{options}"]), new UTF8Encoding(false));
    Console.WriteLine($"{"written",-14} {picture}");
    return 0;
}
catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or ArgumentException or FormatException)
{
    Console.Error.WriteLine($"error: {fault.Message}");
    return 2;
}
