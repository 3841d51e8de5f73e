using Fastening.Internals;

namespace Fastening;

/// <summary>The strengths of one class or grade by size, as its standard lists them: each band begins where the one before it ends.</summary>
internal sealed class StrengthTable
{
    private readonly string _name;
    private readonly StrengthBand[] _bands;
    private readonly HotStrengthTable? _hot;

    public StrengthTable(string name, IEnumerable<StrengthBand> bands, HotStrengthTable? hot = null)
    {
        _hot = hot;
        _name = name;
        _bands = [.. bands];
    }

    /// <summary>The strength for a thread, or the refusal that lists what the standard covers.</summary>
    public BoltStrength For(ScrewThread thread)
    {
        Guard.NotNull(thread);
        return Array.Find(_bands, band => Covers(band, thread))?.Strength.LookedUpFor(thread, _name, _hot) ?? throw new ArgumentException(
            $"{_name} covers {string.Join(" and ", _bands.Select(b => b.Threads).Distinct().Select(Describe))}, not {thread}; give a BoltStrength of your own.",
            nameof(thread));
    }

    private static bool Covers(StrengthBand band, ScrewThread thread) =>
        thread.Standard == band.Threads && Tolerance.IsAtLeast(thread.Diameter, band.Least) && Tolerance.IsAtMost(thread.Diameter, band.Greatest);

    private string Describe(ThreadStandard threads) => $"{threads.Name} threads {Array.FindLast(_bands, band => band.Threads == threads)!.Sizes}";
}
