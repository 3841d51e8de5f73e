using Fastening.Equations;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Tightening;

/// <summary>Each named convention against the formula of its source, written out here a second time in millimetres and newtons.</summary>
[Properties(Arbitrary = [typeof(Domain)], MaxTest = 200)]
public class TorqueConventionTests
{
    private static readonly Dictionary<string, Func<Numbers, double>> Formulas = new()
    {
        // ISO 16047:2005 (from memory): T_th/F = P/2π + µ d2/(2 cos 30°), and with the printed 0.577.
        ["ISO 16047"] = n => n.Pitch / (2 * Math.PI) + n.Friction * n.PitchDiameter / Math.Sqrt(3),
        ["ISO 16047, printed"] = n => n.Pitch / (2 * Math.PI) + 0.577 * n.PitchDiameter * n.Friction,

        // VDI 2230-1:2015 §5.4.3 (clause from memory).
        ["VDI 2230, printed"] = n => 0.16 * n.Pitch + 0.58 * n.PitchDiameter * n.Friction,

        // Machinery's Handbook 31st ed. p. 1665 and JIS B 1083: (P/π + µ d2 sec α')/2, tan α' = tan 30° cos φ.
        ["Machinery's Handbook / JIS"] = n =>
        {
            double lead = Math.Atan(n.Pitch / (Math.PI * n.PitchDiameter));
            return (n.Pitch / Math.PI + n.Friction * n.PitchDiameter / Math.Cos(Math.Atan(Math.Tan(Math.PI / 6) * Math.Cos(lead)))) / 2;
        },

        // Shigley 9th ed. eq. (8-5) with d_m midway between major and root diameter: (d_m/2)(l + π f d_m sec α)/(π d_m − f l sec α).
        ["Shigley"] = n => Inclined(n.Pitch, (n.Diameter + n.RootDiameter) / 2, n.Friction),

        // NASA TM-106943: (d_m/2)(tan ψ + µ sec α)/(1 − µ tan ψ sec α), the same diameter.
        ["NASA TM-106943"] = n => Tangents(n.Pitch, (n.Diameter + n.RootDiameter) / 2, n.Friction),

        // Mott 4th ed. ch. 17, ACME form, with the pitch diameter: D_p/2 (cos φ tan λ + f)/(cos φ − f tan λ).
        ["power screw"] = n =>
        {
            double tangent = n.Pitch / (Math.PI * n.PitchDiameter), cosine = Math.Cos(Math.PI / 6);
            return n.PitchDiameter / 2 * (cosine * tangent + n.Friction) / (cosine - n.Friction * tangent);
        },
    };

    public static TheoryData<string> Names => [.. TorqueConvention.Named.Select(convention => convention.Name)];

    [Fact]
    public void There_are_seven_and_each_has_its_name() =>
        Assert.Equal(Formulas.Keys.Order(StringComparer.Ordinal), TorqueConvention.Named.Select(c => c.Name).Order(StringComparer.Ordinal));

    [Property]
    public void Thread_torque_is_that_of_the_source(AnyJoint joint, AnyPreload preload)
    {
        var numbers = new Numbers(
            joint.DiameterMm, joint.PitchMm, joint.DiameterMm - 0.75 * Math.Sqrt(3) / 2 * joint.PitchMm,
            joint.DiameterMm - 17 / 12.0 * Math.Sqrt(3) / 2 * joint.PitchMm, joint.ThreadFriction);
        foreach (TorqueConvention convention in TorqueConvention.Named)
        {
            FrictionTorqueModel model = joint.Model.WithFriction(new FrictionCoefficients(joint.ThreadFriction, 0)).WithConvention(convention);
            double expected = Formulas[convention.Name](numbers) * preload.Newtons / 1e3;
            Close.To(expected, model.TorqueFor(preload.Force).NewtonMeters);
        }
    }

    /// <summary>Loosening is tightening with the lead reversed, in every convention.</summary>
    [Property]
    public void Loosening_torque_is_that_of_the_reversed_lead(AnyJoint joint, AnyPreload preload)
    {
        foreach (TorqueConvention convention in TorqueConvention.Named)
        {
            FrictionTorqueModel model = joint.Model.WithFriction(new FrictionCoefficients(joint.ThreadFriction, 0)).WithConvention(convention);
            var reversed = new Numbers(
                joint.DiameterMm, -joint.PitchMm, joint.DiameterMm - 0.75 * Math.Sqrt(3) / 2 * joint.PitchMm,
                joint.DiameterMm - 17 / 12.0 * Math.Sqrt(3) / 2 * joint.PitchMm, joint.ThreadFriction);
            double expected = Formulas[convention.Name](reversed) * preload.Newtons / 1e3;
            Close.To(expected, model.LooseningTorqueAt(preload.Force).NewtonMeters, scale: model.TorqueFor(preload.Force).NewtonMeters);
        }
    }

