using Fastening;
using Fastening.Equations;
using UnitsNet;

namespace PumpCover;

/// <summary>The sheet that goes to the joint: what to set, why, and what preload to expect.</summary>
internal sealed class TighteningSheet(TighteningPlan plan, PreloadOutlook outlook, ISheetWriter writer)
{
    private const MidpointRounding Down = MidpointRounding.ToNegativeInfinity, Up = MidpointRounding.ToPositiveInfinity;

    private Job Job => plan.Job;

    private BoltedJoint Joint => plan.Job.Joint;

    /// <summary>Prevailing torque goes with the friction, where there is any.</summary>
    private string AndPrevailing => Joint.Prevailing.IsZero ? "" : " and prevailing torque";

    public void WriteForConsole()
    {
        WriteHead();
        WriteJoint();
        WriteTarget();
        WriteBand();
        new OutlookSection(outlook, plan, writer).Write();
        WriteLeftOut();
        WriteSettings();
        WriteWork();
    }

    public void WriteForFile()
    {
        WriteHead();
        WriteCautions();
        WriteJoint();
        WriteTarget();
        WriteBand();
        new OutlookSection(outlook, plan, writer).Write();
        WriteLeftOut();
        WriteSettings();
        WriteForm();
        WriteWork();
    }

    private void WriteHead()
    {
        writer.Title($"Tightening sheet: {Job.Title}");
        writer.Paragraph(Job.Note);
        if (plan.IsSuitable) return;
        writer.Heading("NOT SUITABLE");
        writer.Paragraph(plan.JointProblems.Count > 0
            ? "Do not tighten any bolt by this sheet, because:"
            : "Some bolts cannot be tightened with this wrench as it is fitted out, because:");
        writer.Bullets([.. plan.JointProblems, .. plan.WrenchProblems]);
    }

    public void WriteCautions()
    {
        writer.Heading("Cautions");
        writer.Bullets(Cautions.All);
    }

    private void WriteJoint()
    {
        writer.Heading("Joint and wrench");
        writer.Table(["What", "Stated"],
        [
            ["thread", $"{Joint.Thread}, pitch {Joint.Thread.Pitch.Millimeters:0.###} mm, stress area {Joint.Thread.StressArea.SquareMillimeters:0.0} mm²"],
            ["property class", $"{Joint.PropertyClass}, yield strength at least {Joint.Strength.YieldStrength.Megapascals:0.#} MPa "
                + $"({Joint.PropertyClass.Standard})"],
            ["under the head", $"{Joint.Head.Surface}"],
            ["friction", $"{Joint.Friction} (thread, bearing; lowest to highest)"],
            ["origin of the friction", Joint.FrictionOrigin],
            ["prevailing torque", PrevailingText()],
            ["required preload", $"at least {Show.Stated(Joint.RequiredPreload.Kilonewtons)} kN"],
            ["permitted stress", $"{Show.Stated(Joint.Utilisation.Percent)} % of the yield strength while tightening, "
                + $"{Show.Stated(Joint.PermittedStress.Megapascals)} MPa"],
            ["wrench", $"lever {Show.Stated(Job.Wrench.LeverLength.Millimeters)} mm, {Show.Range(Job.Wrench)} "
                + $"in steps of {Show.Stated(Job.Wrench.Resolution!.Value.NewtonMeters)} N·m, ±{Show.Stated(Job.Wrench.Accuracy!.Value.Percent)} %"],
            ["calibration of the wrench", Job.Deviation.CalibrationText],
            ["bolts", $"{Job.Bolts.Count}, in {Show.Count(Job.Groups.Count, "group")}"],
            ["rate of rotation", $"{Job.Rotation.Limit}: "
                + $"{Show.Stated(Job.Rotation.Travel.Degrees)}° in {Show.Stated(Job.Rotation.ShortestTime.Seconds)} s or slower"],
            ["rotation from snug", Job.Rotation.Window is ToleranceWindow<Angle> window ? Show.Limits(window) : "no window stated"],
        ]);
        writer.Paragraph($"Under the head: {Joint.Head.Origin}.");
        if (Joint.Prevailing.IsZero) return;
        writer.Paragraph(
            "Prevailing torque (of a locking thread) is part of the torque that the wrench shows and clamps nothing. Where it is lowest, preload is highest: "
            + "the target is chosen there. Where it is highest, preload is lowest. "
            + "The stress is looked at in both cases, because this torque twists the bolt too.");
    }

    private string PrevailingText()
    {
        PrevailingTorque prevailing = Joint.Prevailing;
        if (prevailing.IsZero) return prevailing.IsStated ? "none" : "none stated: taken as none";
        return $"{Show.Stated(prevailing.Low.NewtonMeters)} to {Show.Stated(prevailing.High.NewtonMeters)} N·m";
    }

