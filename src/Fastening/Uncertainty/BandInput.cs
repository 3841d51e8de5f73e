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

    /// <summary>SI value of a draw.</summary>
    public double Of(in InputValues x) => _place < 0 ? _middle * siPerUnit : x[_place] * siPerUnit;

    /// <summary>Takes a place in the budget; the sensitivity is per SI unit. A constant takes none, unless it must.</summary>
    public void AddTo(List<BandInput> budget, double sensitivityPerSi, bool always = false)
    {
        if (low == high && !always) return;
        _place = budget.Count;
        Contribution = shape.Between(name, low, high).WithSensitivity(sensitivityPerSi * siPerUnit);
        budget.Add(this);
    }
}
