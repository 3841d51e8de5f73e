using Fastening.Equations;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Threads;

[Properties(Arbitrary = [typeof(FreeThreads)])]
public class ThreadEngagementTests
{
    /// <summary>
    /// Shear areas per inch of engagement, classes 2A and 2B at their limits, as handbooks print them after FED-STD-H28/2; typed from memory, half a
    /// unit of the last digit. (The internal area of 7/16-14 was remembered as 0.981, computed 0.978: not used.)
    /// </summary>
    [Theory]
    [InlineData("1/4-20 UNC", 0.368, 0.539)]
    [InlineData("1/4-28 UNF", 0.373, 0.521)]
    [InlineData("5/16-18 UNC", 0.470, 0.682)]
    [InlineData("3/8-16 UNC", 0.576, 0.828)]
    [InlineData("1/2-13 UNC", 0.779, 1.12)]
    public void Shear_areas_per_inch(string designation, double external, double inside)
    {
        ThreadEngagement engagement = ThreadEngagement.For(ScrewThread.Parse(designation), Length.FromInches(1));

        Assert.InRange(engagement.ExternalShearArea.SquareInches, external - 6e-4, external + 6e-4);
        Assert.InRange(engagement.InternalShearArea.SquareInches, inside - (inside > 1 ? 5e-3 : 6e-4), inside + (inside > 1 ? 5e-3 : 6e-4));
    }

    /// <summary>
    /// The helical surfaces from the triangle alone: points of the cylinder on which a thread shears are counted when they lie inside the sharp ridge,
    /// whose crest is H/2 beyond the pitch line and whose flanks slope by 30°.
    /// </summary>
    [Theory]
    [InlineData("M1.6")]
    [InlineData("M16")]
    [InlineData("M64")]
    [InlineData("1/2-13 UNC")]
    [InlineData("#0-80 UNF")]
    public void Shear_areas_by_counting_points_inside_the_ridges(string designation)
    {
        ScrewThread thread = ScrewThread.Parse(designation);
        ThreadLimits limits = ThreadLimits.ForMediumFit(thread);
        ThreadEngagement engagement = ThreadEngagement.For(limits, 3 * thread.Pitch);
        double pitch = thread.Pitch.Meters, halfHeight = pitch / (4 * Math.Tan(Math.PI / 6));

        double sharpCrest = limits.ExternalPitchMinimum.Meters / 2 + halfHeight, bore = limits.InternalMinorMaximum.Meters / 2;
        Close.To(Counted(bore, sharpCrest - bore, pitch), engagement.ExternalShearArea.SquareMeters, 2e-4);

        double sharpRoot = limits.InternalPitchMaximum.Meters / 2 - halfHeight, outside = limits.ExternalMajorMinimum.Meters / 2;
        Close.To(Counted(outside, outside - sharpRoot, pitch), engagement.InternalShearArea.SquareMeters, 2e-4);
    }

    private static double Counted(double radius, double belowTheTip, double pitch)
    {
        const int angles = 360, heights = 9973;
        double length = 3 * pitch, halfWidth = belowTheTip * Math.Tan(Math.PI / 6);
        long inside = 0;
        for (int i = 0; i < angles; i++)
        {
            double turn = (double)i / angles;
            for (int j = 0; j < heights; j++)
            {
                double fromRidge = Math.IEEERemainder((j + 0.5) / heights * length - turn * pitch, pitch);
                if (Math.Abs(fromRidge) < halfWidth) inside++;
            }
        }

        return 2 * Math.PI * radius * length * inside / ((double)angles * heights);
    }

