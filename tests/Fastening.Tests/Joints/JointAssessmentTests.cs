using System.Globalization;
using System.Text.RegularExpressions;
using Fastening.Equations;
using UnitsNet;

namespace Fastening.Tests.Joints;

/// <summary>Each check against the ring solved directly, and against itself at every load introduction in the range.</summary>
public class JointAssessmentTests
{
    private static readonly LoadIntroduction Range = LoadIntroduction.Between(0.25, 0.85);

    public static TheoryData<JointCheckKind> Kinds => [.. Enum.GetValues<JointCheckKind>()];

    public static TheoryData<double, double> Loads => new()
    {
        { 0, 9 }, { -7, 12 }, { 4, 26 }, { 10, 45 }, { -20, -3 }, { 0, 0 }, { 8, 8 },
    };

    [Theory]
    [MemberData(nameof(Loads))]
    public void Every_check_is_made_at_its_worst_load_introduction(double low, double high)
    {
        JointAssessment range = AssessedJoint.Joint.Assess(AssessedJoint.Duty(low, high, Range), AssessedJoint.Assembly, AssessedJoint.Capacity);
        JointAssessment[] inside =
        [
            .. Enumerable.Range(0, 21).Select(i => AssessedJoint.Joint.Assess(
                AssessedJoint.Duty(low, high, LoadIntroduction.Of(0.25 + 0.6 * i / 20)), AssessedJoint.Assembly, AssessedJoint.Capacity)),
        ];
        foreach (JointCheck check in range.Checks)
        {
            double[] safeties = [.. inside.Select(a => a.Of(check.Kind).Safety ?? double.PositiveInfinity)];
            Close.To(Math.Min(safeties.Min(), 1e6), Math.Min(check.Safety ?? double.PositiveInfinity, 1e6), 1e-9);
            Assert.Equal(inside.Min(a => a.Of(check.Kind).Outcome), check.Outcome);
        }
    }

    [Theory]
    [MemberData(nameof(Loads))]
    public void Required_preload_is_the_least_assembly_preload_of_the_duty(double low, double high)
    {
        JointDuty duty = AssessedJoint.Duty(low, high, Range);
        JointCheck check = AssessedJoint.Joint.Assess(duty, AssessedJoint.Assembly, AssessedJoint.Capacity).Of(JointCheckKind.RequiredPreload);
        Assert.Equal(AssessedJoint.Joint.LeastAssemblyPreloadFor(duty), check.Demand);
        Assert.Equal(Derivation.Of(() => AssessedJoint.Joint.LeastAssemblyPreloadFor(duty)).Result, ((Force)check.Demand!).Newtons);
    }

    [Fact]
    public void Clamp_slip_and_separation_are_those_of_the_ring()
    {
        JointAssessment assessment = AssessedJoint.Joint.Assess(AssessedJoint.Duty(-2, 12, Range), AssessedJoint.Assembly, AssessedJoint.Capacity);
        SpringRing ring = Ring(28_000 - AssessedJoint.Embedded / Total, 0.25);
        double clamp = ring.Under(12_000).Clamp;
        Force against = Force.FromNewtons(1500 / 0.16 + 4 / (2 * 0.011 * 0.16));
        Verify(assessment.Of(JointCheckKind.ResidualClamp), 3000, clamp, 0.25);
        Verify(assessment.Of(JointCheckKind.Slip), against.Newtons, clamp, 0.25);
        JointCheck separation = assessment.Of(JointCheckKind.Separation);
        Verify(separation, 12_000, separation.Safety!.Value * 12_000, 0.25);
        Close.To(0, ring.Under(separation.Safety.Value * 12_000).Clamp, 1e-9, 28_000);
    }

