using Fastening.Equations;

namespace PumpCover;

/// <summary>Numbers the steps of several derivations through; a step that was worked before, with the same numbers, is not written twice.</summary>
internal sealed class WorkedSteps
{
    private readonly Dictionary<string, int> _numbers = [];

    /// <summary>The steps of a derivation that are new, with their numbers.</summary>
    public IReadOnlyList<(int Number, DerivationStep Step)> NewIn(Derivation work)
    {
        List<(int, DerivationStep)> fresh = [];
        foreach (DerivationStep step in work.Steps)
        {
            if (_numbers.TryAdd(step.ToString(), _numbers.Count + 1)) fresh.Add((_numbers.Count, step));
        }

        return fresh;
    }
}
