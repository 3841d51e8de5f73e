using System.Globalization;

namespace Fastening.Equations;

/// <summary>
/// Recursive descent over the small language of equation texts. Precedence, rising: <c>+ -</c>, <c>* /</c>, unary minus, <c>^</c>.
/// The texts are ours, so a mistake in one is a bug and says where it stands.
/// </summary>
internal sealed class ExpressionParser
{
    private static readonly Dictionary<string, int> Functions = new()
    {
        ["sin"] = 1,
        ["cos"] = 1,
        ["tan"] = 1,
        ["atan"] = 1,
        ["sqrt"] = 1,
        ["ln"] = 1,
        ["exp"] = 1,
        ["min"] = 2,
        ["max"] = 2,
    };

    private readonly string _text;
    private int _position;

    private ExpressionParser(string text) => _text = text;

    public static Expression Parse(string text)
    {
        var parser = new ExpressionParser(text);
        Expression result = parser.Sum();
        parser.SkipSpaces();
        return parser._position == text.Length ? result : throw parser.Unexpected("the end");
    }

    private Expression Sum()
    {
        Expression left = Product();
        while (TryTake('+', '-', out char sign)) left = new Expression.Binary(sign, left, Product());
        return left;
    }

    private Expression Product()
    {
        Expression left = Signed();
        while (TryTake('*', '/', out char sign)) left = new Expression.Binary(sign, left, Signed());
        return left;
    }

    private Expression Signed() => TryTake('-', '-', out _) ? new Expression.Negation(Signed()) : Power();

    private Expression Power()
    {
        Expression left = Atom();
        return TryTake('^', '^', out char sign) ? new Expression.Binary(sign, left, Signed()) : left;
    }

    private Expression Atom()
    {
        SkipSpaces();
        if (TryTake('(', '(', out _))
        {
            Expression inner = Sum();
            Expect(')');
            return inner;
        }

        int start = _position;
        if (_position < _text.Length && char.IsLetter(_text[_position]))
        {
            while (_position < _text.Length && (char.IsLetterOrDigit(_text[_position]) || _text[_position] == '_')) _position++;
            string name = _text.Substring(start, _position - start);
            return Functions.TryGetValue(name, out int arity) ? Call(name, arity) : new Expression.Variable(name);
        }

        while (_position < _text.Length && (char.IsDigit(_text[_position]) || _text[_position] == '.')) _position++;
        string number = _text.Substring(start, _position - start);
        return double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value)
            ? new Expression.Number(value, number)
            : throw Unexpected("a number, a symbol or '('");
    }

    private Expression.Call Call(string name, int arity)
    {
        Expect('(');
        var arguments = new List<Expression> { Sum() };
        while (arguments.Count < arity)
        {
            Expect(',');
            arguments.Add(Sum());
        }

        Expect(')');
        return new Expression.Call(name, arguments);
    }

    private bool TryTake(char first, char second, out char taken)
    {
        SkipSpaces();
        taken = _position < _text.Length ? _text[_position] : '\0';
        bool found = taken == first || taken == second;
        if (found) _position++;
        return found;
    }

    private void Expect(char sign)
    {
        if (!TryTake(sign, sign, out _)) throw Unexpected($"'{sign}'");
    }

    private void SkipSpaces()
    {
        while (_position < _text.Length && _text[_position] == ' ') _position++;
    }

    private FormatException Unexpected(string wanted) =>
        new($"Equation text '{_text}': expected {wanted} at character {_position + 1}.");
}
