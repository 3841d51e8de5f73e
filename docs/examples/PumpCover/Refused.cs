namespace PumpCover;

/// <summary>Turns a refusal of the library into the words of the file that the user wrote.</summary>
internal static class Refused
{
    private const string Requirement = "; it must be ";

    public static string? Parameter(Exception refusal) => (refusal as ArgumentException)?.ParamName;

    /// <summary>What the library permits, or all that it says when it does not hold a value against a limit.</summary>
    public static string Because(Exception refusal)
    {
        string sentence = Sentence(refusal);
        int requirement = sentence.IndexOf(Requirement, StringComparison.Ordinal);
        return requirement < 0 ? sentence : sentence[(requirement + 2)..];
    }

    /// <summary>The whole sentence, with the name that the user knows in place of the parameter.</summary>
    public static string Naming(string name, Exception refusal)
    {
        string sentence = Sentence(refusal), opening = $"{Parameter(refusal)} is ";
        return sentence.StartsWith(opening, StringComparison.Ordinal) ? $"{name} is {sentence[opening.Length..]}" : $"{name}: {sentence}";
    }

    public static string Sentence(Exception refusal)
    {
        string text = refusal.Message;
        return (Parameter(refusal) is string name ? text.Replace($" (Parameter '{name}')", "") : text).TrimEnd('.');
    }
}
