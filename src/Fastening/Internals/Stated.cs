using Fastening.Equations;
using UnitsNet;

namespace Fastening.Internals;

/// <summary>What an object keeps of a quantity that was stated to it: as entered, its value, its name, and the answer that it was when it was stated inside a derivation.</summary>
internal readonly struct Stated<T>
    where T : struct, IQuantity
{
    private readonly string _name;
    private readonly long _origin;

    internal Stated(T entered, double value, string name)
    {
        AsStated = entered;
        Value = value;
        _name = name;
        _origin = Recording.IsAnywhere ? Recording.EarlierAnswer(typeof(T), value) : 0;
    }

    /// <summary>As the user wrote it; of a table, in the unit of the trade.</summary>
    public T AsStated { get; }

    /// <summary>In the unit of <see cref="Si"/>.</summary>
    public double Value { get; }

    /// <summary>In the SI unit of symbols (radians for an angle), with its origin.</summary>
    public Term Term => TermNamed(_name);

    /// <summary>A value of a table or of our own making, in the unit of <see cref="Si"/>.</summary>
    public static Stated<T> Of(double value, string name) => new(Si.InShopUnit<T>(value), value, name);

    /// <summary>The term of one of several of a kind, or of a named object: <c>thickness of layer 2</c>. The name is put together only while a derivation listens.</summary>
    public Term TermOf(string owner) => Recording.IsOn ? TermNamed(_name + " of " + owner) : new Term(Si.ForSymbols<T>(Value), 0);

    private Term TermNamed(string name)
    {
        double value = Si.ForSymbols<T>(Value);
        if (!Recording.IsAnywhere) return new Term(value, 0);
        return new Term(value, _origin != 0 && Recording.Knows(_origin) ? _origin : Recording.Given(value, AsStated, name));
    }
}
