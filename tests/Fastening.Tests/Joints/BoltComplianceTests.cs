using Fastening.Equations;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Joints;

[Properties(Arbitrary = [typeof(JointDomain)], MaxTest = 300)]
public class BoltComplianceTests
{
    private static readonly ScrewThread M16 = ScrewThread.Parse("M16");

    /// <summary>By hand, from printed dimensions: d 16, d₃ 13.546 mm, 50 mm grip, 30 mm shank, hexagon head, nut, 205 GPa.</summary>
    [Fact]
    public void A_bolt_of_vdi_2230_by_hand()
    {
        BoltCompliance bolt = BoltCompliance.Vdi2230(
            M16, Length.FromMillimeters(70), Length.FromMillimeters(40), Length.FromMillimeters(50), BoltHead.Hexagon, ElasticMaterial.Steel);
        const double Nominal = 201.062, Root = 144.12; // mm²
        double expected = (8 / Nominal + 30 / Nominal + 20 / Root + 8 / Root + 6.4 / Nominal) / 205e3; // mm/N
        Close.To(expected, bolt.MetersPerNewton * 1e3, 2e-5);
        Close.To(1 / expected, bolt.Stiffness.NewtonsPerMillimeter, 2e-5);
        Assert.False(bolt.IsTapped);
    }

    [Property]
    public void A_bolt_of_vdi_2230_is_its_sections_in_series(AnyBolt bolt)
    {
        double d = bolt.Thread.NominalDiameter.Millimeters, root = bolt.Thread.RootDiameter.Millimeters;
        double nominalArea = Math.PI * d * d / 4, rootArea = Math.PI * root * root / 4;
        double head = bolt.Head == BoltHead.Hexagon ? 0.5 : 0.4;
        double lengths = (head * d + bolt.ShankMm + 0.4 * d) / nominalArea + (bolt.GripMm - bolt.ShankMm + 0.5 * d) / rootArea;
        Close.To(lengths / bolt.ModulusGpa * 1e-6, bolt.Vdi.MetersPerNewton);
    }

    [Property]
    public void A_textbook_bolt_is_shank_and_thread_in_series(AnyBolt bolt)
    {
        double shank = Math.PI / 4 * Math.Pow(bolt.Thread.NominalDiameter.Millimeters, 2), stressed = bolt.Thread.StressArea.SquareMillimeters;
        double lengths = bolt.ShankMm / shank + (bolt.GripMm - bolt.ShankMm) / stressed;
        Close.To(lengths / bolt.ModulusGpa * 1e-6, bolt.Textbook.MetersPerNewton);
    }

    [Property]
    public void Sections_written_out_give_the_same_bolt(AnyBolt bolt)
    {
        Length shank = Length.FromMillimeters(bolt.ShankMm), free = Length.FromMillimeters(bolt.GripMm - bolt.ShankMm);
        if (free > Length.Zero && free < Length.FromMicrometers(1)) return; // shorter than a section may be
        List<BoltSection> sections = [];
        if (shank > Length.Zero) sections.Add(BoltSection.OfDiameter(shank, bolt.Thread.NominalDiameter));
        if (free > Length.Zero) sections.Add(BoltSection.OfRootArea(free, bolt.Thread));
        BoltCompliance written = BoltCompliance.Vdi2230(bolt.Thread, sections, bolt.Head, bolt.Material);
        Close.To(bolt.Vdi.MetersPerNewton, written.MetersPerNewton);
        Close.To(bolt.Vdi.TwistRadiansPerNewtonMeter!.Value, written.TwistRadiansPerNewtonMeter!.Value);
        Assert.True(BoltCompliance.OfSections(bolt.Thread, sections, bolt.Material).MetersPerNewton < written.MetersPerNewton);
    }

    [Property]
    public void A_tapped_part_takes_the_place_of_the_nut(AnyBolt bolt)
    {
        ElasticMaterial soft = ElasticMaterial.CastAluminium;
        double d = bolt.Thread.NominalDiameter.Millimeters, area = Math.PI * d * d / 4;
        double change = (0.33 * d / 75 - 0.4 * d / bolt.ModulusGpa) / area * 1e-6;
        BoltCompliance tapped = bolt.Vdi.TappedInto(soft);
        Close.To(bolt.Vdi.MetersPerNewton + change, tapped.MetersPerNewton);
        Assert.True(tapped.IsTapped);
        Assert.Equal(tapped.MetersPerNewton, tapped.TappedInto(soft).MetersPerNewton);
        Assert.Equal(bolt.Vdi.TwistRadiansPerNewtonMeter, tapped.TwistRadiansPerNewtonMeter);
    }

