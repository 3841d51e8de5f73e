using UnitsNet;

namespace Fastening.Tests.Procedures;

/// <summary>
/// A random day: people work on real bolts, tools write lines of it, some false, some withdrawn, some late, lost or sent twice. The people go by what a run shows
/// them, so that most days end well.
/// </summary>
internal sealed class PhysicalDay
{
    private static readonly string[] Sources = ["wrench", "gun", "form"];
    private static readonly double[] Torques = [30, 60, 100, 118, 125, 290], Rotations = [0, 20, 70, 130, 260];

    private readonly Random _random;
    private readonly DayKind _kind;
    private readonly DayProgram _program;
    private readonly RealBolt[] _bolts = [new(), new()];
    private readonly JobRun _run;
    private readonly JobRun _eyes;
    private readonly long[] _numbers = new long[3];
    private readonly long[] _skew = new long[3];
    private readonly List<(JobEntry Entry, int Event)> _unsent = [];
    private readonly List<int>[] _known = [[], []];
    private long _seconds;
    private int _events;

    public PhysicalDay(int seed, DayKind kind, DayProgram program, TighteningOrder order)
    {
        _random = new Random(seed);
        _kind = kind;
        _program = program;
        _run = new JobRun(program.Build(order), Options);

        // Who does good work knows what was done; who does not goes by the lines that came.
        _eyes = IsGood ? new JobRun(program.Build(order), Options) : _run;
        if (Has(DayKind.BadClocks)) _skew[_random.Next(2)] = _random.Next(3) switch { 0 => 3600, 1 => 7200, _ => 0 };
    }

    /// <summary>Clocks of the days agree to the second, and the people take half a minute for a pull.</summary>
    public static JobOptions Options { get; } = JobOptions.Default.WithTailLength(64)
        .WithSources([.. Sources.Select(name => JobSource.Counting(name, first: 1))]);

    /// <summary>All lines in the order in which they came in.</summary>
    public List<JobEntry> Arrived { get; } = [];

    /// <summary>What never came in.</summary>
    public List<JobEntry> Lost { get; } = [];

    /// <summary>Every step that people took, for a complaint.</summary>
    public List<string> Story { get; } = [];

    public JobRun Run => _run;

    private bool IsGood => _kind <= DayKind.GoodLost;

    public void Work()
    {
        int length = _random.Next(6, 16);
        for (int i = 0; i < length; i++)
        {
            _seconds += 30;
            Deliver();
            JobProgress seen = _eyes.Progress;
            if (IsGood || _random.Next(10) < 6) WorkOn(seen);
            else Stray(seen);
            _seconds += 5;
        }

        // Three in four days are brought to an end.
        for (int i = 0; i < 25 && (IsGood || _random.Next(20) > 0); i++)
        {
            _seconds += 30;
            Deliver();
            JobProgress seen = _eyes.Progress;
            if (seen.IsConforming && _unsent.Count == 0) break;
            WorkOn(seen);
        }

        for (int s = 0; s < Sources.Length; s++) Write(JobEntry.Noted(Sources[s], ++_numbers[s], Time(s), "end"), 0, canBeLost: false);
        Deliver(all: true);
    }

    /// <summary>Null when every bolt is as the program wants it.</summary>
    public string? Objection() => _bolts.Select((bolt, b) => _program.ObjectionTo(bolt) is string wrong ? $"{DayProgram.Bolts[b]}: {wrong}: {bolt}" : null)
        .FirstOrDefault(wrong => wrong is not null);

    public override string ToString() => $"{_kind}, {_run.Program}\n{string.Join("\n", Story)}\narrived:\n{string.Join("\n", Arrived)}\n{_run.Progress}";

    private bool Has(DayKind kind) => _kind == kind || _kind == DayKind.BadAll;

