namespace Fastening.Tests.Threads;

public class ThreadDesignationTests
{
    [Theory]
    [InlineData("M16", "M16")]
    [InlineData("m16", "M16")]
    [InlineData(" M16 ", "M16")]
    [InlineData("\tM16\r\n", "M16")]
    [InlineData("M 16", "M16")]
    [InlineData("M08", "M8")]
    [InlineData("M16x1.5", "M16x1.5")]
    [InlineData("M16X1.5", "M16x1.5")]
    [InlineData("M16×1.5", "M16x1.5")]
    [InlineData("M16 x 1.5", "M16x1.5")]
    [InlineData("M16\u00A0×\u00A01.5", "M16x1.5")]
    [InlineData("M16x2", "M16")]
    [InlineData("M16x2.000000000", "M16")]
    [InlineData("M8x1.0", "M8x1")]
    [InlineData("M1.6", "M1.6")]
    [InlineData("M14x1.25", "M14x1.25")]
    [InlineData("M35x1.5", "M35x1.5")]
    [InlineData("M17x1", "M17x1")]
    [InlineData("M64x6", "M64")]
    [InlineData("M16-6g", "M16")]
    [InlineData("M16x1.5-6H", "M16x1.5")]
    [InlineData("M16x1.5-5g6g", "M16x1.5")]
    [InlineData("M16x1.5 - 6H/5g6g", "M16x1.5")]
    [InlineData("M20-6az", "M20")]
    [InlineData("M16-LH", "M16")]
    [InlineData("M16x1.5 LH", "M16x1.5")]
    [InlineData("M16-6g-LH", "M16")]
    public void Metric_spellings_are_read(string text, string designation) => AssertRead(text, designation);

    [Theory]
    [InlineData("1/2-13", "1/2-13 UNC")]
    [InlineData("1/2-13 UNC", "1/2-13 UNC")]
    [InlineData("1/2-13UNC", "1/2-13 UNC")]
    [InlineData("1/2-13unc", "1/2-13 UNC")]
    [InlineData("1/2 - 13 UNC", "1/2-13 UNC")]
    [InlineData("1/2–13 UNC", "1/2-13 UNC")]
    [InlineData("1/2-20 UNF", "1/2-20 UNF")]
    [InlineData("1/2 UNC", "1/2-13 UNC")]
    [InlineData("1/2 UNEF", "1/2-28 UNEF")]
    [InlineData("1/4-20 UNC", "1/4-20 UNC")]
    [InlineData("3/8-16 UNC", "3/8-16 UNC")]
    [InlineData("1-8 UNC", "1-8 UNC")]
    [InlineData("1-8 UN", "1-8 UNC")]
    [InlineData("1-8", "1-8 UNC")]
    [InlineData("1 1/8-7 UNC", "1 1/8-7 UNC")]
    [InlineData("1-1/8-7 UNC", "1 1/8-7 UNC")]
    [InlineData("1 1/8 UNC", "1 1/8-7 UNC")]
    [InlineData("1.125-8 UN", "1 1/8-8 UN")]
    [InlineData("2-4.5 UNC", "2-4.5 UNC")]
    [InlineData("2-4 1/2 UNC", "2-4.5 UNC")]
    [InlineData("#10-32 UNF", "#10-32 UNF")]
    [InlineData("# 10-32 UNF", "#10-32 UNF")]
    [InlineData("No.10-24", "#10-24 UNC")]
    [InlineData("No. 10-24 UNC", "#10-24 UNC")]
    [InlineData("10-32", "#10-32 UNF")]
    [InlineData("2-56", "#2-56 UNC")]
    [InlineData("0.500-13 UNC", "1/2-13 UNC")]
    [InlineData(".190-32 UNF", "#10-32 UNF")]
    [InlineData("1 1/4-7 UNC-2A", "1 1/4-7 UNC")]
    [InlineData("1/4-20 UNC 2B", "1/4-20 UNC")]
    [InlineData("1/4-20-2A", "1/4-20 UNC")]
    [InlineData("1/4-20 UNC-2A-LH", "1/4-20 UNC")]
    [InlineData("1/2-13 UNRC", "1/2-13 UNC")]
    public void Unified_spellings_are_read(string text, string designation) => AssertRead(text, designation);

