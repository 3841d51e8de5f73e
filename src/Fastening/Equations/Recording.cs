using System.Runtime.CompilerServices;
using Fastening.Internals;
using UnitsNet;

namespace Fastening.Equations;

/// <summary>
/// What a derivation hears while it runs a call: the given values, the equations with what went in, and the answers that went out. An entry that
/// is made twice from the same is one entry, and every entry stands after those that it rests on.
/// </summary>
/// <remarks>Outside a derivation a call reads one static integer. Only numbers cross into the static methods, so that a term stays in registers.</remarks>
internal sealed class Recording
{
    private static int _listening;
    private static int _lastSerial;

    [ThreadStatic]
    private static Recording? _current;

    private readonly long _serial = (long)Interlocked.Increment(ref _lastSerial) << 32;
    private readonly Recording? _outer = _current;
    private readonly List<WorkEntry> _entries = [];
    private readonly Dictionary<(Equation, int, int, int, int, int), int> _steps = [];
    private readonly Dictionary<(string Name, long Bits, Enum? Unit), int> _given = [];
    private readonly Dictionary<(Type Quantity, long Bits), long> _answers = [];
    private readonly Dictionary<(object Owner, Type State), object> _states = new(SameOwner.Instance);

    /// <summary>Whether a derivation listens, on this thread or another.</summary>
    public static bool IsAnywhere => _listening != 0;

    /// <summary>Whether a derivation listens on this thread.</summary>
    public static bool IsOn => IsAnywhere && _current is not null;

    /// <summary>The derivation that listens on this thread.</summary>
    public static Recording? Current => _current;

    public IReadOnlyList<WorkEntry> Entries => _entries;

    /// <summary>Runs a call and hears it.</summary>
    public static (T Answer, Recording Heard) Of<T>(Func<T> call)
    {
        var recording = new Recording();
        Interlocked.Increment(ref _listening);
        _current = recording;
        try
        {
            return (call(), recording);
        }
        finally
        {
            _current = recording._outer;
            Interlocked.Decrement(ref _listening);
        }
    }

    /// <summary>A given number. 0 when no derivation listens on this thread.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static long Given(double value, string name) => _current?.Enter((name, BitConverter.DoubleToInt64Bits(value), null), value, null) ?? 0;

    /// <summary>A given quantity, with its value in the SI unit of symbols.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static long Given<T>(double value, T entered, string name)
        where T : struct, IQuantity => _current?.Enter((name, BitConverter.DoubleToInt64Bits(value), entered.Unit), value, entered) ?? 0;

    /// <summary>The origin of an earlier answer of this derivation that equals the value (in the unit of <see cref="Internals.Si"/>), or 0.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static long EarlierAnswer(Type quantity, double value) =>
        _current is Recording recording && recording._answers.TryGetValue((quantity, BitConverter.DoubleToInt64Bits(value)), out long origin) && recording.PlaceOf(origin) >= 0
            ? origin
            : 0;

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static long Step(Equation equation, double result, long a, double aValue) => _current?.Write(equation, result, [a], [aValue]) ?? 0;

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static long Step(Equation equation, double result, long a, double aValue, long b, double bValue) =>
        _current?.Write(equation, result, [a, b], [aValue, bValue]) ?? 0;

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static long Step(Equation equation, double result, long a, double aValue, long b, double bValue, long c, double cValue) =>
        _current?.Write(equation, result, [a, b, c], [aValue, bValue, cValue]) ?? 0;

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static long Step(Equation equation, double result, long a, double aValue, long b, double bValue, long c, double cValue, long d, double dValue) =>
        _current?.Write(equation, result, [a, b, c, d], [aValue, bValue, cValue, dValue]) ?? 0;

    [MethodImpl(MethodImplOptions.NoInlining)]
    public static long Step(
        Equation equation, double result, long a, double aValue, long b, double bValue, long c, double cValue, long d, double dValue, long e, double eValue) =>
        _current?.Write(equation, result, [a, b, c, d, e], [aValue, bValue, cValue, dValue, eValue]) ?? 0;

