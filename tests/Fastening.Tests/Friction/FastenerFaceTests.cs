using UnitsNet;

namespace Fastening.Tests.Friction;

/// <summary>Rings of standard heads and nuts on holes and washers.</summary>
public class FastenerFaceTests
{
    private static readonly HoleSeries[] Series = [HoleSeries.Fine, HoleSeries.Medium, HoleSeries.Coarse];

    private static readonly Func<ScrewThread, BearingSurface>[] Faces =
        [BearingSurface.ForHexagonHead, BearingSurface.ForHexagonNut, BearingSurface.ForSocketHead];

    /// <summary>
    /// d_w,min and d_a,max of ISO 4032:2012 and the medium hole of ISO 273:1979, typed from secondary tables. The countersink counts where it is
    /// wider than the hole: to M6.
    /// </summary>
    [Theory]
    [InlineData("M1.6", 2.4, 1.84)]
    [InlineData("M3", 4.6, 3.45)]
    [InlineData("M5", 6.9, 5.75)]
    [InlineData("M6", 8.9, 6.75)]
    [InlineData("M8", 11.6, 9)]
    [InlineData("M10", 14.6, 11)]
    [InlineData("M12", 16.6, 13.5)]
    [InlineData("M14", 19.6, 15.5)]
    [InlineData("M16", 22.5, 17.5)]
    [InlineData("M18", 24.9, 20)]
    [InlineData("M20", 27.7, 22)]
    [InlineData("M24", 33.3, 26)]
    [InlineData("M30", 42.8, 33)]
    [InlineData("M36", 51.1, 39)]
    [InlineData("M64", 88.2, 70)]
    public void Ring_under_a_nut(string designation, double outer, double inner) => AssertRing(BearingSurface.ForHexagonNut(ScrewThread.Parse(designation)), outer, inner);

    /// <summary>d_w,min of ISO 4762:2004 and the medium hole of ISO 273:1979, typed from secondary tables.</summary>
    [Theory]
    [InlineData("M3", 5.07, 3.4)]
    [InlineData("M4", 6.53, 4.5)]
    [InlineData("M5", 8.03, 5.5)]
    [InlineData("M6", 9.38, 6.6)]
    [InlineData("M8", 12.33, 9)]
    [InlineData("M10", 15.33, 11)]
    [InlineData("M12", 17.23, 13.5)]
    [InlineData("M16", 23.17, 17.5)]
    [InlineData("M20", 28.87, 22)]
    [InlineData("M24", 34.81, 26)]
    [InlineData("M30", 43.61, 33)]
    public void Ring_under_a_socket_head(string designation, double outer, double inner) =>
        AssertRing(BearingSurface.ForSocketHead(ScrewThread.Parse(designation)), outer, inner);

    /// <summary>
    /// ASME B18.2.1-2012: washer face 0.9 of the greatest width across flats (the 0.9 from memory); normal fit of ASME B18.2.8-1999, here as the
    /// fraction of the drill.
    /// </summary>
    [Theory]
    [InlineData("1/4-20 UNC", 0.438, 9, 32)]
    [InlineData("3/8-24 UNF", 0.562, 13, 32)]
    [InlineData("1/2-13 UNC", 0.75, 9, 16)]
    [InlineData("1/2-20 UNF", 0.75, 9, 16)]
    [InlineData("3/4-10 UNC", 1.125, 13, 16)]
    [InlineData("1-8 UNC", 1.5, 35, 32)]
    [InlineData("1 1/2-6 UNC", 2.25, 13, 8)]
    public void Ring_under_an_inch_hexagon_head(string designation, double acrossFlats, int numerator, int denominator)
    {
        BearingSurface surface = BearingSurface.ForHexagonHead(ScrewThread.Parse(designation));

        Assert.Equal(0.9 * acrossFlats, surface.OuterDiameter!.Value.Inches, 12);
        Assert.InRange(surface.InnerDiameter!.Value.Inches, numerator / (double)denominator - 6e-5, numerator / (double)denominator + 6e-5);
    }

