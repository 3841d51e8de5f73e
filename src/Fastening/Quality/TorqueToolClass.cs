using System.Diagnostics.CodeAnalysis;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A class of torque tools with its maximum permissible deviation and the readings that a calibration takes: one of ISO 6789-1:2017 for hand tools, or one stated.</summary>
/// <remarks>
/// The classes of the standard are provisional: the table was recalled and not read (<see cref="Provenance"/>). Type I tools indicate, type II tools
/// are set and signal. Read the standard and the maker's instructions before a tool is passed by these numbers. Where a maker, a plant or a contract
/// sets its own, and for powered and hydraulic tools, which ISO 6789 does not cover, the class is <see cref="Stated"/>.
/// </remarks>
/// <example><code>TorqueToolClass click = TorqueToolClass.Parse("II A");
/// Ratio limit = click.PermittedDeviationFor(Torque.FromNewtonMeters(200));      // 4 %</code></example>
public sealed class TorqueToolClass
{
    /// <summary>Up to this maximum torque, in newton-metres, a tool counts as small.</summary>
    private const double SmallMaximum = 10;
    private const int Longest = 16;
    private const double MiddlePoint = 0.6;

    private static readonly Domain<Ratio> StatedDeviation = new(1e-4, 0.5);
    private static readonly Interval StatedReadings = new(2, 1000);

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
        Shares = row["points"] == "set" ? [] : [0, MiddlePoint, 1];
        HasScale = row["has_scale"] == "yes";
        Provenance = new Provenance("ISO 6789-1:2017", row["confidence"]);
        Citation = " (ISO 6789-1:2017, provisional)";
    }

    private TorqueToolClass(string designation, string description, double permitted, int readings, bool hasScale, double[] shares)
    {
        Designation = designation;
        Description = description;
        _permitted = permitted;
        _permittedOfSmall = permitted;
        ReadingsPerPoint = readings;
        Shares = shares;
        HasScale = hasScale;
        Provenance = new Provenance("stated");
        Citation = "";
    }

    /// <summary>Every class of ISO 6789-1, type I first.</summary>
    public static IReadOnlyList<TorqueToolClass> All { get; } = Array.AsReadOnly(Table);

    /// <summary>Type and class, <c>II A</c>, or the name of a stated class.</summary>
    public string Designation { get; }

    /// <summary>What kind of tool it is.</summary>
    public string Description { get; }

    /// <summary>Readings that a calibration takes at each point.</summary>
    public int ReadingsPerPoint { get; }

    /// <summary>Whether the tool is calibrated at the one value it is set to; otherwise at its <see cref="Points"/>.</summary>
    public bool IsSetToOneValue => Shares.Length == 0;

    /// <summary>
    /// Where a calibration takes readings, in shares of the tool's maximum; a share below the tool's lowest value means that value. The classes of ISO
    /// 6789-1 have 0 (the lowest value), 60 and 100 % (from memory). None when the tool is calibrated at the one value it is set to.
    /// </summary>
    public IReadOnlyList<Ratio> Points => Array.AsReadOnly(Array.ConvertAll(Shares, Si.Ratio));

    /// <summary>Whether the user reads or sets a scale or display, so that its resolution counts.</summary>
    public bool HasScale { get; }

    /// <summary>Where the numbers come from: the standard, from memory, or <c>stated</c> by the caller.</summary>
    public Provenance Provenance { get; }

    internal double[] Shares { get; }

    /// <summary>The end of a sentence that requires a point or a reading by the rules of the class.</summary>
    internal string Citation { get; }

    /// <summary>A class that somebody answers for: a maker's or a plant's own limit, or that of a powered or hydraulic tool.</summary>
    /// <remarks>
    /// Every number comes from the maker's data sheet, the plant's instruction or the contract; nothing is assumed. The requirement of ISO 6789-2:2017 §4.3 on the
    /// reference device, at most a quarter of the permitted deviation, counts for stated classes too. <see cref="Parse"/> does not find them.
    /// </remarks>
    /// <param name="designation">What it is called; not the name of a class of ISO 6789-1.</param>
    /// <param name="description">What kind of tool it is, and whose numbers these are.</param>
    /// <param name="permittedDeviation">Maximum permissible deviation, either way, of tools of every size; 0.01 to 50 %.</param>
    /// <param name="readingsPerPoint">Readings that a calibration takes at each point, 2 to 1000.</param>
    /// <param name="hasScale">Whether the user reads or sets a scale or display, so that its resolution counts.</param>
    /// <param name="points">Where readings are taken, in shares of the tool's maximum, 0 to 100 %, rising; a share below the tool's lowest value means that value. None for tools that are calibrated at the one value they are set to.</param>
    /// <returns>The class.</returns>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException">A text is empty, the designation is one of ISO 6789-1, or a point is not above the one before.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>var hydraulic = TorqueToolClass.Stated(
    ///     "HY", "hydraulic wrench, data sheet of its maker", permittedDeviation: Ratio.FromPercent(3), readingsPerPoint: 3, hasScale: true,
    ///     points: [Ratio.FromPercent(20), Ratio.FromPercent(60), Ratio.FromPercent(100)]);</code></example>
    public static TorqueToolClass Stated(
        string designation, string description, Ratio permittedDeviation, int readingsPerPoint, bool hasScale, IReadOnlyList<Ratio> points)
    {
        if (TryParse(Naming.Check(designation), out _))
        {
            throw new ArgumentException(
                $"designation is {Quoted.Text(designation)}, a class of ISO 6789-1; a stated class has a name of its own.", nameof(designation));
        }

        Naming.Check(description);
        double permitted = StatedDeviation.Check(permittedDeviation);
        StatedReadings.Check((double)readingsPerPoint, name: nameof(readingsPerPoint));
        return new TorqueToolClass(designation, description, permitted, readingsPerPoint, hasScale, CheckPoints(points));
    }

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
    public Ratio PermittedDeviationFor(Torque maximum) => Si.Ratio(Permitted(Domains.PositiveTorque.Check(maximum)));

    /// <inheritdoc />
    public override string ToString() => $"{Designation}, {Description}";

    internal double Permitted(double maximum) => maximum <= SmallMaximum ? _permittedOfSmall : _permitted;

    private static double[] CheckPoints(IReadOnlyList<Ratio> points)
    {
        double[] shares = new double[Guard.NotNull(points).Count];
        for (int i = 0; i < shares.Length; i++)
        {
            shares[i] = Domains.Share.Check(points[i], $"points[{i}]");
            if (i > 0 && shares[i] <= shares[i - 1])
            {
                throw new ArgumentException(
                    $"points[{i}] is {Guard.Show(points[i])}; it must be more than the point before it, {Guard.Show(points[i - 1])}.", nameof(points));
            }
        }

        return shares;
    }

    private static string Plain(string designation) => designation.Replace(" ", "");
}