    [Property]
    public void At_basic_size_the_ridges_are_three_quarters_and_seven_eighths_of_a_pitch(FreeThread free)
    {
        // From the ISO 68-1 figure: crest flats are P/4 (internal) and P/8 (external), so the metal of the other thread there is the rest of the pitch.
        ScrewThread thread = ScrewThread.IsoMetric(free.Diameter, free.Pitch);
        ThreadEngagement engagement = ThreadEngagement.For(ThreadLimits.AtBasicSize(thread), Length.FromMillimeters(10));

        Close.To(Math.PI * thread.InternalMinorDiameter!.Value.Millimeters * 10 * 3 / 4, engagement.ExternalShearArea.SquareMillimeters);
        Close.To(Math.PI * thread.NominalDiameter.Millimeters * 10 * 7 / 8, engagement.InternalShearArea.SquareMillimeters);
    }

    [Property]
    public void Areas_grow_in_proportion_to_the_length_and_with_the_square_of_the_size(FreeThread free)
    {
        ThreadEngagement one = At(free, 1, 7.5), longer = At(free, 1, 30), twice = At(free, 2, 15);

        Close.To(4 * one.ExternalShearArea.SquareMeters, longer.ExternalShearArea.SquareMeters);
        Close.To(4 * one.InternalShearArea.SquareMeters, longer.InternalShearArea.SquareMeters);
        Close.To(4 * one.ExternalShearArea.SquareMeters, twice.ExternalShearArea.SquareMeters);
        Close.To(4 * one.InternalShearArea.SquareMeters, twice.InternalShearArea.SquareMeters);
        Close.To(one.InternalShearArea.SquareMeters, longer.WithLength(Length.FromMillimeters(7.5)).InternalShearArea.SquareMeters);

        static ThreadEngagement At(FreeThread free, double scale, double millimeters) => ThreadEngagement.For(
            ThreadLimits.AtBasicSize(ScrewThread.IsoMetric(scale * free.Diameter, scale * free.Pitch)), Length.FromMillimeters(millimeters));
    }

    [Fact]
    public void A_looser_fit_has_less_area_than_the_basic_size()
    {
        foreach (string designation in ThreadLimitsTests.AllThreads)
        {
            ScrewThread thread = ScrewThread.Parse(designation);
            ThreadEngagement basic = ThreadEngagement.For(ThreadLimits.AtBasicSize(thread), thread.NominalDiameter);
            ThreadEngagement loose = ThreadEngagement.For(thread, thread.NominalDiameter);

            Assert.InRange(loose.ExternalShearArea / basic.ExternalShearArea, 0.55, 0.95);
            Assert.InRange(loose.InternalShearArea / basic.InternalShearArea, 0.55, 0.97);
            Assert.True(loose.InternalShearArea > loose.ExternalShearArea, designation);
        }
    }

    [Fact]
    public void Derivations_end_on_the_areas()
    {
        ThreadEngagement engagement = ThreadEngagement.For(ScrewThread.Parse("3/4-10 UNC"), Length.FromInches(0.7));

        Equations.DerivationCheck.EndsOn(engagement.ExternalShearArea.SquareMeters, Derivation.Of(() => engagement.ExternalShearArea));
        Equations.DerivationCheck.EndsOn(engagement.InternalShearArea.SquareMeters, Derivation.Of(() => engagement.InternalShearArea));
        Assert.Equal(2, Derivation.Of(() => engagement.InternalShearArea).Steps.Count);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-20)]
    [InlineData(1e-4)]
    [InlineData(1.1e6)]
    public void Lengths_out_of_their_domain_are_refused(double millimeters)
    {
        ScrewThread thread = ScrewThread.Parse("M16");
        Length length = Length.FromMillimeters(millimeters);
        ThreadEngagement engagement = ThreadEngagement.For(thread, Length.FromMillimeters(20));

        Assert.Equal("engagedLength", Assert.Throws<ArgumentOutOfRangeException>(() => ThreadEngagement.For(thread, length)).ParamName);
        Assert.Equal("engagedLength", Assert.Throws<ArgumentOutOfRangeException>(() => engagement.WithLength(length)).ParamName);
    }

    [Fact]
    public void Says_what_it_is() => CommaCulture.Run(() => Assert.Equal(
        "M16 6g/6H over 19.05 mm", ThreadEngagement.For(ScrewThread.Parse("M16"), Length.FromInches(0.75)).ToString()));
}
