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

    public string RotationText => Reading.Rotation is Angle angle ? $"{Show.Stated(angle.Degrees)}°" : "-";

    public IReadOnlyList<Finding> Findings { get; }

    public bool Conforms => Findings.Count == 0;

    /// <summary>Nothing that is done to the bolt afterwards undoes it.</summary>
    public bool Lasts => Has(FindingKind.High) || Has(FindingKind.OverRotated);

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
                $"low: {Show.Beyond(window.Lower!.Value - AtFastener)} below the lower limit at the fastener, {Show.Lower(window)}; "
                + "loosen the bolt and tighten it again, or read the torque while it turns: the torque that restarts a bolt from rest is not its tightening torque");
        }

        if (Torque == Conformity.Above)
        {
            yield return new(FindingKind.High,
                $"high: {Show.Beyond(AtFastener - window.Upper!.Value)} above the upper limit at the fastener, {Show.Upper(window)}; "
                + "the bolt may be overstressed: loosening and tightening again does not undo that");
        }

        if (Torque == Conformity.Within && Group.Wrench.FitOf(Reading.Shown.Quantity) is { IsInRange: false })
        {
            yield return new(FindingKind.NotJudged, $"not judged: the wrench showed a torque outside its range, {Show.Range(Group.Wrench)}");
        }
    }

    private IEnumerable<Finding> FindInRotation(RotationRules rules)
    {
        if (Rate is { Conforms: false })
        {
            yield return new(FindingKind.TooFast, $"too fast: {Show.Rate(Rate)}, limit {Rate.Limit.DegreesPerSecond:0.###}°/s");
        }

        if (Rate is null) yield return new(FindingKind.NotJudged, "not judged: without rotation and time there is no rate to hold against the limit");
        if (Rotation == Conformity.Below)
        {
            yield return new(FindingKind.UnderRotated,
                $"rotation below its window: {RotationText}, window {Show.Limits(rules.Window!)}; the bolt may be seized or the thread dirty");
        }

        if (Rotation == Conformity.Above)
        {
            yield return new(FindingKind.OverRotated,
                $"rotation above its window: {RotationText}, window {Show.Limits(rules.Window!)}; the joint may have settled, or the bolt yielded: "
                + "loosening and tightening again does not undo that");
        }
    }
}
