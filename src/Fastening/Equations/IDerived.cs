namespace Fastening.Equations;

/// <summary>A result of several values: the one on which its derivation ends.</summary>
internal interface IDerived
{
    Term Answer { get; }
}