    [Theory]
    [InlineData("Tr40x7", "Tr40x7", 1)]
    [InlineData("Tr 40x7", "Tr40x7", 1)]
    [InlineData("TR 40 × 7", "Tr40x7", 1)]
    [InlineData("tr40X7.0", "Tr40x7", 1)]
    [InlineData("Tr40x7-7e", "Tr40x7", 1)]
    [InlineData("Tr 40x7 - 7H/7e", "Tr40x7", 1)]
    [InlineData("Tr40x7LH", "Tr40x7", 1)]
    [InlineData("Tr 40 x 7 LH - 8c", "Tr40x7", 1)]
    [InlineData("Tr40x7-7e-LH", "Tr40x7", 1)]
    [InlineData("Tr 40x14 (P7)", "Tr40x14 (P7)", 2)]
    [InlineData("Tr40x14(P7)", "Tr40x14 (P7)", 2)]
    [InlineData("Tr40x14P7", "Tr40x14 (P7)", 2)]
    [InlineData("Tr 40 x 21 P 7 - 7e", "Tr40x21 (P7)", 3)]
    [InlineData("Tr 40x14 (P7) LH-7H", "Tr40x14 (P7)", 2)]
    [InlineData("Tr40x7P7", "Tr40x7", 1)]
    [InlineData("Tr12x3", "Tr12x3", 1)]
    [InlineData("Tr41x7", "Tr41x7", 1)]
    public void Trapezoidal_spellings_are_read(string text, string designation, int starts)
    {
        AssertRead(text, designation);
        Assert.Equal(starts, ScrewThread.Parse(text).Starts);
    }

    [Theory]
    [InlineData("1 1/2-4 ACME", "1 1/2-4 ACME")]
    [InlineData("1-1/2-4 Acme", "1 1/2-4 ACME")]
    [InlineData("1.500-4 ACME-2G", "1 1/2-4 ACME")]
    [InlineData("1 1/2 - 4 - ACME - 3G - LH", "1 1/2-4 ACME")]
    [InlineData("Acme 1-1/2 - 4", "1 1/2-4 ACME")]
    [InlineData("acme 1 1/2-4-2G", "1 1/2-4 ACME")]
    [InlineData("1/2-10 ACME", "1/2-10 ACME")]
    [InlineData("2-4ACME", "2-4 ACME")]
    [InlineData("0.3-12 ACME", "0.3-12 ACME")]
    [InlineData("5/16-14 ACME LH", "5/16-14 ACME")]
    [InlineData("2 1/2-3 ACME", "2 1/2-3 ACME")]
    public void Acme_spellings_are_read(string text, string designation) => AssertRead(text, designation);

    [Fact]
    public void What_is_read_is_what_the_factory_makes()
    {
        ScrewThread trapezoidal = ScrewThread.IsoTrapezoidal(UnitsNet.Length.FromMillimeters(40), UnitsNet.Length.FromMillimeters(7), 2);
        ScrewThread acme = ScrewThread.Acme(UnitsNet.Length.FromInches(1.5), 4);

        Assert.Equal(trapezoidal.StressArea, ScrewThread.Parse("Tr40x14 (P7)").StressArea);
        Assert.Equal(trapezoidal.Lead, ScrewThread.Parse("Tr40x14 (P7)").Lead);
        Assert.Equal(acme.StressArea, ScrewThread.Parse("1 1/2-4 ACME").StressArea);
        Assert.Equal(acme.LeadAngle, ScrewThread.Parse("1 1/2-4 ACME").LeadAngle);
    }

    [Fact]
    public void Every_spelling_gives_the_same_instance() =>
        Assert.Same(ScrewThread.Parse("M16"), ScrewThread.Parse(" m16 × 2.0 - 6g"));

