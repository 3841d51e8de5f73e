using Fastening.Equations;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Threads;

/// <summary>Minor areas and the tabulated stress area.</summary>
[Properties(Arbitrary = [typeof(FreeThreads)])]
public class ThreadAreaTests
{
    /// <summary>ISO 898-1:2013, nominal stress areas as printed, coarse threads (Tables 4 and 5) and fine threads (Tables 6 and 7); typed from memory.</summary>
    [Theory]
    [InlineData("M3", 5.03)]
    [InlineData("M3.5", 6.78)]
    [InlineData("M4", 8.78)]
    [InlineData("M5", 14.2)]
    [InlineData("M6", 20.1)]
    [InlineData("M7", 28.9)]
    [InlineData("M8", 36.6)]
    [InlineData("M10", 58.0)]
    [InlineData("M12", 84.3)]
    [InlineData("M14", 115)]
    [InlineData("M16", 157)]
    [InlineData("M18", 192)]
    [InlineData("M20", 245)]
    [InlineData("M22", 303)]
    [InlineData("M24", 353)]
    [InlineData("M27", 459)]
    [InlineData("M30", 561)]
    [InlineData("M33", 694)]
    [InlineData("M36", 817)]
    [InlineData("M39", 976)]
    [InlineData("M8x1", 39.2)]
    [InlineData("M10x1.25", 61.2)]
    [InlineData("M10x1", 64.5)]
    [InlineData("M12x1.5", 88.1)]
    [InlineData("M12x1.25", 92.1)]
    [InlineData("M14x1.5", 125)]
    [InlineData("M16x1.5", 167)]
    [InlineData("M18x1.5", 216)]
    [InlineData("M20x1.5", 272)]
    [InlineData("M22x1.5", 333)]
    [InlineData("M24x2", 384)]
    [InlineData("M27x2", 496)]
    [InlineData("M30x2", 621)]
    [InlineData("M33x2", 761)]
    [InlineData("M36x3", 865)]
    [InlineData("M39x3", 1030)]
    public void Tabulated_stress_areas_of_ISO_898_1(string designation, double squareMillimeters) =>
        Assert.Equal(squareMillimeters, ScrewThread.Parse(designation).TabulatedStressArea!.Value.SquareMillimeters);

    [Theory]
    [InlineData("1/2-13 UNC")]
    [InlineData("Tr40x7")]
    public void Other_profiles_have_no_such_table(string designation) => Assert.Null(ScrewThread.Parse(designation).TabulatedStressArea);

    [Property]
    public void The_tabulated_area_is_within_half_a_unit_of_its_third_digit(FreeThread free)
    {
        ScrewThread thread = ScrewThread.IsoMetric(free.Diameter, free.Pitch);
        double exact = thread.StressArea.SquareMillimeters, tabulated = thread.TabulatedStressArea!.Value.SquareMillimeters;

        string digits = tabulated.ToString("E15", System.Globalization.CultureInfo.InvariantCulture);
        double unit = Math.Pow(10, Math.Floor(Math.Log10(exact)) - 2);
        Assert.InRange(Math.Abs(exact - tabulated), 0, unit / 2 * (1 + 1e-9));
        Assert.Matches("^[1-9][.][0-9]{2}(0{9}|9{9})", digits);
    }

    /// <summary>Minor areas in square inches: Shigley 9th ed. (2011) Table 8-2 and Machinery's Handbook 31st ed. (2020), one unit of the last digit.</summary>
    [Theory]
    [InlineData("#2-56 UNC", 0.0031, 1e-4)]
    [InlineData("#3-56 UNF", 0.00451, 1e-5)]
    [InlineData("#6-32 UNC", 0.00745, 1e-5)]
    [InlineData("#10-32 UNF", 0.0175, 1e-4)]
    [InlineData("1/4-20 UNC", 0.0269, 1e-4)]
    [InlineData("5/16-18 UNC", 0.0454, 1e-4)]
    [InlineData("7/16-20 UNF", 0.1090, 1e-4)]
    [InlineData("5/8-11 UNC", 0.202, 1e-3)]
    [InlineData("3/4-16 UNF", 0.351, 1e-3)]
    [InlineData("1-8 UNC", 0.551, 1e-3)]
    [InlineData("1 1/2-12 UNF", 1.521, 1e-3)]
    public void Unified_minor_areas(string designation, double area, double unit) =>
        Assert.InRange(ScrewThread.Parse(designation).MinorArea.SquareInches, area - unit, area + unit);

    /// <summary>Shigley Table 8-1, minor-diameter areas in mm², typed from memory; one unit of the last digit.</summary>
    [Theory]
    [InlineData("M6", 17.9, 0.1)]
    [InlineData("M8", 32.8, 0.1)]
    [InlineData("M10", 52.3, 0.1)]
    [InlineData("M12", 76.3, 0.1)]
    [InlineData("M16", 144, 1)]
    [InlineData("M20", 225, 1)]
    [InlineData("M24", 324, 1)]
    [InlineData("M30", 519, 1)]
    public void Metric_minor_areas(string designation, double area, double unit) =>
        Assert.InRange(ScrewThread.Parse(designation).MinorArea.SquareMillimeters, area - unit, area + unit);

    [Property]
    public void The_minor_area_is_drawn_by_the_triangle(FreeThread free)
    {
        double height = free.Pitch.Millimeters / (2 * Math.Tan(Math.PI / 6));
        double sharpCrest = free.Diameter.Millimeters / 2 + height / 8;

        // ISO: the design root lies H/6 above the sharp root. Unified: 3/4 H below the major diameter, on the radius.
        double metric = sharpCrest - height + height / 6, unified = sharpCrest - height / 8 - 3 * height / 4;
        Close.To(Math.PI * metric * metric, ScrewThread.IsoMetric(free.Diameter, free.Pitch).MinorArea.SquareMillimeters);
        Close.To(Math.PI * unified * unified, ScrewThread.Unified(free.Diameter, free.ThreadsPerInch).MinorArea.SquareMillimeters);
    }

    [Fact]
    public void A_custom_profile_has_the_minor_area_of_its_root() => Close.To(
        Math.PI / 4 * 28 * 28,
        ScrewThread.FromProfile(
            Length.FromMillimeters(32), Length.FromMillimeters(4), Angle.Zero, 1, Length.FromMillimeters(30), Length.FromMillimeters(28)).MinorArea.SquareMillimeters);

    [Theory]
    [InlineData("M16")]
    [InlineData("1/2-13 UNC")]
    public void The_derivation_ends_with_the_minor_area(string designation)
    {
        ScrewThread thread = ScrewThread.Parse(designation);
        Equations.DerivationCheck.EndsOn(thread.MinorArea.SquareMeters, Derivation.Of(() => thread.MinorArea));
    }
}
