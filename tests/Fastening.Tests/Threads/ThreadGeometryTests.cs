using Fastening.Equations;
using FsCheck.Xunit;

namespace Fastening.Tests.Threads;

[Properties(Arbitrary = [typeof(FreeThreads)])]
public class ThreadGeometryTests
{
    /// <summary>ISO 898-1:2013, nominal stress areas of coarse threads (three digits, half a unit of the last). A wrong pitch or diameter fails here.</summary>
    [Theory]
    [InlineData("M3", 5.03, 0.005)]
    [InlineData("M3.5", 6.78, 0.005)]
    [InlineData("M4", 8.78, 0.005)]
    [InlineData("M5", 14.2, 0.05)]
    [InlineData("M6", 20.1, 0.05)]
    [InlineData("M7", 28.9, 0.05)]
    [InlineData("M8", 36.6, 0.05)]
    [InlineData("M10", 58.0, 0.05)]
    [InlineData("M12", 84.3, 0.05)]
    [InlineData("M14", 115, 0.5)]
    [InlineData("M16", 157, 0.5)]
    [InlineData("M18", 192, 0.5)]
    [InlineData("M20", 245, 0.5)]
    [InlineData("M22", 303, 0.5)]
    [InlineData("M24", 353, 0.5)]
    [InlineData("M27", 459, 0.5)]
    [InlineData("M30", 561, 0.5)]
    [InlineData("M33", 694, 0.5)]
    [InlineData("M36", 817, 0.5)]
    [InlineData("M39", 976, 0.5)]
    public void Stress_areas_of_ISO_898_1(string designation, double area, double tolerance) =>
        Assert.InRange(ScrewThread.Parse(designation).StressArea.SquareMillimeters, area - tolerance, area + tolerance);

    /// <summary>Machinery's Handbook 31st ed. (2020), Table 4a, p. 1978, and 5c, p. 1983: pitch, root (UNR reference) and internal minor diameter, inches.</summary>
    [Theory]
    [InlineData("#6-32 UNC", 0.1177, 0.1008, 0.1042)]
    [InlineData("#12-24 UNC", 0.1889, 0.1664, 0.1709)]
    [InlineData("1/2-13 UNC", 0.4500, 0.4084, 0.4167)]
    [InlineData("9/16-12 UNC", 0.5084, 0.4633, 0.4723)]
    [InlineData("7/8-9 UNC", 0.8028, 0.7427, 0.7547)]
    [InlineData("1 3/16-8 UN", 1.1063, 1.0387, 1.0522)]
    public void Unified_diameters_of_the_handbook(string designation, double pitchDiameter, double root, double internalMinor)
    {
        ScrewThread thread = ScrewThread.Parse(designation);
        Assert.InRange(thread.PitchDiameter.Inches, pitchDiameter - 5e-5, pitchDiameter + 5e-5);
        Assert.InRange(thread.RootDiameter.Inches, root - 5e-5, root + 5e-5);
        Assert.InRange(thread.InternalMinorDiameter!.Value.Inches, internalMinor - 5e-5, internalMinor + 5e-5);
    }

    /// <summary>
    /// Shigley 9th ed. (2011), Table 8-2, half a unit of the last digit. A selection: other printed inch areas are rounded by hand and miss
    /// the formula by up to one unit.
    /// </summary>
    [Theory]
    [InlineData("#2-56 UNC", 0.00370, 5e-6)]
    [InlineData("#10-32 UNF", 0.0200, 5e-5)]
    [InlineData("1/4-20 UNC", 0.0318, 5e-5)]
    [InlineData("5/16-18 UNC", 0.0524, 5e-5)]
    [InlineData("7/16-20 UNF", 0.1187, 5e-5)]
    [InlineData("5/8-11 UNC", 0.226, 5e-4)]
    [InlineData("3/4-10 UNC", 0.334, 5e-4)]
    public void Unified_stress_areas(string designation, double area, double tolerance) =>
        Assert.InRange(ScrewThread.Parse(designation).StressArea.SquareInches, area - tolerance, area + tolerance);

    [Property]
    public void The_profile_drawn_by_its_triangle_has_these_diameters(FreeThread free)
    {
        (double sharpCrest, double sharpRoot, double height) = FundamentalTriangle(free);
        ScrewThread metric = ScrewThread.IsoMetric(free.Diameter, free.Pitch);
        ScrewThread unified = ScrewThread.Unified(free.Diameter, free.ThreadsPerInch);

        AssertClose(sharpCrest + sharpRoot, metric.PitchDiameter.Millimeters);
        AssertClose(sharpCrest + sharpRoot, unified.PitchDiameter.Millimeters);
        AssertClose(2 * (sharpRoot + height / 4), metric.InternalMinorDiameter!.Value.Millimeters);
        AssertClose(2 * (sharpRoot + height / 4), unified.InternalMinorDiameter!.Value.Millimeters);
        AssertClose(2 * (sharpRoot + height / 6), metric.RootDiameter.Millimeters);
        AssertClose(2 * (sharpRoot + height * 3 / 16), unified.RootDiameter.Millimeters);
    }

