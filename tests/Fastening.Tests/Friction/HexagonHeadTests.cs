using UnitsNet;

namespace Fastening.Tests.Friction;

public class HexagonHeadTests
{
    /// <summary>
    /// d_w,min of ISO 4014:2011 (grade A to M24, B above) and the medium hole of ISO 273:1979, typed from the same secondary tables as the data:
    /// a guard against slips and edits. d_w is checked independently below. d_w of M14 is in doubt: 19.37 in several tables, 19.64 by the rule.
    /// </summary>
    [Theory]
    [InlineData("M3", 4.57, 3.4)]
    [InlineData("M3.5", 5.07, 3.9)]
    [InlineData("M4", 5.88, 4.5)]
    [InlineData("M5", 6.88, 5.5)]
    [InlineData("M6", 8.88, 6.6)]
    [InlineData("M8", 11.63, 9)]
    [InlineData("M10", 14.63, 11)]
    [InlineData("M12", 16.63, 13.5)]
    [InlineData("M14", 19.37, 15.5)]
    [InlineData("M16", 22.49, 17.5)]
    [InlineData("M18", 25.34, 20)]
    [InlineData("M20", 28.19, 22)]
    [InlineData("M22", 31.71, 24)]
    [InlineData("M24", 33.61, 26)]
    [InlineData("M27", 38, 30)]
    [InlineData("M30", 42.75, 33)]
    [InlineData("M33", 46.55, 36)]
    [InlineData("M36", 51.11, 39)]
    public void Ring_under_the_head(string designation, double outer, double inner)
    {
        BearingSurface surface = BearingSurface.ForHexagonHead(ScrewThread.Parse(designation));

        Assert.Equal(outer, surface.OuterDiameter!.Value.Millimeters, 12);
        Assert.Equal(inner, surface.InnerDiameter!.Value.Millimeters, 12);
        Assert.Equal((outer + inner) / 2, surface.EffectiveDiameter.Millimeters, 12);
        Assert.Equal(180, surface.IncludedAngle.Degrees);
        Assert.False(surface.HasUniformPressure);
    }

    /// <summary>
    /// The rule of ISO 4759-1 behind d_w,min, from the width across flats and its tolerance: s_min = s − t with t = h13 to s 30, h14 above
    /// (grade A), h15 to 60 (grade B); d_w = s_min − IT16 below s 21, 0.95 s_min from there. IT grades of ISO 286-1 in mm; M14 left out.
    /// </summary>
    [Theory]
    [InlineData("M3", 5.5, 0.18, 0.75)]
    [InlineData("M4", 7, 0.22, 0.9)]
    [InlineData("M5", 8, 0.22, 0.9)]
    [InlineData("M6", 10, 0.22, 0.9)]
    [InlineData("M8", 13, 0.27, 1.1)]
    [InlineData("M10", 16, 0.27, 1.1)]
    [InlineData("M12", 18, 0.27, 1.1)]
    [InlineData("M16", 24, 0.33, 0)]
    [InlineData("M18", 27, 0.33, 0)]
    [InlineData("M20", 30, 0.33, 0)]
    [InlineData("M22", 34, 0.62, 0)]
    [InlineData("M24", 36, 0.62, 0)]
    [InlineData("M27", 41, 1, 0)]
    [InlineData("M30", 46, 1, 0)]
    [InlineData("M33", 50, 1, 0)]
    [InlineData("M36", 55, 1.2, 0)]
    public void Washer_face_by_the_rule(string designation, double acrossFlats, double tolerance, double it16)
    {
        double least = acrossFlats - tolerance, face = it16 > 0 ? least - it16 : 0.95 * least;
        double tabled = BearingSurface.ForHexagonHead(ScrewThread.Parse(designation)).OuterDiameter!.Value.Millimeters;

        Assert.InRange(tabled, face - 0.0051, face + 0.0051);
    }

    [Theory]
    [InlineData("M16x1.5")]
    [InlineData("M16x1")]
    public void A_fine_thread_has_the_head_of_its_diameter(string designation) =>
        Assert.Equal(22.49, BearingSurface.ForHexagonHead(ScrewThread.Parse(designation)).OuterDiameter!.Value.Millimeters, 12);

    [Fact]
    public void The_head_does_not_ask_how_the_thread_was_made() => Assert.Equal(22.49, BearingSurface.ForHexagonHead(
        ScrewThread.IsoMetric(Length.FromCentimeters(1.6), Length.FromMillimeters(1.25))).OuterDiameter!.Value.Millimeters, 12);

    [Theory]
    [InlineData("#10-32 UNF")]
    [InlineData("3-4 UNC")]
    [InlineData("M17x1")]
    [InlineData("M7")]
    [InlineData("M1")]
    public void Without_a_row_in_the_table_the_head_is_refused(string designation)
    {
        ArgumentException refusal = Assert.Throws<ArgumentException>(() => BearingSurface.ForHexagonHead(ScrewThread.Parse(designation)));
        Assert.Equal("thread", refusal.ParamName);
        Assert.Contains($"no hexagon head for {designation}; give the ring with BearingSurface.Annulus", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_custom_thread_of_a_metric_diameter_is_refused()
    {
        ScrewThread square = ScrewThread.FromProfile(
            Length.FromMillimeters(16), Length.FromMillimeters(4), Angle.Zero, 1, Length.FromMillimeters(14), Length.FromMillimeters(12));
        Assert.Throws<ArgumentException>(() => BearingSurface.ForHexagonHead(square));
    }

    [Fact]
    public void Null_is_refused() =>
        Assert.Equal("thread", Assert.Throws<ArgumentNullException>(() => BearingSurface.ForHexagonHead(null!)).ParamName);

    /// <summary>The whole file: every head is wider than its hole, and the hole wider than the thread.</summary>
    [Fact]
    public void Every_head_of_the_table_rests_on_a_ring()
    {
        List<ScrewThread> threads = [.. ThreadStandard.IsoMetric.Catalogue.Sizes.Select(s => s.Threads[0].Thread).Where(HasHead)];
        Assert.Equal(29, threads.Count);
        Assert.All(threads, thread =>
        {
            BearingSurface surface = BearingSurface.ForHexagonHead(thread);
            Assert.True(surface.OuterDiameter > surface.InnerDiameter && surface.InnerDiameter > thread.NominalDiameter, thread.Designation);
        });
    }

    private static bool HasHead(ScrewThread thread)
    {
        try
        {
            BearingSurface.ForHexagonHead(thread);
            return true;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }
}