    [Property]
    public void Twist_is_that_of_round_bars_in_series(AnyBolt bolt)
    {
        double shear = bolt.ModulusGpa / (2 * 1.29) * 1e9, d = bolt.Thread.NominalDiameter.Meters, root = bolt.Thread.RootDiameter.Meters;
        double expected = 32 / (Math.PI * shear) * (bolt.ShankMm * 1e-3 / Math.Pow(d, 4) + (bolt.GripMm - bolt.ShankMm) * 1e-3 / Math.Pow(root, 4));
        Close.To(expected, bolt.Vdi.TwistRadiansPerNewtonMeter!.Value);
    }

    [Property]
    public void Stiffness_falls_with_grip_and_rises_with_modulus(AnyBolt bolt)
    {
        AnyBolt longer = bolt with { GripMm = bolt.GripMm * 1.01 };
        Assert.True(longer.Vdi.Stiffness < bolt.Vdi.Stiffness);
        Assert.True(longer.Textbook.Stiffness < bolt.Textbook.Stiffness);
        AnyBolt harder = bolt with { ModulusGpa = bolt.ModulusGpa * 2 };
        Close.To(2 * bolt.Vdi.Stiffness.NewtonsPerMeter, harder.Vdi.Stiffness.NewtonsPerMeter);
        Close.To(2 * bolt.Textbook.Stiffness.NewtonsPerMeter, harder.Textbook.Stiffness.NewtonsPerMeter);
    }

    [Property]
    public void Head_and_nut_make_a_bolt_of_vdi_2230_softer_than_a_textbook_one(AnyBolt bolt) =>
        Assert.True(bolt.Vdi.Stiffness < bolt.Textbook.Stiffness);

    [Property]
    public void Derivations_end_on_their_answers(AnyBolt bolt)
    {
        foreach (BoltCompliance compliance in new[] { bolt.Vdi, bolt.Textbook, bolt.Vdi.TappedInto(ElasticMaterial.GreyCastIron) })
        {
            Assert.Equal(compliance.MetersPerNewton, Derivation.Of(() => compliance.MetersPerNewton).Result);
            Assert.Equal(compliance.TwistRadiansPerNewtonMeter, Derivation.Of(() => compliance.TwistRadiansPerNewtonMeter).Result);
        }
    }

    [Fact]
    public void Sections_of_their_own_material_and_area_count_with_it()
    {
        BoltSection sleeve = BoltSection.OfArea(Length.FromMillimeters(25), Area.FromSquareMillimeters(90)).WithMaterial(ElasticMaterial.WroughtAluminium);
        BoltSection waist = BoltSection.OfDiameter(Length.FromMillimeters(40), Length.FromMillimeters(11));
        BoltCompliance bolt = BoltCompliance.OfSections(M16, [waist, sleeve], ElasticMaterial.Steel);
        double waistArea = Math.PI / 4 * 121;
        Close.To((40 / (205 * waistArea) + 25 / (70.0 * 90)) * 1e-6, bolt.MetersPerNewton);
        Close.To(65, bolt.GripLength.Millimeters);
        // J of a round section is A²/(2π).
        double twist = 0.040 / (205e9 / 2.6 * Math.Pow(waistArea * 1e-6, 2) / (2 * Math.PI)) + 0.025 / (70e9 / 2.66 * Math.Pow(90e-6, 2) / (2 * Math.PI));
        Close.To(twist, bolt.TwistRadiansPerNewtonMeter!.Value);
        Assert.Equal("25 mm of 90 mm², wrought aluminium", sleeve.ToString());
    }

