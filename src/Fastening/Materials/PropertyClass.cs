using System.Diagnostics.CodeAnalysis;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A property class of steel bolts, screws and studs after ISO 898-1:2013, Table 3.</summary>
/// <remarks>M1.6 to M39. Class 8.8 is stronger above 16 mm; class 9.8 ends at 16 mm.</remarks>
/// <example><code>PropertyClass.Parse("8.8").StrengthFor(ScrewThread.Parse("M16")).ProofLoadStress.Megapascals   // 580</code></example>
public sealed class PropertyClass
{
    private const double LeastDiameter = 1.6e-3, ChangeDiameter = 16e-3, GreatestDiameter = 39e-3;

    private static readonly PropertyClass[] Table =
    [
        new("4.6", Strength(400, 240, 225)),
        new("4.8", Strength(420, 340, 310)),
        new("5.6", Strength(500, 300, 280)),
        new("5.8", Strength(520, 420, 380)),
        new("6.8", Strength(600, 480, 440)),
        new("8.8", Strength(800, 640, 580), Strength(830, 660, 600)),
        new("9.8", Strength(900, 720, 650), null),
        new("10.9", Strength(1040, 940, 830)),
        new("12.9", Strength(1220, 1100, 970)),
    ];

    private readonly BoltStrength _small;
    private readonly BoltStrength? _large;

    private PropertyClass(string designation, BoltStrength every)
        : this(designation, every, every)
    {
    }

    private PropertyClass(string designation, BoltStrength small, BoltStrength? large)
    {
        Designation = designation;
        _small = small;
        _large = large;
    }

    /// <summary>Every class of the table, weakest first.</summary>
    public static IReadOnlyList<PropertyClass> All { get; } = Array.AsReadOnly(Table);

    /// <summary>The designation: <c>8.8</c>.</summary>
    public string Designation { get; }

    /// <summary>Reads a designation such as <c>8.8</c> or <c>10.9</c>.</summary>
    /// <param name="designation">The designation with a decimal point.</param>
    /// <returns>The class.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="designation"/> is null.</exception>
    /// <exception cref="FormatException">No class of ISO 898-1 has this designation; the message lists them.</exception>
    public static PropertyClass Parse(string designation) => TryParse(Guard.NotNull(designation), out PropertyClass? found)
        ? found
        : throw new FormatException(
            $"{Quoted.Text(designation)} is not a property class of ISO 898-1; the classes are {string.Join(", ", Array.ConvertAll(Table, c => c.Designation))}.");

    /// <summary>Reads a designation without an exception.</summary>
    /// <param name="designation">The text; null is not a designation.</param>
    /// <param name="propertyClass">The class, or null.</param>
    /// <returns>Whether ISO 898-1 has the class.</returns>
    public static bool TryParse(string? designation, [NotNullWhen(true)] out PropertyClass? propertyClass)
    {
        string? trimmed = designation?.Trim();
        propertyClass = Array.Find(Table, c => c.Designation == trimmed);
        return propertyClass is not null;
    }

    /// <summary>The minimum strength for a thread of this class.</summary>
    /// <param name="thread">An ISO metric thread, M1.6 to M39 (to M16 for class 9.8).</param>
    /// <returns>Tensile strength, yield strength and proof stress.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentException">ISO 898-1 does not cover the thread.</exception>
    public BoltStrength StrengthFor(ScrewThread thread)
    {
        Guard.NotNull(thread);
        double greatest = (_large is null ? ChangeDiameter : GreatestDiameter) * (1 + 1e-12);
        if (thread.Profile != ThreadProfile.IsoMetric || thread.Diameter < LeastDiameter * (1 - 1e-12) || thread.Diameter > greatest)
        {
            throw new ArgumentException(
                $"ISO 898-1 class {Designation} covers ISO metric threads from M1.6 to {(_large is null ? "M16" : "M39")}, not {thread}; give a BoltStrength of your own.",
                nameof(thread));
        }

        return thread.Diameter <= ChangeDiameter * (1 + 1e-12) ? _small : _large!;
    }

    /// <inheritdoc />
    public override string ToString() => Designation;

    private static BoltStrength Strength(double tensile, double yield, double proof) =>
        new(Pressure.FromMegapascals(tensile), Pressure.FromMegapascals(yield), Pressure.FromMegapascals(proof));
}
