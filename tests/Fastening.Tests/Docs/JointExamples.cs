using UnitsNet;

namespace Fastening.Tests.Docs;

/// <summary>The code of the guide on the joint in service, and the listing that it shows.</summary>
public class JointExamples
{
    [Fact]
    public void Names_its_springs()
    {
        #region joint-springs
        var washer = new ClampedLayer(Length.FromMillimeters(3), ElasticMaterial.Steel).WithOuterDiameter(Length.FromMillimeters(30));
        ClampedStack plates = ClampedStack.Vdi2230Cone(
            [washer, new ClampedLayer(Length.FromMillimeters(34), ElasticMaterial.GreyCastIron), washer],
            bearingDiameter: Length.FromMillimeters(22), hole: Length.FromMillimeters(17.5), outerDiameter: Length.FromMillimeters(200), JointForm.ThroughBolt);
        foreach (RangeNote note in plates.RangeNotes) Console.WriteLine(note);                   // wider than bearing diameter and grip together
        ClampedStack capped = plates.WithInterfaceDiameter(Length.FromMillimeters(22) + plates.GripLength);
        ClampedStack tube = ClampedStack.Sleeve(
            [new ClampedLayer(Length.FromMillimeters(40), ElasticMaterial.Steel)], outerDiameter: Length.FromMillimeters(22), hole: Length.FromMillimeters(17.5));
        Joint measured = Joint.FromStiffness(
            ScrewThread.Parse("M16"), bolt: ForcePerLength.FromKilonewtonsPerMillimeter(420), parts: ForcePerLength.FromKilonewtonsPerMillimeter(1680));
        #endregion

        Assert.Equal(RangeNoteKind.OutsideBeyondGrip, Assert.Single(plates.RangeNotes).Kind);
        Assert.True(capped.IsInRange && capped.Stiffness < plates.Stiffness && tube.Stiffness < capped.Stiffness);
        Close.To(0.2, measured.LoadFactor);
    }

    [Fact]
    public void Checks_a_joint()
    {
        ScrewThread thread = ScrewThread.Parse("M16");
        Length flange = Length.FromMillimeters(20), housing = Length.FromMillimeters(40);
        var joint = new Joint(
            BoltCompliance.Vdi2230(thread, Length.FromMillimeters(80), Length.FromMillimeters(38), flange + housing, BoltHead.Hexagon, ElasticMaterial.Steel),
            ClampedStack.Vdi2230Cone(
                [new ClampedLayer(flange, ElasticMaterial.Steel), new ClampedLayer(housing, ElasticMaterial.WroughtAluminium)],
                Length.FromMillimeters(22), Length.FromMillimeters(17.5), Length.FromMillimeters(60), JointForm.ThroughBolt));
        FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(thread, new FrictionCoefficients(thread: 0.12, bearing: 0.10));
        BoltStrength strength = PropertyClass.Parse("8.8").StrengthFor(thread);

        #region joint-assessment
        Force permitted = model.PermittedPreload(strength, utilisation: Ratio.FromPercent(90));
        JointDuty duty = new JointDuty(
                lowAxialLoad: Force.Zero, highAxialLoad: Force.FromKilonewtons(12), LoadIntroduction.Between(0.3, 0.7),
                Embedding.ForRoughness(SurfaceRoughness.Rz10To40, EmbeddingLoad.Shear, threads: 1, bearingFaces: 2, interfaces: 1))
            .WithTransverseLoad(Force.FromKilonewtons(3), slipFaces: 1, lowestFriction: 0.12)
            .WithTemperatures(new JointTemperatures(bolt: TemperatureDelta.FromKelvins(40), parts: TemperatureDelta.FromKelvins(60)));
        JointCapacity capacity = JointCapacity.NothingStated
            .WithPermittedPreload(permitted)
            .WithBolt(model, strength, residualTorsion: Ratio.FromPercent(50))
            .WithHeadBearing(BearingSurface.ForHexagonHead(thread), Pressure.FromMegapascals(490));
        Range<Force> assembly = PreloadScatter.FromTighteningFactor(1.6).RangeBelow(permitted);
        JointAssessment assessment = joint.Assess(duty, assembly, capacity);
        #endregion

        string page = House.Repository.Read("docs", "guide", "the-joint-in-service.md");
        Assert.Contains($"```\n{assessment}```", page, StringComparison.Ordinal);
        Assert.Contains(assessment.Checks, check => check.Outcome == CheckOutcome.NotAssessed);
    }
}
