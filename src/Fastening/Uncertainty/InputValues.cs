namespace Fastening.Quality;

/// <summary>The values of the inputs of a measurement at one evaluation of its function, by name or by their order in the budget.</summary>
/// <remarks>Valid during the call of the function only; the memory behind it is used again.</remarks>
/// <example><code>UncertaintyBudget.Of("F", "kN", x => x["M"] / x["κ"],
///     UncertaintyContribution.Normal("M", 150, 3), UncertaintyContribution.Rectangular("κ", 2.6, 0.4));</code></example>
public readonly struct InputValues
{
    private readonly double[] _values;
    private readonly string[] _names;
    private readonly int _offset;
    private readonly int _stride;

    internal InputValues(double[] values, string[] names, int offset = 0, int stride = 1)
    {
        _values = values;
        _names = names;
        _offset = offset;
        _stride = stride;
    }

    /// <summary>Number of inputs.</summary>
    public int Count => _names?.Length ?? 0;

    /// <summary>The value of the input at a place in the budget.</summary>
    /// <param name="index">Place, from 0.</param>
    /// <returns>The value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such place.</exception>
    public double this[int index] => _names is not null && (uint)index < (uint)_names.Length
        ? _values[_offset + index * _stride]
        : throw new ArgumentOutOfRangeException(nameof(index), $"index is {index}; it must be at least 0 and less than {Count}.");

    /// <summary>The value of an input by its name.</summary>
    /// <param name="name">The name, as in the budget.</param>
    /// <returns>The value.</returns>
    /// <exception cref="ArgumentException">No input has this name.</exception>
    public double this[string name]
    {
        get
        {
            int count = Count;

            // The names of a function written beside its inputs are the same string objects: one comparison of references each.
            for (int i = 0; i < count; i++)
            {
                if (ReferenceEquals(_names[i], name)) return _values[_offset + i * _stride];
            }

            int index = count == 0 ? -1 : Array.IndexOf(_names, name);
            return index >= 0
                ? _values[_offset + index * _stride]
                : throw new ArgumentException($"no input is called {name}; there are {string.Join(", ", _names ?? [])}.", nameof(name));
        }
    }
}
