using Fastening.Internals;

namespace Fastening;

/// <content>The checks of the joint.</content>
public sealed partial class Joint
{
    /// <summary>Checks the joint for a duty.</summary>
    /// <param name="duty">What service asks.</param>
    /// <param name="assembly">
    /// Lowest and highest assembly preload: from a torque and a range of friction, from a scatter about the preload aimed at, or below the permitted one.
    /// </param>
    /// <param name="capacity">What bolt, thread and parts bear.</param>
    /// <returns>Every check.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">
    /// A thermal expansion is unknown; bolt, layers and temperatures do not match; or the capacity speaks of another thread than that of the bolt.
    /// </exception>
    /// <example><code>JointAssessment assessment = joint.Assess(duty, PreloadScatter.FromTighteningFactor(1.6).RangeBelow(permitted), capacity);</code></example>
    public JointAssessment Assess(JointDuty duty, PreloadRange assembly, JointCapacity capacity)
    {
        Guard.NotNull(duty);
        Guard.NotNull(assembly);
        Guard.NotNull(capacity);
        RefuseOtherThread(capacity, capacity.Bolt?.Model.Thread, "tightening model");
        RefuseOtherThread(capacity, capacity.Engagement?.Engagement.Thread, "engaged thread");
        return new JointAssessment(new JointChecks(this, duty, assembly, capacity), capacity.HasNut && !Bolt.IsTapped);
    }

    private void RefuseOtherThread(JointCapacity capacity, ScrewThread? thread, string what)
    {
        if (thread is null || IsLike(thread.Diameter, Bolt.Thread.Diameter) && IsLike(thread.PitchSi, Bolt.Thread.PitchSi)) return;
        throw new ArgumentException($"The {what} of the capacity is {thread}, the bolt of the joint is {Bolt.Thread}.", nameof(capacity));
    }

    private static bool IsLike(double one, double other) => Math.Abs(one - other) <= 1e-9 * other;
}
