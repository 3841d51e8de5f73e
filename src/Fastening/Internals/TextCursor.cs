namespace Fastening.Internals;

/// <summary>Reads short technical notation from left to right without allocating; a copy of it is a place to return to.</summary>
internal ref struct TextCursor(ReadOnlySpan<char> text)
{
    /// <summary>Numbers are kept exact, as whole millionths.</summary>
    public const long Million = 1_000_000;

    private const int GreatestCountOfDigits = 6;

    private ReadOnlySpan<char> _rest = text;

    public readonly bool AtEnd => _rest.IsEmpty;

    public readonly char Next => _rest.IsEmpty ? '\0' : _rest[0];

    public bool TrySpaces()
    {
        int count = 0;
        while (count < _rest.Length && IsSpace(_rest[count])) count++;
        _rest = _rest.Slice(count);
        return count > 0;
    }

    public bool Try(char expected)
    {
        if (Next != expected || AtEnd) return false;
        _rest = _rest.Slice(1);
        return true;
    }

    /// <summary>The hyphen of the keyboard, or one of those that word processors put in its place.</summary>
    public bool TryHyphen() => Try('-') || Try('\u2010') || Try('\u2011') || Try('\u2013');

    /// <summary>The sign between two dimensions.</summary>
    public bool TryTimes() => Try('x') || Try('X') || Try('×');

    /// <summary>Spaces, a hyphen, or a hyphen among spaces.</summary>
    public bool TrySeparator()
    {
        bool spaces = TrySpaces();
        bool hyphen = TryHyphen();
        TrySpaces();
        return spaces || hyphen;
    }

    /// <summary>A word in either case.</summary>
    public bool TryWord(string word)
    {
        if (!_rest.StartsWith(word.AsSpan(), StringComparison.OrdinalIgnoreCase)) return false;
        _rest = _rest.Slice(word.Length);
        return true;
    }

    /// <summary>A whole number of at most six digits.</summary>
    public bool TryWhole(out long number)
    {
        int count = 0;
        for (number = 0; count < _rest.Length && IsDigit(_rest[count]); count++)
        {
            if (count >= GreatestCountOfDigits) return false;
            number = 10 * number + (_rest[count] - '0');
        }

        _rest = _rest.Slice(count);
        return count > 0;
    }

    /// <summary>A decimal number, as whole millionths; digits beyond the sixth decimal must be zeros.</summary>
    public bool TryDecimal(out long millionths)
    {
        bool hasWhole = TryWhole(out millionths);
        millionths *= Million;
        if (!Try('.')) return hasWhole;

        int count = 0;
        for (long weight = Million / 10; count < _rest.Length && IsDigit(_rest[count]); count++, weight /= 10)
        {
            if (weight == 0 && _rest[count] != '0') return false;
            millionths += weight * (_rest[count] - '0');
        }

        _rest = _rest.Slice(count);
        return count > 0;
    }

    private static bool IsDigit(char c) => c is >= '0' and <= '9';

    private static bool IsSpace(char c) => c is ' ' or '\t' or '\u00A0' or '\u2009' or '\u202F';
}