    [Theory]
    [InlineData("ISO 16047", "ISO 16047: linear form, flank angle in the axial section, pitch diameter")]
    [InlineData("ISO 16047, printed", "ISO 16047, printed: P/(2π) + 0.577 d_2 µ")]
    [InlineData("VDI 2230, printed", "VDI 2230, printed: 0.16 P + 0.58 d_2 µ")]
    [InlineData("Machinery's Handbook / JIS", "Machinery's Handbook / JIS: linear form, flank angle normal to the helix, pitch diameter, bearing under uniform pressure")]
    [InlineData("Shigley", "Shigley: exact form, flank angle in the axial section, mean of major and root diameter, bearing at 1.25 d")]
    [InlineData("power screw", "power screw: exact form, flank angle in the axial section, pitch diameter")]
    public void Text_says_what_was_chosen(string name, string text) =>
        Assert.Equal(text, TorqueConvention.Named.Single(convention => convention.Name == name).ToString());

    [Fact]
    public void A_change_shows_in_the_name_once() => Assert.Equal(
        "Shigley, changed: exact form, flank angle normal to the helix, pitch diameter",
        TorqueConvention.Shigley.WithFlankSection(FlankSection.Normal).WithMeanDiameter(MeanThreadDiameter.PitchDiameter)
            .WithBearing(BearingRule.MeanDiameter).ToString());

    /// <summary>Shigley 9th ed. eq. (8-26) and TM-106943: K = (d_m/2d)(…) + 0.625 f_c; the collar's part by difference.</summary>
    [Theory]
    [InlineData("3/4-10 UNC")]
    [InlineData("M16")]
    public void Shigley_collar_adds_0_625_of_its_friction_to_K(string designation)
    {
        ScrewThread thread = ScrewThread.Parse(designation);
        FrictionTorqueModel model = TorquePreloadModel
            .FromFriction(thread, BearingSurface.ForShigleyCollar(thread), new FrictionCoefficients(0.15, 0.12)).WithConvention(TorqueConvention.Shigley);
        double threadAlone = model.WithFriction(new FrictionCoefficients(0.15, 0)).NutFactor;
        Assert.Equal(0.625 * 0.12, model.NutFactor - threadAlone, 12);
        Assert.Equal(model.NutFactor, Derivation.Of(() => model.NutFactor).Result);
        Assert.Contains(Derivation.Of(() => model.NutFactor).Steps, step => step.Equation.Id == "torque.textbook-bearing-diameter");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_exact_forms_alone_can_jam_and_the_printed_ones_know_60_degrees_only(string name)
    {
        // c µ tan φ = 1.155·2·12/(8π) = 1.10 on the pitch diameter, 1.07 on the textbook's.
        ScrewThread steep = ScrewThread.FromProfile(
            Length.FromMillimeters(10), Length.FromMillimeters(3), Angle.FromDegrees(30), 4, Length.FromMillimeters(8), Length.FromMillimeters(6.5));
        BearingSurface ring = BearingSurface.Annulus(Length.FromMillimeters(20), Length.FromMillimeters(11));
        TorqueConvention convention = TorqueConvention.Named.Single(c => c.Name == name);
        FrictionTorqueModel model = TorquePreloadModel.FromFriction(steep, ring, new FrictionCoefficients(2, 0.1));
        if (convention.Form == TorqueForm.Linear)
        {
            Assert.True(model.WithConvention(convention).NutFactor > 1);
        }
        else
        {
            ArgumentException refusal = Assert.Throws<ArgumentException>(() => model.WithConvention(convention));
            Assert.Contains(convention.Form == TorqueForm.Exact ? "no torque turns the thread" : "60° threads", refusal.Message, StringComparison.Ordinal);
        }
    }

    private static double Inclined(double lead, double mean, double friction)
    {
        double secant = 1 / Math.Cos(Math.PI / 6);
        return mean / 2 * (lead + Math.PI * friction * mean * secant) / (Math.PI * mean - friction * lead * secant);
    }

    private static double Tangents(double lead, double mean, double friction)
    {
        double tangent = lead / (Math.PI * mean), secant = 1 / Math.Cos(Math.PI / 6);
        return mean / 2 * (tangent + friction * secant) / (1 - friction * tangent * secant);
    }

    private sealed record Numbers(double Diameter, double Pitch, double PitchDiameter, double RootDiameter, double Friction);

    [Fact]
    public void Shigley_takes_the_root_of_the_minor_area_for_unified_threads()
    {
        // Shigley 9th ed., Example 8-3(c), p. 440: 3/4-16 UNF has d_m = 0.7093 in and a lead angle of 1.6066°. The book takes
        // d_r = 0.6685 in from the tabulated area 0.351 in², 0.0003 in below the exact one; hence 2e-4.
        double c = 1 / Math.Cos(Math.PI / 6), tangent = Math.Tan(1.6066 * Math.PI / 180), friction = 0.15;
        double printed = 0.7093 * 0.0254 / 2 * (tangent + c * friction) / (1 - c * friction * tangent);
        FrictionTorqueModel model = TorquePreloadModel.FromFriction(
            ScrewThread.Parse("3/4-16 UNF"), BearingSurface.Annulus(Length.FromInches(1.125), Length.FromInches(0.8)), new FrictionCoefficients(friction, 0))
            .WithConvention(TorqueConvention.Shigley);
        Close.To(printed, model.TorqueFor(Force.FromNewtons(1)).NewtonMeters, 2e-4);
    }
}
