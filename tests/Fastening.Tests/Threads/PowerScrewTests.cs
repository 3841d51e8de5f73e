using Fastening.Equations;
using UnitsNet;

namespace Fastening.Tests.Threads;

public class PowerScrewTests
{
    /// <summary>Basic diameters of ISO 2904 (as DIN 103 prints them), typed from memory: pitch diameter, root diameter, minor diameter of the nut.</summary>
    [Theory]
    [InlineData(8, 1.5, 7.25, 6.2, 6.5)]
    [InlineData(10, 2, 9, 7.5, 8)]
    [InlineData(20, 4, 18, 15.5, 16)]
    [InlineData(28, 5, 25.5, 22.5, 23)]
    [InlineData(36, 6, 33, 29, 30)]
    [InlineData(40, 7, 36.5, 32, 33)]
    [InlineData(52, 8, 48, 43, 44)]
    [InlineData(60, 9, 55.5, 50, 51)]
    [InlineData(70, 10, 65, 59, 60)]
    [InlineData(100, 12, 94, 87, 88)]
    [InlineData(120, 14, 113, 104, 106)]
    [InlineData(300, 24, 288, 274, 276)]
    public void Trapezoidal_diameters(double d, double pitch, double pitchDiameter, double root, double nut)
    {
        ScrewThread thread = ScrewThread.IsoTrapezoidal(Millimeters(d), Millimeters(pitch));

        Close.To(pitchDiameter, thread.PitchDiameter.Millimeters);
        Close.To(root, thread.RootDiameter.Millimeters);
        Close.To(nut, thread.InternalMinorDiameter!.Value.Millimeters);
        Close.To(Math.PI / 4 * root * root, thread.MinorArea.SquareMillimeters);
        Assert.Equal(15, thread.LoadFlankAngle.Degrees);
        Assert.Equal(ThreadProfile.IsoTrapezoidal, thread.Profile);
        Assert.Equal(1, thread.Starts);
    }

    /// <summary>Basic pitch diameter and greatest minor diameter of the screw, ASME B1.5 general purpose, typed from memory, inches.</summary>
    [Theory]
    [InlineData(0.25, 16, 0.21875, 0.1775)]
    [InlineData(0.5, 10, 0.45, 0.38)]
    [InlineData(1, 5, 0.9, 0.78)]
    [InlineData(1.5, 4, 1.375, 1.23)]
    [InlineData(2, 4, 1.875, 1.73)]
    public void Acme_diameters(double d, double threadsPerInch, double pitchDiameter, double root)
    {
        ScrewThread thread = ScrewThread.Acme(Length.FromInches(d), threadsPerInch);

        Close.To(pitchDiameter, thread.PitchDiameter.Inches);
        Close.To(root, thread.RootDiameter.Inches);
        Close.To(d - 1 / threadsPerInch, thread.InternalMinorDiameter!.Value.Inches);
        Assert.Equal(14.5, thread.LoadFlankAngle.Degrees);
    }

    /// <summary>
    /// The flat at the crest by another route: half the pitch at the pitch line, narrowed by both flanks. Printed 0.366 P in ISO 2901 and
    /// 0.3707 P in ASME B1.5 (from memory).
    /// </summary>
    [Fact]
    public void Width_of_the_crest()
    {
        AssertCrest(0.366, ScrewThread.IsoTrapezoidal(Millimeters(40), Millimeters(7)), 5e-4);
        AssertCrest(0.3707, ScrewThread.Acme(Length.FromInches(1.5), 4), 5e-5);
        AssertCrest(0.5, ScrewThread.Square(Millimeters(32), Millimeters(4)), 1e-12);

        static void AssertCrest(double expected, ScrewThread thread, double tolerance)
        {
            double depth = (thread.NominalDiameter.Meters - thread.PitchDiameter.Meters) / 2;
            double width = thread.Pitch.Meters / 2 - 2 * depth * Math.Tan(thread.LoadFlankAngle.Radians);
            Assert.InRange(width / thread.Pitch.Meters, expected - tolerance, expected + tolerance);
        }
    }

    [Fact]
    public void The_square_thread_is_that_of_the_textbook()
    {
        // Shigley 9th ed. (2011), Example 8-1: d 32 mm, p 4 mm, two starts; d_m 30 mm, d_r 28 mm, l 8 mm.
        ScrewThread square = ScrewThread.Square(Millimeters(32), Millimeters(4), starts: 2);

        Close.To(30, square.PitchDiameter.Millimeters);
        Close.To(28, square.RootDiameter.Millimeters);
        Close.To(8, square.Lead.Millimeters);
        Close.To(8 / (30 * Math.PI), Math.Tan(square.LeadAngle.Radians));
        Assert.Equal(0, square.LoadFlankAngle.Degrees);
        Assert.Equal("square 32x4 mm, 2 starts", square.Designation);
    }

