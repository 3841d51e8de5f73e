using Fastening.Equations;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Joints;

[Properties(Arbitrary = [typeof(SleeveDomain)], MaxTest = 300)]
public class LoadShareTests
{
    /// <summary>From half of what would slacken the bolt to three times what would open it.</summary>
    private static readonly double[] Shares = [-2, -0.9, -0.2, 0, 0.1, 0.6, 0.97, 1.05, 1.4, 3];

    [Property]
    public void Springs_are_those_of_the_hand_calculation(AnySleeveJoint any)
    {
        Close.To(any.BoltResilience, any.Joint.Bolt.MetersPerNewton);
        Close.To(any.PartsResilience, any.Joint.Parts.MetersPerNewton);
        Assert.InRange(any.Joint.LoadFactor, double.Epsilon, 1 - 1e-9);
    }

    [Property]
    public void Forces_are_those_of_the_ring_solved_directly_before_and_after_separation(AnySleeveJoint any)
    {
        foreach (double share in Shares)
        {
            double load = share * any.Preload;
            (double bolt, double clamp, _) = any.Ring.Under(load);
            if (bolt < 1e-6 * any.Preload) continue; // the bolt is slack; see the refusals
            JointState state = any.Joint.At(any.PreloadForce, Force.FromNewtons(load), any.Known);
            double scale = any.Preload + Math.Abs(load);
            Close.To(bolt, state.BoltForce.Newtons, 1e-11, scale);
            Close.To(clamp, state.ClampForce.Newtons, 1e-11, scale);
        }
    }

    [Property]
    public void Bolt_and_clamp_force_differ_by_the_load_while_the_joint_is_closed(AnySleeveJoint any)
    {
        JointState state = any.Joint.At(any.PreloadForce, any.PreloadForce * 0.7, any.Known);
        Assert.False(state.IsSeparated);
        Close.To(any.Preload * 0.7, (state.BoltForce - state.ClampForce).Newtons, 1e-11);
    }

    /// <summary>The work of the load on its points of attack is the energy that the springs gain.</summary>
    [Property]
    public void Work_of_the_load_is_the_energy_of_the_springs(AnySleeveJoint any)
    {
        double load = 0.8 * any.Preload;
        JointState state = any.Joint.At(any.PreloadForce, Force.FromNewtons(load), any.Known);
        double opening = any.Introduction * any.PartsResilience * (any.Preload - state.ClampForce.Newtons);
        double gained = any.Ring.EnergyAt(state.BoltForce.Newtons, state.ClampForce.Newtons) - any.Ring.EnergyAt(any.Preload, any.Preload);
        Close.To(load * opening / 2, gained, 1e-9, any.Ring.EnergyAt(any.Preload, any.Preload));
    }

    [Property]
    public void Separates_exactly_where_the_clamp_force_is_used_up(AnySleeveJoint any)
    {
        Force separation = any.Joint.SeparationLoadAt(any.PreloadForce, any.Known);
        Assert.True(separation.Newtons >= any.Preload);
        Assert.False(any.Joint.At(any.PreloadForce, separation * (1 - 1e-9), any.Known).IsSeparated);
        Assert.True(any.Joint.At(any.PreloadForce, separation * (1 + 1e-9), any.Known).IsSeparated);
        Close.To(0, any.Joint.At(any.PreloadForce, separation, any.Known).ClampForce.Newtons, 1e-12, any.Preload);
        Close.To(separation.Newtons, any.Joint.At(any.PreloadForce, separation, any.Known).BoltForce.Newtons);
        (_, _, double gap) = any.Ring.Under(separation.Newtons * 1.001);
        Assert.True(gap > 0);
        (_, double clamp, _) = any.Ring.Under(separation.Newtons * 0.999);
        Assert.True(clamp > 0);
    }

    [Property]
    public void Clamp_force_falls_and_bolt_force_rises_with_the_load(AnySleeveJoint any)
    {
        Force load = any.PreloadForce * 0.3;
        JointState less = any.Joint.At(any.PreloadForce, load, any.Known), more = any.Joint.At(any.PreloadForce, load * 1.1, any.Known);
        Assert.True(more.ClampForce < less.ClampForce);
        Assert.True(more.BoltForce >= less.BoltForce);
    }

    [Property]
    public void Range_of_load_introduction_gives_the_worst_of_every_factor_in_it(AnySleeveJoint any)
    {
        double low = any.Introduction * 0.6, high = any.Introduction + (1 - any.Introduction) * 0.7;
        foreach (double share in new[] { -0.8, 0.5, 1.2 })
        {
            Force load = any.PreloadForce * share;
            JointState range = any.Joint.At(any.PreloadForce, load, LoadIntroduction.Between(low, high));
            JointState[] inside = [.. Enumerable.Range(0, 9).Select(i => any.Joint.At(any.PreloadForce, load, LoadIntroduction.Of(low + (high - low) * i / 8)))];
            Close.To(inside.Max(s => s.BoltForce.Newtons), range.BoltForce.Newtons);
            Close.To(inside.Min(s => s.ClampForce.Newtons), range.ClampForce.Newtons, 1e-12, any.Preload);
            Assert.Equal(inside.Any(s => s.IsSeparated), range.IsSeparated);
        }
    }