    [Theory]
    [InlineData("", "empty", "M16x1.5")]
    [InlineData("   ", "empty", "M16x1.5")]
    [InlineData("M16x1,5", "decimal sign is a point", "write 'M16x1.5'")]
    [InlineData("M16 x 1.5 mm", "carries no unit", "write 'M16x1.5'")]
    [InlineData("M16x1,5mm", "decimal sign is a point and a designation carries no unit", "write 'M16x1.5'")]
    [InlineData("16 mm", "carries no unit", "write 'M16'")]
    [InlineData("1/2\"-13 UNC", "carries no unit", "write '1/2-13 UNC'")]
    [InlineData("1/2x13", "follow a hyphen", "write '1/2-13 UNC'")]
    [InlineData("16", "starts with M", "write 'M16'")]
    [InlineData("16x1.5", "starts with M", "write 'M16x1.5'")]
    [InlineData("M16-1.5", "the pitch follows an x", "write 'M16x1.5'")]
    [InlineData("M19", "ISO 261 has no M19", "M18 and M20", "ScrewThread.IsoMetric(diameter, pitch)")]
    [InlineData("M17", "no coarse pitch", "write M17x1.5 or M17x1")]
    [InlineData("M16x1.25", "2 (coarse), 1.5 and 1 mm", "not 1.25 mm", "ScrewThread.IsoMetric(diameter, pitch)")]
    [InlineData("M70", "M1 to M64", "ScrewThread.IsoMetric(diameter, pitch)")]
    [InlineData("M0.5", "M1 to M64")]
    [InlineData("1/2-14 UNC", "1/2-13 UNC, 1/2-20 UNF, 1/2-28 UNEF and 1/2-16 UN", "ScrewThread.Unified(diameter, threadsPerInch)")]
    [InlineData("1/2-20 UNC", "1/2-20 UNF")]
    [InlineData("1/4 UN", "1/4-20 UNC")]
    [InlineData("13/16 UNC", "13/16-20 UNEF")]
    [InlineData("1/2", "series and the threads per inch", "1/2-13 UNC", "1/2-20 UNF")]
    [InlineData("1/2 UN", "series and the threads per inch")]
    [InlineData("#10", "series and the threads per inch", "#10-24 UNC", "#10-32 UNF")]
    [InlineData("8", "series and the threads per inch", "#8-32 UNC", "M8")]
    [InlineData("1 UNC", "1-8 UNC", "#1-64 UNC")]
    [InlineData("1.000-64", "1-8 UNC")]
    [InlineData("3/16-24", "#8 and #10", "ScrewThread.Unified(diameter, threadsPerInch)")]
    [InlineData("5-4 UNC", "#5-40 UNC")]
    [InlineData("9/2-8", "#0 to 4")]
    [InlineData("1/2-13 UNS", "ScrewThread.Unified")]
    [InlineData("Tr40", "write a trapezoidal thread with its pitch, as in Tr40x7", "Tr40x14 (P7)")]
    [InlineData("Tr40-7", "the pitch follows an x", "write 'Tr40x7'")]
    [InlineData("Tr40x7 mm", "carries no unit", "write 'Tr40x7'")]
    [InlineData("Tr12x1,5", "decimal sign is a point", "write 'Tr12x1.5'")]
    [InlineData("Tr40x13", "ISO 2902 has no pitch of 13 mm", "ScrewThread.FromProfile")]
    [InlineData("Tr40x7 (P14)", "the lead, 7 mm, is no multiple of the pitch, 14 mm", "Tr40x14 (P7)")]
    [InlineData("Tr40x707P7", "101 starts of pitch 7 mm", "starts to 100")]
    [InlineData("Tr10x10", "must leave a tenth of the diameter")]
    [InlineData("Tr40x14 (P7", "Tr40x14 (P7)")]
    [InlineData("Tr40x14 P", "Tr40x14 (P7)")]
    [InlineData("Tr40x0", "Tr40x7")]
    [InlineData("1 1/2 ACME", "threads per inch, as in 1 1/2-4 ACME")]
    [InlineData("1 1/2-4 ACME-2C", "1 1/2-4 ACME")]
    [InlineData("#10-16 ACME", "1 1/2-4 ACME")]
    [InlineData("1/2-2 ACME", "2 threads per inch leaves no core in 0.5 in")]
    [InlineData("1/2\"-10 ACME", "carries no unit", "write '1/2-10 ACME'")]
    [InlineData("1/2x10 ACME", "follow a hyphen", "write '1/2-10 ACME'")]
    [InlineData("1 1/2-4 STUB ACME", "stub Acme", "ScrewThread.FromProfile")]
    [InlineData("2.5-8 BUTT-2A", "buttress", "load flank", "ScrewThread.FromProfile")]
    [InlineData("S 40x7", "buttress", "ScrewThread.FromProfile")]
    [InlineData("Rd 40x1/6", "round thread", "ScrewThread.FromProfile")]
    [InlineData("Steel", "write for example M16")]
    [InlineData("G1/2", "pipe thread", "ScrewThread.FromProfile")]
    [InlineData("Rc 3/4", "pipe thread", "ScrewThread.FromProfile")]
    [InlineData("1/2 BSPT", "pipe thread", "ScrewThread.FromProfile")]
    [InlineData("1/2-12 BSW", "Whitworth", "ScrewThread.FromProfile")]
    [InlineData("1/2-14 NPT", "pipe thread", "ScrewThread.FromProfile")]
    [InlineData("MJ6x1", "enlarged root", "ScrewThread.FromProfile")]
    [InlineData("M16xPh3P1.5", "several starts", "ScrewThread.FromProfile")]
    [InlineData("M", "write for example M16")]
    [InlineData("Mx", "write for example M16")]
    [InlineData("M16x", "write for example M16")]
    [InlineData("M16x0", "write for example M16")]
    [InlineData("M16.", "write for example M16")]
    [InlineData("M-16", "write for example M16")]
    [InlineData("M1e1", "write for example M16")]
    [InlineData("M16-9z", "write for example M16")]
    [InlineData("M16x1.5000001", "write for example M16")]
    [InlineData("M16 17", "write for example M16")]
    [InlineData("M9999999999999999999999", "write for example M16")]
    [InlineData("1/2-13 UNC-4A", "write for example M16")]
    [InlineData("1/2-0", "write for example M16")]
    [InlineData("1/0-13", "write for example M16")]
    [InlineData("1/3-16", "write for example M16")]
    [InlineData("#", "write for example M16")]
    [InlineData("½-13", "write for example M16")]
    [InlineData("M١٦", "write for example M16")]
    [InlineData("M１６", "write for example M16")]
    public void Refusals_say_what_to_write(string text, params string[] parts)
    {
        FormatException refusal = Assert.Throws<FormatException>(() => ScrewThread.Parse(text));
        Assert.All(parts, part => Assert.Contains(part, refusal.Message, StringComparison.Ordinal));
        Assert.False(ScrewThread.TryParse(text, out ScrewThread? thread));
        Assert.Null(thread);
    }