    private void WriteTarget()
    {
        PercentWindow percent = Job.TorqueWindow;
        string permitted = Show.Torque(plan.Target.Permitted, 2, Down);
        writer.Heading(
            $"Target at the fastener: {Show.Torque(plan.Window.Target!.Value, Job.Wrench)}, window {Show.Limits(plan.Window)} "
            + $"(−{Show.Stated(percent.Minus)} %, +{Show.Stated(percent.Plus)} %)");
        writer.Paragraph("How the target was chosen:");
        writer.Numbered(
        [
            $"At the lowest friction{AndPrevailing} the stress while tightening (tension and torsion, von Mises, VDI 2230) "
                + $"reaches {Show.Stated(Joint.Utilisation.Percent)} % of the yield strength at a preload of {Show.Force(Joint.PermittedPreload, Down)}.",
            $"There this preload takes {permitted}. The fastener must not get more.",
            $"A reading at the upper limit (+{Show.Stated(percent.Plus)} %) on a wrench that shows {Job.Deviation.Total} % too little{Job.Deviation.Parts} must still stay there: "
                + $"{permitted}·(1−{Job.Deviation.Terms})/(1+{Show.Stated(percent.Plus / 100)}) = {Show.Torque(plan.Target.Exact, 2, Down)}.",
            $"Rounded down to what the wrench shows: {Show.Torque(plan.Target.Rounded, Job.Wrench)}.",
        ]);
        writer.Paragraph(
            $"Check: the lowest preload (highest friction{AndPrevailing}, lower limit, a wrench that shows {Job.Deviation.Total} % too much) "
            + $"is {Show.Force(plan.LowestPreload, Down)}; it {(plan.LowestPreload >= Joint.RequiredPreload ? "reaches" : "MISSES")} "
            + $"the required minimum of {Show.Stated(Joint.RequiredPreload.Kilonewtons)} kN as the wrench leaves the bolt, before settling and before its neighbours are tightened: "
            + "both take from it, and neither is counted here.");
    }

    private void WriteBand()
    {
        writer.Heading($"Preload to expect: {Show.Force(plan.LowestPreload, Down)} to {Show.Force(plan.HighestPreload, Up)}, as the wrench leaves it");
        writer.Table(["Case", "torque at the fastener ", "preload ", "stress ", "of yield "],
        [
            BandRow($"lowest: highest friction{AndPrevailing}, lower limit", plan.LowestTorque, Joint.AtHighestFriction, Down),
            BandRow($"target, highest friction{AndPrevailing}", plan.Window.Target!.Value, Joint.AtHighestFriction),
            BandRow($"target, lowest friction{AndPrevailing}", plan.Window.Target!.Value, Joint.AtLowestFriction),
            BandRow($"highest: lowest friction{AndPrevailing}, upper limit", plan.HighestTorque, Joint.AtLowestFriction, Up),
            BandRow("most twist: high in the thread, low under the head, upper limit", plan.HighestTorque, Joint.AtMostTwist, Up),
        ]);
        writer.Paragraph(
            "Before settling and before the neighbours are tightened. Accuracy and calibration of the wrench are in the first row and the last two. At one torque the stress is highest "
            + "either where the preload is highest or where the twist is: both stand here. Lowest values are rounded down, highest up.");
        writer.Paragraph("Where the target torque goes:");
        writer.Table(["At", "stretches the bolt ", "thread friction ", "friction under the head ", "prevailing ", "share that stretches "],
        [
            SharesRow($"lowest friction{AndPrevailing}", Joint.AtLowestFriction),
            SharesRow($"highest friction{AndPrevailing}", Joint.AtHighestFriction),
        ]);
    }

    private void WriteLeftOut()
    {
        writer.Heading("Not in the band, not checked");
        writer.Bullets(
        [
            "Not in the band: place of the hand, lean of the pull, length and angle of the adapters, the ring under the head within its tolerances, "
                + "settling and relaxation of the joint, neighbours tightened later, temperature.",
            "NOT CHECKED: the pressure under the head and the nut against what the clamped parts bear. Too much of it crushes them, and preload is lost.",
            "NOT CHECKED: stripping of the threads (length of engagement; strength of the nut or of the tapped part).",
            "NOT CHECKED: working load, bending and fatigue of the bolt, the clamped parts, the gasket. The required preload is taken as stated.",
        ]);
    }

    private void WriteSettings()
    {
        writer.Heading("What to set on the wrench");
        if (plan.JointProblems.Count > 0)
        {
            writer.Paragraph("No settings are given: the sheet is not suitable (see above).");
            return;
        }

        writer.Table(["Group", "bolts", "adapters", "torque ratio ", "set ", "accept on the wrench"], plan.Settings.Select(SettingRow));
        writer.Paragraph(
            "Each setting holds for these adapters, on these sides, and this pull alone. Adapters are named from the "
            + "drive outwards; each angle is taken from the line of the handle produced beyond the drive, not from the adapter before.");
        writer.Bullets(plan.Settings.Select(setting => $"{setting.Group.Name}: {setting.Group.Adapters}; {setting.Group.Pull}.{CareOf(setting)}"));
    }

