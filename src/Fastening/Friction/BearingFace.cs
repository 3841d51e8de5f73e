using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The face of a standard head or nut, and the ring it makes with the hole or the washer under it.</summary>
internal sealed class BearingFace
{
    private const double LeastWasherFace = 0.9;
    private const string GiveTheRing = "give the ring with BearingSurface.Annulus";

    private static readonly SizeTable
        IsoHeads = new("iso-4014-hexagon-heads.csv", ThreadStandard.IsoMetric),
        IsoNuts = new("iso-4032-hexagon-nuts.csv", ThreadStandard.IsoMetric),
        IsoSocketHeads = new("iso-4762-socket-heads.csv", ThreadStandard.IsoMetric),
        IsoHoles = new("iso-273-clearance-holes.csv", ThreadStandard.IsoMetric),
        InchHeads = new("asme-b18-2-1-hex-cap-screws.csv", ThreadStandard.Unified),
        InchHoles = new("asme-b18-2-8-clearance-holes.csv", ThreadStandard.Unified);

    /// <summary>In the order of <see cref="PlainWasher"/>.</summary>
    private static readonly (string Standard, SizeTable Table)[] Washers =
    [
        .. new[] { "ISO 7089", "ISO 7090", "ISO 7092" }
            .Select(standard => (standard, new SizeTable("iso-plain-washers.csv", ThreadStandard.IsoMetric, standard))),
    ];

    private readonly ScrewThread _thread;
    private readonly Stated<Length>? _countersink;

    private BearingFace(ScrewThread thread, Stated<Length> outer, Stated<Length>? countersink = null)
    {
        _thread = thread;
        Outer = outer;
        _countersink = countersink;
    }

    /// <summary>Outer diameter of the face.</summary>
    public Stated<Length> Outer { get; }

    public static BearingFace HexagonHead(ScrewThread thread) => InchHeads.IsFor(thread)
        ? new(thread, Stated<Length>.Of(
            LeastWasherFace * Required(InchHeads, thread, "across_flats_max_in", "ASME B18.2.1 has no hexagon head"), "least washer face, 0.9 of the width across flats (ASME B18.2.1)"))
        : new(thread, Stated<Length>.Of(Required(IsoHeads, thread, "washer_face_min_mm", "ISO 4014 has no hexagon head"), "least washer face of ISO 4014"));

    public static BearingFace HexagonNut(ScrewThread thread) => new(
        thread,
        Stated<Length>.Of(Required(IsoNuts, thread, "washer_face_min_mm", "ISO 4032 has no hexagon nut"), "least washer face of ISO 4032"),
        Stated<Length>.Of(Required(IsoNuts, thread, "countersink_max_mm", "ISO 4032 has no hexagon nut"), "greatest countersink of ISO 4032"));

    public static BearingFace SocketHead(ScrewThread thread) =>
        new(thread, Stated<Length>.Of(Required(IsoSocketHeads, thread, "washer_face_min_mm", "ISO 4762 has no socket head"), "least washer face of ISO 4762"));

    /// <summary>The ring on a plate with a hole of a series.</summary>
    public (Stated<Length> Outer, Stated<Length> Inner) OnHole(HoleSeries series)
    {
        bool inch = InchHoles.IsFor(_thread);
        string column = series switch
        {
            HoleSeries.Fine => inch ? "close_hole_in" : "fine_hole_mm",
            HoleSeries.Medium => inch ? "normal_hole_in" : "medium_hole_mm",
            HoleSeries.Coarse => inch ? "loose_hole_in" : "coarse_hole_mm",
            _ => throw Unknown(nameof(series), (int)series, "Fine, Medium or Coarse"),
        };
        double hole = inch
            ? Required(InchHoles, _thread, column, "ASME B18.2.8 has no clearance hole")
            : Required(IsoHoles, _thread, column, "ISO 273 has no clearance hole");
        return (Outer, Clear(Stated<Length>.Of(hole, inch ? "clearance hole of ASME B18.2.8" : "clearance hole of ISO 273")));
    }

    /// <summary>The ring on a plate with a hole of a given diameter.</summary>
    public (Stated<Length> Outer, Stated<Length> Inner) OnHole(Stated<Length> hole)
    {
        if (hole.Value < _thread.Diameter)
        {
            Guard.RefuseAgainst(nameof(hole), hole.AsStated, $"at least the nominal diameter of {_thread}, {Guard.ShowToCompare(_thread.NominalDiameter)}");
        }

        return (Outer, Clear(hole));
    }

    /// <summary>The ring on a washer, which has taken the place of the plate.</summary>
    public (Stated<Length> Outer, Stated<Length> Inner) OnWasher(PlainWasher washer)
    {
        if (washer is < PlainWasher.Iso7089 or > PlainWasher.Iso7092) throw Unknown(nameof(washer), (int)washer, "Iso7089, Iso7090 or Iso7092");
        (string standard, SizeTable table) = Washers[(int)washer];
        double bore = Required(table, _thread, "bore_mm", $"{standard} has no washer", nameof(washer));
        double outer = Required(table, _thread, "outer_diameter_mm", $"{standard} has no washer", nameof(washer));
        Stated<Length> rim = Stated<Length>.Of(outer, $"outer diameter of a washer of {standard}");
        return (rim.Value < Outer.Value ? rim : Outer, Clear(Stated<Length>.Of(bore, $"bore of a washer of {standard}")));
    }

    /// <summary>The wider of two bores.</summary>
    public static Stated<Length> Wider(Stated<Length> one, Stated<Length> other) => other.Value > one.Value ? other : one;

    private Stated<Length> Clear(Stated<Length> hole) => _countersink is Stated<Length> countersink ? Wider(countersink, hole) : hole;

    private static double Required(SizeTable table, ScrewThread thread, string column, string lack, string parameter = "thread") =>
        table.Find(thread, column) ?? throw new ArgumentException($"{lack} for {thread}; {GiveTheRing}.", parameter);

    private static ArgumentOutOfRangeException Unknown(string name, int value, string permitted) =>
        new(name, Print.Text($"{name} is {value}; it must be {permitted}."));
}
