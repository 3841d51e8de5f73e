using System.Globalization;
using UnitsNet;

namespace Fastening.Internals;

/// <summary>One row of a data file; cells by the name of their column, numbers with a decimal point in every culture.</summary>
internal sealed class DataRow(string file, int line, string[] columns, string[] cells)
{
    public string this[string column]
    {
        get
        {
            int index = Array.IndexOf(columns, column);
            return index >= 0 ? cells[index] : throw new InvalidDataException($"{file} has no column {column}.");
        }
    }

    public bool Has(string column) => Array.IndexOf(columns, column) >= 0;

    public double Number(string column) => Parse(column, this[column]);

    /// <summary>The numbers of a cell, separated by spaces; none in an empty cell.</summary>
    public IEnumerable<double> Numbers(string column) =>
        this[column].Split([' '], StringSplitOptions.RemoveEmptyEntries).Select(text => Parse(column, text));

    /// <summary>A length; the name of its column ends in <c>_in</c> or <c>_mm</c>.</summary>
    public Length Length(string column)
    {
        double number = Number(column);
        return column.EndsWith("_in", StringComparison.Ordinal) ? UnitsNet.Length.FromInches(number) : UnitsNet.Length.FromMillimeters(number);
    }

    /// <summary>The same in metres.</summary>
    public double Meters(string column) => Si.Of(Length(column));

    private double Parse(string column, string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number)
            ? number
            : throw new InvalidDataException($"{file}, line {line}, {column}: '{text}' is not a number.");
}