    [Fact]
    public void A_bolt_threaded_to_its_head_and_one_with_a_long_shank_are_both_bolts()
    {
        Length length = Length.FromMillimeters(70), grip = Length.FromMillimeters(50);
        BoltCompliance threaded = BoltCompliance.Vdi2230(M16, length, length, grip, BoltHead.Hexagon, ElasticMaterial.Steel);
        BoltCompliance shank = BoltCompliance.Vdi2230(M16, length, Length.FromMillimeters(15), grip, BoltHead.Hexagon, ElasticMaterial.Steel);
        Close.To(M16.RootDiameter.Millimeters * M16.RootDiameter.Millimeters * Math.PI / 4, Assert.Single(threaded.Sections).Area.SquareMillimeters);
        Close.To(64 * Math.PI, Assert.Single(shank.Sections).Area.SquareMillimeters);
        Close.To(201.0619e-6 * 205e9 / 0.05, BoltCompliance.Textbook(M16, length, Length.FromMillimeters(15), grip, ElasticMaterial.Steel).Stiffness.NewtonsPerMeter, 1e-6);
    }

    [Fact]
    public void The_effective_grip_of_a_tapped_part_stops_growing_at_one_diameter()
    {
        Length above = Length.FromMillimeters(11);
        Close.To(16, BoltCompliance.TappedGrip(M16, above, Length.FromMillimeters(10)).Millimeters);
        Close.To(19, BoltCompliance.TappedGrip(M16, above, Length.FromMillimeters(16)).Millimeters);
        Close.To(19, BoltCompliance.TappedGrip(M16, above, Length.FromMillimeters(40)).Millimeters);
    }

    [Fact]
    public void What_is_no_bolt_is_refused()
    {
        Length length = Length.FromMillimeters(60), more = Length.FromMillimeters(61), grip = Length.FromMillimeters(40);
        AssertRefused("threadedLength", () => BoltCompliance.Vdi2230(M16, length, more, grip, BoltHead.Hexagon, ElasticMaterial.Steel));
        AssertRefused("grip", () => BoltCompliance.Textbook(M16, length, grip, more, ElasticMaterial.Steel));
        AssertRefused("head", () => BoltCompliance.Vdi2230(M16, length, grip, grip, (BoltHead)7, ElasticMaterial.Steel));
        Assert.Equal("sections", Assert.Throws<ArgumentException>(() => BoltCompliance.OfSections(M16, [], ElasticMaterial.Steel)).ParamName);
        Assert.Equal("sections", Assert.Throws<ArgumentNullException>(() => BoltCompliance.OfSections(M16, [null!], ElasticMaterial.Steel)).ParamName);
        Assert.Throws<InvalidOperationException>(
            () => BoltCompliance.Textbook(M16, length, grip, grip, ElasticMaterial.Steel).TappedInto(ElasticMaterial.GreyCastIron));
    }

    /// <summary>A bolt of 54 mm leaves 1 mm for the nut of a grip of 53 mm; VDI 2230 counts half a diameter of engaged thread there: 8 mm for M16.</summary>
    [Theory]
    [InlineData(54, 53, false)]
    [InlineData(61, 53.001, false)]
    [InlineData(61, 53, true)]
    public void A_bolt_that_ends_in_the_grip_holds_nothing(double length, double grip, bool holds)
    {
        Func<BoltCompliance> create = () => BoltCompliance.Vdi2230(
            M16, Length.FromMillimeters(length), Length.FromMillimeters(length), Length.FromMillimeters(grip), BoltHead.Hexagon, ElasticMaterial.Steel);
        if (holds) Close.To(length - grip, create().BeyondGrip!.Value.Millimeters);
        else AssertRefused("grip", create);
    }

    [Fact]
    public void A_bolt_says_how_far_it_reaches_where_it_knows()
    {
        Length length = Length.FromMillimeters(70), grip = Length.FromMillimeters(50);
        BoltCompliance bolt = BoltCompliance.Vdi2230(M16, length, length, grip, BoltHead.Hexagon, ElasticMaterial.Steel);
        Close.To(20, bolt.TappedInto(ElasticMaterial.GreyCastIron).BeyondGrip!.Value.Millimeters);
        Close.To(20, BoltCompliance.Textbook(M16, length, length, grip, ElasticMaterial.Steel).BeyondGrip!.Value.Millimeters);
        Assert.Null(BoltCompliance.OfSections(M16, bolt.Sections, ElasticMaterial.Steel).BeyondGrip);
    }

    private static void AssertRefused(string parameter, Func<BoltCompliance> create) =>
        Assert.Equal(parameter, Assert.Throws<ArgumentOutOfRangeException>(create).ParamName);
}
