namespace Fastening.Internals;

/// <summary>The name of a stated value that equalled an earlier answer of the derivation in which it was stated, and the origin of that answer.</summary>
internal sealed record class EarlierAnswer(string Name, long Origin);
