using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The yield strengths of one property class at temperature, as printed, and the straight line between them.</summary>
internal sealed class HotStrengthTable
{
    public static readonly Provenance Provenance = new(
        "ISO 898-1 (1988 and 1999), informative annex on elevated temperature, read in a table that reproduces it; straight line between its points");

    private static readonly Dictionary<string, HotStrengthTable> Tables = DataFile.Read("iso-898-1-hot-strength.csv")
        .GroupBy(row => row["designation"])
        .ToDictionary(rows => rows.Key, rows => new HotStrengthTable([.. rows]));

    private readonly double[] _celsius, _yield;

    private HotStrengthTable(DataRow[] rows)
    {
        _celsius = Array.ConvertAll(rows, row => row.Number("temperature_c"));
        _yield = Array.ConvertAll(rows, row => Si.Of(UnitsNet.Pressure.FromMegapascals(row.Number("yield_mpa"))));
        Range = new Domain<Temperature>(_celsius[0], _celsius[_celsius.Length - 1]);
    }

    /// <summary>The temperatures that the table covers, in degrees Celsius; nothing is extrapolated.</summary>
    public Domain<Temperature> Range { get; }

    /// <summary>The table of a class of ISO 898-1; null when the annex has none.</summary>
    public static HotStrengthTable? Of(string designation) => Tables.TryGetValue(designation, out HotStrengthTable? table) ? table : null;

    /// <summary>Yield strength at a temperature inside <see cref="Range"/>.</summary>
    public Term YieldAt(Term celsius, string designation)
    {
        int next = 1;
        while (next < _celsius.Length - 1 && _celsius[next] < celsius.Value) next++;
        return MaterialEquations.HotYieldStrengthEquation.Of(
            Term.Given(_yield[next - 1], "tabulated yield strength", designation),
            Term.Given(_yield[next], "tabulated yield strength", designation),
            Term.Given(_celsius[next - 1], "tabulated temperature below", designation),
            Term.Given(_celsius[next], "tabulated temperature above", designation),
            celsius);
    }
}
