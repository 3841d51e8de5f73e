namespace Fastening;

/// <summary>What to do about a text with a mark in it: anywhere, or at its start and before a number.</summary>
internal readonly record struct NotationHint(string Mark, bool Anywhere, string Hint)
{
    /// <summary>Whether a text in capital letters bears the mark.</summary>
    public bool Fits(string text)
    {
        int place = text.IndexOf(Mark, StringComparison.Ordinal);
        return place >= 0 && (Anywhere || (place == 0 && IsFollowedByNumber(text, Mark.Length)));
    }

    private static bool IsFollowedByNumber(string text, int place)
    {
        while (place < text.Length && text[place] == ' ') place++;
        return place < text.Length && text[place] is >= '0' and <= '9';
    }
}
