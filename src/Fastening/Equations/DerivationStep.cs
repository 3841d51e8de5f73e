namespace Fastening.Equations;

/// <summary>One equation with its numbers.</summary>
/// <remarks>Values are kept in SI and printed in shop units with six significant digits.</remarks>
public sealed class DerivationStep
{
    internal DerivationStep(Equation equation, double[] inputs, double result, string[] notes)
    {
        Notes = Array.AsReadOnly(notes);
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

    /// <summary>Where a value comes from that the symbols alone do not tell: <c>d_m = d_2 of step 2</c>, <c>l = length of section 1</c>.</summary>
    public IReadOnlyList<string> Notes { get; }

    /// <summary>The right-hand side with numbers in shop units: <c>2.1 N·m/kN·60 kN + 0 N·m</c>.</summary>
    public string Substituted => ExpressionPrinter.Line(Equation.Expression, name => Show(name, latex: false));

    /// <summary>The result in its shop unit: <c>126 N·m</c>.</summary>
    public string ResultText => Equation.Result.Unit.Text(Result);

    /// <inheritdoc />
    public override string ToString() => $"{Equation.Pretty} = {Substituted} = {ResultText}";

    internal string SubstitutedLatex => ExpressionPrinter.Latex(Equation.Expression, name => Show(name, latex: true));

    internal string ResultLatex => Equation.Result.Unit.Latex(Result);

    private string Show(string name, bool latex)
    {
        for (int i = 0; i < Equation.Inputs.Count; i++)
        {
            if (Equation.Inputs[i].Name == name) return latex ? Equation.Inputs[i].Unit.Latex(Inputs[i]) : Equation.Inputs[i].Unit.Text(Inputs[i]);
        }

        return latex ? SymbolNotation.Latex(name) : SymbolNotation.Pretty(name);
    }
}