    [Fact]
    public void Bolt_force_stress_pressure_and_stripping_are_those_of_the_ring()
    {
        JointAssessment assessment = AssessedJoint.Joint.Assess(AssessedJoint.Duty(-2, 12, Range), AssessedJoint.Assembly, AssessedJoint.Capacity);
        double force = Ring(39_000, 0.85).Under(12_000).Bolt;
        double area = ScrewThread.Parse("M12").StressArea.SquareMeters, d0 = ScrewThread.Parse("M12").StressDiameter.Meters;
        double tau = AssessedJoint.Model.BreakdownAt(AssessedJoint.Model.TorqueFor(Force.FromKilonewtons(39))) is { } parts
            ? (parts.PitchTorque + parts.ThreadFrictionTorque).NewtonMeters / (Math.PI * d0 * d0 * d0 / 12) / 2
            : 0;
        Verify(assessment.Of(JointCheckKind.WorkingStress), Math.Sqrt(Math.Pow(force / area, 2) + 3 * tau * tau), 640e6, 0.85);
        Verify(assessment.Of(JointCheckKind.HeadPressure), force / (Math.PI / 4 * (16.6 * 16.6 - 13.5 * 13.5) * 1e-6), 700e6, 0.85);
        Verify(assessment.Of(JointCheckKind.NutPressure), force / (Math.PI / 4 * (17.0 * 17 - 13.8 * 13.8) * 1e-6), 600e6, 0.85);
        Verify(assessment.Of(JointCheckKind.ThreadStripping), force, AssessedJoint.Engagement.FailureForce.Newtons, 0.85);
        SpringRing lowest = Ring(28_000 - AssessedJoint.Embedded / Total, 0.85);
        double amplitude = (lowest.Under(12_000).Bolt - lowest.Under(-2000).Bolt) / (2 * area);
        Verify(assessment.Of(JointCheckKind.AlternatingStress), amplitude, 50e6, 0.85);
        double kept = 28_000 - AssessedJoint.Embedded / Total;
        Verify(assessment.Of(JointCheckKind.BoltStaysTight), kept - lowest.Under(-2000).Bolt, kept, 0.85);
        Verify(assessment.Of(JointCheckKind.PermittedPreload), 39_000, 41_000, null);
    }

    /// <summary>An opened joint strains the bolt by the whole load, and more the less it was preloaded.</summary>
    [Theory]
    [InlineData(0, 33)]
    [InlineData(12, 40)]
    [InlineData(-5, 36)]
    public void Amplitude_of_an_opened_joint_is_that_of_the_lowest_preload(double low, double high)
    {
        double area = ScrewThread.Parse("M12").StressArea.SquareMeters, kept = 28_000 - AssessedJoint.Embedded / Total;
        double worst = new[] { 0.25, 0.85 }.Max(n => (Ring(kept, n).Under(high * 1000).Bolt - Ring(kept, n).Under(low * 1000).Bolt) / (2 * area));
        JointCheck check = AssessedJoint.Joint.Assess(AssessedJoint.Duty(low, high, Range), AssessedJoint.Assembly, AssessedJoint.Capacity)
            .Of(JointCheckKind.AlternatingStress);
        Close.To(worst, ((Pressure)check.Demand!).Pascals, 1e-9);
        Assert.True(Ring(kept, 0.25).Under(high * 1000).Gap > 0);
    }

    [Fact]
    public void Under_a_pressing_load_the_faces_and_threads_bear_most_while_tightening()
    {
        JointAssessment assessment = AssessedJoint.Joint.Assess(AssessedJoint.Duty(-20, -3, Range), AssessedJoint.Assembly, AssessedJoint.Capacity);
        Assert.Equal(39_000, ((Force)assessment.Of(JointCheckKind.ThreadStripping).Demand!).Newtons, 1e-6);
        Close.To(39_000 / (Math.PI / 4 * (16.6 * 16.6 - 13.5 * 13.5) * 1e-6), ((Pressure)assessment.Of(JointCheckKind.HeadPressure).Demand!).Pascals, 1e-9);
    }