    [Fact]
    public void The_torque_to_raise_the_load_is_that_of_the_textbook()
    {
        // Shigley 9th ed. (2011), Example 8-1: 26.18 N·m to raise 6.4 kN at f = f_c = 0.08 with a 40 mm collar.
        FrictionTorqueModel screw = TorquePreloadModel.FromFriction(
                ScrewThread.Square(Millimeters(32), Millimeters(4), starts: 2),
                BearingSurface.Annulus(Millimeters(41), Millimeters(39)),
                FrictionCoefficients.Uniform(0.08))
            .WithConvention(TorqueConvention.Shigley);

        Assert.InRange(screw.TorqueFor(Force.FromKilonewtons(6.4)).NewtonMeters, 26.175, 26.185);
    }

    [Fact]
    public void Starts_multiply_the_lead_and_nothing_else()
    {
        ScrewThread one = ScrewThread.IsoTrapezoidal(Millimeters(40), Millimeters(7)), three = ScrewThread.IsoTrapezoidal(Millimeters(40), Millimeters(7), 3);
        ScrewThread acme = ScrewThread.Acme(Length.FromInches(1.5), 4, 2);

        Close.To(21, three.Lead.Millimeters);
        Close.To(3 * Math.Tan(one.LeadAngle.Radians), Math.Tan(three.LeadAngle.Radians));
        Assert.Equal(one.PitchDiameter, three.PitchDiameter);
        Assert.Equal(one.StressArea, three.StressArea);
        Assert.Equal("Tr40x7", one.Designation);
        Assert.Equal("Tr40x21 (P7)", three.Designation);
        Assert.Equal("1 1/2-4 ACME, 2 starts", acme.Designation);
        Close.To(0.5, acme.Lead.Inches);
    }

    [Theory]
    [InlineData("Tr40x14 (P7)")]
    [InlineData("1 1/2-4 ACME")]
    public void Derivations_end_on_the_areas(string designation)
    {
        ScrewThread thread = ScrewThread.Parse(designation);

        Assert.Equal(thread.StressArea.SquareMeters, Derivation.Of(() => thread.StressArea).Result);
        Assert.Equal(thread.MinorArea.SquareMeters, Derivation.Of(() => thread.MinorArea).Result);
    }

    [Theory]
    [InlineData(0, 7, 1, "diameter")]
    [InlineData(3000, 7, 1, "diameter")]
    [InlineData(40, 0, 1, "pitch")]
    [InlineData(40, 7.5, 1, "pitch")]
    [InlineData(40, 13, 1, "pitch")]
    [InlineData(40, 36, 1, "pitch")]
    [InlineData(40, 7, 0, "starts")]
    [InlineData(40, 7, 101, "starts")]
    public void A_trapezoidal_thread_out_of_its_domain_is_refused(double d, double pitch, int starts, string parameter) =>
        AssertRefused(parameter, () => ScrewThread.IsoTrapezoidal(Millimeters(d), Millimeters(pitch), starts));

    [Theory]
    [InlineData(0, 4, 1, "diameter")]
    [InlineData(1.5, 0, 1, "threadsPerInch")]
    [InlineData(1.5, 0.7, 1, "threadsPerInch")]
    [InlineData(1.5, double.NaN, 1, "threadsPerInch")]
    [InlineData(1.5, 4, 0, "starts")]
    public void An_Acme_thread_out_of_its_domain_is_refused(double inches, double threadsPerInch, int starts, string parameter) =>
        AssertRefused(parameter, () => ScrewThread.Acme(Length.FromInches(inches), threadsPerInch, starts));

    [Theory]
    [InlineData(32, 28.8, 1, "pitch")]
    [InlineData(32, -4, 1, "pitch")]
    [InlineData(32, 4, -2, "starts")]
    public void A_square_thread_out_of_its_domain_is_refused(double d, double pitch, int starts, string parameter) =>
        AssertRefused(parameter, () => ScrewThread.Square(Millimeters(d), Millimeters(pitch), starts));

    [Fact]
    public void The_printed_form_of_a_60_degree_thread_is_not_taken_for_a_power_screw()
    {
        var friction = new FrictionCoefficients(thread: 0.12, bearing: 0.10);
        BearingSurface bearing = BearingSurface.Annulus(Millimeters(60), Millimeters(42));
        foreach (string designation in new[] { "Tr40x7", "1 1/2-4 ACME" })
        {
            FrictionTorqueModel model = TorquePreloadModel.FromFriction(ScrewThread.Parse(designation), bearing, friction);
            ArgumentException refusal = Assert.Throws<ArgumentException>(() => model.WithConvention(TorqueConvention.Vdi2230));
            Assert.Contains(designation, refusal.Message, StringComparison.Ordinal);
        }
    }

    private static void AssertRefused(string parameter, Func<ScrewThread> create)
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(create);
        Assert.Equal(parameter, refusal.ParamName);
        Assert.Contains("it must be ", refusal.Message, StringComparison.Ordinal);
    }

    private static Length Millimeters(double value) => Length.FromMillimeters(value);
}
