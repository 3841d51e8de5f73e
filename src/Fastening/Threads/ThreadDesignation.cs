namespace Fastening;

/// <summary>Reads thread designations and refuses in words that say what to write.</summary>
internal static class ThreadDesignation
{
    public static ScrewThread? Read(string text, out string? refusal)
    {
        refusal = $"'{text}' is not a thread designation.";
        return null;
    }
}
