using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A published rotation past snug ("turn of nut"), with its length rule, its tolerance and its source. None is a default.</summary>
/// <remarks>
/// For structural bolts with <em>nothing but steel</em> in the grip. The rotation is that of nut and bolt against each other, whichever is
/// turned; what the held part turns along is subtracted. RCSC goes by the length of the bolt under its head, EN 1090-2 by the total clamped
/// thickness: two lengths, two calls. These rotations are meant to carry the bolt past yield, where its preload no longer depends on
/// the rotation: <see cref="RotationTightening.Compare(PublishedRotation, UnitsNet.Force, FrictionRange)"/> says whether one does so on a given joint.
/// </remarks>
/// <example><code>PublishedRotation turn = PublishedRotation.Rcsc2014(
///     boltLength: Length.FromInches(3.5), diameter: Length.FromInches(0.75), SlopedFaces.None);
/// Console.WriteLine(turn);       // 180° (150…240°) past snug: RCSC 2014, bolt length above 4d to 8d; steel grips only</code></example>
public sealed class PublishedRotation
{
    private const string BoltLength = "bolt length", ClampedThickness = "clamped thickness";
    private const string From = "from", Above = "above", To = "to", Below = "below";

    private static readonly Lazy<IReadOnlyList<PublishedRotation>> Rows =
        new(() => Array.AsReadOnly(DataFile.Read("published-rotations.csv").Select(row => new PublishedRotation(row)).ToArray()));

    private readonly double _from;
    private readonly double _to;
    private readonly bool _fromIncluded;
    private readonly bool _toIncluded;

    private PublishedRotation(DataRow row)
    {
        Table = row["table"];
        SlopedFaces = (SlopedFaces)(int)row.Number("sloped");
        _from = row.Number("from_d");
        _to = row.Number("to_d");
        _fromIncluded = row["from_included"] == "yes";
        _toIncluded = row["to_included"] == "yes";
        Degrees = row.Number("rotation_deg");
        Rotation = Si.Angle(Degrees);
        if (row["minus_deg"].Length > 0)
        {
            Window = ToleranceWindow.FromDeviations(Rotation, Si.Angle(row.Number("minus_deg")), Si.Angle(row.Number("plus_deg")));
            ToleranceConfidence = row["tolerance_confidence"];
        }

        Provenance = new Provenance(
            IsByBoltLength ? "RCSC Specification for Structural Joints Using High-Strength Bolts, nut rotation table" : "EN 1090-2:2018 Table 21, combined method",
            row["confidence"]);
    }

    /// <summary>Every row of every table.</summary>
    public static IReadOnlyList<PublishedRotation> All => Rows.Value;

    /// <summary>The rotation past snug (RCSC) or past the first step (EN 1090-2).</summary>
    public Angle Rotation { get; }

    /// <summary>The rotation with its tolerance; null where the source states none.</summary>
    public ToleranceWindow<Angle>? Window { get; }

    /// <summary>Table and edition: <c>RCSC 2014</c>, <c>RCSC before 2014</c>, <c>EN 1090-2:2018</c>.</summary>
    public string Table { get; }

    /// <summary>Where the rotation comes from.</summary>
    public Provenance Provenance { get; }

    /// <summary>How the tolerance came here; null where there is none.</summary>
    public string? ToleranceConfidence { get; }

    /// <summary>Sloped faces under head and nut; only RCSC has rows for them, EN 1090-2 requires a test.</summary>
    public SlopedFaces SlopedFaces { get; }

    /// <summary>Which length the row goes by, and its limits: <c>bolt length above 4d to 8d</c>.</summary>
    public string LengthRule
    {
        get
        {
            string from = _from == 0 ? "" : Print.Text($"{(_fromIncluded ? From : Above)} {_from}d ");
            return Print.Text($"{(IsByBoltLength ? BoltLength : ClampedThickness)} {from}{(_toIncluded ? To : Below)} {_to}d");
        }
    }

    internal double Degrees { get; }

    private bool IsByBoltLength => Table.StartsWith("RCSC", StringComparison.Ordinal);

    /// <summary>The nut rotation of RCSC in the editions from 2014 on: tolerance −30°, +60° (from memory; AASHTO 2018 prints the same).</summary>
    /// <param name="boltLength">Length of the bolt under its head, to the end of its point; not the grip.</param>
    /// <param name="diameter">Nominal diameter of a structural bolt: 1/2 to 1 1/2 in, M16 to M36 (the sizes of AISC 360 Table J3.1).</param>
    /// <param name="slopedFaces">How many faces are sloped 1:20; steeper ones need a bevelled washer.</param>
    /// <returns>120° up to 4 diameters, 180° up to 8, 240° up to 12; 60° more for each sloped face.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the bolt is longer than 12 diameters: its rotation is found by test.</exception>
    /// <example><code>PublishedRotation.Rcsc2014(Length.FromInches(3.5), Length.FromInches(0.75), SlopedFaces.One).Rotation   // 240°</code></example>
    public static PublishedRotation Rcsc2014(Length boltLength, Length diameter, SlopedFaces slopedFaces) =>
        Rcsc("RCSC 2014", boltLength, diameter, slopedFaces);