    private void WriteForm()
    {
        if (plan.JointProblems.Count > 0) return;
        writer.Heading("Record");
        writer.Table(
            ["bolt ", "set ", "accept on the wrench", "wrench showed, unit", "rotation from snug", "time taken", "date, time", "remark"],
            plan.Settings.SelectMany(setting => setting.Group.Bolts.Select(bolt => (bolt, cells: SettingRow(setting)))).OrderBy(row => row.bolt)
                .Select(row => new[] { $"{row.bolt}", row.cells[^2], row.cells[^1], "", "", "", "", "" }));
    }

    private void WriteWork()
    {
        var worked = new WorkedSteps();
        void Work(string title, Derivation work) => writer.Work($"{title}: {work.Steps[^1].ResultText}", worked.NewIn(work));

        FrictionTorqueModel low = Joint.AtLowestFriction;
        writer.Heading("The equations worked");
        writer.Paragraph(
            $"Torque convention: {low.Convention.Name} (form: {low.Convention.Form}, flank section: {low.Convention.FlankSection}, "
            + $"mean diameter: {low.Convention.MeanDiameter}). A step stands once; later answers use it again.");
        Work($"Permitted preload, at the lowest friction{AndPrevailing}", Derivation.Of(() => low.PermittedPreload(Joint.Strength, Joint.Utilisation)));
        Work($"Torque for the permitted preload, at the lowest friction{AndPrevailing}", Derivation.Of(() => low.TorqueFor(Joint.PermittedPreload)));
        Work($"Lowest preload, at the highest friction{AndPrevailing}", Derivation.Of(() => Joint.AtHighestFriction.PreloadAt(plan.LowestTorque)));
        Work($"Highest preload, at the lowest friction{AndPrevailing}", Derivation.Of(() => low.PreloadAt(plan.HighestTorque)));
        Work("Stress at the highest preload", Derivation.Of(() => BoltStress.WhileTightening(low, plan.HighestPreload)));
        Work("Preload at the most twist", Derivation.Of(() => Joint.AtMostTwist.PreloadAt(plan.HighestTorque)));
        Work("Stress at the most twist", Derivation.Of(() => BoltStress.WhileTightening(Joint.AtMostTwist, plan.PreloadAtMostTwist)));
        if (plan.JointProblems.Count > 0) return;
        foreach (BoltGroup group in Job.Groups)
        {
            Work($"Wrench setting for {group.Name} ({Show.Bolts(group.Bolts)}), before rounding", Derivation.Of(() => group.Wrench.SettingFor(plan.Window.Target!.Value)));
        }
    }

    private string[] BandRow(string name, Torque torque, FrictionTorqueModel model, MidpointRounding rounding = MidpointRounding.AwayFromZero)
    {
        Force preload = model.PreloadAt(torque);
        Pressure stress = BoltStress.WhileTightening(model, preload).VonMises;
        return
        [
            name, Show.Torque(torque, 2, rounding), Show.Force(preload, rounding), Show.Stress(stress, rounding),
            Show.Percent(stress / Joint.Strength.YieldStrength, rounding),
        ];
    }

    private string[] SharesRow(string name, FrictionTorqueModel model)
    {
        TorqueBreakdown parts = model.BreakdownAt(plan.Window.Target!.Value);
        return
        [
            name, Show.Torque(parts.PitchTorque, 1), Show.Torque(parts.ThreadFrictionTorque, 1), Show.Torque(parts.BearingFrictionTorque, 1),
            Show.Torque(parts.PrevailingTorque, 1), Show.Percent(parts.PitchShare.DecimalFractions),
        ];
    }

    private static string[] SettingRow(GroupSetting setting)
    {
        BoltGroup group = setting.Group;
        (string set, string accept) = setting.AtWrench is ToleranceWindow<Torque> window
            ? (Show.Torque(window.Target!.Value, group.Wrench), Show.Limits(window, Show.Decimals(group.Wrench)))
            : ("none fits", "none");
        int adapters = group.Wrench.Adapters.Count;
        string wrench = adapters == 0 ? "none" : $"{adapters}, see below";
        return [group.Name, Show.List(group.Bolts), wrench, $"{group.Wrench.TorqueRatio:0.0000}", set, accept];
    }

    private static string CareOf(GroupSetting setting)
    {
        if (setting.WhyNone is string why) return $" NO SETTING: {why}";
        (Torque hand, IReadOnlyList<Torque> adapters, Torque pull) = setting.Care();
        if (adapters.Count == 0) return "";
        string perAdapter = string.Join(" and ", adapters.Select(change => Show.Torque(change, 2)));
        return $" The hand must be {Show.Stated(setting.Group.Wrench.LeverLength.Millimeters)} mm from the centre of the drive: "
            + $"10 mm off its place changes the torque at the fastener by about {Show.Torque(hand, 2)}; "
            + $"1° of {(adapters.Count == 1 ? "the adapter" : "each adapter")}, by {perAdapter}; 1° of lean of the pull, by {Show.Torque(pull, 2)}.";
    }
}
