namespace Fastening.Tests.Answers;

/// <summary>
/// The record speaks of every type and member by the name it had when it was first written. Who renames one writes the new name here beside the
/// old one, and the record goes on holding the answers. Parameters need no entry: the record holds their first names.
/// </summary>
internal static class FormerNames
{
    /// <summary>New name of a type, generic arguments included (<c>Range&lt;Force&gt;</c>), to its name in the record.</summary>
    private static readonly Dictionary<string, string> Types = new(StringComparer.Ordinal)
    {
    };

    /// <summary>New name of a member (<c>Range&lt;Force&gt;.Low</c>; the type by its new name) to the member's name in the record, without its type.</summary>
    private static readonly Dictionary<string, string> Members = new(StringComparer.Ordinal)
    {
    };

    /// <summary>What the two tables above cannot say (two old types became one): the beginning of a key as the walk writes it, to the beginning in the record.</summary>
    private static readonly (string Now, string Record)[] Keys =
    [
        ("BoltStress.WhileTightening(", "AssemblyStress.At("),
        ("BoltStress.HighestAt(", "AssemblyStress.HighestAt("),
        ("BoltStress.InService(", "WorkingStress.At("),
        ("FrictionTest.Of(", "FrictionTest.CoefficientsFrom("),
    ];

    /// <summary>Keys of the record that are gone for good, by their beginning, each with the reason.</summary>
    public static readonly (string Key, string Because)[] Gone =
    [
        ("AssemblyStress.PermittedPreload(", "now a call of the model, with other random arguments"),
        ("AssemblyStress.PermittedTorque(", "now a call of the range, with other random arguments"),
    ];

    public static string OfType(string name) => Types.GetValueOrDefault(name, name);

    public static string OfMember(string type, string member) => Members.GetValueOrDefault($"{type}.{member}", member);

    public static string OfKey(string key)
    {
        foreach ((string now, string record) in Keys)
        {
            if (key.StartsWith(now, StringComparison.Ordinal)) return record + key[now.Length..];
        }

        return key;
    }
}
