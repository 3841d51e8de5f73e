using Fastening.Internals;

namespace Fastening;

/// <summary>How many fasteners stand where in one step.</summary>
public sealed class StepCounts
{
    internal StepCounts(string step, int open, int done, int rejected, int skipped)
    {
        Step = step;
        Open = open;
        Done = done;
        Rejected = rejected;
        Skipped = skipped;
    }

    /// <summary>The name of the step.</summary>
    public string Step { get; }

    /// <summary>Not tightened yet, or loosened since.</summary>
    public int Open { get; }

    /// <summary>Done.</summary>
    public int Done { get; }

    /// <summary>The last reading was not accepted.</summary>
    public int Rejected { get; }

    /// <summary>Left out, with a reason.</summary>
    public int Skipped { get; }

    /// <summary>All fasteners of the step.</summary>
    public int Fasteners => Open + Done + Rejected + Skipped;

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"{Step}: {Done} of {Fasteners} done, {Open} open, {Rejected} rejected, {Skipped} skipped");
}
