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
    private readonly double _countersink;

    private BearingFace(ScrewThread thread, double outer, double countersink)
    {
        _thread = thread;
        Outer = outer;
        _countersink = countersink;
    }

    /// <summary>Outer diameter of the face.</summary>
    public double Outer { get; }

    public static BearingFace HexagonHead(ScrewThread thread) => InchHeads.IsFor(thread)
        ? new(thread, LeastWasherFace * Required(InchHeads, thread, "across_flats_max_in", "ASME B18.2.1 has no hexagon head"), 0)
        : new(thread, Required(IsoHeads, thread, "washer_face_min_mm", "ISO 4014 has no hexagon head"), 0);

    public static BearingFace HexagonNut(ScrewThread thread) => new(
        thread,
        Required(IsoNuts, thread, "washer_face_min_mm", "ISO 4032 has no hexagon nut"),
        Required(IsoNuts, thread, "countersink_max_mm", "ISO 4032 has no hexagon nut"));

    public static BearingFace SocketHead(ScrewThread thread) =>
        new(thread, Required(IsoSocketHeads, thread, "washer_face_min_mm", "ISO 4762 has no socket head"), 0);

    /// <summary>The ring on a plate with a hole of a series.</summary>
    public (double Outer, double Inner) OnHole(HoleSeries series)
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
        return (Outer, Math.Max(_countersink, hole));
    }

    /// <summary>The ring on a plate with a hole of a given diameter.</summary>
    public (double Outer, double Inner) OnHole(Length hole)
    {
        if (Si.Of(hole) < Si.Of(_thread.NominalDiameter))
        {
            Guard.RefuseAgainst(nameof(hole), hole, $"at least the nominal diameter of {_thread}, {Guard.ShowToCompare(_thread.NominalDiameter)}");
        }

        return (Outer, Math.Max(_countersink, Si.Of(hole)));
    }

    /// <summary>The ring on a washer, which has taken the place of the plate.</summary>
    public (double Outer, double Inner) OnWasher(PlainWasher washer)
    {
        if (washer is < PlainWasher.Iso7089 or > PlainWasher.Iso7092) throw Unknown(nameof(washer), (int)washer, "Iso7089, Iso7090 or Iso7092");
        (string standard, SizeTable table) = Washers[(int)washer];
        double bore = Required(table, _thread, "bore_mm", $"{standard} has no washer", nameof(washer));
        double outer = Required(table, _thread, "outer_diameter_mm", $"{standard} has no washer", nameof(washer));
        return (Math.Min(Outer, outer), Math.Max(_countersink, bore));
    }

    private static double Required(SizeTable table, ScrewThread thread, string column, string lack, string parameter = "thread") =>
        table.Find(thread, column) ?? throw new ArgumentException($"{lack} for {thread}; {GiveTheRing}.", parameter);

    private static ArgumentOutOfRangeException Unknown(string name, int value, string permitted) =>
        new(name, Print.Text($"{name} is {value}; it must be {permitted}."));
}