    [Property]
    public void Stress_area_and_lead_angle_by_another_route(FreeThread free)
    {
        (double sharpCrest, double sharpRoot, double height) = FundamentalTriangle(free);
        double pitch = free.Pitch.Millimeters;
        ScrewThread metric = ScrewThread.IsoMetric(free.Diameter, free.Pitch);
        ScrewThread unified = ScrewThread.Unified(free.Diameter, free.ThreadsPerInch);

        // Mean of pitch line and root of ISO 898-1; pitch line and the flat 3/4 H below the crest line for the unified thread.
        double metricRadius = ((sharpCrest + sharpRoot) / 2 + sharpRoot + height / 6) / 2;
        double unifiedRadius = (sharpCrest - height / 8) - 9.0 / 16 * height;
        AssertClose(Math.PI * metricRadius * metricRadius, metric.StressArea.SquareMillimeters);
        AssertClose(Math.PI * unifiedRadius * unifiedRadius, unified.StressArea.SquareMillimeters);
        AssertClose(pitch / (Math.PI * (sharpCrest + sharpRoot)), Math.Tan(metric.LeadAngle.Radians));
        AssertClose(pitch, metric.Lead.Millimeters);
    }

    [Property]
    public void Diameters_are_ordered(FreeThread free)
    {
        AssertOrdered(ScrewThread.IsoMetric(free.Diameter, free.Pitch));
        AssertOrdered(ScrewThread.Unified(free.Diameter, free.ThreadsPerInch));
    }

    [Property]
    public void Twice_the_size_has_twice_the_diameters_and_four_times_the_area(FreeThread free)
    {
        ScrewThread one = ScrewThread.IsoMetric(free.Diameter, free.Pitch);
        ScrewThread two = ScrewThread.IsoMetric(2 * free.Diameter, 2 * free.Pitch);

        AssertClose(2 * one.PitchDiameter.Millimeters, two.PitchDiameter.Millimeters);
        AssertClose(2 * one.RootDiameter.Millimeters, two.RootDiameter.Millimeters);
        AssertClose(2 * one.StressDiameter.Millimeters, two.StressDiameter.Millimeters);
        AssertClose(4 * one.StressArea.SquareMillimeters, two.StressArea.SquareMillimeters);
        AssertClose(one.LeadAngle.Degrees, two.LeadAngle.Degrees);
    }

    [Theory]
    [InlineData("M16x1.5")]
    [InlineData("1/2-13 UNC")]
    public void The_derivation_ends_with_the_stress_area(string designation)
    {
        ScrewThread thread = ScrewThread.Parse(designation);
        Assert.Equal(thread.StressArea.SquareMeters, Derivation.Of(() => thread.StressArea).Result);
    }

    internal static void AssertOrdered(ScrewThread thread)
    {
        double d = thread.NominalDiameter.Meters, area = thread.StressArea.SquareMeters;
        Assert.True(thread.RootDiameter < thread.PitchDiameter && thread.PitchDiameter.Meters < d, thread.Designation);
        Assert.True(thread.RootDiameter < thread.InternalMinorDiameter && thread.InternalMinorDiameter < thread.PitchDiameter, thread.Designation);
        Assert.InRange(thread.RootDiameter.Meters, 0.1 * d, d);
        Assert.InRange(area, Math.PI / 4 * Math.Pow(thread.RootDiameter.Meters, 2), Math.PI / 4 * d * d);
        Assert.True(thread.LeadAngle.Degrees is > 0 and < 45, thread.Designation);
        Assert.Equal(30, thread.LoadFlankAngle.Degrees);
        Assert.Equal(1, thread.Starts);
    }

    /// <summary>Radii of the sharp corners: the crest is cut H/8 below the corner of the triangle (ISO 68-1), whose flanks enclose 60°.</summary>
    private static (double SharpCrest, double SharpRoot, double Height) FundamentalTriangle(FreeThread free)
    {
        double height = free.Pitch.Millimeters / (2 * Math.Tan(Math.PI / 6));
        double sharpCrest = free.Diameter.Millimeters / 2 + height / 8;
        return (sharpCrest, sharpCrest - height, height);
    }

    private static void AssertClose(double expected, double actual) =>
        Assert.InRange(actual, expected * (1 - 1e-12), expected * (1 + 1e-12));

    /// <summary>A core that is the rest of a subtraction is rounding error long before it is gone: the equations refuse one below a tenth of the diameter.</summary>
    [Theory]
    [InlineData("thread.pitch-diameter", 17.0 / 12)]
    [InlineData("thread.internal-minor-diameter", 17.0 / 12)]
    [InlineData("thread.iso-root-diameter", 17.0 / 12)]
    [InlineData("thread.unified-root-diameter", 11.0 / 8)]
    [InlineData("thread.unified-minor-area-diameter", 3.0 / 2)]
    public void A_core_below_a_tenth_of_the_diameter_is_outside_the_domain(string id, double depth)
    {
        Fastening.Equations.Equation equation = Equations.EquationCatalogue.Find(id);
        Assert.True(equation.Evaluate(0.01, 0.899 * 0.01 / depth) > 0.0009);
        Assert.Throws<ArgumentOutOfRangeException>(() => equation.Evaluate(0.01, 0.901 * 0.01 / depth));
        Assert.Throws<ArgumentOutOfRangeException>(() => equation.Evaluate(0.01, 0.01 / depth * (1 - 1e-15)));
    }
}
