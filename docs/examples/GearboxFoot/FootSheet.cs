using Fastening;
using Fastening.Equations;
using PumpCover;
using UnitsNet;

namespace GearboxFoot;

/// <summary>The sheet: what to set, what preload it gives, what a torque alone would give, what is left in service.</summary>
internal sealed class FootSheet(FootPlan plan, ISheetWriter writer)
{
    private const MidpointRounding Down = MidpointRounding.ToNegativeInfinity, Up = MidpointRounding.ToPositiveInfinity;

    private FootJoint Stated => plan.Stated;

    private RotationTightening Tightening => plan.Tightening;

    public void Write()
    {
        writer.Title("Tightening sheet: gearbox foot of a wind-driven pump, on cast iron");
        writer.Paragraph("Invented example: pump, joint, friction and temperatures do not exist. It shows the arithmetic; no real joint may be tightened by it.");
        if (!plan.KeepsRequiredClamp) WriteNotSuitable();
        WriteJoint();
        WriteWhatToSet();
        WriteBands();
        WriteService();
        WritePublished();
        WriteLeftOut();
        WriteWork();
        WriteCautions();
    }

    private void WriteNotSuitable()
    {
        writer.Heading("NOT SUITABLE: the required clamp force is not kept");
        writer.Paragraph(
            $"The stiffness of the joint is calculated and taken as known to ±{Show.Stated(Stated.StiffnessError.Percent)} %. The greatest turn that the bolt permits "
            + $"then leaves {Show.Force(plan.LeastLeft, Down)} at the least; {Show.Stated(Stated.RequiredClamp.Kilonewtons)} kN are required.");
        writer.Paragraph(plan.FirstThatKeeps() is { } proved
            ? $"Cure: measure the stiffness on this joint (length of the bolt or a load cell, over the rotation). If it confirms the calculated stiffness to ±{Show.Stated(proved.Tightening.StiffnessError!.Value.Percent)} %, "
                + $"a turn of {Show.Stated(proved.Rotation.Target!.Value.Degrees)}° leaves {Show.Force(proved.LeastLeft, Down)} at the least and stays within the permitted preload. "
                + "What this sheet does not check stands below."
            : "No knowledge of the stiffness cures this: choose a larger or stronger bolt, more bolts, or friction in a narrower range.");
    }

    private void WriteJoint()
    {
        writer.Heading("Joint");
        writer.Table(["What", "Stated or found"],
        [
            ["bolt", $"{Stated.Thread} {Stated.PropertyClass}, 110 mm long, 46 mm of thread; the nut is turned, the head held"],
            ["clamped, from the head on", $"steel washer {FootJoint.WasherMm} mm, foot of grey cast iron {FootJoint.FootMm} mm, "
                + $"steel frame {FootJoint.FrameMm} mm, steel washer {FootJoint.WasherMm} mm"],
            ["friction", $"{Stated.Friction} (thread, bearing; lowest to highest), invented"],
            ["required clamp force", $"{Show.Stated(Stated.RequiredClamp.Kilonewtons)} kN in service, cold and warm"],
            ["permitted stress", $"{Show.Stated(Stated.Utilisation.Percent)} % of the yield strength while tightening"],
            ["bolt stretches by", $"{Micrometres(Stated.Bolt.MetersPerNewton)} µm/kN (VDI 2230)"],
            ["parts give way by", $"{Micrometres(Stated.Parts.MetersPerNewton)} µm/kN (VDI 2230 cone over four layers)"],
            ["one degree of the nut gains", $"{Stated.Joint.PreloadGainAt(Angle.FromDegrees(1)).Kilonewtons:0.00} kN"],
            ["one degree at the wrench gains", $"{PerDegree:0.00} kN, bolt twist and wind-up of the extension taken off (lowest friction)"],
            ["slope at the wrench", $"{Tightening.ElasticSlope.NewtonMetersPerDegree:0.0} N·m/° while elastic (lowest friction)"],
        ]);
    }

