using Fastening;
using UnitsNet;

namespace PumpCover;

/// <summary>The verdict on one reading: torque at the fastener, rate and amount of rotation. No finding: it conforms.</summary>
internal sealed class Judgement
{
    private Judgement(Reading reading, BoltGroup group, TighteningPlan plan)
    {
        Reading = reading;
        Group = group;
        AtFastener = group.Wrench.FastenerTorqueAt(reading.Shown.Quantity);
        Torque = plan.Window.Classify(AtFastener);
        RotationRules rules = plan.Job.Rotation;
        if (reading is { Rotation: Angle turned, Duration: Duration time }) Rate = rules.Limit.Check(turned, time);
        if (reading.Rotation is Angle angle && rules.Window is not null) Rotation = rules.Window.Classify(angle);
        Findings = [.. FindInTorque(plan), .. FindInRotation(rules)];
    }

    public Reading Reading { get; }

    public BoltGroup Group { get; }

    /// <summary>What the fastener got when the wrench showed the reading: adapters included.</summary>
    public Torque AtFastener { get; }

    public Conformity Torque { get; }

    /// <summary>Null when rotation or time was not measured.</summary>
    public RotationRateCheck? Rate { get; }

    /// <summary>Null when rotation was not measured, or the job has no window for it.</summary>
    public Conformity? Rotation { get; }

    public IReadOnlyList<Finding> Findings { get; }

    public bool Conforms => Findings.Count == 0;

    public bool Has(FindingKind kind) => Findings.Any(finding => finding.Kind == kind);

    public static Judgement Of(Reading reading, TighteningPlan plan)
    {
        BoltGroup group = plan.Job.GroupOf(reading.Bolt)
            ?? throw new LineRefusedException($"bolt is {reading.Bolt}; the job has bolts {Show.List(plan.Job.Bolts)}");
        return new Judgement(reading, group, plan);
    }

    private IEnumerable<Finding> FindInTorque(TighteningPlan plan)
    {
        ToleranceWindow<Torque> window = plan.Window;
        if (Torque == Conformity.Below)
        {
            yield return new(FindingKind.Low,
                $"low: {Show.Torque(window.Lower - AtFastener, 2)} below the lower limit at the fastener, {Show.Torque(window.Lower, 2)}");
        }

        if (Torque == Conformity.Above)
        {
            yield return new(FindingKind.High,
                $"high: {Show.Torque(AtFastener - window.Upper, 2)} above the upper limit at the fastener, {Show.Torque(window.Upper, 2)}; "
                + "the bolt may be overstressed: loosening and tightening again does not undo that");
        }

        if (Torque == Conformity.Within && Group.Wrench.FitOf(Reading.Shown.Quantity) is { IsInRange: false })
        {
            yield return new(FindingKind.NotJudged, $"not judged: the wrench showed a torque outside its range, {Show.Range(Group.Wrench)}");
        }
    }

    private IEnumerable<Finding> FindInRotation(RotationRules rules)
    {
        if (Rate is { Conforms: false }) yield return new(FindingKind.TooFast, $"{Rate}");
        if (Rate is null) yield return new(FindingKind.NotJudged, "not judged: without rotation and time there is no rate to hold against the limit");
        if (Rotation is Conformity.Below or Conformity.Above)
        {
            string side = Rotation == Conformity.Below ? "below" : "above";
            yield return new(FindingKind.RotationOutside,
                $"rotation {side} its window: {Reading.Rotation!.Value.Degrees:0.##}°, window {Show.Limits(rules.Window!)}; "
                + (Rotation == Conformity.Below ? "the bolt may be seized or the thread dirty" : "the joint may have settled, or the bolt yielded"));
        }
    }
}
