using System.Globalization;
using UnitsNet;

namespace Fastening.Tests.Answers;

/// <summary>Every answer of one key, folded into two hashes: of the bits, and of nine digits.</summary>
internal sealed class Fold
{
    private const ulong Start = 14695981039346656037;
    private const ulong Prime = 1099511628211;

    private ulong _exact = Start;
    private ulong _rounded = Start;

    public int Answered { get; private set; }

    public int Refused { get; private set; }

    public string Exact => Short(_exact);

    public string Rounded => Short(_rounded);

    public void Refuse(int draw, Exception refusal)
    {
        Refused++;
        Both($"{draw} refused {refusal.GetType().Name}");
    }

    /// <summary>A number, a quantity with its unit, a truth, a choice, a date, or what there is none of.</summary>
    public void Answer(int draw, object? leaf)
    {
        Answered++;
        switch (leaf)
        {
            case double number:
                Number($"{draw}", number);
                return;
            case IQuantity quantity:
                Number($"{draw} {quantity.Unit}", (double)quantity.Value);
                return;
            default:
                Both($"{draw} {Text(leaf)}");
                return;
        }
    }

    private static string Text(object? leaf) => leaf switch
    {
        null => "none",
        DateTimeOffset date => date.ToString("O", CultureInfo.InvariantCulture),
        IFormattable formattable => formattable.ToString(null, CultureInfo.InvariantCulture),
        _ => leaf.ToString()!,
    };

    private void Number(string where, double number)
    {
        _exact = Add(_exact, $"{where} {BitConverter.DoubleToInt64Bits(number):x16}");
        _rounded = Add(_rounded, $"{where} {(number == 0 ? 0 : number).ToString("E8", CultureInfo.InvariantCulture)}");
    }

    private void Both(string text)
    {
        _exact = Add(_exact, text);
        _rounded = Add(_rounded, text);
    }

    private static ulong Add(ulong hash, string text)
    {
        foreach (char letter in text) hash = unchecked((hash ^ letter) * Prime);
        return unchecked((hash ^ '\n') * Prime);
    }

    private static string Short(ulong hash) => ((uint)(hash ^ (hash >> 32))).ToString("x8", CultureInfo.InvariantCulture);
}