    /// <summary>An answer that goes out as a quantity or a number: a later argument that equals it is the same value.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Answer(Type quantity, double value, long origin)
    {
        if (_current is Recording recording) recording._answers[(quantity, BitConverter.DoubleToInt64Bits(value))] = origin;
    }

    /// <summary>The term that was written down beside an answer in doubles; they are the same to the last bit.</summary>
    public static Term Agree(double answer, Term written) => BitConverter.DoubleToInt64Bits(answer) == BitConverter.DoubleToInt64Bits(written.Value)
        ? written
        : throw new InvalidOperationException(Print.Text($"The work gives {written.Value:R}, the call {answer:R}."));

    /// <summary>Whether an origin belongs to the derivation that listens here.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static bool Knows(long origin) => _current is null || _current.PlaceOf(origin) >= 0;

    /// <summary>The place of the entry, or -1 for the origin of another derivation and for none.</summary>
    public int PlaceOf(long origin) => (origin & ~0xFFFFFFFFL) == _serial ? (int)(origin & 0xFFFFFFFFL) : -1;

    /// <summary>The place of the entry that an answer came from.</summary>
    public int PlaceOfAnswer(object? answer)
    {
        int place = answer switch
        {
            IDerived result => PlaceOf(result.Answer.Origin),
            IQuantity quantity => PlaceOf(OriginOf(quantity.GetType(), Si.ValueOf(quantity))),
            double number => PlaceOf(OriginOf(typeof(double), number)),
            _ => -1,
        };
        return place >= 0 ? place : throw new InvalidOperationException(
            "Derivation.Of takes a call that ends on an answer of this library. This one ended on arithmetic of its own, on an answer that was made before it, or on one that has no derivation.");
    }

    private long OriginOf(Type type, double value) => _answers.TryGetValue((type, BitConverter.DoubleToInt64Bits(value)), out long origin) ? origin : 0;

    /// <summary>The computed state of an object, computed once for this derivation.</summary>
    public T StateOf<T>(IDerives<T> owner)
        where T : class
    {
        if (_states.TryGetValue((owner, typeof(T)), out object? kept)) return (T)kept;
        T state = owner.Derive();
        _states[(owner, typeof(T))] = state;
        return state;
    }

    private long Enter((string Name, long Bits, Enum? Unit) key, double value, IQuantity? entered)
    {
        if (!_given.TryGetValue(key, out int place))
        {
            _given[key] = place = _entries.Count;
            _entries.Add(new WorkEntry(value, key.Name, entered, null, [], []));
        }

        return _serial | (long)place;
    }

    private long Write(Equation equation, double result, long[] origins, double[] values)
    {
        int[] places = new int[origins.Length];
        for (int i = 0; i < origins.Length; i++)
        {
            places[i] = PlaceOf(origins[i]);
            if (places[i] < 0) throw new LostOriginException(equation.Inputs[i].Name, equation.Id);
        }

        int At(int i) => i < places.Length ? places[i] : -1;
        var key = (equation, At(0), At(1), At(2), At(3), At(4));
        if (!_steps.TryGetValue(key, out int place))
        {
            _steps[key] = place = _entries.Count;
            _entries.Add(new WorkEntry(result, null, null, equation, places, values));
        }

        return _serial | (long)place;
    }

    private sealed class SameOwner : IEqualityComparer<(object Owner, Type State)>
    {
        public static readonly SameOwner Instance = new();

        public bool Equals((object Owner, Type State) x, (object Owner, Type State) y) => ReferenceEquals(x.Owner, y.Owner) && x.State == y.State;

        public int GetHashCode((object Owner, Type State) obj) => RuntimeHelpers.GetHashCode(obj.Owner);
    }
}
