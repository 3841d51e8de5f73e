using System.Diagnostics;
using System.Runtime.CompilerServices;
using Fastening.Equations;
using UnitsNet;

namespace Fastening.Internals;

/// <summary>The values that a quantity may take, in the unit of <see cref="Si"/>: a length cannot meet a domain of forces.</summary>
/// <remarks>A struct on purpose: as a class, a check costs a tenth of a whole call.</remarks>
[StackTraceHidden]
internal readonly struct Domain<T>(double low, double high, bool lowOpen = false, bool highOpen = false)
    where T : struct, IQuantity
{
    private readonly Interval _values = new(low, high, lowOpen, highOpen);

    public double Low => _values.Low;

    public double High => _values.High;

    public bool Contains(double si) => _values.Contains(si);

    /// <summary>The value in the unit of <see cref="Si"/>, or a refusal in the words of the trade.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Check(T value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        double si = Si.ValueOf(value);
        if (!_values.Contains(si)) Guard.RefuseAgainst(name, value, Describe());
        return si;
    }

    /// <summary>The value as an object keeps it.</summary>
    public Stated<T> Stated(T value, [CallerArgumentExpression(nameof(value))] string name = "") => new(value, Check(value, name), name);

    /// <summary>The value as it goes into a call: in the SI unit of symbols (radians for an angle), and, while a derivation listens, given or an earlier answer.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Term Argument(T value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        double si = Check(value, name);
        return Recording.IsAnywhere ? Written(value, si, name) : new Term(Si.ForSymbols<T>(si), 0);
    }

    /// <summary>A share that is nothing or at least a stated percentage: less is a fraction typed for a percentage.</summary>
    public double CheckNoneOrAtLeast(double leastPercent, T value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        double fraction = Check(value, name);
        if (fraction > 0 && fraction < leastPercent / 100)
        {
            Guard.RefuseAgainst(name, value, Print.Text($"0 %, or at least {leastPercent:0.###} %: less looks like a fraction typed for a percentage"));
        }

        return fraction;
    }

    /// <summary>The bounds in words, in the unit of the trade.</summary>
    public string Describe()
    {
        ShopScale shop = ShopScale.Of<T>();
        return _values.Describe(shop.PerSi, shop.Unit);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static Term Written(T value, double si, string name) => new Stated<T>(value, si, name).Term;

    public static implicit operator Interval(Domain<T> domain) => domain._values;
}
