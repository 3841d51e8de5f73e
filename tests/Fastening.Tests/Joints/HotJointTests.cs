using Fastening.Equations;
using UnitsNet;

namespace Fastening.Tests.Joints;

/// <summary>A hot joint: strengths at room temperature say nothing above 100 °C.</summary>
public class HotJointTests
{
    private static readonly JointCheckKind[] OfStrength =
    [
        JointCheckKind.WorkingStress, JointCheckKind.AlternatingStress, JointCheckKind.HeadPressure, JointCheckKind.NutPressure,
        JointCheckKind.ThreadStripping,
    ];

    private static readonly Temperature Room = Temperature.FromDegreesCelsius(20);

    [Theory]
    [InlineData(600)]
    [InlineData(81)]
    public void Above_100_degrees_no_check_of_strength_is_made_with_that_of_the_room(double rise)
    {
        JointAssessment assessment = Assess(Rises(rise, rise).AssembledAt(Room), AssessedJoint.Capacity);
        Assert.All(OfStrength, kind => Assert.Equal(CheckOutcome.NotAssessed, assessment.Of(kind).Outcome));
        Assert.Equal(JointCheckLack.HotStrengthOfBolt, assessment.Of(JointCheckKind.WorkingStress).Lack);
        Assert.All(OfStrength.Skip(1), kind => Assert.Equal(JointCheckLack.StrengthAtTemperature, assessment.Of(kind).Lack));
        Assert.NotEqual(CheckOutcome.Holds, assessment.Outcome);
        string said = FormattableString.Invariant($"working stress: not assessed, the bolt may reach {20 + rise:0.#} °C and its strength is stated for room temperature: state it with WithHotBolt");
        CommaCulture.Run(() => Assert.Equal(said, assessment.Of(JointCheckKind.WorkingStress).ToString()));
    }

    /// <summary>Just 100 °C is assessed: from 20 °C a rise of 80 K, from an assembly that is not stated, at up to 35 °C, one of 65 K.</summary>
    [Theory]
    [InlineData(80, true, true)]
    [InlineData(80, false, false)]
    [InlineData(65, false, true)]
    [InlineData(65.1, false, false)]
    public void An_assembly_that_is_not_stated_was_made_in_a_warm_room(double rise, bool stated, bool assessed)
    {
        JointTemperatures rises = stated ? Rises(rise, rise).AssembledAt(Room) : Rises(rise, rise);
        JointAssessment assessment = Assess(rises, AssessedJoint.Capacity);
        Assert.All(OfStrength, kind => Assert.Equal(assessed, assessment.Of(kind).Lack is null));
        Assert.Equal(stated ? 20 : null, rises.Assembly?.DegreesCelsius);
        Assert.Equal(stated ? 20 : null, rises.WithModuli(0.97, 0.98).Assembly?.DegreesCelsius);
    }

