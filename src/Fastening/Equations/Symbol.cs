namespace Fastening.Equations;

/// <summary>A symbol of the trade: name, unit, meaning, and the range over which the tests sample it.</summary>
/// <remarks>Defined once; feeds the printed work, the documentation, the domain check and the tests.</remarks>
/// <example><code>Symbol arm = Equation.Find("torque.tightening-torque").Inputs[0];
/// Console.WriteLine($"{arm.Pretty}: {arm.Meaning}, {arm.Unit.Si}");   // "κ: tightening torque per unit preload, m"</code></example>
public sealed class Symbol
{
    internal Symbol(string name, SymbolUnit unit, string meaning, double low, double high)
    {
        Name = name;
        Unit = unit;
        Meaning = meaning;
        Low = low;
        High = high;
    }

    /// <summary>Plain letters, as written in the text of an equation: <c>mu_th</c>, <c>d_2</c>.</summary>
    public string Name { get; }

    /// <summary>SI unit, shop unit and dimension.</summary>
    public SymbolUnit Unit { get; }

    /// <summary>What it means, in the field's terms.</summary>
    public string Meaning { get; }

    /// <summary>Least permitted value, in the SI unit.</summary>
    public double Low { get; }

    /// <summary>Greatest permitted value, in the SI unit.</summary>
    public double High { get; }

    /// <summary>With Greek letters: <c>µ_th</c>.</summary>
    public string Pretty => SymbolNotation.Pretty(Name);

    /// <summary>As LaTeX: <c>\mu_{th}</c>.</summary>
    public string Latex => SymbolNotation.Latex(Name);

    /// <inheritdoc />
    public override string ToString() => Pretty;
}
