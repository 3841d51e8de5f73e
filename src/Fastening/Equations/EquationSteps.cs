namespace Fastening.Equations;

/// <summary>
/// Computes an equation and, when work is to be shown, writes it down. A model runs one sequence of steps: with null while it is
/// being built, with a derivation when the work is wanted. So each formula exists once.
/// </summary>
internal static class EquationSteps
{
    public static double Step(this Equation<Func<double, double>> equation, Derivation? work, double a)
    {
        double result = equation.Method(a);
        work?.Add(equation, result, a);
        return result;
    }

    public static double Step(this Equation<Func<double, double, double>> equation, Derivation? work, double a, double b)
    {
        double result = equation.Method(a, b);
        work?.Add(equation, result, a, b);
        return result;
    }

    public static double Step(this Equation<Func<double, double, double, double>> equation, Derivation? work, double a, double b, double c)
    {
        double result = equation.Method(a, b, c);
        work?.Add(equation, result, a, b, c);
        return result;
    }

    public static double Step(
        this Equation<Func<double, double, double, double, double>> equation, Derivation? work, double a, double b, double c, double d)
    {
        double result = equation.Method(a, b, c, d);
        work?.Add(equation, result, a, b, c, d);
        return result;
    }

    public static double Step(
        this Equation<Func<double, double, double, double, double, double>> equation, Derivation? work, double a, double b, double c, double d, double e)
    {
        double result = equation.Method(a, b, c, d, e);
        work?.Add(equation, result, a, b, c, d, e);
        return result;
    }
}