    private void WriteWhatToSet()
    {
        ToleranceWindow<Torque> snug = Stated.SnugTorque;
        writer.Heading(
            $"{(plan.KeepsRequiredClamp ? "Set" : "NOT TO BE SET")}: snug {Show.Stated(snug.Target!.Value.NewtonMeters)} N·m, then {Show.Stated(plan.Rotation.Target!.Value.Degrees)}° "
            + $"(±{Show.Stated(Stated.RotationTolerance.Degrees)}°)");
        writer.Paragraph("How the rotation was chosen:");
        writer.Numbered(
        [
            $"Snug all bolts to {Show.Stated(snug.Target!.Value.NewtonMeters)} N·m, crosswise, until all faces are in full contact. It clamps "
                + $"{Show.Force(plan.ByRotation.SnugRange.Low, Down)} to {Show.Force(plan.ByRotation.SnugRange.High, Up)}, "
                + $"friction and ±{Show.Stated(Stated.TorqueTolerancePercent)} % of torque counted. Mark bolt end, nut and foot.",
            "From there the nut gains its preload by turning, whatever the friction. So the bolt is judged where friction twists it most: "
                + $"at the highest, {Show.Stated(Stated.Utilisation.Percent)} % of the yield strength is reached at {Show.Force(Stated.PermittedForRotation, Down)}.",
            $"The greatest whole degree at which the highest preload (lowest friction, upper limits, stiffest joint) stays there: {Show.Stated(plan.Rotation.Target!.Value.Degrees)}°.",
        ]);
        PreloadAfterRotation after = Tightening.PreloadAt(plan.Rotation.Target!.Value);
        writer.Paragraph(
            $"Of the {Show.Stated(plan.Rotation.Target!.Value.Degrees)}° at the wrench, {after.BoltTwist.Degrees:0.0}° twist the bolt and {after.ToolWindUp.Degrees:0.0}° wind up "
            + "the extension; the rest stretches and clamps. A longer or thinner extension needs a new sheet. The bolt head is held: if it turns along, subtract that.");
    }

    private void WriteBands()
    {
        Range<Force> byRotation = plan.ByRotation.Range;
        writer.Heading("Preload as the wrench leaves it: rotation against torque alone");
        writer.Table(["Method", "lowest ", "highest ", "permitted ", "highest/lowest "],
        [
            [
                $"snug {Show.Stated(Stated.SnugTorque.Target!.Value.NewtonMeters)} N·m, then {Show.Stated(plan.Rotation.Target!.Value.Degrees)}°",
                Show.Force(byRotation.Low, Down), Show.Force(byRotation.High, Up), Show.Force(Stated.PermittedForRotation, Down), $"{byRotation.HighOverLow:0.00}",
            ],
            [
                $"torque alone, {Show.Torque(plan.TorqueAlone.Target!.Value, 0)}", Show.Force(plan.LowestByTorque, Down), Show.Force(plan.HighestByTorque, Up),
                Show.Force(Stated.PermittedForTorque, Down), $"{plan.HighestByTorque / plan.LowestByTorque:0.00}",
            ],
        ]);
        writer.Paragraph(
            $"Both use the same bolt, friction and {Show.Stated(Stated.TorqueTolerancePercent)} % of torque, each at its limit. The rotation also counts ±{Show.Stated(Stated.RotationTolerance.Degrees)}° "
            + $"and ±{Show.Stated(Stated.StiffnessError.Percent)} % of the stiffness of the joint; the torque does not depend on it. With a torque alone friction scatters all of the preload, "
            + "with rotation only the snug part, and the stiffness scatters the rest. The permitted preload is lower with rotation because the bolt may then carry it at the highest thread friction.");
    }