    /// <summary>What the run asks for.</summary>
    private void WorkOn(JobProgress seen)
    {
        if (seen.ToLoosen.Concat(seen.WaitingForLines).FirstOrDefault() is string loose && (!IsGood || seen.Gaps.Count == 0)) { Free(Index(loose), JobEntry.Loosened); return; }
        if (seen.ToLookAt.Count > 0 && _random.Next(3) > 0)
        {
            FastenerState state = seen.ToLookAt[0];
            if (_random.Next(3) == 0) Free(Index(state.Fastener), JobEntry.Replaced);
            else Decide(state);
            return;
        }

        if (seen.NextFastener is not string next) return;
        int bolt = Index(next), step = Array.FindIndex(_program.Steps, s => s.Name == seen.OpenStep!.Name);
        FastenerStatus status = seen.StateOf(next).Steps[step].Status;
        double turned = seen.StateOf(next).Steps[step].Turn.Degrees;
        (double torque, double degrees) = _program.Good[step];
        if (status == FastenerStatus.Rejected && turned > 0) (torque, degrees) = turned >= 90 ? (torque, 0) : (torque + _random.Next(1, 4), 120 - turned);
        else if (degrees > 0 && _random.Next(4) == 0 && _program.LeastTurn > 0) (torque, degrees) = (torque - 20, degrees / 2);
        Pull(bolt, step, torque, degrees, source: _random.Next(2), named: _random.Next(3) > 0, tell: true);
    }

    /// <summary>What nobody asked for.</summary>
    private void Stray(JobProgress seen)
    {
        int bolt = _random.Next(2), step = _random.Next(_program.Steps.Length);
        int act = _random.Next(12);
        if (act < 5 && (Has(DayKind.BadPulls) || Has(DayKind.BadData)))
        {
            Pull(bolt, step, Torques[_random.Next(Torques.Length)], Rotations[_random.Next(Rotations.Length)], _random.Next(2), _random.Next(2) == 0, tell: !Has(DayKind.BadData));
        }
        else if (act < 7 && Has(DayKind.BadPulls))
        {
            if (act == 5) Free(bolt, JobEntry.Loosened);
            else Write(JobEntry.Skipped("form", ++_numbers[2], Time(2), DayProgram.Bolts[bolt], "r").AtStep(_program.Steps[step].Name), 0);
        }
        else if (act < 10 && Has(DayKind.BadLines))
        {
            Falsify(bolt, step);
        }
        else if (act < 11 && Has(DayKind.BadDecisions))
        {
            Pull(bolt, step, 290, 130, 0, true, tell: true);
            if (_random.Next(2) == 0) Decide(seen.StateOf(DayProgram.Bolts[bolt]));
        }
        else if (Has(DayKind.BadClocks))
        {
            // A clock that is behind from its first line on cannot be told from lines that are late.
            int source = _random.Next(3);
            if (_numbers[source] > 0) _skew[source] = _random.Next(4) switch { 0 => -86_400, 1 => 3600, 2 => -1800, _ => 0 };
        }
        else
        {
            WorkOn(seen);
        }
    }

    private void Pull(int bolt, int step, double torque, double degrees, int source, bool named, bool tell)
    {
        _events++;
        double moved = _bolts[bolt].Pull(_events, torque, degrees);
        Story.Add($"{_seconds}: {DayProgram.Bolts[bolt]} pulled {torque} N·m, really moved {moved}°");
        JobEntry entry = JobEntry.Pulled(Sources[source], ++_numbers[source], Time(source), DayProgram.Bolts[bolt]);
        TighteningStep asked = _program.Steps[step];
        if (named) entry = entry.AtStep(tell || _random.Next(4) > 0 ? asked.Name : "no such step");
        if (_program.SnugByEye && step == 0 && torque <= RealBolt.MostSnug) entry = entry.WithContact(_bolts[bolt].IsSnug);
        else if (tell || _random.Next(3) > 0) entry = entry.WithTorque(Torque.FromNewtonMeters(torque));
        if ((tell || _random.Next(3) > 0) && (_program.LeastTurn > 0 && !(_program.SnugByEye && step == 0))) entry = entry.WithRotation(Angle.FromDegrees(moved));
        Write(entry, _events);
    }

    private void Free(int bolt, Func<string, long, DateTimeOffset, string, string, JobEntry> write)
    {
        JobEntry entry = write("form", ++_numbers[2], Time(2), DayProgram.Bolts[bolt], "r");
        if (entry.Kind == JobEntryKind.Replaced) _bolts[bolt].Replace();
        else _bolts[bolt].Loosen();
        Story.Add($"{_seconds}: {DayProgram.Bolts[bolt]} {entry.Kind}");
        Write(entry, 0);
    }

