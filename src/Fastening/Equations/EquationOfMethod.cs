namespace Fastening.Equations;

/// <summary>An equation with the method that computes it; the type of the method makes the compiler count the symbols.</summary>
/// <typeparam name="TMethod">A function of as many doubles as the equation has inputs.</typeparam>
internal sealed class Equation<TMethod> : Equation
    where TMethod : Delegate
{
    private readonly Func<double[], double> _invoke;

    internal Equation(
        TMethod method, Func<double[], double> invoke, string id, Symbol result, string text, string source, Symbol[] inputs, string? where)
        : base(id, result, text, source, inputs)
    {
        Method = method;
        _invoke = invoke;
        Where = where;
    }

    /// <summary>The method: SI doubles in, SI double out, no checks.</summary>
    public TMethod Method { get; }

    internal override double Invoke(double[] values) => _invoke(values);
}
