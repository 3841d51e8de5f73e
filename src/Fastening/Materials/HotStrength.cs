using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The yield strength of a bolt at a temperature: stated, or looked up with <see cref="BoltStrength.AtTemperature"/>.</summary>
/// <remarks>
/// For loading of short duration. Relaxation with time is not included: a hot bolt loses preload over hours and months, whatever its yield
/// strength says. Tensile strength, stress under proof load and fatigue strength at temperature are not included either.
/// </remarks>
/// <example><code>HotStrength looked = PropertyClass.Parse("10.9").StrengthFor(ScrewThread.Parse("M16")).AtTemperature(Temperature.FromDegreesCelsius(225));
/// looked.YieldStrength.Megapascals                                                    // 767.5
/// new HotStrength(Temperature.FromDegreesCelsius(400), Pressure.FromMegapascals(590)).YieldStrength.Megapascals   // 590</code></example>
public sealed class HotStrength
{
    private readonly HotStrengthTable? _table;
    private readonly Stated<Temperature> _temperature;
    private readonly Stated<Pressure> _yield;

    /// <summary>A yield strength that the user states, from a test or the standard of the material.</summary>
    /// <param name="temperature">The temperature of the bolt at which it holds, 20 to 1000 °C; it is used up to that temperature.</param>
    /// <param name="yieldStrength">Minimum yield strength or 0.2 % proof strength at that temperature.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside 20 to 1000 °C, or the stress outside 1 kPa to 100 GPa.</exception>
    /// <example><code>new HotStrength(Temperature.FromDegreesCelsius(400), yieldStrength: Pressure.FromMegapascals(590))</code></example>
    public HotStrength(Temperature temperature, Pressure yieldStrength)
    {
        _temperature = Domains.HotTemperature.Stated(temperature);
        _yield = Domains.Stress.Stated(yieldStrength, "yieldStrength");
    }

    internal HotStrength(Stated<Temperature> temperature, BoltStrength cold, HotStrengthTable table)
    {
        _temperature = temperature;
        Cold = cold;
        _table = table;
    }

    /// <summary>The temperature of the bolt up to which the strength holds.</summary>
    public Temperature Temperature => Si.Temperature(Celsius);

    /// <summary>Yield strength or 0.2 % proof strength at that temperature.</summary>
    public Pressure YieldStrength => Si.Pressure(YieldTerm);

    /// <summary>Document, edition and annex; null for a strength of the user's own.</summary>
    public Provenance? Provenance => _table is null ? null : HotStrengthTable.Provenance;

    internal double Celsius => _temperature.Value;

    internal Term YieldTerm => _table is null ? _yield.Term : _table.YieldAt(_temperature.Term, Cold!.ClassOrGrade!);

    internal double YieldSi => YieldTerm.Value;

    /// <summary>The strength at room temperature from which it was looked up.</summary>
    internal BoltStrength? Cold { get; }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"R_p {Si.Pressure(YieldSi):0.#} at {Celsius:0.#} °C, short time, relaxation not included");
}