    private void Decide(FastenerState seen)
    {
        int bolt = Index(seen.Fastener);
        _bolts[bolt].AcceptKnowing(_known[bolt]);
        Story.Add($"{_seconds}: {seen.Fastener} accepted");
        Write(JobEntry.Accepted("form", ++_numbers[2], Time(2), seen.Fastener, "p", "r", seen.Facts), 0);
    }

    /// <summary>A line that is false and is withdrawn, a true one that is withdrawn, or a counter that begins again.</summary>
    private void Falsify(int bolt, int step)
    {
        string name = DayProgram.Bolts[bolt], source = Sources[_random.Next(2)];
        int number = Array.IndexOf(Sources, source);
        switch (_random.Next(4))
        {
            case 0:
                // Never happened.
                JobEntry never = _random.Next(4) switch
                {
                    0 => JobEntry.Loosened(source, ++_numbers[number], Time(number), name, "r"),
                    1 => JobEntry.Replaced(source, ++_numbers[number], Time(number), name, "r"),
                    _ => JobEntry.Pulled(source, ++_numbers[number], Time(number), name).AtStep(_program.Steps[step].Name)
                        .WithTorque(Torque.FromNewtonMeters(Torques[_random.Next(Torques.Length)])).WithRotation(Angle.FromDegrees(Rotations[_random.Next(Rotations.Length)])),
                };
                Write(never, 0, canBeLost: false);
                _seconds += 5;
                Write(JobEntry.Withdrawn("form", ++_numbers[2], Time(2), never.Source, never.Sequence, "p", "r"), 0, canBeLost: false);
                break;
            case 1 when Arrived.FindLast(entry => entry.Fastener is not null) is JobEntry real:
                Write(JobEntry.Withdrawn("form", ++_numbers[2], Time(2), real.Source, real.Sequence, "p", "r"), 0, canBeLost: false);
                break;
            case 2 when Has(DayKind.BadPulls):
                _numbers[number] = Math.Max(0, _numbers[number] - 2);
                break;
            default:
                Pull(bolt, step, Torques[_random.Next(Torques.Length)], Rotations[_random.Next(Rotations.Length)], number, true, tell: true);
                _seconds += 5;
                if (Arrived.Count > 0) Write(JobEntry.Withdrawn("form", ++_numbers[2], Time(2), source, _numbers[number], "p", "r"), 0, canBeLost: false);
                break;
        }
    }

    private void Write(JobEntry entry, int real, bool canBeLost = true)
    {
        if (IsGood) _eyes.Apply(entry);
        if (canBeLost && (_kind == DayKind.GoodLost || Has(DayKind.BadData)) && _random.Next(12) == 0) Lost.Add(entry);
        else _unsent.Add((entry, real));
    }

    /// <summary>Lines go out at once, or late, or twice; each is stamped as it comes in.</summary>
    private void Deliver(bool all = false)
    {
        bool late = _kind == DayKind.GoodLate || Has(DayKind.BadDecisions);
        for (int i = 0; i < _unsent.Count;)
        {
            if (!all && late && _random.Next(3) == 0) { i++; continue; }
            (JobEntry entry, int real) = _unsent[i];
            _unsent.RemoveAt(i);
            Send(entry.WithReceived(DateTimeOffset.UnixEpoch.AddDays(10).AddSeconds(_seconds)), real);
            if ((_kind == DayKind.GoodRepeated || _kind == DayKind.BadAll) && _random.Next(3) == 0) Send(Arrived[_random.Next(Arrived.Count)], 0);
        }
    }

    private void Send(JobEntry entry, int real)
    {
        Arrived.Add(entry);
        _run.Apply(entry);
        if (real > 0) _known[Index(entry.Fastener!)].Add(real);
    }

    private DateTimeOffset Time(int source) => DateTimeOffset.UnixEpoch.AddDays(10).AddSeconds(_seconds + _skew[source]);

    private static int Index(string bolt) => Array.IndexOf(DayProgram.Bolts, bolt);
}
