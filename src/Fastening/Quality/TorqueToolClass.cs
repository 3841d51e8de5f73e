using System.Diagnostics.CodeAnalysis;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A class of hand torque tools of ISO 6789-1:2017, with its maximum permissible deviation and the readings that a calibration takes.</summary>
/// <remarks>
/// Provisional: the table was recalled and not read (<see cref="Confidence"/>). Type I tools indicate, type II tools are set and signal. Read
/// the standard and the maker's instructions before a tool is passed by these numbers.
/// </remarks>
/// <example><code>TorqueToolClass click = TorqueToolClass.Parse("II A");
/// Ratio limit = click.PermittedDeviationFor(Torque.FromNewtonMeters(200));      // 4 %</code></example>
public sealed class TorqueToolClass
{
    /// <summary>Up to this maximum torque, in newton-metres, a tool counts as small.</summary>
    private const double SmallMaximum = 10;
    private const int Longest = 16;

    private static readonly TorqueToolClass[] Table = [.. DataFile.Read("iso-6789-1-tool-classes.csv").Select(row => new TorqueToolClass(row))];

    private readonly double _permitted;
    private readonly double _permittedOfSmall;

    private TorqueToolClass(DataRow row)
    {
        Designation = $"{row["type"]} {row["class"]}";
        Description = row["description"];
        _permitted = row.Number("permitted_pct") / 100;
        _permittedOfSmall = row.Number("small_pct") / 100;
        ReadingsPerPoint = (int)row.Number("readings");
        IsSetToOneValue = row["points"] == "set";
        HasScale = row["has_scale"] == "yes";
        Confidence = row["confidence"];
    }

    /// <summary>Every class, type I first.</summary>
    public static IReadOnlyList<TorqueToolClass> All { get; } = Array.AsReadOnly(Table);

    /// <summary>Type and class: <c>II A</c>.</summary>
    public string Designation { get; }

    /// <summary>What kind of tool it is.</summary>
    public string Description { get; }

    /// <summary>Readings that a calibration takes at each point.</summary>
    public int ReadingsPerPoint { get; }

    /// <summary>Whether the tool is calibrated at the one value it is set to; otherwise at its lowest value, at 60 % and at 100 % of its maximum.</summary>
    public bool IsSetToOneValue { get; }

    /// <summary>Whether the user reads or sets a scale or display, so that its resolution counts.</summary>
    public bool HasScale { get; }

    /// <summary>How the row came here.</summary>
    public string Confidence { get; }

    /// <summary>Reads a designation such as <c>II A</c> or <c>IIA</c>.</summary>
    /// <param name="designation">Type and class.</param>
    /// <returns>The class.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="designation"/> is null.</exception>
    /// <exception cref="FormatException">There is no such class; the message lists those there are.</exception>
    /// <example><code>TorqueToolClass.Parse("I C").Description</code></example>
    public static TorqueToolClass Parse(string designation) => TryParse(Guard.NotNull(designation), out TorqueToolClass? found)
        ? found
        : throw new FormatException($"{Quoted.Text(designation)} is not a class of ISO 6789-1: {string.Join(", ", All.Select(c => c.Designation))}.");

    /// <summary>Reads a designation as <see cref="Parse"/> does, without an exception.</summary>
    /// <param name="designation">The text; null is not a designation.</param>
    /// <param name="toolClass">The class, or null.</param>
    /// <returns>Whether there is such a class.</returns>
    /// <example><code>if (TorqueToolClass.TryParse("II A", out TorqueToolClass? found)) Console.WriteLine(found.Description);     // adjustable wrench with graduation or display</code></example>
    public static bool TryParse(string? designation, [NotNullWhen(true)] out TorqueToolClass? toolClass)
    {
        toolClass = designation is { Length: <= Longest }
            ? Array.Find(Table, c => Plain(c.Designation).Equals(Plain(designation), StringComparison.OrdinalIgnoreCase))
            : null;
        return toolClass is not null;
    }

    /// <summary>The maximum permissible deviation of a tool, either way.</summary>
    /// <param name="maximum">Greatest torque of the tool.</param>
    /// <returns>The permitted deviation: larger for small tools of some classes.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The torque is outside its domain.</exception>
    /// <example><code>TorqueToolClass.Parse("II A").PermittedDeviationFor(Torque.FromNewtonMeters(8))    // 6 %</code></example>
    public Ratio PermittedDeviationFor(Torque maximum) => Si.Ratio(Permitted(Guard.Check(maximum, Domains.PositiveTorque)));

    /// <inheritdoc />
    public override string ToString() => $"{Designation}, {Description}";

    internal double Permitted(double maximum) => maximum <= SmallMaximum ? _permittedOfSmall : _permitted;

    private static string Plain(string designation) => designation.Replace(" ", "");
}
