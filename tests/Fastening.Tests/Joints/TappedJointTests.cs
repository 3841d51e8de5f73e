using UnitsNet;

namespace Fastening.Tests.Joints;

/// <summary>Bolt, cone and capacity each may say whether there is a nut: they must say the same, and who knows is not asked again.</summary>
public class TappedJointTests
{
    private static readonly ScrewThread M16 = ScrewThread.Parse("M16");
    private static readonly Length Grip = Length.FromMillimeters(40), BoltLength = Length.FromMillimeters(60);
    private static readonly AnyPlates Through = new([25, 15], [205, 110], 17.5, 22, 60, 30, JointForm.ThroughBolt);
    private static readonly AnyPlates IntoThread = Through with { Form = JointForm.TappedThread };
    private static readonly ClampedStack Shigley = ClampedStack.ShigleyFrusta(M16, Through.Layers);
    private static readonly ClampedStack Fit = ClampedStack.Wileman(M16, [AnyPlates.LayerOf(40, 205)], WilemanFit.Steel);
    private static readonly BoltCompliance WithNut = BoltCompliance.Vdi2230(M16, BoltLength, BoltLength, Grip, BoltHead.Hexagon, ElasticMaterial.Steel);
    private static readonly BoltCompliance Tapped = WithNut.TappedInto(ElasticMaterial.GreyCastIron);
    private static readonly BoltCompliance Textbook = BoltCompliance.Textbook(M16, BoltLength, BoltLength, Grip, ElasticMaterial.Steel);
    private static readonly BoltCompliance Sections = BoltCompliance.OfSections(M16, [BoltSection.OfRootArea(Grip, M16)], ElasticMaterial.Steel);

    /// <summary>60 mm of bolt on a grip of 40 mm: 20 mm of thread can engage. The effective grip of the textbook takes in half a diameter, 8 mm.</summary>
    [Theory]
    [InlineData(20, true, true)]
    [InlineData(20.1, false, true)]
    [InlineData(28, false, true)]
    [InlineData(28.1, false, false)]
    public void No_more_thread_engages_than_the_bolt_reaches(double millimeters, bool inVdi, bool inTextbook)
    {
        Pressure strength = Pressure.FromMegapascals(800);
        JointCapacity capacity = JointCapacity.NothingStated.WithEngagement(
            ThreadEngagement.For(M16, Length.FromMillimeters(millimeters)).StrengthFor(strength, 1.2 * strength, 0.6 * strength, 0.5 * strength));
        foreach ((Joint joint, bool fits) in new[]
        {
            (new Joint(WithNut, Through.Vdi), inVdi), (new Joint(Tapped, IntoThread.Vdi), inVdi), (new Joint(Textbook, Shigley), inTextbook),
            (new Joint(Sections, Shigley), true),
        })
        {
            Func<JointAssessment> assess = () => joint.Assess(
                new JointDuty(Force.Zero, Force.FromKilonewtons(5), LoadIntroduction.WorstCase, Embedding.None),
                new Range<Force>(Force.FromKilonewtons(28), Force.FromKilonewtons(39)), capacity);
            if (fits) Assert.Null(assess().Of(JointCheckKind.ThreadStripping).Lack);
            else Assert.Equal("capacity", Assert.Throws<ArgumentException>(assess).ParamName);
        }
    }

    [Fact]
    public void Strip_forces_without_bending_threads_say_so()
    {
        Pressure strength = Pressure.FromMegapascals(800);
        EngagementStrength areas = ThreadEngagement.For(M16, Length.FromMillimeters(16)).StrengthFor(strength, strength, 0.6 * strength, 0.5 * strength);
        Assert.EndsWith("; by the shear areas alone, without bending threads and widening nut", Check(areas), StringComparison.Ordinal);
        Assert.DoesNotContain("alone", Check(areas.InTappedHole(Length.FromMillimeters(16))), StringComparison.Ordinal);

        static string Check(EngagementStrength engagement) => new Joint(Tapped, IntoThread.Vdi).Assess(
            new JointDuty(Force.Zero, Force.FromKilonewtons(5), LoadIntroduction.WorstCase, Embedding.None),
            new Range<Force>(Force.FromKilonewtons(28), Force.FromKilonewtons(39)),
            JointCapacity.NothingStated.WithEngagement(engagement)).Of(JointCheckKind.ThreadStripping).ToString();
    }

    private static readonly JointCapacity NutFace = JointCapacity.NothingStated
        .WithNutBearing(BearingSurface.Annulus(Length.FromMillimeters(22), Length.FromMillimeters(17.5)), Pressure.FromMegapascals(700));

