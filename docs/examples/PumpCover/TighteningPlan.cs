using Fastening;
using UnitsNet;

namespace PumpCover;

/// <summary>Target, window, preload band, stress and settings of a job, and what speaks against it.</summary>
internal sealed class TighteningPlan
{
    /// <summary>What arithmetic alone may add to a stress that reaches its limit exactly.</summary>
    private const double Rounding = 1e-12;

    private TighteningPlan(Job job, TargetTorque target)
    {
        BoltedJoint joint = job.Joint;
        Job = job;
        Target = target;
        Window = job.TorqueWindow.Around(target.Rounded);
        LowestTorque = job.Deviation.LeastAt(Window.Lower!.Value);
        HighestTorque = job.Deviation.MostAt(Window.Upper!.Value);
        LowestPreload = joint.AtHighestFriction.PreloadAt(LowestTorque);
        HighestPreload = joint.AtLowestFriction.PreloadAt(HighestTorque);
        PreloadAtMostTwist = joint.AtMostTwist.PreloadAt(HighestTorque);
        ToleranceWindow<Torque> mayReachFastener = ToleranceWindow.FromLimits(LowestTorque, Window.Target!.Value, HighestTorque);
        Settings = [.. job.Groups.Select(group => GroupSetting.For(group, mayReachFastener, job.Deviation.Calibration))];
        JointProblems = [.. FindJointProblems()];
        WrenchProblems = [.. Settings.Where(setting => setting.WhyNone is not null)
            .Select(setting => $"{setting.Group.Name} ({Show.Bolts(setting.Group.Bolts)}): {setting.WhyNone}")];
    }

    public Job Job { get; }

    public TargetTorque Target { get; }

    /// <summary>The window at the fastener, judged by what the wrench shows.</summary>
    public ToleranceWindow<Torque> Window { get; }

    /// <summary>Lower limit on a wrench that shows as much too much as its accuracy and calibration permit.</summary>
    public Torque LowestTorque { get; }

    /// <summary>Upper limit on a wrench that shows as much too little as its accuracy and calibration permit.</summary>
    public Torque HighestTorque { get; }

    public Force LowestPreload { get; }

    public Force HighestPreload { get; }

    public Force PreloadAtMostTwist { get; }

    public IReadOnlyList<GroupSetting> Settings { get; }

    /// <summary>Why no bolt is to be tightened by this plan; empty when nothing speaks against it.</summary>
    public IReadOnlyList<string> JointProblems { get; }

    /// <summary>Why some bolts cannot be tightened with this wrench.</summary>
    public IReadOnlyList<string> WrenchProblems { get; }

    public bool IsSuitable => JointProblems.Count == 0 && WrenchProblems.Count == 0;

    public static TighteningPlan For(Job job, string jobFile)
    {
        TargetTorque target = TargetTorque.Choose(job);
        if (target.Rounded.NewtonMeters > 0) return new TighteningPlan(job, target);
        throw new InputRefusedException(
            $"{jobFile}: wrench.resolution_nm is {Show.Stated(job.Wrench.Resolution!.Value.NewtonMeters)}; it must be at most "
            + $"{Show.Torque(target.Exact, 6, MidpointRounding.ToNegativeInfinity)}, the highest target that this joint permits; otherwise the wrench cannot show it.");
    }

    private IEnumerable<string> FindJointProblems()
    {
        BoltedJoint joint = Job.Joint;
        if (LowestPreload < joint.RequiredPreload)
        {
            yield return $"the lowest preload, {Show.Force(LowestPreload, MidpointRounding.ToNegativeInfinity)}, misses the required minimum of "
                + $"{Show.Stated(joint.RequiredPreload.Kilonewtons)} kN: a larger or stronger bolt, friction or prevailing torque in a narrower range, "
                + "a narrower window or a better wrench would be needed";
        }

        // The target keeps the stress within bounds at the lowest friction and prevailing torque; the twist of the other corner can be worse.
        Pressure atMostTwist = BoltStress.WhileTightening(joint.AtMostTwist, PreloadAtMostTwist).VonMises;
        if (atMostTwist > joint.PermittedStress * (1 + Rounding))
        {
            yield return "at the highest thread friction and prevailing torque with the lowest bearing friction the stress, "
                + $"{Show.Stress(atMostTwist, MidpointRounding.ToPositiveInfinity)}, passes the permitted "
                + $"{Show.Stated(joint.PermittedStress.Megapascals)} MPa: thread friction or prevailing torque in a narrower range would be needed";
        }
    }
}