    private void WriteService()
    {
        Range<Force> byRotation = plan.ByRotation.Range;
        writer.Heading("Clamp force left in service");
        writer.Paragraph(
            $"Surfaces settle by {Stated.Embedding.Total.Micrometers:0.#} µm after {Stated.Embedding.Source}, which costs {Show.Force(plan.GreatestEmbeddingLoss, Up)} where the joint is stiffest. "
            + "Then the temperatures, rises since tightening; moduli as at assembly:");
        writer.Table(["State", "bolt ", "layers from the head on ", "of the lowest ", "of the highest ", "required "], Stated.Temperatures.Select(state => new[]
        {
            state.State, $"{state.Temperatures.Bolt.Kelvins:0} K", string.Join(", ", state.Temperatures.Layers.Select(rise => $"{rise.Kelvins:0}")) + " K",
            Show.Force(plan.LeastLeftOf(byRotation.Low, state.Temperatures), Down), Show.Force(plan.MostLeftOf(byRotation.High, state.Temperatures), Up),
            $"{Show.Stated(Stated.RequiredClamp.Kilonewtons)} kN",
        }));
        writer.Paragraph(
            plan.KeepsRequiredClamp
                ? "The required clamp force is kept in every state above, before any working load and without relaxation with time. " + Stretched
                : "The required clamp force is NOT kept in every state above, even before a working load and without relaxation with time. " + Stretched);
    }

    private void WritePublished()
    {
        RotationComparison comparison = plan.LeastSnug.Compare(
            PublishedRotation.En1090Part2(clampedThickness: Stated.Parts.GripLength, Stated.Thread.NominalDiameter), Stated.RequiredClamp + plan.GreatestEmbeddingLoss);
        writer.Heading("Why no published part turn is used");
        writer.Paragraph($"Held against this joint at the least snug preload, {comparison}.");
        writer.Paragraph("Published part turns are for structural bolts with nothing but steel in the grip, and are chosen to carry the bolt past yield.");
    }

    private void WriteLeftOut()
    {
        writer.Heading("Not in the band, not checked");
        writer.Bullets(
        [
            "Not in the band: neighbours tightened later, relaxation with time, settling while tightening, faces that are not flat or not clean.",
            "NOT CHECKED: working load, bending and fatigue of the bolt; slip of the foot; pressure under washers; stripping of the threads.",
            "NOT CHECKED: the foot itself. Grey cast iron does not yield, it cracks; a foot that rocks is machined or shimmed, not pulled down.",
        ]);
    }

    private void WriteWork()
    {
        var worked = new WorkedSteps();
        void Work(string title, Derivation work) => writer.Work($"{title}: {work.Steps[^1].ResultText}", worked.NewIn(work));

        writer.Heading("The equations worked");
        writer.Paragraph("A step stands once; later answers use it again.");
        Work("Permitted preload, at the highest friction", Derivation.Of(() => Stated.AtHighestFriction.PermittedPreload(Stated.Strength, Stated.Utilisation)));
        Work("Preload at the rotation set, lowest friction, target torque", Derivation.Of(() => Tightening.PreloadAt(plan.Rotation.Target!.Value)));
        Work("Slope at the wrench", Derivation.Of(() => Tightening.ElasticSlope));
    }

    private void WriteCautions()
    {
        writer.Heading("Cautions");
        writer.Bullets(
        [
            "This example is invented. Do not tighten a real joint by it.",
            "Rotation tells preload only from full contact of all faces and only while bolt, thread and seats stay elastic. "
                + "A bolt turned too far is replaced: turning it back does not undo that.",
            "Stop the wind wheel, lock and tag it, and block the shaft before a bolt of the gearbox is touched.",
            "Wear eye and hand protection. Pull, do not push; stand clear of the line of the wrench and of where it swings if something slips or breaks.",
            "Never guess on a pressure-bearing, lifting, structural or safety-critical joint: such a joint needs a qualified procedure.",
            "Local codes, the instructions of the equipment maker and licensed practice come first; where they differ from this sheet, they apply.",
        ]);
    }

    private const string Stretched =
        "Where the parts are warmer than the bolt the bolt is stretched further: its stress in service, with the working load on top, is a check of its own.";

    private double PerDegree => Tightening.PreloadAt(Angle.FromDegrees(1)).PreloadGain.Kilonewtons;

    private static string Micrometres(double metersPerNewton) => $"{metersPerNewton * 1e9:0.000}";
}
