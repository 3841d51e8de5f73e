using Fastening;
using UnitsNet;

namespace PumpCover;

/// <summary>Reads the job file. Keys carry their unit; unknown keys are refused, missing ones named, nothing is assumed.</summary>
internal static class JobFile
{
    /// <summary>Beyond every bolt of the catalogue: a slipped decimal or a wrong unit, kN.</summary>
    private const double HighestPreload = 1e6;

    /// <summary>Below every display of a torque wrench: a slipped decimal or a wrong unit, N·m.</summary>
    private const double LeastStep = 0.001;

    public static Job Read(string path)
    {
        JobNode root = JobNode.ReadFile(path)
            .Allow("title", "note", "joint", "torque_window", "wrench", "bolt_groups", "rotation");
        JobNode tool = root.Object("wrench");
        TorqueWrench wrench = ReadWrench(tool);
        return new Job(
            root.Text("title"), root.Text("note"), ReadJoint(root.Object("joint")), ReadWindow(root.Object("torque_window")),
            wrench, ReadDeviation(tool, wrench), ReadGroups(root, wrench), ReadRotation(root.Object("rotation")));
    }

    private static BoltedJoint ReadJoint(JobNode node)
    {
        node.Allow(
            "thread", "property_class", "required_minimum_preload_kn", "utilisation_percent", "friction", "prevailing_torque_nm", "bearing");
        ScrewThread thread = node.AskWithHint(
            " (this file takes threads of the catalogue only)", () => ScrewThread.Parse(node.Text("thread")), ("", "thread"));
        PropertyClass grade = node.Ask(() => PropertyClass.Parse(node.Text("property_class")), ("", "property_class"));
        BoltStrength strength = node.AskWithHint(
            " (this file takes property classes of ISO 898-1 and ISO 3506-1 only)", () => grade.StrengthFor(thread), ("thread", "thread"));
        HeadRing head = ReadBearing(node.Object("bearing"), thread);
        JobNode friction = node.Object("friction");
        FrictionRange range = ReadFriction(friction);
        PrevailingTorque prevailing = node.Has("prevailing_torque_nm") ? ReadPrevailing(node) : PrevailingTorque.NotStated;
        Ratio utilisation = Ratio.FromPercent(node.Number("utilisation_percent"));
        double required = node.Number("required_minimum_preload_kn");
        if (required is <= 0 or > HighestPreload)
        {
            throw node.Refusal("required_minimum_preload_kn", $"it must be greater than 0 kN and at most {HighestPreload:0} kN");
        }

        return node.Ask(
            () => new BoltedJoint(thread, grade, strength, head, range, prevailing, utilisation)
            {
                FrictionOrigin = friction.Text("origin"),
                RequiredPreload = Force.FromKilonewtons(required),
            },
            ("utilisation", "utilisation_percent"), ("prevailingTorque", "prevailing_torque_nm"), ("model", "prevailing_torque_nm"));
    }

    private static PrevailingTorque ReadPrevailing(JobNode joint)
    {
        JobNode node = joint.Object("prevailing_torque_nm").Allow("low", "high");
        double low = node.Number("low"), high = node.Number("high");
        if (low < 0) throw node.Refusal("low", "it must be at least 0 N·m");
        if (high < low) throw node.Refusal("high", $"it must be at least the lowest, {Show.Stated(low)} N·m");
        return new PrevailingTorque(Torque.FromNewtonMeters(low), Torque.FromNewtonMeters(high), IsStated: true);
    }

    private static FrictionRange ReadFriction(JobNode node)
    {
        node.Allow("thread_low", "thread_high", "bearing_low", "bearing_high", "origin");
        FrictionCoefficients low = node.Ask(
            () => new FrictionCoefficients(node.Number("thread_low"), node.Number("bearing_low")),
            ("thread", "thread_low"), ("bearing", "bearing_low"));
        FrictionCoefficients high = node.Ask(
            () => new FrictionCoefficients(node.Number("thread_high"), node.Number("bearing_high")),
            ("thread", "thread_high"), ("bearing", "bearing_high"));
        return node.Ask(() => new FrictionRange(low, high), ("high", high.Thread < low.Thread ? "thread_high" : "bearing_high"));
    }

    private static HeadRing ReadBearing(JobNode node, ScrewThread thread)
    {
        switch (node.Text("kind"))
        {
            case "hexagon_head":
                node.Allow("kind");
                return node.AskWithHint(
                    " (in this file: kind \"annulus\" with outer_mm and inner_mm)", () => HeadRing.OfHexagonHead(thread), ("thread", "kind"));
            case "annulus":
                node.Allow("kind", "outer_mm", "inner_mm");
                BearingSurface ring = node.Ask(
                    () => BearingSurface.Annulus(Length.FromMillimeters(node.Number("outer_mm")), Length.FromMillimeters(node.Number("inner_mm"))),
                    ("outer", "outer_mm"), ("inner", "inner_mm"));
                return new HeadRing(ring, "stated in the job");
            default:
                throw node.Refusal("kind", "it must be \"hexagon_head\" (ISO 4014/4017 on a medium hole) or \"annulus\" (with outer_mm and inner_mm)");
        }
    }

