using System.Runtime.CompilerServices;
using Fastening.Equations;
using UnitsNet;

namespace Fastening.Internals;

/// <summary>What an object keeps of a quantity that was stated to it: as entered, its value, its name, and the answer that it was when it was stated inside a derivation.</summary>
internal readonly struct Stated<T>
    where T : struct, IQuantity
{
    // A string or an EarlierAnswer. One reference for both: a struct with more than three words beside its reference is copied by a slow instruction.
    private readonly object _name;

    internal Stated(T entered, double value, string name)
    {
        AsStated = entered;
        Value = value;
        _name = Recording.IsAnywhere ? NameOrAnswer(name, value) : name;
    }

    /// <summary>As the user wrote it; of a table, in the unit of the trade.</summary>
    public T AsStated { get; }

    /// <summary>In the unit of <see cref="Si"/>.</summary>
    public double Value { get; }

    /// <summary>In the SI unit of symbols (radians for an angle), with its origin.</summary>
    public Term Term => Recording.IsAnywhere ? Written(Name) : new Term(Si.ForSymbols<T>(Value), 0);

    /// <summary>A value of a table or of our own making, in the unit of <see cref="Si"/>.</summary>
    public static Stated<T> Of(double value, string name) => new(Si.InShopUnit<T>(value), value, name);

    /// <summary>The term of one of several of a kind, or of a named object: <c>thickness of layer 2</c>. The name is put together only while a derivation listens.</summary>
    public Term TermOf(string owner) => Recording.IsOn ? Written(Name + " of " + owner) : new Term(Si.ForSymbols<T>(Value), 0);

    private Term Written(string name)
    {
        double value = Si.ForSymbols<T>(Value);
        return new Term(value, _name is EarlierAnswer { Origin: long origin } && Recording.Knows(origin) ? origin : Recording.Given(value, AsStated, name));
    }

    private string Name => _name as string ?? ((EarlierAnswer)_name).Name;

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static object NameOrAnswer(string name, double value) =>
        Recording.EarlierAnswer(typeof(T), value) is not 0 and long origin ? new EarlierAnswer(name, origin) : name;
}
