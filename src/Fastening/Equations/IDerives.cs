namespace Fastening.Equations;

/// <summary>An object that computes something of its own once, from what was stated to it, and computes it again for a derivation.</summary>
/// <typeparam name="T">What it computes: a class of terms.</typeparam>
internal interface IDerives<out T>
    where T : class
{
    /// <summary>Computes from fields that never change and from the computed state of other objects, and refuses nothing.</summary>
    T Derive();
}
