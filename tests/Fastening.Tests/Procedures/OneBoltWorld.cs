using UnitsNet;

namespace Fastening.Tests.Procedures;

/// <summary>
/// Every log of a few lines on one bolt, from an alphabet of lines. What a line does not state is the worst or the mildest it can be, and what is withdrawn was real or was
/// not: four worlds. In none of them may a conforming log have a bad bolt.
/// </summary>
internal sealed class OneBoltWorld(DayProgram program)
{
    private static readonly DateTimeOffset Start = DateTimeOffset.UnixEpoch;

    private readonly TighteningProgram _built = new(["B1"], program.Steps, TighteningOrder.InSequence);
    private readonly List<JobEntry> _log = [];
    private readonly string[] _alphabet = AlphabetOf(program);

    public long Logs { get; private set; }

    public long Conforming { get; private set; }

    public List<string> Objections { get; } = [];

    public void Try(int lines)
    {
        foreach (string symbol in _alphabet)
        {
            if (LineOf(symbol) is not JobEntry entry) continue;
            _log.Add(entry);
            Look();
            if (lines > 1) Try(lines - 1);
            _log.RemoveAt(_log.Count - 1);
        }
    }

    private static string[] AlphabetOf(DayProgram program)
    {
        string[] common = ["loosen", "replace", "accept", "withdraw", "skip first", "pull 290 at none", "pull ?", "pull 290"];
        string[] own = program.Name switch
        {
            "torque" => ["pull 100", "pull 90", "pull 106", "pull 30"],
            "passes" => ["pull 50", "pull 100", "pull 100 at last", "pull 90", "pull 54"],
            "eye" => ["firm", "pull ? 130", "pull 118 130", "pull 118", "pull 118 0", "pull 125 70"],
            _ => ["pull 60", "pull 118 130", "pull 118", "pull 118 0", "pull 125 70", "pull ? 130", "pull 118 130 at last", "pull 110 0"],
        };
        return [.. common, .. own];
    }

    private JobEntry? LineOf(string symbol)
    {
        long number = _log.Count + 1;
        DateTimeOffset time = Start.AddMinutes(number);
        switch (symbol)
        {
            case "loosen": return JobEntry.Loosened("w", number, time, "B1", "r");
            case "replace": return JobEntry.Replaced("w", number, time, "B1", "r");
            case "accept": return JobEntry.Accepted("w", number, time, "B1", "p", "r", JobProgress.Replay(_built, _log).StateOf("B1").Facts);
            case "skip first": return JobEntry.Skipped("w", number, time, "B1", "r").AtStep(program.Steps[0].Name);
            case "firm": return JobEntry.Pulled("w", number, time, "B1").WithContact(true);
            case "withdraw":
                JobEntry? wrong = _log.FindLast(entry => entry.Kind != JobEntryKind.Withdrawn && !IsWithdrawn(entry));
                return wrong is null ? null : JobEntry.Withdrawn("w", number, time, "w", wrong.Sequence, "p", "r");
        }

        string[] words = symbol.Split(' ');
        JobEntry pull = JobEntry.Pulled("w", number, time, "B1");
        if (words[^1] == "none") pull = pull.AtStep("none");
        if (words[^1] == "last") pull = pull.AtStep(program.Steps[^1].Name);
        if (double.TryParse(words[1], System.Globalization.CultureInfo.InvariantCulture, out double torque)) pull = pull.WithTorque(Torque.FromNewtonMeters(torque));
        return words.Length > 2 && double.TryParse(words[2], System.Globalization.CultureInfo.InvariantCulture, out double degrees) ? pull.WithRotation(Angle.FromDegrees(degrees)) : pull;
    }

    private bool IsWithdrawn(JobEntry entry) => _log.Exists(other => other.Kind == JobEntryKind.Withdrawn && other.OfSequence == entry.Sequence);

    private void Look()
    {
        Logs++;
        if (!JobProgress.Replay(_built, _log).IsConforming) return;
        Conforming++;
        foreach ((bool worst, bool real) in new[] { (true, true), (true, false), (false, true), (false, false) })
        {
            RealBolt bolt = Live(worst, real);
            if (program.ObjectionTo(bolt) is string objection) Objections.Add($"{program.Name}, worst {worst}, withdrawn real {real}: {objection}: {bolt}\n{string.Join("\n", _log)}");
        }
    }

    private RealBolt Live(bool worst, bool real)
    {
        var bolt = new RealBolt();
        var known = new List<int>();
        for (int i = 0; i < _log.Count; i++)
        {
            JobEntry entry = _log[i];
            if (IsWithdrawn(entry) && !real) continue;
            known.Add(i);
            switch (entry.Kind)
            {
                case JobEntryKind.Loosened: bolt.Loosen(); break;
                case JobEntryKind.Replaced: bolt.Replace(); break;
                case JobEntryKind.Accepted when !IsWithdrawn(entry): bolt.AcceptKnowing(known); break;
                case JobEntryKind.Pulled when entry.HasContact is true: bolt.Touch(); break;
                case JobEntryKind.Pulled:
                    double torque = entry.Torque?.NewtonMeters ?? (worst ? 290 : 118);
                    double degrees = entry.Rotation?.Degrees ?? (torque <= bolt.Peak ? 0 : worst ? 260 : 0);
                    bolt.Measure(i, torque, degrees);
                    break;
            }
        }

        return bolt;
    }
}
