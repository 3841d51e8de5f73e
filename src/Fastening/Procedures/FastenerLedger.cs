namespace Fastening;

/// <summary>
/// The facts of one fastener, apart from the order of the work. A reason lasts until the cure of its effect: what was said since the fastener was
/// loosened stands in <see cref="Run"/>, since a person decided in <see cref="Unsettled"/>, since it was replaced in <see cref="Ever"/>.
/// </summary>
internal sealed class FastenerLedger
{
    public const long NoPlace = long.MinValue;

    private long _lastPlace = NoPlace;
    private long _placeBeforeThatSource = NoPlace;
    private int _lastSource = -1;

    public FastenerLedger(StepCell[] cells) => Cells = cells;

    public StepCell[] Cells { get; }

    public ReasonSet Run { get; private set; }

    public ReasonSet Unsettled { get; private set; }

    public ReasonSet Ever { get; private set; }

    /// <summary>The highest torque since it was loosened, of pulls that count: below it the fastener does not move.</summary>
    public double Peak { get; private set; }

    public double PeakEver { get; private set; }

    /// <summary>The rotation past snug since it was loosened, of pulls that count.</summary>
    public double Turn { get; private set; }

    public double TurnEver { get; private set; }

    /// <summary>All that was said of the fastener, as one number: another set of facts is another number.</summary>
    public ulong Facts { get; private set; }

    public int Loosenings { get; private set; }

    public int Replacements { get; private set; }

    public JobEntry? Decision { get; private set; }

    public JobEntry? Loosening { get; private set; }

    /// <summary>The last entry that asked for a loosening or a look, with what was said of it.</summary>
    public JobOutcome? Cause { get; private set; }

    /// <summary>The last place of any other source; <see cref="NoPlace"/> when there is none.</summary>
    public long PlaceOfOthers(int source) => source == _lastSource ? _placeBeforeThatSource : _lastPlace;

    public void Touch(in LinePlace line)
    {
        if (line.Source != _lastSource)
        {
            _placeBeforeThatSource = _lastPlace;
            _lastSource = line.Source;
        }

        _lastPlace = line.Ticks;
    }

    public void Add(ReasonSet reasons)
    {
        Run |= reasons;
        Unsettled |= reasons;
        Ever |= reasons;
    }

    public void Blame(in JobOutcome cause) => Cause = cause;

    public void Know(ulong fact) => Facts = Fingerprint.Mix(Facts, fact);

    /// <summary>A torque that was stated, of whatever pull.</summary>
    public void Hear(double torque)
    {
        if (torque > PeakEver) PeakEver = torque;
    }

    /// <summary>A pull that counts.</summary>
    public void Bear(double torque, double turned)
    {
        if (torque > Peak) Peak = torque;
        Turn += turned;
        TurnEver += turned;
    }

    public void Loosen(JobEntry entry)
    {
        Run = default;
        Peak = Turn = 0;
        Loosenings++;
        Loosening = entry;
        OpenSteps(forget: true);
    }

    public void Replace()
    {
        Run = Unsettled = Ever = default;
        Peak = PeakEver = Turn = TurnEver = 0;
        Loosenings = 0;
        Replacements++;
        Loosening = Decision = null;
        Cause = null;
        OpenSteps(forget: true);
    }

    public void Decide(JobEntry entry)
    {
        Unsettled = default;
        Decision = entry;
    }

    /// <summary>All steps open again. What was counted stays counted; what a loosening undoes is forgotten only where it is sure.</summary>
    public void OpenSteps(bool forget)
    {
        for (int s = 0; s < Cells.Length; s++)
        {
            ref StepCell cell = ref Cells[s];
            if (cell.Status == FastenerStatus.NotInStep) continue;
            cell.Status = FastenerStatus.Open;
            cell.Pull = null;
            cell.Reasons = default;
            if (!forget) continue;
            cell.Turn = 0;
            cell.StoppedShort = false;
        }
    }

    public void CopyFrom(FastenerLedger other)
    {
        other.Cells.CopyTo(Cells, 0);
        (Run, Unsettled, Ever, Facts) = (other.Run, other.Unsettled, other.Ever, other.Facts);
        (Peak, PeakEver, Turn, TurnEver) = (other.Peak, other.PeakEver, other.Turn, other.TurnEver);
        (Loosenings, Replacements, Decision, Loosening, Cause) = (other.Loosenings, other.Replacements, other.Decision, other.Loosening, other.Cause);
        (_lastPlace, _placeBeforeThatSource, _lastSource) = (other._lastPlace, other._placeBeforeThatSource, other._lastSource);
    }
}
