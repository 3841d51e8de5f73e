using Fastening.Quality;

namespace Fastening;

/// <summary>
/// One scattering input of a preload, in its shop unit, or a constant when its limits coincide. Its place in the budget is counted as
/// the inputs are gathered.
/// </summary>
internal sealed class BandInput(string name, double low, double high, ScatterShape shape, double siPerUnit = 1)
{
    private readonly double _middle = low + (high - low) / 2;
    private int _place = -1;

    public string Name => name;

    /// <summary>Limits in the shop unit.</summary>
    public (double Low, double High) Limits => (low, high);

    public double Low => low * siPerUnit;

    public double High => high * siPerUnit;

    public double Middle => _middle * siPerUnit;

    /// <summary>As an input of the budget; only once it has a place there.</summary>
    public UncertaintyContribution? Contribution { get; private set; }

    /// <summary>SI values of a block of draws.</summary>
    public void Fill(double[] columns, Span<double> values)
    {
        if (_place < 0)
        {
            values.Fill(Middle);
            return;
        }

        ReadOnlySpan<double> column = columns.AsSpan(_place * InputSampler.Rows, values.Length);
        for (int i = 0; i < values.Length; i++) values[i] = column[i] * siPerUnit;
    }

    /// <summary>Takes a place in the budget; the sensitivity is per SI unit. A constant takes none, unless it must.</summary>
    public void AddTo(List<BandInput> budget, double sensitivityPerSi, bool always = false)
    {
        if (low == high && !always) return;
        _place = budget.Count;
        Contribution = shape.Between(name, low, high).WithSensitivity(sensitivityPerSi * siPerUnit);
        budget.Add(this);
    }
}
