namespace Fastening.Equations;

/// <summary>A parsed equation text: numbers, symbols, operators, functions.</summary>
internal abstract class Expression
{
    public abstract double Evaluate(Func<string, double> valueOf);

    internal sealed class Number(double value, string text) : Expression
    {
        public string Text { get; } = text;

        public override double Evaluate(Func<string, double> valueOf) => value;
    }

    internal sealed class Variable(string name) : Expression
    {
        public string Name { get; } = name;

        public override double Evaluate(Func<string, double> valueOf) => Name == "pi" ? Math.PI : valueOf(Name);
    }

    internal sealed class Negation(Expression operand) : Expression
    {
        public Expression Operand { get; } = operand;

        public override double Evaluate(Func<string, double> valueOf) => -Operand.Evaluate(valueOf);
    }

    internal sealed class Binary(char sign, Expression left, Expression right) : Expression
    {
        public char Sign { get; } = sign;
        public Expression Left { get; } = left;
        public Expression Right { get; } = right;

        public override double Evaluate(Func<string, double> valueOf)
        {
            double l = Left.Evaluate(valueOf);
            double r = Right.Evaluate(valueOf);
            return Sign switch
            {
                '+' => l + r,
                '-' => l - r,
                '*' => l * r,
                '/' => l / r,
                _ => Math.Pow(l, r),
            };
        }
    }

    internal sealed class Call(string function, IReadOnlyList<Expression> arguments) : Expression
    {
        public string Function { get; } = function;
        public IReadOnlyList<Expression> Arguments { get; } = arguments;

        public override double Evaluate(Func<string, double> valueOf)
        {
            double x = Arguments[0].Evaluate(valueOf);
            return Function switch
            {
                "sin" => Math.Sin(x),
                "cos" => Math.Cos(x),
                "tan" => Math.Tan(x),
                "atan" => Math.Atan(x),
                "sqrt" => Math.Sqrt(x),
                "ln" => Math.Log(x),
                "exp" => Math.Exp(x),
                "min" => Math.Min(x, Arguments[1].Evaluate(valueOf)),
                _ => Math.Max(x, Arguments[1].Evaluate(valueOf)),
            };
        }
    }
}
