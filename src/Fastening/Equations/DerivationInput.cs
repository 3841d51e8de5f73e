using Fastening.Internals;
using UnitsNet;

namespace Fastening.Equations;

/// <summary>A value on which a derivation rests: stated by the user, taken from a table, or a constant of a source.</summary>
/// <example><code>DerivationInput preload = Derivation.Of(() => model.TorqueFor(Force.FromPoundsForce(13_000))).Given[0];
/// Console.WriteLine(preload);     // F = 13000 lbf = 57.8269 kN   (preload)</code></example>
public sealed class DerivationInput
{
    internal DerivationInput(string name, Symbol? symbol, double value, IQuantity? entered)
    {
        Name = name;
        Symbol = symbol;
        Value = value;
        Quantity = entered;
    }

    /// <summary>What it is: <c>preload</c>, <c>nominal diameter of M16</c>.</summary>
    public string Name { get; }

    /// <summary>The symbol under which it goes into its first step; null when it is itself the answer.</summary>
    public Symbol? Symbol { get; }

    /// <summary>The value in SI.</summary>
    public double Value { get; }

    /// <summary>As it was entered, in the user's own unit; null for a pure number and for one of a table or a source, which stands in the unit of its symbol.</summary>
    public IQuantity? Quantity { get; }

    /// <summary>The value as entered and, where that is another unit, in the shop unit: <c>13000 lbf = 57.8269 kN</c>.</summary>
    public string ValueText
    {
        get
        {
            string shop = (Symbol?.Unit ?? SymbolUnit.Ratio).Text(Value);
            if (Quantity is null) return shop;
            if (Symbol is null) return Guard.Show(Quantity);
            string entered = Guard.Show(Quantity);
            return entered == shop ? shop : entered + " = " + shop;
        }
    }

    /// <summary>One line of an aligned block.</summary>
    internal string Latex =>
        $"{Symbol?.Latex} &= {(Symbol?.Unit ?? SymbolUnit.Ratio).Latex(Value)} && {SymbolNotation.LatexWords(Name)}";

    /// <inheritdoc />
    public override string ToString() => Symbol is null ? $"{ValueText}   ({Name})" : $"{Symbol.Pretty} = {ValueText}   ({Name})";
}