    [Fact]
    public void Null_is_refused()
    {
        Assert.Equal("designation", Assert.Throws<ArgumentNullException>(() => ScrewThread.Parse(null!)).ParamName);
        Assert.False(ScrewThread.TryParse(null, out _));
    }

    [Fact]
    public void Messages_stay_short_and_printable()
    {
        string message = Assert.Throws<FormatException>(() => ScrewThread.Parse("M16\u0007\u202E\uD800" + new string('9', 100_000))).Message;

        Assert.InRange(message.Length, 1, 300);
        Assert.Contains("'M16???999", message, StringComparison.Ordinal);
        Assert.Contains("…'", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_is_read_and_refused_alike_in_a_culture_with_decimal_commas() => CommaCulture.Run(() =>
    {
        AssertRead("M16x1.5", "M16x1.5");
        AssertRead("0.500-13", "1/2-13 UNC");
        Assert.Contains("not 1.25 mm", Assert.Throws<FormatException>(() => ScrewThread.Parse("M16x1.25")).Message, StringComparison.Ordinal);
        Assert.Equal("M12.5x1.25", ScrewThread.IsoMetric(UnitsNet.Length.FromMillimeters(12.5), UnitsNet.Length.FromMillimeters(1.25)).Designation);
    });

    [Theory]
    [InlineData("M16")]
    [InlineData("M16x1.5-6g")]
    [InlineData("1 1/8-7 UNC-2A")]
    public void Reading_allocates_next_to_nothing(string text)
    {
        const int calls = 1000;
        long all = Allocation.Of(() =>
        {
            for (int i = 0; i < calls; i++) ScrewThread.Parse(text);
        });

        Assert.InRange(all / calls, 0, 199);
    }

    private static void AssertRead(string text, string designation)
    {
        Assert.Equal(designation, ScrewThread.Parse(text).Designation);
        Assert.True(ScrewThread.TryParse(text, out ScrewThread? thread));
        Assert.Equal(designation, thread.ToString());
    }

    [Theory]
    [InlineData("M1 6g")]
    [InlineData("M16 6g")]
    public void A_metric_class_without_its_hyphen_is_not_guessed_at(string text) => Assert.False(ScrewThread.TryParse(text, out _));

    [Fact]
    public void A_profile_cannot_be_coarser_than_it_is_thick() => Assert.Equal("pitch", Assert.Throws<ArgumentOutOfRangeException>(
        () => ScrewThread.FromProfile(
            UnitsNet.Length.FromMillimeters(32), UnitsNet.Length.FromMillimeters(400), UnitsNet.Angle.Zero, 1,
            UnitsNet.Length.FromMillimeters(30), UnitsNet.Length.FromMillimeters(28))).ParamName);
}