    /// <summary>8.8 at 200 °C: 540 MPa, ISO 898-1 annex. What is asked of the bolt stays the highest preload, so the safety falls by 540/640.</summary>
    [Fact]
    public void With_the_hot_strength_the_stress_is_held_against_it()
    {
        JointTemperatures rises = Rises(180, 180).AssembledAt(Room);
        HotStrength hot = AssessedJoint.Strength.AtTemperature(Temperature.FromDegreesCelsius(200));
        JointCheck check = Assess(rises, AssessedJoint.Capacity.WithHotBolt(hot)).Of(JointCheckKind.WorkingStress);
        JointCheck cold = Assess(null, AssessedJoint.Capacity.WithHotBolt(hot)).Of(JointCheckKind.WorkingStress);

        Close.To(540, ((Pressure)check.Capacity!).Megapascals);
        Close.To(640, ((Pressure)cold.Capacity!).Megapascals);
        Assert.Null(cold.HotStrength);
        Assert.Same(hot, check.HotStrength);
        Assert.True(((Pressure)check.Demand!).Pascals >= ((Pressure)cold.Demand!).Pascals);
        Assert.Equal(check.Safety, Derivation.Of(() => Assess(rises, AssessedJoint.Capacity.WithHotBolt(hot)).Of(JointCheckKind.WorkingStress).Safety).Result);
        Assert.EndsWith("; yield strength at 200 °C, relaxation not included", check.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_bolt_hotter_than_its_hot_strength_is_not_assessed()
    {
        HotStrength hot = AssessedJoint.Strength.AtTemperature(Temperature.FromDegreesCelsius(200));
        JointCheck check = Assess(Rises(181, 60).AssembledAt(Room), AssessedJoint.Capacity.WithHotBolt(hot)).Of(JointCheckKind.WorkingStress);
        Assert.Equal(JointCheckLack.HotStrengthOfBolt, check.Lack);
        Assert.Contains("201 °C and its strength is stated for 200 °C", check.OpenBecause, StringComparison.Ordinal);
    }

    /// <summary>Between the room and 100 °C a hot strength that is stated counts too: it is the lower one.</summary>
    [Fact]
    public void A_hot_strength_that_is_stated_counts_below_100_degrees_too()
    {
        HotStrength hot = AssessedJoint.Strength.AtTemperature(Temperature.FromDegreesCelsius(100));
        JointCapacity capacity = AssessedJoint.Capacity.WithHotBolt(hot);
        Close.To(590, ((Pressure)Assess(Rises(70, 70).AssembledAt(Room), capacity).Of(JointCheckKind.WorkingStress).Capacity!).Megapascals);
        Close.To(640, ((Pressure)Assess(Rises(10, 70).AssembledAt(Room), capacity).Of(JointCheckKind.WorkingStress).Capacity!).Megapascals);
    }

    [Fact]
    public void Pressures_amplitude_and_threads_hold_up_to_the_temperature_for_which_they_are_stated()
    {
        JointCapacity capacity = AssessedJoint.Capacity.WithStrengthsUpTo(Temperature.FromDegreesCelsius(200));
        Assert.All(OfStrength.Skip(1), kind => Assert.Null(Assess(Rises(20, 180).AssembledAt(Room), capacity).Of(kind).Lack));
        Assert.All(
            OfStrength.Skip(1), kind => Assert.Equal(JointCheckLack.StrengthAtTemperature, Assess(Rises(20, 181).AssembledAt(Room), capacity).Of(kind).Lack));
        Assert.Equal(100, JointCapacity.NothingStated.StrengthsUpTo.DegreesCelsius);
    }

    [Fact]
    public void A_cold_joint_is_assessed_as_before() =>
        Assert.All(Assess(Rises(-120, -100), AssessedJoint.Capacity).Checks, check => Assert.Null(check.Lack));

    [Fact]
    public void Hot_strengths_of_another_size_or_above_the_cold_one_are_refused()
    {
        HotStrength m16 = PropertyClass.Parse("8.8").StrengthFor(ScrewThread.Parse("M16")).AtTemperature(Temperature.FromDegreesCelsius(200));
        var strong = new HotStrength(Temperature.FromDegreesCelsius(200), Pressure.FromMegapascals(641));
        foreach (HotStrength wrong in new[] { m16, strong })
        {
            Assert.Equal("capacity", Assert.Throws<ArgumentException>(() => Assess(Rises(150, 150), AssessedJoint.Capacity.WithHotBolt(wrong))).ParamName);
        }
    }

    /// <summary>Every reason has its own words.</summary>
    [Fact]
    public void Each_lack_is_said_in_words_of_its_own()
    {
        string[] words = [.. Enum.GetValues<JointCheckLack>().Select(lack => JointCheckLackWords.Of(lack, "head", 150, "100 °C"))];
        Assert.Equal(words.Length, words.Distinct().Count());
    }

    private static JointTemperatures Rises(double bolt, double parts) => new(TemperatureDelta.FromKelvins(bolt), TemperatureDelta.FromKelvins(parts));

    private static JointAssessment Assess(JointTemperatures? rises, JointCapacity capacity)
    {
        JointDuty duty = AssessedJoint.Duty(-1, 5, LoadIntroduction.Between(0.25, 0.85));
        return AssessedJoint.Joint.Assess(rises is null ? duty : duty.WithTemperatures(rises), AssessedJoint.Assembly, capacity);
    }
}
