using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <content>The checks of the joint.</content>
public sealed partial class Joint
{
    /// <summary>Checks the joint for a duty.</summary>
    /// <param name="duty">The service conditions.</param>
    /// <param name="assembly">
    /// Lowest and highest assembly preload: from a torque and a range of friction, from a scatter about the preload aimed at, or below the permitted one.
    /// </param>
    /// <param name="capacity">Permitted loads of bolt, thread and clamped parts.</param>
    /// <returns>Every check.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A preload is negative or beyond its domain.</exception>
    /// <exception cref="ArgumentException">
    /// A thermal expansion is unknown; bolt, layers and temperatures do not match; the capacity is for another thread than that of the bolt, for a
    /// face under a nut where the bolt sits in a tapped part, or for no nut where there is one; or the hot bolt is stronger than at room temperature; or
    /// the engaged length is more than the bolt reaches past the grip.
    /// </exception>
    /// <example><code>JointAssessment assessment = joint.Assess(duty, PreloadScatter.FromTighteningFactor(1.6).RangeBelow(permitted), capacity);</code></example>
    public JointAssessment Assess(JointDuty duty, Range<Force> assembly, JointCapacity capacity)
    {
        Guard.NotNull(duty);
        Domains.Force.Check(Guard.NotNull(assembly).Low);
        Domains.Force.Check(assembly.High);
        Guard.NotNull(capacity);
        RefuseOtherThread(capacity, capacity.Bolt?.Model.Thread, "tightening model");
        RefuseOtherThread(capacity, capacity.Engagement?.Engagement.Thread, "engaged thread");
        RefuseOtherThread(capacity, capacity.HotBolt?.Cold?.Thread, "hot bolt");
        RefuseStrongerWhenHot(capacity);
        RefuseLongerThanBolt(capacity.Engagement);
        return new JointAssessment(new JointChecks(this, duty, assembly, capacity), HasNut(capacity));
    }

    /// <summary>Bolt and cone decide where they can; where they cannot, the capacity does.</summary>
    private bool HasNut(JointCapacity capacity)
    {
        if (Form == JointForm.TappedThread && capacity.Nut is not null)
        {
            throw new ArgumentException("The bolt sits in a tapped part, the capacity has a face under a nut; leave out WithNutBearing.", nameof(capacity));
        }

        if (Form == JointForm.ThroughBolt && capacity.IsWithoutNut)
        {
            throw new ArgumentException(
                "The joint is one of bolt and nut, the capacity is without a nut; leave out WithoutNut, or take bolt.TappedInto and JointForm.TappedThread.",
                nameof(capacity));
        }

        return Form != JointForm.TappedThread && !capacity.IsWithoutNut;
    }

    private static void RefuseStrongerWhenHot(JointCapacity capacity)
    {
        if (capacity is not { HotBolt: HotStrength hot, Bolt: BoltInService bolt }) return;
        if (hot.YieldSi > bolt.Strength.Yield)
        {
            throw new ArgumentException($"The hot bolt has {hot}, more than at room temperature ({bolt.Strength}).", nameof(capacity));
        }
    }

    /// <summary>The thread cannot engage further than the bolt reaches; the effective grip of a textbook bolt takes in up to half a diameter of it.</summary>
    private void RefuseLongerThanBolt(EngagementStrength? capacity)
    {
        if (capacity is null || Bolt.BeyondGripMeters is not double beyond) return;
        double reach = beyond + (Bolt.Method == BoltComplianceMethod.Textbook ? Bolt.Thread.Diameter / 2 : 0), engaged = capacity.Engagement.LengthSi;
        if (Tolerance.IsAtMost(engaged, reach)) return;
        throw new ArgumentException(
            Print.Text($"The engaged length is {Si.Length(engaged):G6}, the bolt reaches {Si.Length(reach):G6} into nut or tapped part: it is too short."),
            nameof(capacity));
    }

    private void RefuseOtherThread(JointCapacity capacity, ScrewThread? thread, string what)
    {
        if (thread is null || thread.HasSizeOf(Bolt.Thread)) return;
        throw new ArgumentException($"The {what} of the capacity is {thread}, the bolt of the joint is {Bolt.Thread}.", nameof(capacity));
    }
}