    /// <summary>Two ways to say the same: the preload required is reached exactly when the clamp that is left reaches the clamp required.</summary>
    [Fact]
    public void Required_preload_holds_exactly_when_clamp_and_slip_hold()
    {
        int held = 0;
        for (int i = 0; i < 60; i++)
        {
            var temperatures = new JointTemperatures(TemperatureDelta.FromKelvins(i % 7 * 9), TemperatureDelta.FromKelvins(i % 5 * 12));
            JointDuty duty = AssessedJoint.Duty(0, 0.4 * i, Range).WithTemperatures(temperatures.WithModuli(0.97, 0.99));
            JointAssessment assessment = AssessedJoint.Joint.Assess(duty, AssessedJoint.Assembly, AssessedJoint.Capacity);
            bool holds = assessment.Of(JointCheckKind.RequiredPreload).Outcome == CheckOutcome.Holds;
            Assert.Equal(
                assessment.Of(JointCheckKind.ResidualClamp).Outcome == CheckOutcome.Holds && assessment.Of(JointCheckKind.Slip).Outcome == CheckOutcome.Holds, holds);
            held += holds ? 1 : 0;
        }

        Assert.InRange(held, 10, 50);
    }

    [Fact]
    public void Thermal_loss_goes_to_the_clamp_and_thermal_gain_to_the_bolt()
    {
        TemperatureDelta none = TemperatureDelta.FromKelvins(0), warm = TemperatureDelta.FromKelvins(50);
        JointAssessment cold = Assess(null), loss = Assess(new JointTemperatures(warm, none)), gain = Assess(new JointTemperatures(none, warm));
        Assert.True(loss.Of(JointCheckKind.ResidualClamp).Safety < cold.Of(JointCheckKind.ResidualClamp).Safety);
        Assert.Equal(cold.Of(JointCheckKind.WorkingStress).Safety, loss.Of(JointCheckKind.WorkingStress).Safety);
        Assert.True(gain.Of(JointCheckKind.WorkingStress).Safety < cold.Of(JointCheckKind.WorkingStress).Safety);
        Assert.Equal(cold.Of(JointCheckKind.ResidualClamp).Safety, gain.Of(JointCheckKind.ResidualClamp).Safety);

        static JointAssessment Assess(JointTemperatures? temperatures)
        {
            JointDuty duty = AssessedJoint.Duty(0, 8, Range);
            return AssessedJoint.Joint.Assess(
                temperatures is null ? duty : duty.WithTemperatures(temperatures), AssessedJoint.Assembly, AssessedJoint.Capacity);
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Derivation_ends_on_the_safety(JointCheckKind kind)
    {
        foreach (JointTemperatures rises in new[]
        {
            new JointTemperatures(TemperatureDelta.FromKelvins(60), TemperatureDelta.FromKelvins(10)),
            new JointTemperatures(TemperatureDelta.FromKelvins(5), TemperatureDelta.FromKelvins(70)).WithModuli(0.96, 0.98).AssembledAt(Temperature.FromDegreesCelsius(20)),
        })
        {
            JointDuty duty = AssessedJoint.Duty(-3, 11, Range).WithTemperatures(rises);
            JointCheck Check() => AssessedJoint.Joint.Assess(duty, AssessedJoint.Assembly, AssessedJoint.Capacity).Of(kind);
            JointCheck check = Check();
            Derivation work = Derivation.Of(() => Check().Safety);
            Assert.Equal(check.Safety, work.Result);
            Assert.All(work.Steps, step => Assert.Equal(step.Equation.Invoke([.. step.Inputs]), step.Result));
            for (int i = 0; i < work.Steps.Count - 1; i++)
            {
                Assert.Contains(work.Steps.Skip(i + 1), later => later.Inputs.Contains(work.Steps[i].Result));
            }
        }
    }

    [Fact]
    public void Nothing_passes_in_silence()
    {
        JointDuty bare = new(Force.Zero, Force.FromKilonewtons(5), LoadIntroduction.WorstCase, Embedding.None);
        JointAssessment assessment = AssessedJoint.Joint.Assess(bare, AssessedJoint.Assembly, JointCapacity.NothingStated);
        JointCheckKind[] open = [.. assessment.Checks.Where(c => c.Outcome == CheckOutcome.NotAssessed).Select(c => c.Kind)];
        Assert.Equal(
            [
                JointCheckKind.PermittedPreload, JointCheckKind.ResidualClamp, JointCheckKind.Slip, JointCheckKind.WorkingStress,
                JointCheckKind.AlternatingStress, JointCheckKind.HeadPressure, JointCheckKind.NutPressure, JointCheckKind.ThreadStripping,
            ],
            open);
        Assert.Equal(CheckOutcome.NotAssessed, assessment.Outcome);
        Assert.All(assessment.Checks.Where(c => open.Contains(c.Kind)), c =>
        {
            Assert.False(string.IsNullOrWhiteSpace(c.OpenBecause));
            Assert.Null(c.Safety);
            Assert.Null(c.Demand);
            Assert.Throws<InvalidOperationException>(() => Derivation.Of(() => AssessedJoint.Joint.Assess(bare, AssessedJoint.Assembly, JointCapacity.NothingStated).Of(c.Kind).Safety));
            Assert.False(c.HoldsWith(1));
            Assert.Contains("not assessed", c.ToString(), StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Whole_assessment_fails_with_one_check_and_names_the_governing_one()
    {
        JointAssessment good = AssessedJoint.Joint.Assess(AssessedJoint.Duty(0, 4, Range), AssessedJoint.Assembly, AssessedJoint.Capacity);
        Assert.Equal(CheckOutcome.Holds, good.Outcome);
        JointAssessment bad = AssessedJoint.Joint.Assess(
            AssessedJoint.Duty(0, 4, Range), AssessedJoint.Assembly, AssessedJoint.Capacity.WithPermittedPreload(Force.FromKilonewtons(30)));
        Assert.Equal(CheckOutcome.Fails, bad.Outcome);
        Assert.Equal(JointCheckKind.PermittedPreload, bad.Governing!.Kind);
        Assert.Equal("permitted preload: FAILS, 39 kN asked, 30 kN there, safety 0.77", bad.Governing.ToString());
    }

    [Fact]
    public void Zero_demand_has_no_safety_and_holds()
    {
        JointCheck tight = Tight(0, 4);
        Assert.Equal(CheckOutcome.Holds, tight.Outcome);
        Assert.Null(tight.Safety);
        Assert.Null(tight.LoadIntroductionFactor);
        Assert.True(tight.HoldsWith(2));
    }

    /// <summary>Nobody asks for tension in the bolt: the line says what the pressing load leaves of it, by the ring solved directly.</summary>
    [Fact]
    public void Bolt_that_stays_tight_says_what_is_left()
    {
        SpringRing ring = Ring(28_000 - AssessedJoint.Embedded / Total, 0.85);
        string kept = Kilonewtons(ring.Under(0).Bolt), pressed = Kilonewtons(ring.Under(-12_000).Bolt);
        double taken = ring.Under(0).Bolt - ring.Under(-12_000).Bolt;
        string safety = (ring.Under(0).Bolt / taken).ToString("0.00", CultureInfo.InvariantCulture);
        Assert.Equal($"bolt stays tight: holds, {kept} left", Tight(0, 4).ToString());
        Assert.Equal($"bolt stays tight: holds, {pressed} left of {kept}, safety {safety} at n 0.85", Tight(-12, 4).ToString());
        Assert.Matches($@"^bolt stays tight: FAILS, \d+(\.\d+)? kN taken of {Regex.Escape(kept)}, safety 0\.\d\d at n 0\.85$", Tight(-900, 4).ToString());

        static string Kilonewtons(double newtons) => FormattableString.Invariant($"{newtons / 1e3:0.##} kN");
    }

    [Fact]
    public void Demand_equal_to_capacity_holds_with_one_and_not_with_more()
    {
        JointCheck check = AssessedJoint.Joint.Assess(
            AssessedJoint.Duty(0, 4, Range), AssessedJoint.Assembly, AssessedJoint.Capacity.WithPermittedPreload(Force.FromKilonewtons(39)))
            .Of(JointCheckKind.PermittedPreload);
        Assert.Equal(CheckOutcome.Holds, check.Outcome);
        Assert.True(check.HoldsWith(1));
        Assert.False(check.HoldsWith(1.01));
    }

    [Fact]
    public void Losses_that_use_up_the_preload_leave_nothing_and_fail()
    {
        var duty = new JointDuty(Force.Zero, Force.FromKilonewtons(1), Range, Embedding.Of(Length.FromMillimeters(1)));
        JointAssessment assessment = AssessedJoint.Joint.Assess(duty.WithRequiredClamp(Force.FromKilonewtons(1)), AssessedJoint.Assembly, AssessedJoint.Capacity);
        Assert.Equal(0, assessment.Of(JointCheckKind.ResidualClamp).Safety);
        Assert.Equal(CheckOutcome.Fails, assessment.Of(JointCheckKind.Separation).Outcome);
    }

    [Fact]
    public void Slack_bolt_leaves_its_fatigue_open_and_fails_its_tension()
    {
        JointAssessment assessment = AssessedJoint.Joint.Assess(AssessedJoint.Duty(-900, 1, Range), AssessedJoint.Assembly, AssessedJoint.Capacity);
        Assert.Equal(CheckOutcome.Fails, assessment.Of(JointCheckKind.BoltStaysTight).Outcome);
        Assert.Equal(CheckOutcome.NotAssessed, assessment.Of(JointCheckKind.AlternatingStress).Outcome);
    }

    [Fact]
    public void Capacity_of_another_thread_is_refused()
    {
        FrictionTorqueModel m16 = TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse("M16"), new FrictionCoefficients(0.11, 0.13));
        ArgumentException refusal = Assert.Throws<ArgumentException>(() => AssessedJoint.Joint.Assess(
            AssessedJoint.Duty(0, 4, Range), AssessedJoint.Assembly, AssessedJoint.Capacity.WithBolt(m16, PropertyClass.Parse("8.8").StrengthFor(m16.Thread), Ratio.FromPercent(50))));
        Assert.Equal("capacity", refusal.ParamName);
        Assert.Contains("M16", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Face_known_by_its_effective_diameter_alone_is_left_open()
    {
        JointCapacity capacity = AssessedJoint.Capacity.WithHeadBearing(BearingSurface.OfDiameter(Length.FromMillimeters(15)), Pressure.FromMegapascals(500));
        JointCheck check = AssessedJoint.Joint.Assess(AssessedJoint.Duty(0, 4, Range), AssessedJoint.Assembly, capacity).Of(JointCheckKind.HeadPressure);
        Assert.Equal(CheckOutcome.NotAssessed, check.Outcome);
    }

    private static JointCheck Tight(double low, double high) =>
        AssessedJoint.Joint.Assess(AssessedJoint.Duty(low, high, Range), AssessedJoint.Assembly, AssessedJoint.Capacity).Of(JointCheckKind.BoltStaysTight);

    private static double Total => AssessedJoint.Springs.BoltResilience + AssessedJoint.Springs.PartsResilience;

    private static SpringRing Ring(double preload, double share) =>
        SpringRing.Tightened(AssessedJoint.Springs.BoltResilience, AssessedJoint.Springs.PartsResilience, share, preload);

    private static void Verify(JointCheck check, double demand, double capacity, double? factor)
    {
        double SiOf(IQuantity? quantity) => quantity is Pressure pressure ? pressure.Pascals : ((Force)quantity!).Newtons;
        Close.To(demand, SiOf(check.Demand), 1e-9);
        Close.To(capacity, SiOf(check.Capacity), 1e-9);
        Close.To(capacity / demand, check.Safety!.Value, 1e-9);
        Assert.Equal(factor, check.LoadIntroductionFactor);
    }

    [Fact]
    public void Whatever_the_outcome_the_text_ends_on_what_no_check_covers()
    {
        JointAssessment assessment = AssessedJoint.Joint.Assess(AssessedJoint.Duty(0, 9, LoadIntroduction.Between(0.3, 0.7)), AssessedJoint.Assembly, AssessedJoint.Capacity);
        string last = assessment.ToString().TrimEnd('\n').Split('\n')[^1];
        Assert.All(JointAssessment.NotCovered, left => Assert.Contains(left, last, StringComparison.Ordinal));
    }
}
