namespace Fastening.Equations;

/// <summary>Computes an equation on terms; while a derivation listens, the step is written down with the origins of its inputs.</summary>
internal static class EquationTerms
{
    public static Term Of(this Equation<Func<double, double>> equation, Term a)
    {
        double result = equation.Method(a.Value);
        return new Term(result, Recording.IsAnywhere ? Recording.Step(equation, result, a.Origin, a.Value) : 0);
    }

    public static Term Of(this Equation<Func<double, double, double>> equation, Term a, Term b)
    {
        double result = equation.Method(a.Value, b.Value);
        return new Term(result, Recording.IsAnywhere ? Recording.Step(equation, result, a.Origin, a.Value, b.Origin, b.Value) : 0);
    }

    public static Term Of(this Equation<Func<double, double, double, double>> equation, Term a, Term b, Term c)
    {
        double result = equation.Method(a.Value, b.Value, c.Value);
        return new Term(result, Recording.IsAnywhere ? Recording.Step(equation, result, a.Origin, a.Value, b.Origin, b.Value, c.Origin, c.Value) : 0);
    }

    public static Term Of(this Equation<Func<double, double, double, double, double>> equation, Term a, Term b, Term c, Term d)
    {
        double result = equation.Method(a.Value, b.Value, c.Value, d.Value);
        return new Term(
            result,
            Recording.IsAnywhere ? Recording.Step(equation, result, a.Origin, a.Value, b.Origin, b.Value, c.Origin, c.Value, d.Origin, d.Value) : 0);
    }

    public static Term Of(this Equation<Func<double, double, double, double, double, double>> equation, Term a, Term b, Term c, Term d, Term e)
    {
        double result = equation.Method(a.Value, b.Value, c.Value, d.Value, e.Value);
        return new Term(
            result,
            Recording.IsAnywhere
                ? Recording.Step(equation, result, a.Origin, a.Value, b.Origin, b.Value, c.Origin, c.Value, d.Origin, d.Value, e.Origin, e.Value)
                : 0);
    }
}
