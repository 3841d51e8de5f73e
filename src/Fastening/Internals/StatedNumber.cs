using Fastening.Equations;

namespace Fastening.Internals;

/// <summary>What an object keeps of a pure number that was stated to it.</summary>
internal readonly struct StatedNumber
{
    private readonly string _name;
    private readonly long _origin;

    internal StatedNumber(double value, string name)
    {
        Value = value;
        _name = name;
        _origin = Recording.IsAnywhere ? Recording.EarlierAnswer(typeof(double), value) : 0;
    }

    public double Value { get; }

    public Term Term => TermNamed(_name);

    /// <summary>The term of one of several of a kind, or of a named object.</summary>
    public Term TermOf(string owner) => Recording.IsOn ? TermNamed(_name + " of " + owner) : new Term(Value, 0);

    private Term TermNamed(string name)
    {
        if (!Recording.IsAnywhere) return new Term(Value, 0);
        return new Term(Value, _origin != 0 && Recording.Knows(_origin) ? _origin : Recording.Given(Value, name));
    }
}