    /// <summary>One cone of the full height instead of two that meet changes the parts' stiffness by up to a factor of two.</summary>
    [Fact]
    public void Bolt_and_cone_must_be_of_one_form()
    {
        foreach (ClampedStack parts in new[] { Through.Vdi, Through.Frusta, Through.WideFrusta, Shigley })
        {
            ArgumentException refusal = Assert.Throws<ArgumentException>(() => new Joint(Tapped, parts));
            Assert.Equal("parts", refusal.ParamName);
            Assert.Contains("JointForm.TappedThread", refusal.Message, StringComparison.Ordinal);
            Assert.True(new Joint(WithNut, parts).LoadFactor > 0);
        }

        foreach (ClampedStack parts in new[] { IntoThread.Vdi, IntoThread.Frusta, IntoThread.WideFrusta })
        {
            ArgumentException refusal = Assert.Throws<ArgumentException>(() => new Joint(WithNut, parts));
            Assert.Equal("parts", refusal.ParamName);
            Assert.Contains("TappedInto", refusal.Message, StringComparison.Ordinal);
            Assert.True(new Joint(Tapped, parts).LoadFactor > 0);
        }
    }

    [Fact]
    public void Parts_tell_the_form_of_their_cone()
    {
        Assert.All(new[] { Through.Vdi, Through.Frusta, Shigley }, parts => Assert.Equal(JointForm.ThroughBolt, parts.Form));
        Assert.All(new[] { IntoThread.Vdi, IntoThread.Frusta }, parts => Assert.Equal(JointForm.TappedThread, parts.Form));
        Assert.Null(Fit.Form);
    }

    [Fact]
    public void Who_says_tapped_is_not_asked_for_a_nut()
    {
        foreach (Joint joint in new[]
        {
            new Joint(Tapped, IntoThread.Vdi), new Joint(Tapped, IntoThread.Frusta), new Joint(Textbook, IntoThread.WideFrusta),
            new Joint(Sections, IntoThread.Vdi),
        })
        {
            AssertNoNut(Assess(joint, JointCapacity.NothingStated));
            AssertNoNut(Assess(joint, NutFace.WithoutNut()));
            ArgumentException refusal = Assert.Throws<ArgumentException>(() => Assess(joint, NutFace));
            Assert.Equal("capacity", refusal.ParamName);
            Assert.Contains("tapped", refusal.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Joint_with_a_nut_cannot_do_without_it()
    {
        foreach (Joint joint in new[] { new Joint(WithNut, Through.Vdi), new Joint(WithNut, Through.Frusta), new Joint(WithNut, Shigley), new Joint(Sections, Through.Vdi) })
        {
            Assert.Equal(CheckOutcome.NotAssessed, Assess(joint, JointCapacity.NothingStated).Of(JointCheckKind.NutPressure).Outcome);
            Assert.Equal(CheckOutcome.Holds, Assess(joint, NutFace).Of(JointCheckKind.NutPressure).Outcome);
            ArgumentException refusal = Assert.Throws<ArgumentException>(() => Assess(joint, JointCapacity.NothingStated.WithoutNut()));
            Assert.Equal("capacity", refusal.ParamName);
            Assert.Contains("nut", refusal.Message, StringComparison.Ordinal);
        }
    }

    /// <summary>Textbooks count no nut and take two frusta for a tapped joint too, over the effective grip: only the user knows.</summary>
    [Fact]
    public void Where_neither_bolt_nor_cone_tells_the_capacity_does()
    {
        foreach (Joint joint in new[] { new Joint(Textbook, Shigley), new Joint(Textbook, Through.Frusta), new Joint(Textbook, Fit), new Joint(Sections, Fit) })
        {
            Assert.Equal(CheckOutcome.NotAssessed, Assess(joint, JointCapacity.NothingStated).Of(JointCheckKind.NutPressure).Outcome);
            Assert.Equal(CheckOutcome.Holds, Assess(joint, NutFace).Of(JointCheckKind.NutPressure).Outcome);
            AssertNoNut(Assess(joint, NutFace.WithoutNut()));
            Assert.Equal(CheckOutcome.Holds, Assess(joint, NutFace.WithoutNut().WithNutBearing(BearingSurface.ForHexagonHead(M16), Pressure.FromMegapascals(900))).Of(JointCheckKind.NutPressure).Outcome);
        }
    }

    private static JointAssessment Assess(Joint joint, JointCapacity capacity) => joint.Assess(
        new JointDuty(Force.Zero, Force.FromKilonewtons(7), LoadIntroduction.Between(0.3, 0.8), Embedding.None),
        new Range<Force>(Force.FromKilonewtons(31), Force.FromKilonewtons(52)), capacity);

    private static void AssertNoNut(JointAssessment assessment)
    {
        Assert.DoesNotContain(assessment.Checks, check => check.Kind == JointCheckKind.NutPressure);
        Assert.Equal(Enum.GetValues<JointCheckKind>().Length - 1, assessment.Checks.Count);
        Assert.Throws<InvalidOperationException>(() => assessment.Of(JointCheckKind.NutPressure));
    }
}
