namespace Fastening.Tests.Procedures;

/// <summary>
/// Who is next, worked out a second time as simply as it can be said: no counts, no cursors, only what stands done or skipped. It knows nothing of torques and of what was done
/// wrong.
/// </summary>
internal sealed class NaiveOrder(string[][] fastenersOfSteps, TighteningOrder order)
{
    private readonly HashSet<(int Step, string Fastener)> _settled = [];

    public int OpenStep => Array.FindIndex(fastenersOfSteps, 0, fastenersOfSteps.Length, names => Array.Exists(names, name => !_settled.Contains((Array.IndexOf(fastenersOfSteps, names), name))));

    public string? NextFastener => OpenStep < 0 ? null : fastenersOfSteps[OpenStep].First(name => !_settled.Contains((OpenStep, name)));

    public int StepOf(string fastener)
    {
        int[] own = [.. Enumerable.Range(0, fastenersOfSteps.Length).Where(step => fastenersOfSteps[step].Contains(fastener))];
        return own.Where(step => !_settled.Contains((step, fastener))).Append(own[^1]).First();
    }

    /// <summary>Null when it is the turn of the fastener; else why not.</summary>
    public JobReason? Refusal(int step, string fastener)
    {
        bool isSkippedOrDone = _settled.Contains((step, fastener));
        IEnumerable<(int, string)> before = Enumerable.Range(0, step).SelectMany(s => fastenersOfSteps[s].Where(name => order != TighteningOrder.Free || name == fastener).Select(name => (s, name)));
        if (before.Any(place => !_settled.Contains(place))) return JobReason.StepNotReached;
        if (order != TighteningOrder.InSequence || isSkippedOrDone) return null;
        return fastenersOfSteps[step].TakeWhile(name => name != fastener).Any(name => !_settled.Contains((step, name))) ? JobReason.NotNext : null;
    }

    public void Set(int step, string fastener, bool settled)
    {
        if (settled) _settled.Add((step, fastener));
        else _settled.Remove((step, fastener));
    }
}
