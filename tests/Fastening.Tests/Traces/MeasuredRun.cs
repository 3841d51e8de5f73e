using System.Globalization;
using System.Text.Json;
using Fastening.Tests.House;
using UnitsNet;

namespace Fastening.Tests.Traces;

/// <summary>One measured run with what its machine reported.</summary>
internal sealed record MeasuredRun(string Set, string Id, JsonElement About, double[] Times, double[] Angles, double[] Torques, int[] Steps)
{
    private static readonly Lazy<IReadOnlyList<MeasuredRun>> Everything = new(() =>
        [.. Directory.EnumerateFiles(Folder, "*.json", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(Read)]);

    public static IReadOnlyList<MeasuredRun> All => Everything.Value;

    public static string Folder => Path.Combine(Repository.Root, "tests", "Fastening.Tests", "Data", "measured");

    public TighteningTrace Trace => TighteningTrace.FromSamples(Times, Angles, Torques);

    public bool IsLoosening => Set == "c-loosening";

    /// <summary>A few steps of the angle as recorded: 0.25° on the driving rig, 5.32° on the loosening rig.</summary>
    public Angle Window => Angle.FromDegrees(IsLoosening ? 40 : 10);

    public TraceOptions Options => TraceOptions.SnugByProjection(Window);

    public string Text(string name) => About.GetProperty(name).GetString()!;

    /// <summary>One step of the program, over the same memory.</summary>
    public TighteningTrace Step(int number)
    {
        int from = Array.IndexOf(Steps, number), count = Steps.Count(s => s == number);
        return TighteningTrace.FromSamples(Times.AsMemory(from, count), Angles.AsMemory(from, count), Torques.AsMemory(from, count));
    }

    private static MeasuredRun Read(string json)
    {
        using var document = JsonDocument.Parse(File.ReadAllText(json));
        string[][] rows = [.. File.ReadLines(Path.ChangeExtension(json, ".csv")).Skip(1).Select(line => line.Split(','))];
        return new MeasuredRun(
            Path.GetFileName(Path.GetDirectoryName(json)!), Path.GetFileNameWithoutExtension(json), document.RootElement.Clone(),
            Column(0), Column(1), Column(2), [.. Column(3).Select(x => (int)x)]);

        double[] Column(int index) => [.. rows.Select(row => double.Parse(row[index], CultureInfo.InvariantCulture))];
    }
}
