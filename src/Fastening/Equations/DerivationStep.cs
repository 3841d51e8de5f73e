using Fastening.Internals;

namespace Fastening.Equations;

/// <summary>One equation with its numbers.</summary>
/// <remarks>Values are kept in SI and printed in shop units with six significant digits.</remarks>
public sealed class DerivationStep
{
    internal DerivationStep(Equation equation, double[] inputs, double result)
    {
        Equation = equation;
        Inputs = Array.AsReadOnly(inputs);
        Result = result;
    }

    /// <summary>The equation that was used.</summary>
    public Equation Equation { get; }

    /// <summary>The input values, in SI units, in the order of <see cref="Equation.Inputs"/>.</summary>
    public IReadOnlyList<double> Inputs { get; }

    /// <summary>The result, in the SI unit of <see cref="Equation.Result"/>.</summary>
    public double Result { get; }

    /// <summary>The right-hand side with numbers in shop units: <c>2.1 N·m/kN·60 kN + 0 N·m</c>.</summary>
    public string Substituted => ExpressionPrinter.Line(Equation.Expression, name => Show(name, latex: false));

    /// <summary>The result in its shop unit: <c>126 N·m</c>.</summary>
    public string ResultText => Format(Equation.Result.Unit, Result, latex: false);

    /// <inheritdoc />
    public override string ToString() => $"{Equation.Pretty} = {Substituted} = {ResultText}";

    internal string SubstitutedLatex => ExpressionPrinter.Latex(Equation.Expression, name => Show(name, latex: true));

    internal string ResultLatex => Format(Equation.Result.Unit, Result, latex: true);

    private string Show(string name, bool latex)
    {
        for (int i = 0; i < Equation.Inputs.Count; i++)
        {
            if (Equation.Inputs[i].Name == name) return Format(Equation.Inputs[i].Unit, Inputs[i], latex);
        }

        return latex ? SymbolNotation.Latex(name) : SymbolNotation.Pretty(name);
    }

    private static string Format(SymbolUnit unit, double si, bool latex)
    {
        double shop = unit.ToShop(si);
        return latex ? LatexNumber(Print.Number(shop, "", "G6")) + LatexUnit(unit.Shop) : Print.Number(shop, unit.Shop, "G6");
    }

    private static string LatexNumber(string number)
    {
        string[] parts = number.Split('E');
        if (parts.Length == 1) return number;
        string sign = parts[1][0] == '-' ? "-" : "";
        return parts[0] + @" \times 10^{" + sign + parts[1].TrimStart('+', '-', '0') + "}";
    }

    private static string LatexUnit(string unit) => unit.Length == 0
        ? ""
        : unit == "°" ? @"^{\circ}"
        : @"\,\mathrm{" + unit.Replace("°", @"^{\circ}").Replace("·", @"{\cdot}").Replace("²", "^{2}").Replace("³", "^{3}").Replace("⁴", "^{4}") + "}";
}
