using Fastening;
using Fastening.Equations;
using UnitsNet;

namespace PumpCover;

/// <summary>The sheet that goes to the joint: what to set, why, and what preload to expect.</summary>
internal sealed class TighteningSheet(TighteningPlan plan, ISheetWriter writer)
{
    private Job Job => plan.Job;

    private BoltedJoint Joint => plan.Job.Joint;

    public void WriteForConsole()
    {
        WriteHead();
        WriteJoint();
        WriteTarget();
        WriteBand();
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
            ["property class", $"{Joint.PropertyClass}, yield strength at least {Joint.Strength.YieldStrength.Megapascals:0.#} MPa (ISO 898-1)"],
            ["under the head", Joint.AtLowestFriction.Bearing.ToString()],
            ["friction", $"{Joint.Friction} (thread, bearing; lowest to highest)"],
            ["origin of the friction", Joint.FrictionOrigin],
            ["prevailing torque", Joint.Prevailing is Torque prevailing ? Show.Torque(prevailing, 2) : "none stated"],
            ["required preload", $"at least {Show.Force(Joint.RequiredPreload)}"],
            ["permitted stress", $"{Joint.Utilisation:0.###} of the yield strength while tightening, {Joint.PermittedStress.Megapascals:0.#} MPa"],
            ["wrench", $"lever {Job.Wrench.LeverLength.Millimeters:0.#} mm, {Show.Range(Job.Wrench)} "
                + $"in steps of {Job.Wrench.Resolution!.Value.NewtonMeters:0.###} N·m, ±{Job.Wrench.Accuracy!.Value.Percent:0.##} %"],
            ["bolts", $"{Job.Bolts.Count}, in {Show.Count(Job.Groups.Count, "group")}"],
            ["rate of rotation", $"{Job.Rotation.Limit}: {Job.Rotation.Travel.Degrees:0.##}° in {Job.Rotation.ShortestTime.Seconds:0.##} s or slower"],
            ["rotation from snug", Job.Rotation.Window is ToleranceWindow<Angle> window ? Show.Limits(window) : "no window stated"],
        ]);
    }

    private void WriteTarget()
    {
        PercentWindow percent = Job.TorqueWindow;
        double accuracy = Job.Wrench.Accuracy!.Value.Percent;
        writer.Heading(
            $"Target at the fastener: {Show.Torque(plan.Window.Target, Job.Wrench)}, window {Show.Limits(plan.Window)} "
            + $"(−{percent.Minus:0.##} %, +{percent.Plus:0.##} %)");
        writer.Paragraph("How the target was chosen:");
        writer.Numbered(
        [
            $"At the lowest friction the stress while tightening (tension and torsion, von Mises, VDI 2230) reaches {Joint.Utilisation:0.###} "
                + $"of the yield strength at a preload of {Show.Force(Joint.PermittedPreload)}.",
            $"At that friction this preload takes {Show.Torque(plan.Target.Permitted, 2)}. The fastener must not get more.",
            $"A reading at the upper limit (+{percent.Plus:0.##} %) on a wrench that shows {accuracy:0.##} % too little must still stay there: "
                + $"{Show.Torque(plan.Target.Permitted, 2)}·(1−{accuracy / 100:0.####})/(1+{percent.Plus / 100:0.####}) = {Show.Torque(plan.Target.Exact, 2)}.",
            $"Rounded down to what the wrench shows: {Show.Torque(plan.Target.Rounded, Job.Wrench)}.",
        ]);
        string reached = plan.LowestPreload >= Joint.RequiredPreload
            ? $"reaches the required minimum of {Show.Force(Joint.RequiredPreload)}"
            : $"MISSES the required minimum of {Show.Force(Joint.RequiredPreload)}";
        writer.Paragraph(
            $"Check: the lowest preload (highest friction, lower limit, a wrench that shows {accuracy:0.##} % too much) "
            + $"is {Show.Force(plan.LowestPreload)}; it {reached}.");
    }

    private void WriteBand()
    {
        writer.Heading($"Preload to expect: {Show.Force(plan.LowestPreload)} to {Show.Force(plan.HighestPreload)}, worst case");
        writer.Table(["Case", "torque at the fastener ", "preload ", "stress ", "of yield "],
        [
            BandRow("lowest: highest friction, lower limit", plan.LowestTorque, Joint.AtHighestFriction),
            BandRow("target, highest friction", plan.Window.Target, Joint.AtHighestFriction),
            BandRow("target, lowest friction", plan.Window.Target, Joint.AtLowestFriction),
            BandRow("highest: lowest friction, upper limit", plan.HighestTorque, Joint.AtLowestFriction),
        ]);
        writer.Paragraph(
            "Wrench accuracy is in the first and last row. Not in the band: hand position, adapter angles, settling of the joint, bending, temperature.");
        writer.Paragraph("Where the target torque goes:");
        writer.Table(["At", "stretches the bolt ", "thread friction ", "friction under the head ", "prevailing ", "share that stretches "],
        [
            SharesRow("lowest friction", Joint.AtLowestFriction),
            SharesRow("highest friction", Joint.AtHighestFriction),
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

        writer.Table(["Group", "bolts", "adapters", "pull ", "torque ratio ", "set ", "accept on the wrench"], plan.Settings.Select(SettingRow));
        foreach (GroupSetting setting in plan.Settings.Where(setting => setting.WhyNone is not null || setting.Fit.Messages.Count > 0))
        {
            writer.Paragraph($"{setting.Group.Name}: {(setting.WhyNone is string why ? $"NO SETTING FITS: {why}." : setting.Fit.ToString())}{CareOf(setting)}");
        }
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
        Work("Permitted preload, at the lowest friction", AssemblyStress.DerivePermittedPreload(low, Joint.Strength, Joint.Utilisation));
        Work("Torque for the permitted preload, at the lowest friction", low.DeriveTorqueFor(Joint.PermittedPreload));
        Work("Lowest preload, at the highest friction", Joint.AtHighestFriction.DerivePreloadAt(plan.LowestTorque));
        Work("Highest preload, at the lowest friction", low.DerivePreloadAt(plan.HighestTorque));
        Work("Stress at the highest preload", AssemblyStress.DeriveAt(low, plan.HighestPreload));
        if (plan.JointProblems.Count > 0) return;
        foreach (BoltGroup group in Job.Groups)
        {
            Work($"Wrench setting for {group.Name} ({Show.Bolts(group.Bolts)}), before rounding", group.Wrench.DeriveSettingFor(plan.Window.Target));
        }
    }

    private string[] BandRow(string name, Torque torque, FrictionTorqueModel model)
    {
        Force preload = model.PreloadAt(torque);
        Pressure stress = AssemblyStress.At(model, preload).VonMises;
        return [name, Show.Torque(torque, 2), Show.Force(preload), $"{stress.Megapascals:0} MPa", Show.Percent(stress / Joint.Strength.YieldStrength)];
    }

    private string[] SharesRow(string name, FrictionTorqueModel model)
    {
        TorqueBreakdown parts = model.BreakdownAt(plan.Window.Target);
        return
        [
            name, Show.Torque(parts.PitchTorque, 1), Show.Torque(parts.ThreadFrictionTorque, 1), Show.Torque(parts.BearingFrictionTorque, 1),
            Show.Torque(parts.PrevailingTorque, 1), Show.Percent(parts.PitchShare),
        ];
    }

    private static string[] SettingRow(GroupSetting setting)
    {
        BoltGroup group = setting.Group;
        string pull = group.Wrench.PullOffSquare.Degrees == 0 ? "square" : $"{group.Wrench.PullOffSquare.Degrees:0.##}° off";
        (string set, string accept) = setting.AtWrench is ToleranceWindow<Torque> window
            ? (Show.Torque(window.Target, group.Wrench), Show.Limits(window, Show.Decimals(group.Wrench)))
            : ("none fits", "none");
        return [group.Name, Show.List(group.Bolts), group.Adapters, pull, $"{group.Wrench.TorqueRatio:0.0000}", set, accept];
    }

    private static string CareOf(GroupSetting setting)
    {
        (double hand, IReadOnlyList<double> angles) = setting.Care();
        if (angles.Count == 0) return "";
        string perAngle = string.Join(" and ", angles.Select(angle => $"{angle:0.0}"));
        return $" A hand 10 mm off its place changes the torque at the fastener by about {hand:0.0} N·m; "
            + $"1° of {(angles.Count == 1 ? "the adapter" : "each adapter")}, by {perAngle} N·m.";
    }
}