    [Property]
    public void Derivations_end_on_their_answers(AnySleeveJoint any)
    {
        var introduction = LoadIntroduction.Between(any.Introduction * 0.5, any.Introduction);
        foreach (double share in new[] { -0.5, 0.4, 2 })
        {
            Force load = any.PreloadForce * share;
            JointState state = any.Joint.At(any.PreloadForce, load, introduction);
            Assert.Equal(state.BoltForce.Newtons, Derivation.Of(() => any.Joint.At(any.PreloadForce, load, introduction).BoltForce).Result);
            Assert.Equal(state.ClampForce.Newtons, Derivation.Of(() => any.Joint.At(any.PreloadForce, load, introduction).ClampForce).Result);
        }

        Assert.Equal(
            any.Joint.SeparationLoadAt(any.PreloadForce, introduction).Newtons,
            Derivation.Of(() => any.Joint.SeparationLoadAt(any.PreloadForce, introduction)).Result);
    }

    [Property]
    public void Refuses_a_load_that_slackens_the_bolt_and_says_where(AnySleeveJoint any)
    {
        double least = -any.Preload / (any.Joint.LoadFactor * 0.8);
        var introduction = LoadIntroduction.Between(0.1, 0.8);
        any.Joint.At(any.PreloadForce, Force.FromNewtons(least * 0.999), introduction);
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(
            () => any.Joint.At(any.PreloadForce, Force.FromNewtons(least * 1.001), introduction));
        Assert.Equal("axialLoad", refusal.ParamName);
        Assert.Contains("lost its tension", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Load_at_the_interface_loads_the_bolt_only_after_separation()
    {
        // n = 0: the bolt feels nothing until the load has used up the preload; the parts feel all of it.
        Joint joint = new AnySleeveJoint([(40, 10)], [(15, 210, 12), (25, 110, 10)], 205, 11, 13.5, 30, 20_000, 0).Joint;
        JointState state = joint.At(Force.FromKilonewtons(20), Force.FromKilonewtons(14), LoadIntroduction.Of(0));
        Assert.Equal(20, state.BoltForce.Kilonewtons, 12);
        Assert.Equal(6, state.ClampForce.Kilonewtons, 12);
        Assert.Equal(20, joint.SeparationLoadAt(Force.FromKilonewtons(20), LoadIntroduction.WorstCase).Kilonewtons, 12);
    }

    [Fact]
    public void Load_introduction_refuses_what_is_no_share()
    {
        Assert.Equal("factor", Assert.Throws<ArgumentOutOfRangeException>(() => LoadIntroduction.Of(1.01)).ParamName);
        Assert.Equal("high", Assert.Throws<ArgumentOutOfRangeException>(() => LoadIntroduction.Between(0.5, 0.4)).ParamName);
        Assert.False(LoadIntroduction.WorstCase.IsKnown);
        Assert.True(LoadIntroduction.Between(0.3, 0.3).IsKnown);
    }

    [Property]
    public void Shigleys_factors_bring_load_and_preload_to_their_limits(AnySleeveJoint any)
    {
        // By their meaning, through the ring: n_L P brings the bolt to the proof load, n_0 P opens the joint.
        BoltStrength strength = PropertyClass.Parse("8.8").StrengthFor(any.Joint.Bolt.Thread);
        double proof = strength.ProofLoad(any.Joint.Bolt.Thread)!.Value.Newtons, load = 0.4 * any.Preload;
        ShigleyFactors factors = any.Joint.ShigleyFactorsAt(any.PreloadForce, Force.FromNewtons(load), strength);
        var head = SpringRing.Tightened(any.BoltResilience, any.PartsResilience, 1, any.Preload);
        Close.To(proof / head.Under(load).Bolt, factors.Yielding, 1e-10);
        Close.To(0, head.Under(factors.Separation * load).Clamp, 1e-10, any.Preload);
        double share = any.BoltResilience / (any.BoltResilience + any.PartsResilience);
        Close.To(proof, any.Preload + (1 - share) * factors.Overload * load, 1e-10, proof + any.Preload);
        Assert.Equal(factors.Yielding, Derivation.Of(() => any.Joint.ShigleyFactorsAt(any.PreloadForce, Force.FromNewtons(load), strength).Yielding).Result);
        Assert.Equal(factors.Overload, Derivation.Of(() => any.Joint.ShigleyFactorsAt(any.PreloadForce, Force.FromNewtons(load), strength).Overload).Result);
        Assert.Equal(factors.Separation, Derivation.Of(() => any.Joint.ShigleyFactorsAt(any.PreloadForce, Force.FromNewtons(load), strength).Separation).Result);
    }
}
