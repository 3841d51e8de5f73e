using System.Text;
using Fastening.Internals;

namespace Fastening.Equations;

/// <summary>The work behind an answer: every equation, with its numbers in shop units and its source.</summary>
/// <remarks>Its last step is the answer of the call it explains, equal bit for bit.</remarks>
/// <example><code>Derivation work = model.DeriveTorqueFor(Force.FromKilonewtons(60));
/// Console.WriteLine(work);                  // plain text
/// File.WriteAllText("work.md", work.ToMarkdown());</code></example>
public sealed class Derivation
{
    private readonly List<DerivationStep> _steps = [];

    internal Derivation(string title) => Title = title;

    /// <summary>What is derived: <c>Tightening torque</c>.</summary>
    public string Title { get; }

    /// <summary>The steps in the order in which they were computed.</summary>
    public IReadOnlyList<DerivationStep> Steps => _steps.AsReadOnly();

    /// <summary>The value of the last step, in its SI unit.</summary>
    public double Result => _steps[_steps.Count - 1].Result;

    /// <summary>The steps as plain text, two lines each.</summary>
    public override string ToString()
    {
        var text = new StringBuilder(Title).Append('\n');
        for (int i = 0; i < _steps.Count; i++)
        {
            DerivationStep step = _steps[i];
            text.Append(Number(i).PadLeft(3)).Append(". ").Append(step.Equation.Pretty).Append("   (").Append(step.Equation.Result.Meaning).Append(")\n");
            text.Append("     = ").Append(step.Substituted).Append(" = ").Append(step.ResultText);
            text.Append("   [").Append(step.Equation.Source).Append("]\n");
        }

        return text.ToString();
    }

    /// <summary>The steps as a Markdown table: what, equation, numbers, result, source.</summary>
    public string ToMarkdown()
    {
        var text = new StringBuilder("| step | what | equation | with numbers | result | source |\n|---:|---|---|---|---|---|\n");
        for (int i = 0; i < _steps.Count; i++)
        {
            DerivationStep step = _steps[i];
            text.Append("| ").Append(Number(i)).Append(" | ").Append(step.Equation.Result.Meaning).Append(" | `").Append(step.Equation.Pretty);
            text.Append("` | ").Append(step.Substituted).Append(" | ").Append(step.ResultText).Append(" | ").Append(step.Equation.Source).Append(" |\n");
        }

        return text.ToString();
    }

    /// <summary>The steps as LaTeX, one aligned block (needs the <c>amsmath</c> package).</summary>
    public string ToLatex()
    {
        var text = new StringBuilder("\\begin{aligned}\n");
        for (int i = 0; i < _steps.Count; i++)
        {
            DerivationStep step = _steps[i];
            text.Append(step.Equation.Latex.Replace(" = ", " &= ")).Append(" \\\\\n");
            text.Append("  &= ").Append(step.SubstitutedLatex).Append(" = ").Append(step.ResultLatex);
            text.Append(i < _steps.Count - 1 ? " \\\\\n" : "\n");
        }

        return text.Append("\\end{aligned}\n").ToString();
    }

    private static string Number(int index) => Print.Number(index + 1);

    /// <summary>
    /// Leaves out the steps on which the answer does not rest. A step counts when its result went, bit for bit, into a later step that counts.
    /// </summary>
    internal Derivation KeepWhatCounts()
    {
        var needed = new HashSet<double>();
        for (int i = _steps.Count - 1; i >= 0; i--)
        {
            if (i < _steps.Count - 1 && !needed.Remove(_steps[i].Result)) _steps.RemoveAt(i);
            else needed.UnionWith(_steps[i].Inputs);
        }

        return this;
    }

    internal void Add(Equation equation, double result, params double[] inputs) => _steps.Add(new DerivationStep(equation, inputs, result));
}
