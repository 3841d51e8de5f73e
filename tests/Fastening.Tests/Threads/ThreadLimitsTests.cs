using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening.Tests.Threads;

/// <summary>The limits of size: data files against the formulas of the standards, and refusals.</summary>
public class ThreadLimitsTests
{
    private static readonly double[] DiameterRanges = [0.99, 1.4, 2.8, 5.6, 11.2, 22.4, 45, 90];

    public static TheoryData<string> MetricThreads => [.. Names("iso-965-limits-6g-6h.csv")];

    public static TheoryData<string> UnifiedThreads => [.. Names("asme-b1-1-limits-2a-2b.csv")];

    internal static IEnumerable<string> AllThreads => Names("iso-965-limits-6g-6h.csv").Concat(Names("asme-b1-1-limits-2a-2b.csv"));

    /// <summary>
    /// ISO 965-1, formulas behind the tables (from memory), in µm with P and d in mm; the tables round to preferred numbers, up to 5 % away, and the
    /// deviation by up to a micrometre.
    /// </summary>
    [Theory]
    [MemberData(nameof(MetricThreads))]
    public void Metric_limits_follow_from_the_tolerance_formulas(string designation)
    {
        ScrewThread thread = ScrewThread.Parse(designation);
        ThreadLimits limits = ThreadLimits.ForMediumFit(thread);
        double d = thread.NominalDiameter.Millimeters, p = thread.Pitch.Millimeters;
        int range = Array.FindIndex(DiameterRanges, high => d <= high);
        double mean = Math.Sqrt(DiameterRanges[range - 1] * DiameterRanges[range]);

        double allowance = 15 + 11 * p;
        double major = 180 * Math.Pow(p, 2.0 / 3) - 3.15 / Math.Sqrt(p);
        double pitch = 90 * Math.Pow(p, 0.4) * Math.Pow(mean, 0.1);
        double minor = p <= 0.8 ? 433 * p - 190 * Math.Pow(p, 1.22) : 230 * Math.Pow(p, 0.7);
        AssertBelow(d, limits.ExternalMajorMinimum, allowance, major);
        AssertBelow(d - 0.6495191 * p, limits.ExternalPitchMinimum, allowance, pitch);
        AssertBelow(-(d - 1.0825318 * p), -limits.InternalMinorMaximum, 0, minor);
        AssertBelow(-(d - 0.6495191 * p), -limits.InternalPitchMaximum, 0, 1.32 * pitch);
        Assert.Equal("6g/6H", limits.Fit);

        static void AssertBelow(double basic, Length limit, double allowance, double tolerance) =>
            Assert.InRange((basic - limit.Millimeters) * 1000, allowance + 0.94 * tolerance - 2, allowance + 1.06 * tolerance + 2);
    }

    /// <summary>ASME B1.1, formulas (from memory), inches: 2A and 2B over a length of one diameter; printed to 0.0001 in, the internal minor diameter to 0.001 in.</summary>
    [Theory]
    [MemberData(nameof(UnifiedThreads))]
    public void Unified_limits_follow_from_the_tolerance_formulas(string designation)
    {
        ScrewThread thread = ScrewThread.Parse(designation);
        ThreadLimits limits = ThreadLimits.ForMediumFit(thread);
        double d = thread.NominalDiameter.Inches, p = thread.Pitch.Inches;

        double pitch = 0.0015 * Math.Cbrt(d) + 0.0015 * Math.Sqrt(d) + 0.015 * Math.Cbrt(p * p);
        double allowance = 0.3 * pitch, greatest = 0.25 * p - 0.4 * p * p;
        double minor = d >= 0.25 ? greatest : Math.Min(Math.Max(0.05 * Math.Cbrt(p * p) + 0.03 * p / d - 0.002, greatest), 0.394 * p);
        AssertNear(d - allowance - 0.06 * Math.Cbrt(p * p), limits.ExternalMajorMinimum, 2e-4);
        AssertNear(d - 0.6495191 * p - allowance - pitch, limits.ExternalPitchMinimum, 2e-4);
        AssertNear(d - 1.0825318 * p + minor, limits.InternalMinorMaximum, 1.5e-3);
        AssertNear(d - 0.6495191 * p + 1.3 * pitch, limits.InternalPitchMaximum, 2e-4);
        Assert.Equal("2A/2B", limits.Fit);

        static void AssertNear(double expected, Length limit, double tolerance) =>
            Assert.InRange(limit.Inches, expected - tolerance, expected + tolerance);
    }

    [Fact]
    public void Every_row_is_there_and_says_how_sure_it_is()
    {
        IReadOnlyList<DataRow> metric = DataFile.Read("iso-965-limits-6g-6h.csv"), unified = DataFile.Read("asme-b1-1-limits-2a-2b.csv");

        Assert.Equal((56, 53), (metric.Count, unified.Count));
        Assert.All(metric, row => Assert.Contains(row["confidence"], new[] { "several sources", "computed" }));
        Assert.All(unified, row => Assert.Contains(row["confidence"], new[] { "tabulated", "partly tabulated", "computed" }));
        Assert.All(metric.Concat(unified), row => Assert.Equal(row["thread"], ScrewThread.Parse(row["thread"]).Designation));
    }

