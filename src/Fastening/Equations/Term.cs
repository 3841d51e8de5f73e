namespace Fastening.Equations;

/// <summary>A value in the SI unit of its symbol and, while a derivation listens, where it comes from.</summary>
/// <remarks>
/// It holds a number for its origin, not a reference: no results keep the work of a derivation alive. There is no way from a double to a term but
/// by an equation, a stated value or an argument, so that a value cannot lose its origin unseen.
/// </remarks>
internal readonly struct Term
{
    internal Term(double value, long origin)
    {
        Value = value;
        Origin = origin;
    }

    public double Value { get; }

    /// <summary>Serial number of the derivation and place of the entry; 0 when none listens.</summary>
    public long Origin { get; }

    /// <summary>A pure number that was stated, or a constant of a source, under a name.</summary>
    public static Term Given(double value, string name) => new(value, Recording.IsAnywhere ? Recording.Given(value, name) : 0);

    /// <summary>The same for one of several of a kind: <c>share of section 2</c>. The name is put together only while a derivation listens.</summary>
    public static Term Given(double value, string name, string owner) => new(value, Recording.IsAnywhere ? Recording.Given(value, name + " of " + owner) : 0);

    public static Term Max(Term one, Term other) => other.Value > one.Value ? other : one;

    public static Term Min(Term one, Term other) => other.Value < one.Value ? other : one;

    /// <summary>The term itself, or, when it was computed before the derivation began to listen, its value as a given one.</summary>
    public Term OrGiven(string name) => Recording.IsAnywhere && !Recording.Knows(Origin) ? Given(Value, name) : this;
}
