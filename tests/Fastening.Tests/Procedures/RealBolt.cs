namespace Fastening.Tests.Procedures;

/// <summary>
/// What was really done to one bolt. It knows no programs, orders, verdicts or lines, only physics: a bolt does not move below what it has borne, a pull that is harder than
/// snug turns it on, and what was once pulled too hard stays so until the bolt is replaced or a person who knew of it has accepted it.
/// </summary>
internal sealed class RealBolt
{
    /// <summary>Above this a pull moves the bolt past snug.</summary>
    public const double MostSnug = 63;

    private readonly List<(int Event, double Torque)> _hardPulls = [];

    public double Peak { get; private set; }

    public double Turned { get; private set; }

    public bool IsSnug { get; private set; }

    public bool WasTurnedLoose { get; private set; }

    /// <summary>The highest torque since it was replaced that no person has accepted knowingly.</summary>
    public double WorstUnknown => _hardPulls.Select(pull => pull.Torque).DefaultIfEmpty(0).Max();

    /// <summary>A pull; the rotation is what it really moved: nothing below the peak, nothing past snug up to the snug torque.</summary>
    public double Pull(int number, double torque, double degrees)
    {
        double moved = torque > Peak && torque > MostSnug ? degrees : 0;
        WasTurnedLoose |= moved > 0 && !IsSnug;
        IsSnug |= torque >= 50;
        Turned += moved;
        Peak = Math.Max(Peak, torque);
        _hardPulls.Add((number, torque));
        return moved;
    }

    /// <summary>A pull whose rotation was measured, whatever physics would say: past snug it counts.</summary>
    public void Measure(int number, double torque, double degrees)
    {
        double moved = torque > MostSnug ? degrees : 0;
        WasTurnedLoose |= moved > 0 && !IsSnug;
        IsSnug |= torque >= 50;
        Turned += moved;
        Peak = Math.Max(Peak, torque);
        _hardPulls.Add((number, torque));
    }

    /// <summary>Tightened by hand until the parts touch.</summary>
    public void Touch()
    {
        IsSnug = true;
        Peak = Math.Max(Peak, 60);
    }

    public void Loosen() => (Peak, Turned, IsSnug, WasTurnedLoose) = (0, 0, false, false);

    public void Replace()
    {
        Loosen();
        _hardPulls.Clear();
    }

    public void AcceptKnowing(ICollection<int> events) => _hardPulls.RemoveAll(pull => events.Contains(pull.Event));

    public override string ToString() => FormattableString.Invariant($"peak {Peak}, turned {Turned}, snug {IsSnug}, turned loose {WasTurnedLoose}, worst unaccepted {WorstUnknown}");
}