    [Fact]
    public void The_free_factories_find_the_tables_too() =>
        Assert.Equal(14.21, ThreadLimits.ForMediumFit(ScrewThread.IsoMetric(Millimeters(16), Millimeters(2))).InternalMinorMaximum.Millimeters, 12);

    [Theory]
    [InlineData("M16x1")]
    [InlineData("1/2-28 UNEF")]
    [InlineData("Tr40x7")]
    public void Threads_outside_the_tables_are_refused(string designation)
    {
        ArgumentException refusal = Assert.Throws<ArgumentException>(() => ThreadLimits.ForMediumFit(ScrewThread.Parse(designation)));
        Assert.Equal("thread", refusal.ParamName);
        Assert.Contains("ThreadLimits.FromDiameters", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Basic_sizes_and_given_limits_are_for_60_degrees()
    {
        ScrewThread trapezoidal = ScrewThread.Parse("Tr40x7");
        Assert.Equal("thread", Assert.Throws<ArgumentException>(() => ThreadLimits.AtBasicSize(trapezoidal)).ParamName);
        Assert.Equal("thread", Assert.Throws<ArgumentException>(
            () => ThreadLimits.FromDiameters(trapezoidal, Millimeters(40), Millimeters(36.5), Millimeters(33), Millimeters(36.5))).ParamName);

        ThreadLimits basic = ThreadLimits.AtBasicSize(ScrewThread.Parse("M16"));
        Assert.Equal([16, 14.701, 13.835, 14.701], new[]
        {
            basic.ExternalMajorMinimum, basic.ExternalPitchMinimum, basic.InternalMinorMaximum, basic.InternalPitchMaximum,
        }.Select(l => Math.Round(l.Millimeters, 3)));
    }

    [Theory]
    [InlineData(13.9, 14.5, 14.2, 14.9, "externalMajorMinimum")]
    [InlineData(18.1, 14.5, 14.2, 14.9, "externalMajorMinimum")]
    [InlineData(15.7, 12.6, 14.2, 14.9, "externalPitchMinimum")]
    [InlineData(15.7, 16.0, 14.2, 14.9, "externalPitchMinimum")]
    [InlineData(15.7, 12.8, 14.6, 14.9, "externalPitchMinimum")]
    [InlineData(15.7, 14.5, 15.75, 14.9, "internalMinorMaximum")]
    [InlineData(14.1, 14.5, 14.1, 14.9, "internalMinorMaximum")]
    [InlineData(15.7, 14.5, 14.2, 16.8, "internalPitchMaximum")]
    [InlineData(14.8, 14.5, 14.2, 16.6, "internalPitchMaximum")]
    public void Diameters_that_leave_no_thread_are_refused(double major, double pitch, double minor, double internalPitch, string parameter)
    {
        ScrewThread thread = ScrewThread.Parse("M16");
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(
            () => ThreadLimits.FromDiameters(thread, Millimeters(major), Millimeters(pitch), Millimeters(minor), Millimeters(internalPitch)));
        Assert.Equal(parameter, refusal.ParamName);
        Assert.StartsWith(parameter + " is ", refusal.Message, StringComparison.Ordinal);
    }

    /// <summary>The form above 100 ksi as printed, π (E_min/2 − 0.16238/n)², from memory; at the basic pitch diameter it is the ordinary stress area.</summary>
    [Fact]
    public void Stress_area_of_high_strength_bolts()
    {
        ScrewThread thread = ScrewThread.Parse("1/2-13 UNC");
        ThreadLimits limits = ThreadLimits.ForMediumFit(thread);

        double printed = Math.PI * Math.Pow(0.4435 / 2 - 0.16238 / 13, 2);
        Close.To(printed, limits.HighStrengthStressArea!.Value.SquareInches, 1e-5);
        Close.To(thread.StressArea.SquareMeters, ThreadLimits.AtBasicSize(thread).HighStrengthStressArea!.Value.SquareMeters);
        Equations.DerivationCheck.EndsOn(limits.HighStrengthStressArea.Value.SquareMeters, Derivation.Of(() => limits.HighStrengthStressArea));

        ThreadLimits metric = ThreadLimits.ForMediumFit(ScrewThread.Parse("M16"));
        Assert.Null(metric.HighStrengthStressArea);
        Assert.Throws<InvalidOperationException>(() => Derivation.Of(() => metric.HighStrengthStressArea));
    }

    private static IEnumerable<string> Names(string file) => DataFile.Read(file).Select(row => row["thread"]);

    private static Length Millimeters(double value) => Length.FromMillimeters(value);

    [Fact]
    public void Swapped_pitch_diameters_would_promise_too_much_metal_and_are_refused()
    {
        // M16 6g/6H of ISO 965-2: E_s 14.503 and E_n 14.913; swapped, the shear areas come out 16 to 20 % too large.
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() => ThreadLimits.FromDiameters(
            ScrewThread.Parse("M16"), Millimeters(15.682), Millimeters(14.913), Millimeters(14.21), Millimeters(14.503)));
        Assert.Equal("externalPitchMinimum", refusal.ParamName);
        Assert.NotNull(ThreadLimits.FromDiameters(
            ScrewThread.Parse("M16"), Millimeters(15.682), Millimeters(14.503), Millimeters(14.21), Millimeters(14.913)));
    }
}
