using UnitsNet;

namespace Fastening.Tests.Materials;

public class BoltGradeTests
{
    /// <summary>
    /// Proof, yield, tensile in ksi. SAE J429 as in Shigley and Mischke 5th ed. (1989) p. 341 and Shigley 9th ed. (2011) Table 8-9; A325 to 1 in and A449 as
    /// in the former; tensile strength of A325 above 1 in, A490 and F3125 as in AISC 360-05 and 360-16. From memory: tensile and yield strength of
    /// SAE J429 5 to 1 in; proof stress and yield strength of A325 above 1 in, A490, F3125.
    /// </summary>
    [Theory]
    [InlineData("SAE J429 1", "1/4-20 UNC", 33, 36, 60)]
    [InlineData("SAE J429 1", "1 1/2-6 UNC", 33, 36, 60)]
    [InlineData("SAE J429 2", "3/4-10 UNC", 55, 57, 74)]
    [InlineData("SAE J429 2", "7/8-9 UNC", 33, 36, 60)]
    [InlineData("SAE J429 4", "1/2-13 UNC", 65, 100, 115)]
    [InlineData("SAE J429 5", "1/4-28 UNF", 85, 92, 120)]
    [InlineData("SAE J429 5", "1-8 UNC", 85, 92, 120)]
    [InlineData("SAE J429 5", "1 1/8-7 UNC", 74, 81, 105)]
    [InlineData("SAE J429 5", "1 1/2-12 UNF", 74, 81, 105)]
    [InlineData("SAE J429 5.2", "1-8 UNC", 85, 92, 120)]
    [InlineData("SAE J429 7", "1/2-13 UNC", 105, 115, 133)]
    [InlineData("SAE J429 8", "1 1/2-6 UNC", 120, 130, 150)]
    [InlineData("SAE J429 8.2", "1/4-20 UNC", 120, 130, 150)]
    [InlineData("ASTM A449", "1-8 UNC", 85, 92, 120)]
    [InlineData("ASTM A449", "1 1/8-7 UNC", 74, 81, 105)]
    [InlineData("ASTM A325", "1/2-13 UNC", 85, 92, 120)]
    [InlineData("ASTM A325", "1 1/8-7 UNC", 74, 81, 105)]
    [InlineData("ASTM A490", "1 1/2-6 UNC", 120, 130, 150)]
    [InlineData("ASTM F3125 A325", "1 1/2-6 UNC", 85, 92, 120)]
    [InlineData("ASTM F3125 A490", "3/4-10 UNC", 120, 130, 150)]
    public void Strength_of_the_grade(string designation, string thread, double proof, double yield, double tensile)
    {
        BoltStrength strength = BoltGrade.Parse(designation).StrengthFor(ScrewThread.Parse(thread));

        Assert.Equal(proof, strength.ProofLoadStress!.Value.KilopoundsForcePerSquareInch, 9);
        Assert.Equal(yield, strength.YieldStrength.KilopoundsForcePerSquareInch, 9);
        Assert.Equal(tensile, strength.TensileStrength.KilopoundsForcePerSquareInch, 9);
    }

    /// <summary>ASTM A193/A193M, from memory: tensile and yield strength in ksi (unified) or MPa (metric); no proof stress.</summary>
    [Theory]
    [InlineData("2 1/2-4 UNC", 125, 105)]
    [InlineData("2 3/4-4 UNC", 115, 95)]
    [InlineData("4-4 UNC", 115, 95)]
    [InlineData("M64", 860, 720)]
    public void Strength_of_B7(string thread, double tensile, double yield)
    {
        BoltStrength strength = BoltGrade.Parse("ASTM A193 B7").StrengthFor(ScrewThread.Parse(thread));
        Func<Pressure, double> read = thread[0] == 'M' ? p => p.Megapascals : p => p.KilopoundsForcePerSquareInch;

        Assert.Equal(tensile, read(strength.TensileStrength), 9);
        Assert.Equal(yield, read(strength.YieldStrength), 9);
        Assert.Null(strength.ProofLoadStress);
        Assert.Equal("ASTM A193/A193M, from memory", strength.Provenance!.ToString());
    }

