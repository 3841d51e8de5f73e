namespace Fastening;

/// <summary>What a job said of an entry.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Reasons">Every reason.</param>
/// <param name="Step">The step, or −1.</param>
/// <param name="Turn">The rotation of the step after it; NaN where it is not known.</param>
internal readonly record struct JobOutcome(JobEntry Entry, ReasonSet Reasons, int Step = -1, double Turn = double.NaN)
{
    public PullFigures Figures => Entry.Figures with { Turn = Turn };
}
