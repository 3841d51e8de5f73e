using Fastening.Equations;

namespace Fastening.Tests.Equations;

/// <summary>The text of an equation in <see cref="BigReal"/>.</summary>
internal static class BigEvaluation
{
    private const int Step = -90;

    public static BigReal Of(Equation equation, BigReal[] inputs)
    {
        var values = new Dictionary<string, BigReal>(StringComparer.Ordinal) { ["pi"] = BigReal.Pi };
        for (int i = 0; i < inputs.Length; i++) values[equation.Inputs[i].Name] = inputs[i];
        return Evaluate(equation.Expression, values);
    }

    /// <summary>Σ |x ∂f/∂x|: what a relative change of each input by one does to the result, in first order.</summary>
    public static double Condition(Equation equation, BigReal[] inputs, BigReal result)
    {
        double sum = 0;
        for (int i = 0; i < inputs.Length; i++)
        {
            BigReal[] moved = [.. inputs];
            moved[i] += BigReal.Scale(moved[i], Step);
            sum += Math.Abs(BigReal.Scale(Of(equation, moved) - result, -Step).ToDouble());
        }

        return sum;
    }

    private static BigReal Evaluate(Expression expression, Dictionary<string, BigReal> values) => expression switch
    {
        Expression.Number number => BigReal.FromDecimal(number.Text),
        Expression.Variable variable => values[variable.Name],
        Expression.Negation negation => -Evaluate(negation.Operand, values),
        Expression.Binary binary => Combine(binary.Sign, Evaluate(binary.Left, values), Evaluate(binary.Right, values)),
        Expression.Call call => Call(call.Function, Evaluate(call.Arguments[0], values), call.Arguments.Count > 1 ? Evaluate(call.Arguments[1], values) : default),
        _ => throw new NotSupportedException(expression.GetType().Name),
    };

    private static BigReal Combine(char sign, BigReal a, BigReal b) => sign switch
    {
        '+' => a + b,
        '-' => a - b,
        '*' => a * b,
        '/' => a / b,
        '^' => BigReal.Power(a, b),
        _ => throw new NotSupportedException(sign.ToString()),
    };

    private static BigReal Call(string function, BigReal x, BigReal y) => function switch
    {
        "sin" => BigReal.SineCosine(x).Sine,
        "cos" => BigReal.SineCosine(x).Cosine,
        "tan" => Tangent(x),
        "atan" => BigReal.ArcTangent(x),
        "sqrt" => BigReal.Sqrt(x),
        "ln" => BigReal.Ln(x),
        "exp" => BigReal.Exp(x),
        "min" => x.CompareTo(y) < 0 ? x : y,
        "max" => x.CompareTo(y) > 0 ? x : y,
        _ => throw new NotSupportedException(function),
    };

    private static BigReal Tangent(BigReal x)
    {
        (BigReal sine, BigReal cosine) = BigReal.SineCosine(x);
        return sine / cosine;
    }
}