    /// <summary>Fine, medium, coarse of ISO 273:1979; close, normal, loose of ASME B18.2.8-1999 (drill diameters), typed from secondary tables.</summary>
    [Theory]
    [InlineData("M5", 5.3, 5.5, 5.8)]
    [InlineData("M8", 8.4, 9, 10)]
    [InlineData("M12", 13, 13.5, 14.5)]
    [InlineData("M16", 17, 17.5, 18.5)]
    [InlineData("M24", 25, 26, 28)]
    [InlineData("M64", 66, 70, 74)]
    [InlineData("1/4-20 UNC", 17 / 64.0 * 25.4, 9 / 32.0 * 25.4, 19 / 64.0 * 25.4)]
    [InlineData("5/8-18 UNF", 21 / 32.0 * 25.4, 11 / 16.0 * 25.4, 47 / 64.0 * 25.4)]
    public void Hole_of_each_series(string designation, double fine, double medium, double coarse)
    {
        BearingSurface head = BearingSurface.ForHexagonHead(ScrewThread.Parse(designation));
        double[] holes = [.. Series.Select(series => head.WithHole(series).InnerDiameter!.Value.Millimeters)];

        // Drills are tabled to four decimals of an inch.
        Assert.Equal([fine, medium, coarse], holes, (expected, actual) => Math.Abs(expected - actual) < 6e-5 * 25.4);
        Assert.All(Series, series => Assert.Equal(head.OuterDiameter, head.WithHole(series).OuterDiameter));
    }

    /// <summary>Bores of ISO 7089:2000, ISO 7090:2000 and ISO 7092:2000, typed from secondary tables; the nut's countersink is wider.</summary>
    [Theory]
    [InlineData(PlainWasher.Iso7089, "M8", 8.4, 8.75)]
    [InlineData(PlainWasher.Iso7089, "M16", 17, 17.3)]
    [InlineData(PlainWasher.Iso7090, "M20", 21, 21.6)]
    [InlineData(PlainWasher.Iso7092, "M12", 13, 13)]
    [InlineData(PlainWasher.Iso7089, "M42", 45, 45.4)]
    public void Ring_on_a_washer(PlainWasher washer, string designation, double bore, double underNut)
    {
        ScrewThread thread = ScrewThread.Parse(designation);
        BearingSurface head = BearingSurface.ForHexagonHead(thread), nut = BearingSurface.ForHexagonNut(thread);

        AssertRing(head.WithWasher(washer), head.OuterDiameter!.Value.Millimeters, bore);
        AssertRing(nut.WithWasher(washer), nut.OuterDiameter!.Value.Millimeters, underNut);
    }

    [Theory]
    [InlineData("M1.6", 16, true)]
    [InlineData("M5", 16, true)]
    [InlineData("M6", 0.75, false)]
    [InlineData("M8", 0.75, false)]
    public void Countersink_of_small_nuts_by_the_rule(string designation, double allowance, bool inProportion)
    {
        // ISO 4759-1, from memory: 1.15 d to M5, d + 0.75 mm at M6 and M8, 1.08 d above.
        ScrewThread thread = ScrewThread.Parse(designation);
        double d = thread.NominalDiameter.Millimeters, expected = inProportion ? 1.15 * d : d + allowance;

        Assert.Equal(expected, Countersink(thread), 9);
    }

    [Fact]
    public void Countersink_of_larger_nuts_by_the_rule() => Assert.All(
        Sizes(BearingSurface.ForHexagonNut).Where(thread => thread.NominalDiameter.Millimeters > 9),
        thread => Assert.InRange(Countersink(thread), 1.08 * thread.NominalDiameter.Millimeters - 0.07, 1.08 * thread.NominalDiameter.Millimeters + 0.07));

