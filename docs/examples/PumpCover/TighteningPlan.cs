using Fastening;
using UnitsNet;

namespace PumpCover;

/// <summary>Target, window, preload band, stress and settings of a job, and what speaks against it.</summary>
internal sealed class TighteningPlan
{
    private TighteningPlan(Job job, TargetTorque target)
    {
        BoltedJoint joint = job.Joint;
        Job = job;
        Target = target;
        Window = job.TorqueWindow.Around(target.Rounded);
        LowestTorque = job.Wrench.DeliveredWindowAt(Window.Lower).Lower;
        HighestTorque = job.Wrench.DeliveredWindowAt(Window.Upper).Upper;
        LowestPreload = joint.AtHighestFriction.PreloadAt(LowestTorque);
        HighestPreload = joint.AtLowestFriction.PreloadAt(HighestTorque);
        WorstStress = AssemblyStress.At(joint.AtLowestFriction, HighestPreload);
        Settings = [.. job.Groups.Select(group => GroupSetting.For(group, Window))];
        JointProblems = [.. FindJointProblems()];
        WrenchProblems = [.. Settings.Where(setting => setting.WhyNone is not null)
            .Select(setting => $"no setting fits {setting.Group.Name} ({Show.Bolts(setting.Group.Bolts)}): {setting.WhyNone}")];
    }

    public Job Job { get; }

    public TargetTorque Target { get; }

    /// <summary>The window at the fastener, judged by what the wrench shows.</summary>
    public ToleranceWindow<Torque> Window { get; }

    /// <summary>Lower limit on a wrench that shows as much too much as its accuracy permits.</summary>
    public Torque LowestTorque { get; }

    /// <summary>Upper limit on a wrench that shows as much too little as its accuracy permits.</summary>
    public Torque HighestTorque { get; }

    public Force LowestPreload { get; }

    public Force HighestPreload { get; }

    public AssemblyStress WorstStress { get; }

    /// <summary>Equivalent stress over yield strength at the worst case.</summary>
    public double StressUsed => WorstStress.VonMises / Job.Joint.Strength.YieldStrength;

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
            $"{jobFile}: wrench.resolution_nm is {job.Wrench.Resolution!.Value.NewtonMeters}; it must be at most {Show.Torque(target.Exact, 2)}, "
            + "the highest target that this joint permits, else the wrench cannot show it.");
    }

    private IEnumerable<string> FindJointProblems()
    {
        BoltedJoint joint = Job.Joint;
        if (LowestPreload < joint.RequiredPreload)
        {
            yield return $"the lowest preload, {Show.Force(LowestPreload)}, misses the required minimum of {Show.Force(joint.RequiredPreload)}: "
                + "a larger or stronger bolt, friction in a narrower range, a narrower window or a better wrench would be needed";
        }

        // Torsion can outweigh tension where bearing friction is high: the other corner is looked at too.
        FrictionTorqueModel otherCorner = joint.AtLowestFriction.WithFriction(new FrictionCoefficients(joint.Friction.High.Thread, joint.Friction.Low.Bearing));
        Pressure other = AssemblyStress.At(otherCorner, otherCorner.PreloadAt(HighestTorque)).VonMises;
        if (other > joint.PermittedStress)
        {
            yield return $"at high thread friction and low bearing friction the stress, {other.Megapascals:0.#} MPa, "
                + $"passes the permitted {joint.PermittedStress.Megapascals:0.#} MPa";
        }
    }
}
