namespace Fastening.Equations;

/// <summary>Computed state of an object: kept from its first use; while a derivation listens, computed once more for that derivation, with the work written down.</summary>
internal static class Derived
{
    public static T Of<T>(ref T? kept, IDerives<T> owner)
        where T : class => Recording.IsAnywhere && Recording.Current is Recording recording ? recording.StateOf(owner) : kept ??= owner.Derive();
}
