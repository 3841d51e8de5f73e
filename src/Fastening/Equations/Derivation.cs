using System.Text;
using Fastening.Internals;

namespace Fastening.Equations;

/// <summary>The work behind an answer: what was given, then every equation with its numbers in shop units and its source.</summary>
/// <remarks>
/// The call is run and heard: what is shown is what was computed, and its last step is the answer, equal bit for bit. A value stands after those that
/// it rests on, and once.
/// </remarks>
/// <example><code>Derivation work = Derivation.Of(() => model.TorqueFor(Force.FromKilonewtons(60)));
/// Console.WriteLine(work);                  // plain text
/// File.WriteAllText("work.md", work.ToMarkdown());</code></example>
public sealed class Derivation
{
    internal Derivation(string title, double result, DerivationInput[] given, DerivationStep[] steps)
    {
        Title = title;
        Result = result;
        Given = Array.AsReadOnly(given);
        Steps = Array.AsReadOnly(steps);
    }

    /// <summary>What is derived: <c>Tightening torque</c>.</summary>
    public string Title { get; }

    /// <summary>The values on which the work rests.</summary>
    public IReadOnlyList<DerivationInput> Given { get; }

    /// <summary>The steps, each after those that it rests on.</summary>
    public IReadOnlyList<DerivationStep> Steps { get; }

    /// <summary>The value that is derived, in its SI unit.</summary>
    public double Result { get; }

    /// <summary>The work behind an answer of this library: a property, a call, or a chain of calls.</summary>
    /// <remarks>
    /// The call is run once, on this thread. What was computed before it, outside, counts as given: an answer that is to be derived stands inside. In a
    /// chain an argument that equals an earlier answer is that answer; arithmetic of one's own between the calls is given, and a call that ends on it
    /// cannot be derived.
    /// </remarks>
    /// <typeparam name="T">A quantity, a number, or a result of the library such as <see cref="TorqueBreakdown"/>.</typeparam>
    /// <param name="answer">The call.</param>
    /// <returns>The work; it ends on the answer.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="answer"/> is null.</exception>
    /// <exception cref="InvalidOperationException">What the call answered is not an answer of this library, or one that cannot be derived. What the call itself refuses comes through as it is.</exception>
    /// <example><code>Derivation chain = Derivation.Of(() => model.TorqueFor(model.PermittedPreload(strength, utilisation: Ratio.FromPercent(90))));</code></example>
    public static Derivation Of<T>(Func<T> answer)
    {
        (T answered, Recording heard) = Recording.Of(Guard.NotNull(answer));
        return DerivationOrder.Of(heard, heard.PlaceOfAnswer(answered));
    }

    /// <summary>What is given and the steps as plain text.</summary>
    public override string ToString()
    {
        var text = new StringBuilder(Title).Append('\n');
        if (Given.Count > 0) text.Append("Given\n");
        foreach (DerivationInput input in Given) text.Append("     ").Append(input).Append('\n');
        if (Given.Count > 0 && Steps.Count > 0) text.Append("Steps\n");
        for (int i = 0; i < Steps.Count; i++)
        {
            DerivationStep step = Steps[i];
            text.Append(Number(i).PadLeft(3)).Append(". ").Append(step.Equation.Pretty).Append("   (").Append(step.Equation.Result.Meaning).Append(")\n");
            text.Append("     = ").Append(step.Substituted).Append(" = ").Append(step.ResultText);
            text.Append("   [").Append(step.Equation.Source).Append("]\n");
            if (step.Notes.Count > 0) text.Append("     with ").Append(string.Join("; ", step.Notes)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Two Markdown tables: what is given; and per step what, equation, numbers, result, source.</summary>
    public string ToMarkdown()
    {
        var text = new StringBuilder();
        if (Given.Count > 0) text.Append("| given | value | what |\n|---|---|---|\n");
        foreach (DerivationInput input in Given)
        {
            text.Append("| `").Append(input.Symbol?.Pretty).Append("` | ").Append(input.ValueText).Append(" | ").Append(input.Name).Append(" |\n");
        }

        if (Given.Count > 0) text.Append('\n');
        text.Append("| step | what | equation | with numbers | result | source |\n|---:|---|---|---|---|---|\n");
        for (int i = 0; i < Steps.Count; i++)
        {
            DerivationStep step = Steps[i];
            text.Append("| ").Append(Number(i)).Append(" | ").Append(step.Equation.Result.Meaning).Append(" | `").Append(step.Equation.Pretty).Append("` | ").Append(step.Substituted);
            if (step.Notes.Count > 0) text.Append("; with ").Append(string.Join("; ", step.Notes));
            text.Append(" | ").Append(step.ResultText).Append(" | ").Append(step.Equation.Source).Append(" |\n");
        }

        return text.ToString();
    }

    /// <summary>LaTeX, one aligned block for what is given and one for each step (needs the <c>amsmath</c> package).</summary>
    public string ToLatex()
    {
        var text = new StringBuilder();
        if (Given.Count > 0)
        {
            text.Append("\\begin{align*}\n");
            for (int i = 0; i < Given.Count; i++)
            {
                DerivationInput input = Given[i];
                text.Append(input.Latex);
                text.Append(i < Given.Count - 1 ? " \\\\\n" : "\n");
            }

            text.Append("\\end{align*}\n");
        }

        foreach (DerivationStep step in Steps)
        {
            text.Append("\\begin{align*}\n").Append(step.Equation.Latex.Replace(" = ", " &= ")).Append(" \\\\\n");
            text.Append("  &= ").Append(step.SubstitutedLatex).Append(" = ").Append(step.ResultLatex).Append("\n\\end{align*}\n");
        }

        return text.ToString();
    }

    private static string Number(int index) => Print.Number(index + 1);
}
