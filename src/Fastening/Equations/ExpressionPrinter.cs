using System.Text;

namespace Fastening.Equations;

/// <summary>Prints an expression on one line, or as LaTeX; the caller says how a symbol is written (its letter, or its value).</summary>
internal static class ExpressionPrinter
{
    private const int SumLevel = 1, ProductLevel = 2, SignLevel = 3, PowerLevel = 4, AtomLevel = 5;

    public static string Line(Expression expression, Func<string, string> symbol)
    {
        var text = new StringBuilder();
        WriteLine(text, expression, symbol, SumLevel);
        return text.ToString();
    }

    public static string Latex(Expression expression, Func<string, string> symbol)
    {
        var text = new StringBuilder();
        WriteLatex(text, expression, symbol, SumLevel);
        return text.ToString();
    }

    private static int LevelOf(Expression expression) => expression switch
    {
        Expression.Binary { Sign: '+' or '-' } => SumLevel,
        Expression.Binary { Sign: '*' or '/' } => ProductLevel,
        Expression.Negation => SignLevel,
        Expression.Binary => PowerLevel,
        _ => AtomLevel,
    };

    private static void WriteLine(StringBuilder text, Expression expression, Func<string, string> symbol, int needed)
    {
        bool brackets = LevelOf(expression) < needed;
        if (brackets) text.Append('(');
        switch (expression)
        {
            case Expression.Number number:
                text.Append(number.Text);
                break;
            case Expression.Variable variable:
                text.Append(WithBracketsIfNeeded(symbol(variable.Name), needed));
                break;
            case Expression.Negation negation:
                text.Append('−');
                WriteLine(text, negation.Operand, symbol, SignLevel);
                break;
            case Expression.Call { Function: "sqrt", Arguments: [Expression.Number whole] }:
                text.Append('√').Append(whole.Text);
                break;
            case Expression.Call call:
                text.Append(call.Function == "sqrt" ? "√" : call.Function).Append('(');
                WriteArguments(text, call, symbol, WriteLine);
                text.Append(')');
                break;
            case Expression.Binary binary:
                int level = LevelOf(binary);
                WriteLine(text, binary.Left, symbol, binary.Sign == '^' ? AtomLevel : level);
                text.Append(binary.Sign switch { '+' => " + ", '-' => " − ", '*' => "·", '/' => "/", _ => "^" });
                WriteLine(text, binary.Right, symbol, binary.Sign == '/' ? PowerLevel : level + 1);
                break;
        }

        if (brackets) text.Append(')');
    }

    private static void WriteLatex(StringBuilder text, Expression expression, Func<string, string> symbol, int needed)
    {
        bool fraction = expression is Expression.Binary { Sign: '/' };
        bool brackets = fraction ? needed > AtomLevel : LevelOf(expression) < needed;
        if (brackets) text.Append(@"\left(");
        switch (expression)
        {
            case Expression.Number number:
                text.Append(number.Text);
                break;
            case Expression.Variable variable:
                text.Append(WithBracketsIfNeeded(symbol(variable.Name), needed));
                break;
            case Expression.Negation negation:
                text.Append('-');
                WriteLatex(text, negation.Operand, symbol, SignLevel);
                break;
            case Expression.Call { Function: "sqrt" } root:
                text.Append(@"\sqrt{");
                WriteLatex(text, root.Arguments[0], symbol, SumLevel);
                text.Append('}');
                break;
            case Expression.Call call:
                text.Append(call.Function == "atan" ? @"\arctan" : "\\" + call.Function).Append(@"\left(");
                WriteArguments(text, call, symbol, WriteLatex);
                text.Append(@"\right)");
                break;
            case Expression.Binary binary:
                WriteLatexBinary(text, binary, symbol);
                break;
        }

        if (brackets) text.Append(@"\right)");
    }

    private static void WriteLatexBinary(StringBuilder text, Expression.Binary binary, Func<string, string> symbol)
    {
        int level = LevelOf(binary);
        switch (binary.Sign)
        {
            case '/':
                text.Append(@"\frac{");
                WriteLatex(text, binary.Left, symbol, SumLevel);
                text.Append("}{");
                WriteLatex(text, binary.Right, symbol, SumLevel);
                text.Append('}');
                break;
            case '^':
                WriteLatex(text, binary.Left, symbol, binary.Left is Expression.Binary ? AtomLevel + 1 : AtomLevel);
                text.Append("^{");
                WriteLatex(text, binary.Right, symbol, SumLevel);
                text.Append('}');
                break;
            default:
                WriteLatex(text, binary.Left, symbol, level);
                text.Append(binary.Sign switch { '+' => " + ", '-' => " - ", _ => @" \cdot " });
                WriteLatex(text, binary.Right, symbol, level + 1);
                break;
        }
    }

    private static void WriteArguments(
        StringBuilder text, Expression.Call call, Func<string, string> symbol, Action<StringBuilder, Expression, Func<string, string>, int> write)
    {
        for (int i = 0; i < call.Arguments.Count; i++)
        {
            if (i > 0) text.Append(", ");
            write(text, call.Arguments[i], symbol, SumLevel);
        }
    }

    /// <summary>A substituted value with a sign or a unit needs brackets where a bare letter does not: (−2 mm)^2, 3 mm − (−2 mm).</summary>
    private static string WithBracketsIfNeeded(string written, int needed) =>
        (needed > SumLevel && written.Length > 0 && written[0] is '-' or '−') || (needed >= PowerLevel && written.Contains('/'))
            || (needed >= AtomLevel && (written.Contains(' ') || written.Contains("\\,")))
            ? "(" + written + ")"
            : written;
}