    private static PercentWindow ReadWindow(JobNode node)
    {
        node.Allow("minus_percent", "plus_percent");
        var window = new PercentWindow(node.Number("minus_percent"), node.Number("plus_percent"));

        // The target is chosen later; any will do to learn whether the library takes the percentages.
        node.Ask(
            () => window.Around(Torque.FromNewtonMeters(1)), ("minus", "minus_percent"), ("plus", "plus_percent"));
        return window;
    }

    private static TorqueWrench ReadWrench(JobNode node)
    {
        node.Allow("lever_length_mm", "range_low_nm", "range_high_nm", "resolution_nm", "accuracy_percent", "calibration_uncertainty_percent");
        if (node.Number("resolution_nm") < LeastStep) throw node.Refusal("resolution_nm", $"it must be at least {LeastStep} N·m");
        return node.Ask(
            () => new TorqueWrench(Length.FromMillimeters(node.Number("lever_length_mm")))
                .WithRange(Torque.FromNewtonMeters(node.Number("range_low_nm")), Torque.FromNewtonMeters(node.Number("range_high_nm")))
                .WithResolution(Torque.FromNewtonMeters(node.Number("resolution_nm")))
                .WithAccuracy(Ratio.FromPercent(node.Number("accuracy_percent"))),
            ("leverLength", "lever_length_mm"), ("minimum", "range_low_nm"), ("maximum", "range_high_nm"),
            ("resolution", "resolution_nm"), ("accuracy", "accuracy_percent"));
    }

    private static WrenchDeviation ReadDeviation(JobNode node, TorqueWrench wrench)
    {
        Ratio accuracy = wrench.Accuracy!.Value;
        if (!node.Has("calibration_uncertainty_percent")) return new WrenchDeviation(accuracy, Ratio.Zero, IsCalibrationStated: false);
        var calibration = Ratio.FromPercent(node.Number("calibration_uncertainty_percent"));

        // Any window will do to learn whether the library takes the uncertainty.
        ToleranceWindow<Torque> any = ToleranceWindow.FromLimits(Torque.Zero, Torque.FromNewtonMeters(1));
        node.Ask(() => wrench.GuaranteedSettingFor(any, MeasurementUncertainty.Expanded(calibration, coverageFactor: 2)), ("calibrationUncertainty", "calibration_uncertainty_percent"));
        return new WrenchDeviation(accuracy, calibration, IsCalibrationStated: true);
    }

    private static List<BoltGroup> ReadGroups(JobNode root, TorqueWrench wrench)
    {
        List<BoltGroup> groups = [];
        HashSet<int> taken = [];
        foreach (JobNode node in root.Objects("bolt_groups"))
        {
            node.Allow("name", "bolts", "adapters", "pull_off_square_deg");
            string name = node.Text("name");
            if (groups.Any(group => group.Name == name)) throw node.Refusal("name", "another group has this name already; each needs its own");
            IReadOnlyList<int> bolts = node.WholeNumbers("bolts");
            if (bolts.Count == 0) throw node.Refusal("bolts", "it must hold at least one bolt number");
            foreach (int bolt in bolts.Where(bolt => !taken.Add(bolt)))
            {
                throw node.Refusal("bolts", $"bolt {bolt} is listed twice; each bolt must stand in one group only");
            }

            groups.Add(new BoltGroup(name, bolts, ReadReach(node, wrench)));
        }

        return groups.Count > 0 ? groups : throw root.Refusal("bolt_groups", "it must hold at least one group");
    }

    private static TorqueWrench ReadReach(JobNode node, TorqueWrench wrench)
    {
        foreach (JobNode adapter in node.Objects("adapters"))
        {
            adapter.Allow("length_mm", "angle_deg");
            wrench = adapter.Ask(
                () => wrench.WithAdapter(Length.FromMillimeters(adapter.Number("length_mm")), Angle.FromDegrees(adapter.Number("angle_deg"))),
                ("length", "length_mm"), ("angleFromHandle", "angle_deg"));
        }

        return node.Ask(
            () => wrench.WithPullOffSquare(Angle.FromDegrees(node.Number("pull_off_square_deg"))), ("pullOffSquare", "pull_off_square_deg"));
    }

    private static RotationRules ReadRotation(JobNode node)
    {
        node.Allow("rate_travel_deg", "rate_shortest_time_s", "window_low_deg", "window_high_deg");
        var travel = Angle.FromDegrees(node.Number("rate_travel_deg"));
        var shortest = Duration.FromSeconds(node.Number("rate_shortest_time_s"));
        RotationRateLimit limit = node.Ask(
            () => RotationRateLimit.FromTravel(travel, shortest), ("travel", "rate_travel_deg"), ("shortestTime", "rate_shortest_time_s"));
        if (!node.Has("window_low_deg") && !node.Has("window_high_deg")) return new RotationRules(travel, shortest, limit, null);
        ToleranceWindow<Angle> window = node.Ask(
            () => ToleranceWindow.FromLimits(Angle.FromDegrees(node.Number("window_low_deg")), Angle.FromDegrees(node.Number("window_high_deg"))),
            ("lower", "window_low_deg"), ("upper", "window_high_deg"));
        return new RotationRules(travel, shortest, limit, window);
    }
}