    [Fact]
    public void Wider_holes_leave_a_larger_effective_diameter()
    {
        foreach (Func<ScrewThread, BearingSurface> face in Faces)
        {
            List<ScrewThread> sizes = Sizes(face);
            Assert.True(sizes.Count >= 20);
            foreach (ScrewThread thread in sizes)
            {
                BearingSurface surface = face(thread);
                double fine = Diameter(HoleSeries.Fine), medium = Diameter(HoleSeries.Medium), coarse = Diameter(HoleSeries.Coarse);
                Assert.True(fine <= medium && medium <= coarse && fine < coarse, $"{thread}: {fine}, {medium}, {coarse}");
                Assert.Equal(surface.EffectiveDiameter.Millimeters, medium);

                double Diameter(HoleSeries series) => surface.WithHole(series).EffectiveDiameter.Millimeters;
            }
        }
    }

    [Fact]
    public void A_socket_head_rests_further_out_than_a_hexagon_head() => Assert.All(
        Sizes(BearingSurface.ForSocketHead),
        thread => Assert.True(BearingSurface.ForSocketHead(thread).OuterDiameter > BearingSurface.ForHexagonHead(thread).OuterDiameter, thread.Designation));

    [Fact]
    public void A_nut_has_the_face_of_a_head_of_its_product_grade()
    {
        // Grade A to M16 and B from M27 in both tables; between them nuts are grade B and a little narrower. Tables round to 0.1 mm.
        foreach (ScrewThread thread in Sizes(BearingSurface.ForHexagonNut))
        {
            double head = BearingSurface.ForHexagonHead(thread).OuterDiameter!.Value.Millimeters, nut = BearingSurface.ForHexagonNut(thread).OuterDiameter!.Value.Millimeters;
            bool mixed = thread.NominalDiameter.Millimeters is > 17 and < 26;
            if (thread.Designation != "M14" && thread.Designation != "M1.6") Assert.InRange(nut - head, mixed ? -0.55 : -0.06, mixed ? -0.2 : 0.06);
        }
    }

    /// <summary>Every washer of the tables is wider than every face, so that its bore alone matters; and the thread passes it.</summary>
    [Fact]
    public void Washers_are_wider_than_faces_and_their_bores_than_threads()
    {
        int rings = 0;
        foreach (PlainWasher washer in new[] { PlainWasher.Iso7089, PlainWasher.Iso7090, PlainWasher.Iso7092 })
        {
            foreach (Func<ScrewThread, BearingSurface> face in Faces)
            {
                foreach (ScrewThread thread in Sizes(t => face(t).WithWasher(washer)))
                {
                    BearingSurface ring = face(thread).WithWasher(washer);
                    Assert.Equal(face(thread).OuterDiameter, ring.OuterDiameter);
                    Assert.True(ring.InnerDiameter > thread.NominalDiameter && ring.InnerDiameter < ring.OuterDiameter);
                    rings++;
                }
            }
        }

        Assert.True(rings > 150, $"{rings} rings");
    }

    [Fact]
    public void The_last_word_on_the_hole_counts_and_pressure_is_kept()
    {
        BearingSurface head = BearingSurface.ForHexagonHead(ScrewThread.Parse("M16")).WithUniformPressure();

        AssertInner(17.5, head.WithWasher(PlainWasher.Iso7089).WithHole(HoleSeries.Medium));
        AssertInner(17, head.WithHole(HoleSeries.Coarse).WithWasher(PlainWasher.Iso7089));
        AssertInner(17.7, head.WithHole(HoleSeries.Fine).WithHole(Length.FromMillimeters(17.7)));
        AssertInner(17.3, BearingSurface.ForHexagonNut(ScrewThread.Parse("M16")).WithHole(Length.FromMillimeters(16.5)).WithUniformPressure());

        static void AssertInner(double expected, BearingSurface surface)
        {
            Assert.Equal(expected, surface.InnerDiameter!.Value.Millimeters, 12);
            Assert.True(surface.HasUniformPressure);
        }
    }