    /// <summary>The nut rotation of RCSC in the editions before 2014: ±30° up to half a turn, ±45° from two thirds of a turn.</summary>
    /// <param name="boltLength">Length of the bolt under its head, to the end of its point; not the grip.</param>
    /// <param name="diameter">Nominal diameter of a structural bolt: 1/2 to 1 1/2 in, M16 to M36 (the sizes of AISC 360 Table J3.1).</param>
    /// <param name="slopedFaces">How many faces are sloped 1:20; steeper ones need a bevelled washer.</param>
    /// <returns>120° up to 4 diameters, 180° up to 8, 240° up to 12; 60° more for each sloped face.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the bolt is longer than 12 diameters: its rotation is found by test.</exception>
    /// <example><code>PublishedRotation.RcscBefore2014(Length.FromInches(3.5), Length.FromInches(0.75), SlopedFaces.None).Window   // 180 (150 … 210)°</code></example>
    public static PublishedRotation RcscBefore2014(Length boltLength, Length diameter, SlopedFaces slopedFaces) =>
        Rcsc("RCSC before 2014", boltLength, diameter, slopedFaces);

    /// <summary>The second step of the combined method of EN 1090-2:2018 (Table 21), for property class 8.8 and 10.9.</summary>
    /// <param name="clampedThickness">Total thickness of the clamped parts, packs and washers included; not the length of the bolt.</param>
    /// <param name="diameter">Nominal diameter of a structural bolt: M12, M16, M20, M22, M24, M27, M30 or M36.</param>
    /// <returns>60° below 2 diameters, 90° below 6, 120° to 10 (the first two from memory); no tolerance is stated.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or thicker than 10 diameters: there the table has no recommendation.</exception>
    /// <example><code>PublishedRotation.En1090Part2(Length.FromMillimeters(60), Length.FromMillimeters(20)).Rotation   // 90°</code></example>
    public static PublishedRotation En1090Part2(Length clampedThickness, Length diameter)
    {
        double ratio = Domains.Length.Check(clampedThickness) / Domains.Length.Check(diameter);
        StructuralPreloadTable.CheckDiameter(StructuralPreloadTable.Europe, diameter, nameof(diameter));
        return Find("EN 1090-2:2018", SlopedFaces.None, ratio)
            ?? throw Beyond(nameof(clampedThickness), clampedThickness, "10 diameters; beyond, EN 1090-2 has no recommendation");
    }

    /// <inheritdoc />
    public override string ToString()
    {
        string window = Window is null ? "no tolerance stated" : Print.Text($"{Window.Limits.Lower:0.#}…{Window.Limits.Upper:0.#}°");
        string faces = SlopedFaces == SlopedFaces.None ? "" : SlopedFaces == SlopedFaces.One ? ", one face sloped" : ", both faces sloped";
        string start = IsByBoltLength ? "snug" : "the first step";
        return Print.Text($"{Degrees:0.#}° ({window}) past {start}: {Table}, {LengthRule}{faces}; steel grips only");
    }

    private static PublishedRotation Rcsc(string table, Length boltLength, Length diameter, SlopedFaces slopedFaces)
    {
        double ratio = Domains.Length.Check(boltLength) / Domains.Length.Check(diameter);
        StructuralPreloadTable.CheckDiameter(StructuralPreloadTable.America, diameter, nameof(diameter));
        if (slopedFaces is < SlopedFaces.None or > SlopedFaces.Both) Guard.RefuseAgainst(nameof(slopedFaces), (int)slopedFaces, "None, One or Both");
        return Find(table, slopedFaces, ratio)
            ?? throw Beyond(nameof(boltLength), boltLength, "12 diameters; for longer bolts RCSC requires the rotation to be found by test");
    }

    private static PublishedRotation? Find(string table, SlopedFaces slopedFaces, double ratio) =>
        All.FirstOrDefault(row => row.Table == table && row.SlopedFaces == slopedFaces && row.Holds(ratio));

    /// <summary>A length that is a whole number of diameters in any unit counts as that number.</summary>
    private bool Holds(double ratio) =>
        (_fromIncluded ? Tolerance.IsAtLeast(ratio, _from) : Tolerance.Exceeds(ratio, _from))
        && (_toIncluded ? Tolerance.IsAtMost(ratio, _to) : Tolerance.FallsShort(ratio, _to));

    private static ArgumentOutOfRangeException Beyond(string name, Length length, string requirement) =>
        new(name, $"{name} is {Guard.Show(length)}; it must be at most {requirement}.");
}
