using Fastening.Internals;

namespace Fastening.Equations;

/// <summary>One equation of the trade: its symbols, its text, its source. Every model computes by these.</summary>
/// <remarks>
/// The text and the method are held together by a test that evaluates both, for every equation, over random inputs in the domain,
/// and by a second one that checks the dimensions.
/// </remarks>
/// <example><code>Equation torque = Equation.Find("torque.tightening-torque");
/// torque.Evaluate(0.002, 50_000, 0)      // κ in m, F in N, M_p in N·m: 100 N·m
/// Console.WriteLine(torque.Pretty);      // "M = κ·F + M_p"</code></example>
public abstract class Equation
{
    private static readonly List<Equation> Defined = [];

    private Expression? _expression;

    private protected Equation(string id, Symbol result, string text, string source, Symbol[] inputs)
    {
        Id = id;
        Result = result;
        Text = text;
        Source = source;
        Inputs = Array.AsReadOnly(inputs);
        lock (Defined) Defined.Add(this);
    }

    /// <summary>Every equation of the library, in the order of their names.</summary>
    /// <example><code>foreach (Equation equation in Equation.All) Console.WriteLine(equation);</code></example>
    public static IReadOnlyList<Equation> All => EquationList.All;

    /// <summary>A stable name: <c>torque.tightening-torque</c>.</summary>
    public string Id { get; }

    /// <summary>The symbol on the left of the equals sign.</summary>
    public Symbol Result { get; }

    /// <summary>The right-hand side in plain letters: <c>kappa*F + M_p</c>.</summary>
    public string Text { get; }

    /// <summary>Document, edition and clause; <c>derived</c> and <c>from memory</c> are said where they apply.</summary>
    public string Source { get; }

    /// <summary>The symbols on the right-hand side, in the order of the method's parameters.</summary>
    public IReadOnlyList<Symbol> Inputs { get; }

    /// <summary>A condition beyond the ranges of the symbols, as an expression that must be positive; null when there is none.</summary>
    public string? Where { get; private protected init; }

    /// <summary>The whole equation with Greek letters on one line.</summary>
    public string Pretty => Result.Pretty + " = " + ExpressionPrinter.Line(Expression, name => SymbolNotation.Pretty(name));

    /// <summary>The whole equation as LaTeX.</summary>
    public string Latex => Result.Latex + " = " + ExpressionPrinter.Latex(Expression, name => SymbolNotation.Latex(name));

    internal Expression Expression => _expression ??= ExpressionParser.Parse(Text);

    /// <summary>The value of the equation, after a check that every input lies in its domain.</summary>
    /// <param name="values">One value per input, in SI units, in the order of <see cref="Inputs"/>.</param>
    /// <returns>The result in SI units.</returns>
    /// <exception cref="ArgumentException">The number of values differs from the number of inputs.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, a count is not whole, or the values together violate <see cref="Where"/>.</exception>
    public double Evaluate(params double[] values)
    {
        Guard.NotNull(values);
        if (values.Length != Inputs.Count)
        {
            throw new ArgumentException($"{Id} takes {Inputs.Count} values, one per input; {values.Length} were given.", nameof(values));
        }

        for (int i = 0; i < values.Length; i++)
        {
            new Interval(Inputs[i].Low, Inputs[i].High).Check(values[i], Inputs[i].Unit.Si, Inputs[i].Name);
            if (Inputs[i].Unit == SymbolUnit.Count && values[i] != Math.Floor(values[i])) Guard.RefuseAgainst(Inputs[i].Name, values[i], "a whole number");
        }

        if (!IsInDomain(values))
        {
            throw new ArgumentOutOfRangeException(nameof(values), $"{Id}: the values violate the condition {Where} > 0.");
        }

        return Invoke(values);
    }

    /// <summary>The equation of a name.</summary>
    /// <param name="id">The name, as <see cref="Id"/> and the page of equations give it.</param>
    /// <returns>The equation.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="id"/> is null.</exception>
    /// <exception cref="ArgumentException">There is no equation of that name.</exception>
    /// <example><code>double newtonMeters = Equation.Find("torque.tightening-torque").Evaluate(0.002, 50_000, 0);   // κ in m, F in N, M_p in N·m: 100</code></example>
    public static Equation Find(string id) => EquationList.Find(Guard.NotNull(id))
        ?? throw new ArgumentException($"There is no equation {Quoted.Text(id)}; Equation.All lists them by name, such as torque.tightening-torque.", nameof(id));

    /// <inheritdoc />
    public override string ToString() => $"{Pretty}   [{Source}]";

    /// <summary>What has been defined so far: everything, once <see cref="EquationList"/> has made every subject ready.</summary>
    internal static Equation[] SoFar()
    {
        lock (Defined) return [.. Defined];
    }

    /// <summary>Calls the method without any check.</summary>
    internal abstract double Invoke(double[] values);

    /// <summary>Whether the values together satisfy <see cref="Where"/>; their own ranges are not looked at.</summary>
    internal bool IsInDomain(double[] values) => Where is null || ExpressionParser.Parse(Where).Evaluate(NamesOf(values)) > 0;

    private Func<string, double> NamesOf(double[] values) => name =>
    {
        for (int i = 0; i < values.Length; i++)
        {
            if (Inputs[i].Name == name) return values[i];
        }

        throw new InvalidOperationException($"{Id}: the condition names {name}, which is not an input.");
    };

    internal static Equation<Func<double, double>> Define(
        Func<double, double> method, string id, Symbol result, string text, string source, Symbol a, string? where = null) =>
        new(method, v => method(v[0]), id, result, text, source, [a], where);

    internal static Equation<Func<double, double, double>> Define(
        Func<double, double, double> method, string id, Symbol result, string text, string source, Symbol a, Symbol b, string? where = null) =>
        new(method, v => method(v[0], v[1]), id, result, text, source, [a, b], where);

    internal static Equation<Func<double, double, double, double>> Define(
        Func<double, double, double, double> method, string id, Symbol result, string text, string source, Symbol a, Symbol b, Symbol c, string? where = null) =>
        new(method, v => method(v[0], v[1], v[2]), id, result, text, source, [a, b, c], where);

    internal static Equation<Func<double, double, double, double, double>> Define(
        Func<double, double, double, double, double> method,
        string id, Symbol result, string text, string source, Symbol a, Symbol b, Symbol c, Symbol d, string? where = null) =>
        new(method, v => method(v[0], v[1], v[2], v[3]), id, result, text, source, [a, b, c, d], where);

    internal static Equation<Func<double, double, double, double, double, double>> Define(
        Func<double, double, double, double, double, double> method,
        string id, Symbol result, string text, string source, Symbol a, Symbol b, Symbol c, Symbol d, Symbol e, string? where = null) =>
        new(method, v => method(v[0], v[1], v[2], v[3], v[4]), id, result, text, source, [a, b, c, d, e], where);
}