    /// <summary>Tensile strength in MPa as in AISC 360-05 Table J3.1M; proof stress and yield strength from memory.</summary>
    [Theory]
    [InlineData("ASTM A325M", "M12", 600, 660, 830)]
    [InlineData("ASTM F3125 A325M", "M36", 600, 660, 830)]
    [InlineData("ASTM A490M", "M36", 830, 940, 1040)]
    [InlineData("ASTM F3125 A490M", "M20", 830, 940, 1040)]
    public void Strength_of_the_metric_grade(string designation, string thread, double proof, double yield, double tensile)
    {
        BoltStrength strength = BoltGrade.Parse(designation).StrengthFor(ScrewThread.Parse(thread));

        Assert.Equal(proof, strength.ProofLoadStress!.Value.Megapascals, 9);
        Assert.Equal(yield, strength.YieldStrength.Megapascals, 9);
        Assert.Equal(tensile, strength.TensileStrength.Megapascals, 9);
        Assert.EndsWith("proof stress and yield strength from memory", strength.Provenance!.Confidence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("SAE J429 5", "#10-24 UNC", "SAE J429 5 covers unified threads from 1/4 to 1 1/2 in, not #10-24 UNC;")]
    [InlineData("SAE J429 8", "1 3/4-5 UNC", "SAE J429 8 covers unified threads from 1/4 to 1 1/2 in, not 1 3/4-5 UNC;")]
    [InlineData("SAE J429 8.2", "1 1/8-7 UNC", "SAE J429 8.2 covers unified threads from 1/4 to 1 in, not")]
    [InlineData("ASTM F3125 A325", "7/16-14 UNC", "ASTM F3125 A325 covers unified threads from 1/2 to 1 1/2 in, not")]
    [InlineData("SAE J429 2", "M10", "SAE J429 2 covers unified threads from 1/4 to 1 1/2 in, not M10;")]
    [InlineData("ASTM A490M", "M10", "ASTM A490M covers ISO metric threads from M12 to M36, not M10;")]
    [InlineData("ASTM A490M", "M39", "ASTM A490M covers ISO metric threads from M12 to M36, not M39;")]
    [InlineData("ASTM A490M", "3/4-10 UNC", "ASTM A490M covers ISO metric threads from M12 to M36, not 3/4-10 UNC;")]
    public void Threads_outside_the_grade_are_refused(string designation, string thread, string start)
    {
        ArgumentException refusal = Assert.Throws<ArgumentException>(() => BoltGrade.Parse(designation).StrengthFor(ScrewThread.Parse(thread)));
        Assert.StartsWith(start, refusal.Message, StringComparison.Ordinal);
        Assert.Equal("thread", refusal.ParamName);
    }

    [Fact]
    public void A_custom_thread_fits_no_grade()
    {
        ScrewThread square = ScrewThread.FromProfile(
            Length.FromMillimeters(16), Length.FromMillimeters(4), Angle.Zero, 1, Length.FromMillimeters(14), Length.FromMillimeters(12));
        Assert.Contains(
            "covers unified threads to 4 in and ISO metric threads to M100, not custom",
            Assert.Throws<ArgumentException>(() => BoltGrade.Parse("A193 B7").StrengthFor(square)).Message,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1.0, 120)]
    [InlineData(1.0001, 105)]
    public void Grade_5_changes_above_1_inch(double inches, double tensile)
    {
        foreach (Length diameter in new[] { Length.FromInches(inches), Length.FromMillimeters(inches * 25.4) })
        {
            Assert.Equal(tensile, BoltGrade.Parse("SAE 5").StrengthFor(ScrewThread.Unified(diameter, 8)).TensileStrength.KilopoundsForcePerSquareInch, 9);
        }
    }

    [Theory]
    [InlineData("SAE J429 5", "SAE J429 5")]
    [InlineData("J429 Grade 5", "SAE J429 5")]
    [InlineData("sae grade 8", "SAE J429 8")]
    [InlineData("SAE Gr. 8.2", "SAE J429 8.2")]
    [InlineData("  A193   Gr B7 ", "ASTM A193 B7")]
    [InlineData("A325", "ASTM A325")]
    [InlineData("astm f3125 grade a325", "ASTM F3125 A325")]
    [InlineData("F3125 A490M", "ASTM F3125 A490M")]
    public void Usual_spellings_are_read(string text, string designation)
    {
        Assert.Equal(designation, BoltGrade.Parse(text).Designation);
        Assert.True(BoltGrade.TryParse(text, out BoltGrade? grade));
        Assert.Equal(designation, grade.ToString());
    }

    [Theory]
    [InlineData("")]
    [InlineData("5")]
    [InlineData("Grade 5")]
    [InlineData("SAE")]
    [InlineData("SAE J429")]
    [InlineData("SAE J429 3")]
    [InlineData("ASTM J429 5")]
    [InlineData("SAE A325")]
    [InlineData("F3125")]
    [InlineData("ASTM B7")]
    [InlineData("8.8")]
    [InlineData("SAE J429 5,2")]
    public void Other_text_is_refused_with_the_list(string text)
    {
        string message = Assert.Throws<FormatException>(() => BoltGrade.Parse(text)).Message;
        Assert.StartsWith($"'{text}' is not a bolt grade of the table: SAE J429 1, SAE J429 2, SAE J429 4, SAE J429 5,", message, StringComparison.Ordinal);
        Assert.False(BoltGrade.TryParse(text, out BoltGrade? none));
        Assert.Null(none);
    }

    [Fact]
    public void Null_and_a_long_text_are_refused()
    {
        Assert.Equal("designation", Assert.Throws<ArgumentNullException>(() => BoltGrade.Parse(null!)).ParamName);
        Assert.False(BoltGrade.TryParse(null, out _));
        Assert.InRange(Assert.Throws<FormatException>(() => BoltGrade.Parse(new string('5', 100_000))).Message.Length, 100, 600);
    }

    [Fact]
    public void Every_grade_is_listed_read_and_ordered_within_itself()
    {
        Assert.Equal(
            [
                "SAE J429 1", "SAE J429 2", "SAE J429 4", "SAE J429 5", "SAE J429 5.2", "SAE J429 7", "SAE J429 8", "SAE J429 8.2",
                "ASTM A449", "ASTM A325", "ASTM A490", "ASTM F3125 A325", "ASTM F3125 A490",
                "ASTM A325M", "ASTM A490M", "ASTM F3125 A325M", "ASTM F3125 A490M", "ASTM A193 B7",
            ],
            BoltGrade.All.Select(g => g.Designation));
        foreach (BoltGrade grade in BoltGrade.All)
        {
            Assert.Same(grade, BoltGrade.Parse(grade.Designation.ToLowerInvariant()));
            foreach (string size in new[] { "1/2-13 UNC", "1 1/2-6 UNC", "M16" })
            {
                if (!Fits(grade, ScrewThread.Parse(size), out BoltStrength strength)) continue;
                Assert.True(strength.YieldStrength < strength.TensileStrength, grade.Designation);
                Assert.True(strength.ProofLoadStress is not Pressure proof || proof < strength.YieldStrength, grade.Designation);
                Assert.NotNull(strength.Provenance);
            }
        }
    }

    [Fact]
    public void Any_text_is_read_or_refused()
    {
        const string Letters = "SAEJ429 5.2ASTMF3125A193B7GRrade\0\u202E٣½";
        var random = new Random(20260301);
        for (int i = 0; i < 200_000; i++)
        {
            string text = string.Concat(Enumerable.Range(0, random.Next(0, 16)).Select(_ => Letters[random.Next(Letters.Length)]));
            if (BoltGrade.TryParse(text, out BoltGrade? grade)) Assert.Contains(grade, BoltGrade.All);
            else if (i % 50 == 0) Assert.Throws<FormatException>(() => BoltGrade.Parse(text));
            if (PropertyClass.TryParse(text, out PropertyClass? found)) Assert.Contains(found, PropertyClass.All);
            else if (i % 50 == 0) Assert.Throws<FormatException>(() => PropertyClass.Parse(text));
        }
    }

    private static bool Fits(BoltGrade grade, ScrewThread thread, out BoltStrength strength)
    {
        try
        {
            strength = grade.StrengthFor(thread);
            return true;
        }
        catch (ArgumentException)
        {
            strength = null!;
            return false;
        }
    }
}