    [Fact]
    public void A_given_ring_is_narrowed_by_a_hole_and_never_widened()
    {
        BearingSurface ring = BearingSurface.Annulus(Length.FromMillimeters(30), Length.FromMillimeters(20));

        Assert.Equal(25, ring.WithHole(Length.FromMillimeters(25)).InnerDiameter!.Value.Millimeters, 12);
        Assert.Equal(20, ring.WithHole(Length.FromMillimeters(15)).InnerDiameter!.Value.Millimeters, 12);
        Assert.Equal("hole", Assert.Throws<ArgumentOutOfRangeException>(() => ring.WithHole(Length.FromMillimeters(30))).ParamName);
    }

    [Theory]
    [InlineData(15.9)]
    [InlineData(22.49)]
    [InlineData(40)]
    public void A_hole_too_narrow_for_the_thread_or_too_wide_for_the_face_is_refused(double hole)
    {
        BearingSurface head = BearingSurface.ForHexagonHead(ScrewThread.Parse("M16"));
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() => head.WithHole(Length.FromMillimeters(hole)));
        Assert.Equal("hole", refusal.ParamName);
    }

    [Fact]
    public void What_the_tables_lack_is_refused_by_name()
    {
        Lacks("ISO 4032 has no hexagon nut for 1/2-13 UNC", () => BearingSurface.ForHexagonNut(ScrewThread.Parse("1/2-13 UNC")));
        Lacks("ISO 4762 has no socket head for M18", () => BearingSurface.ForSocketHead(ScrewThread.Parse("M18")));
        Lacks("ASME B18.2.8 has no clearance hole for 9/16-12 UNC", () => BearingSurface.ForHexagonHead(ScrewThread.Parse("9/16-12 UNC")));
        Lacks("ISO 7092 has no washer for M42", () => BearingSurface.ForHexagonHead(ScrewThread.Parse("M42")).WithWasher(PlainWasher.Iso7092));
        Lacks("ISO 7089 has no washer for M39", () => BearingSurface.ForHexagonHead(ScrewThread.Parse("M39")).WithWasher(PlainWasher.Iso7089));
        Lacks("ISO 7090 has no washer for 1/2-13 UNC", () => BearingSurface.ForHexagonHead(ScrewThread.Parse("1/2-13 UNC")).WithWasher(PlainWasher.Iso7090));

        static void Lacks(string what, Func<object> ask) =>
            Assert.StartsWith(what + "; give the ring", Assert.Throws<ArgumentException>(ask).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_ring_without_a_fastener_has_no_series_and_no_washer()
    {
        BearingSurface ring = BearingSurface.Annulus(Length.FromMillimeters(30), Length.FromMillimeters(20));
        Assert.Contains("no hole belongs to it", Assert.Throws<InvalidOperationException>(() => ring.WithHole(HoleSeries.Fine)).Message, StringComparison.Ordinal);
        Assert.Contains("no washer belongs to it", Assert.Throws<InvalidOperationException>(() => ring.WithWasher(PlainWasher.Iso7089)).Message, StringComparison.Ordinal);
    }

    /// <summary>The countersink shows through a hole that is as narrow as the thread.</summary>
    private static double Countersink(ScrewThread thread) => BearingSurface.ForHexagonNut(thread).WithHole(thread.NominalDiameter).InnerDiameter!.Value.Millimeters;

    private static void AssertRing(BearingSurface surface, double outer, double inner)
    {
        Assert.Equal(outer, surface.OuterDiameter!.Value.Millimeters, 12);
        Assert.Equal(inner, surface.InnerDiameter!.Value.Millimeters, 12);
        Assert.Equal((outer + inner) / 2, surface.EffectiveDiameter.Millimeters, 12);
        Assert.Equal(180, surface.IncludedAngle.Degrees);
    }

    private static List<ScrewThread> Sizes(Func<ScrewThread, BearingSurface> face) =>
        [.. ThreadStandard.IsoMetric.Catalogue.Sizes.Select(size => size.Threads[0].Thread).Where(thread => Has(face, thread))];

    private static bool Has(Func<ScrewThread, BearingSurface> face, ScrewThread thread)
    {
        try
        {
            face(thread);
            return true;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }
}
