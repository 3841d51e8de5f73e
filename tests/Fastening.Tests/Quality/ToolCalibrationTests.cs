using Fastening.Equations;
using Fastening.Quality;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Quality;

public class ToolCalibrationTests
{
    private static readonly DateTimeOffset Found = new(2026, 3, 2, 9, 0, 0, TimeSpan.FromHours(1));
    private static readonly TorqueTool Wrench = TorqueTool.WithRange("W-17", TorqueToolClass.Parse("II A"), Newton(40), Newton(200));
    private static readonly CalibrationUncertainty Exact = new CalibrationUncertainty(MeasurementUncertainty.Expanded(Ratio.FromPercent(0), 2)).WithResolution(Torque.Zero);

    [Fact]
    public void A_tool_that_delivers_less_than_it_says_has_a_positive_deviation()
    {
        CalibrationPoint point = CalibrationPoint.At(Newton(100), [Newton(96), Newton(98)]);

        Close.To((100 - 97.0) / 97, point.MeanDeviation.DecimalFractions);
        Close.To((100 - 96.0) / 96, point.Deviations[0].DecimalFractions);
        Assert.True(CalibrationPoint.At(Newton(100), [Newton(103), Newton(102)]).MeanDeviation.DecimalFractions < 0);
    }

    /// <summary>A clutch that gives way at a third: it must go on record as found. 1062 is 120 N·m read in lbf·in.</summary>
    [Fact]
    public void A_broken_tool_is_recorded_as_it_was_found_and_a_number_in_another_unit_is_not()
    {
        CalibrationVerdict verdict = Calibration(120, [41, 43, 40, 44, 42]).Judge(DecisionRule.IlacG8);

        Assert.False(verdict.Conforms);
        Close.To((120 - 40.0) / 40, verdict.WorstDeviation.DecimalFractions);
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => CalibrationPoint.At(Newton(100), [Newton(99), Newton(1062)]));
        Assert.Contains("references[1] is 1062 N·m; it must be between a tenth of the torque of the tool, 100 N·m, and ten times it (is its unit right?). (", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => CalibrationPoint.At(Newton(100), [Newton(99), Newton(9.9)]));
    }

    /// <summary>ISO 6789-1:2017, from memory: every reading must comply, not the mean.</summary>
    [Fact]
    public void One_reading_out_fails_a_tool_whose_mean_is_right()
    {
        CalibrationVerdict verdict = Calibration(120, [120, 120, 120, 125.5, 114.5]).Judge(DecisionRule.SimpleAcceptance);

        Assert.False(verdict.Conforms);
        Assert.Contains("2 of 5 readings at 120 N·m deviate by more than 4 %", verdict.Reasons[0].ToString(), StringComparison.Ordinal);
        Close.To((120 - 114.5) / 114.5, verdict.WorstDeviation.DecimalFractions);
        Assert.StartsWith("does not comply: worst deviation +4.80 %, permitted ±4 %", verdict.ToString(), StringComparison.Ordinal);
    }

    /// <summary>The limit itself conforms: 4 % of 104 read at 100 is a deviation of exactly (104 − 100)/100.</summary>
    [Theory]
    [InlineData(100.0, true)]
    [InlineData(99.99, false)]
    public void A_reading_on_the_limit_complies(double reference, bool conforms)
    {
        CalibrationVerdict verdict = OnePoint("II C", 104, Enumerable.Repeat(reference, 10)).Judge(DecisionRule.SimpleAcceptance);

        Assert.Equal(conforms, verdict.Conforms);
    }

    [Fact]
    public void A_complete_calibration_within_the_limits_complies()
    {
        CalibrationVerdict verdict = Whole(1.01).Judge(DecisionRule.SimpleAcceptance);

        Assert.True(verdict.Conforms);
        Assert.Empty(verdict.Reasons);
        Assert.StartsWith("complies", verdict.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_missing_cannot_be_told()
    {
        CalibrationVerdict verdict = Calibration(120, [120.1, 120.2]).Judge(DecisionRule.SimpleAcceptance);

        Assert.Null(verdict.Conforms);
        Assert.Equal(3, verdict.Reasons.Count);
        Assert.Contains("no point at 40 N·m; class II A takes one there", verdict.Reasons[0].ToString(), StringComparison.Ordinal);
        Assert.Contains("2 readings at 120 N·m; class II A takes 5", verdict.Reasons[1].ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_stated_class_is_calibrated_by_its_own_plan_and_not_in_the_name_of_the_standard()
    {
        CalibrationVerdict verdict = Hydraulic(1000, (1000, [1000, 1000, 1000]), (5000, [5000, 5000])).Judge(DecisionRule.SimpleAcceptance);

        Assert.Null(verdict.Conforms);
        Assert.Equal(["no point at 3000 N·m; class HY takes one there", "2 readings at 5000 N·m; class HY takes 3"], verdict.Reasons.Select(reason => reason.ToString()));
        Assert.Equal([CalibrationReasonKind.PointMissing, CalibrationReasonKind.ReadingsMissing], verdict.Reasons.Select(reason => reason.Kind));
        Assert.True(Hydraulic(1000, (1000, [1000, 971, 1029]), (3000, [3000, 2914, 3090]), (5000, [5000, 5000, 5000])).Judge(DecisionRule.SimpleAcceptance).Conforms);
        Assert.False(Hydraulic(1000, (1000, [1000, 1000, 970]), (3000, [3000, 3000, 3000]), (5000, [5000, 5000, 5000])).Judge(DecisionRule.SimpleAcceptance).Conforms);
    }

    /// <summary>20 % of 5000 N·m is 1000 N·m; a tool that begins at 1500 N·m cannot be measured there.</summary>
    [Fact]
    public void A_point_below_the_lowest_value_is_taken_at_the_lowest_value()
    {
        Assert.Contains("no point at 1500 N·m", Hydraulic(1500, (3000, [3000, 3000, 3000])).Judge(DecisionRule.SimpleAcceptance).Reasons[0].ToString(), StringComparison.Ordinal);
        Assert.True(Hydraulic(1500, (1500, [1500, 1500, 1500]), (3000, [3000, 3000, 3000]), (5000, [5000, 5000, 5000])).Judge(DecisionRule.SimpleAcceptance).Conforms);
        CalibrationVerdict high = Hydraulic(4000, (4500, [4500, 4500, 4500])).Judge(DecisionRule.SimpleAcceptance);
        Assert.Equal(["no point at 4000 N·m; class HY takes one there", "no point at 5000 N·m; class HY takes one there"], high.Reasons.Select(reason => reason.ToString()));
    }

    [Fact]
    public void A_stated_class_for_one_value_is_calibrated_there()
    {
        TorqueToolClass nutrunner = TorqueToolClass.Stated("NR", "nutrunner", Ratio.FromPercent(5), 2, hasScale: false, []);
        var calibration = new ToolCalibration(
            TorqueTool.SetTo("N-1", nutrunner, Newton(60)), CalibrationState.AsFound, Found, [CalibrationPoint.At(Newton(60), [Newton(62), Newton(58)])], Exact);

        Assert.True(calibration.Judge(DecisionRule.SimpleAcceptance).Conforms);
        Assert.Throws<ArgumentException>(() => TorqueTool.WithRange("N-1", nutrunner, Newton(20), Newton(60)));
    }

    /// <summary>ISO 6789-2:2017 §4.3 (secondary source): the reference's uncertainty at most a quarter of the permitted deviation.</summary>
    [Theory]
    [InlineData(1.0, true)]
    [InlineData(1.01, null)]
    public void A_reference_too_uncertain_cannot_pass_a_tool(double percent, bool? conforms)
    {
        var calibration = new ToolCalibration(Wrench, CalibrationState.AsFound, Found, Points(1), new CalibrationUncertainty(MeasurementUncertainty.Expanded(Ratio.FromPercent(percent), 2)).WithResolution(Torque.Zero));

        Assert.Equal(conforms, calibration.Judge(DecisionRule.SimpleAcceptance).Conforms);
    }

    [Fact]
    public void A_tool_with_a_scale_cannot_pass_without_its_resolution()
    {
        var unstated = new CalibrationUncertainty(MeasurementUncertainty.Expanded(Ratio.FromPercent(0.5), 2));
        CalibrationVerdict verdict = new ToolCalibration(Wrench, CalibrationState.AsFound, Found, Points(1), unstated).Judge(DecisionRule.SimpleAcceptance);

        Assert.Null(verdict.Conforms);
        CalibrationReason reason = Assert.Single(verdict.Reasons);
        Assert.Equal((CalibrationReasonKind.ResolutionMissing, null), (reason.Kind, reason.At));
        Assert.Equal("no resolution is stated, and a tool with a scale or display has one", reason.ToString());
        Assert.False(unstated.IsResolutionStated);
        Assert.True(OnePoint("II C", 104, Enumerable.Repeat(104.0, 10), unstated).Judge(DecisionRule.SimpleAcceptance).Conforms);
    }

    [Fact]
    public void A_guard_band_makes_a_near_reading_undecidable()
    {
        var calibration = new ToolCalibration(Wrench, CalibrationState.AsFound, Found, Points(1 / 1.037), new CalibrationUncertainty(MeasurementUncertainty.Expanded(Ratio.FromPercent(0.8), 2)).WithResolution(Torque.Zero));

        Assert.True(calibration.Judge(DecisionRule.SimpleAcceptance).Conforms);
        CalibrationVerdict guarded = calibration.Judge(DecisionRule.IlacG8);
        Assert.Null(guarded.Conforms);
        Assert.Contains("too near the limit of 4 % to decide", guarded.Reasons[0].ToString(), StringComparison.Ordinal);
    }

    /// <summary>A smaller tool has wider limits in some classes: a verdict never improves when the limits shrink.</summary>
    [Property]
    public Property A_verdict_never_improves_when_the_limits_shrink() => Prop.ForAll(
        Arb.From(from tail in Gen.Choose(-80, 80) from step in Gen.Choose(0, 20) select (tail * 0.001, step * 0.0005)),
        pair =>
        {
            (double deviation, double step) = pair;
            IEnumerable<double> readings = Enumerable.Range(0, 10).Select(i => 50 / (1 + deviation + i * step));
            bool? wide = OnePoint("II F", 50, readings).Judge(DecisionRule.SimpleAcceptance).Conforms;
            bool? narrow = OnePoint("II C", 50, readings).Judge(DecisionRule.SimpleAcceptance).Conforms;
            return narrow != true || wide == true;
        });

    /// <summary>Second route: the root of the sum of squares written out, with the components of ISO 6789-2:2017 (from memory).</summary>
    [Fact]
    public void The_budget_is_the_root_of_the_squares()
    {
        CalibrationPoint point = CalibrationPoint.At(Newton(40), [Newton(39.6), Newton(39.9), Newton(39.7), Newton(39.8), Newton(40.0)]);
        CalibrationUncertainty uncertainty = new CalibrationUncertainty(MeasurementUncertainty.Expanded(Ratio.FromPercent(0.6), 2))
            .WithResolution(Newton(0.5)).WithReproducibility(Newton(0.3), Newton(39)).WithOutputDrive(Newton(0.4), Newton(41))
            .WithInterface(Newton(0.2), Newton(40)).WithForceLoadingPoint(Newton(0.7), Newton(38)).WithSystematicDeviation(Ratio.FromPercent(-0.1));

        const double mean = 39.8;
        double variance = (0.04 + 0.01 + 0.01 + 0 + 0.04) / 4;
        double squares = 0.003 * 0.003 + 0.25 / (12 * mean * mean) + variance / (5 * mean * mean)
            + 0.09 / (12 * 39.0 * 39) + 0.16 / (12 * 41.0 * 41) + 0.04 / (12 * 40.0 * 40) + 0.49 / (12 * 38.0 * 38);
        Close.To(2 * Math.Sqrt(squares), uncertainty.At(point).ExpandedWith(2).DecimalFractions);
        Close.To(0.2 / 39.8 + 0.001 + 2 * Math.Sqrt(squares), uncertainty.IntervalAt(point).DecimalFractions);
        Assert.Equal(uncertainty.IntervalAt(point).DecimalFractions, Derivation.Of(() => uncertainty.IntervalAt(point)).Result);
    }

    [Theory]
    [InlineData(nameof(CalibrationUncertainty.WithReproducibility))]
    [InlineData(nameof(CalibrationUncertainty.WithOutputDrive))]
    [InlineData(nameof(CalibrationUncertainty.WithInterface))]
    [InlineData(nameof(CalibrationUncertainty.WithForceLoadingPoint))]
    public void A_range_stated_again_replaces_the_earlier_one(string kind)
    {
        CalibrationUncertainty With(CalibrationUncertainty uncertainty, double range) =>
            (CalibrationUncertainty)typeof(CalibrationUncertainty).GetMethod(kind)!.Invoke(uncertainty, [Newton(range), Newton(39)])!;

        CalibrationPoint point = CalibrationPoint.At(Newton(40), [Newton(40), Newton(40)]);
        CalibrationUncertainty twice = With(With(new CalibrationUncertainty(MeasurementUncertainty.Expanded(Ratio.FromPercent(0.6), 2)), 3), 0.7);

        Close.To(2 * Math.Sqrt(0.003 * 0.003 + 0.49 / (12 * 39.0 * 39)), twice.At(point).ExpandedWith(2).DecimalFractions);
        Assert.EndsWith("1 of 4 ranges from varied conditions", twice.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Ranges_count_in_one_order_whatever_the_order_they_were_stated_in()
    {
        CalibrationPoint point = CalibrationPoint.At(Newton(40), [Newton(39.6), Newton(39.9)]);
        var bare = new CalibrationUncertainty(MeasurementUncertainty.Expanded(Ratio.FromPercent(0.6), 2));
        CalibrationUncertainty forwards = bare.WithReproducibility(Newton(0.3), Newton(39)).WithOutputDrive(Newton(0.4), Newton(41))
            .WithInterface(Newton(0.2), Newton(40)).WithForceLoadingPoint(Newton(0.7), Newton(38)).WithResolution(Newton(0.5)).WithSystematicDeviation(Ratio.FromPercent(0.2));
        CalibrationUncertainty backwards = bare.WithSystematicDeviation(Ratio.FromPercent(0.2)).WithResolution(Newton(0.5)).WithForceLoadingPoint(Newton(0.7), Newton(38))
            .WithInterface(Newton(0.2), Newton(40)).WithOutputDrive(Newton(0.4), Newton(41)).WithReproducibility(Newton(0.3), Newton(39));

        Assert.Equal(Derivation.Of(() => forwards.IntervalAt(point)).ToString(), Derivation.Of(() => backwards.IntervalAt(point)).ToString());
        Assert.Equal(forwards.IntervalAt(point), backwards.IntervalAt(point));
    }

    [Theory]
    [InlineData("")]
    [InlineData(" \t")]
    public void A_name_that_is_empty_is_refused(string empty)
    {
        ToleranceWindow<Torque> window = ToleranceWindow.FromLimits(Newton(140), Newton(160));

        Assert.Equal("name", Assert.Throws<ArgumentException>(() => TorqueTool.SetTo(empty, TorqueToolClass.Parse("II B"), Newton(20))).ParamName);
        Assert.Equal("name", Assert.Throws<ArgumentException>(() => TorqueTool.WithRange(empty, TorqueToolClass.Parse("II A"), Newton(20), Newton(30))).ParamName);
        Assert.Equal("fastener", Assert.Throws<ArgumentException>(() => new ToolReading(empty, Found, Newton(150), window)).ParamName);
    }

    /// <summary>A deviation of −4 % is a reference of X/(1 − 0.04), not of X · 1.04: 125 N·m at 120 N·m, where X · 1.04 is 124.8.</summary>
    [Theory]
    [InlineData(124.99, true)]
    [InlineData(125.01, false)]
    public void The_limit_on_the_side_of_too_much(double reference, bool complies) => Assert.Equal(
        complies, Calibration(120, Enumerable.Repeat(reference, 5)).Judge(DecisionRule.SimpleAcceptance).Reasons.All(r => r.Kind != CalibrationReasonKind.ReadingOutside));

    /// <summary>
    /// Limit 120/1.04 = 115.3846 N·m, 0.5154 below the reading of 115.9: W = 0.437 % of the reading is 0.5065 and leaves room, of the 120 N·m set it would
    /// be 0.5244 and would not.
    /// </summary>
    [Fact]
    public void The_uncertainty_is_relative_to_what_was_measured()
    {
        CalibrationUncertainty known = new CalibrationUncertainty(MeasurementUncertainty.Expanded(Ratio.FromPercent(0.437), 2)).WithResolution(Torque.Zero);
        CalibrationVerdict verdict = new ToolCalibration(
            Wrench, CalibrationState.AsFound, Found, [CalibrationPoint.At(Newton(120), [.. Enumerable.Repeat(Newton(115.9), 5)])], known).Judge(DecisionRule.IlacG8);
        Assert.DoesNotContain(verdict.Reasons, reason => reason.Kind == CalibrationReasonKind.ReadingNearLimit);
    }

    /// <summary>By hand: at 160 N·m, half way, ± 0.5 % becomes 159.2 to 160.8; W is 0.71 % by the scatter at 200 N·m alone, so 161.9 N·m may be above 161.5.</summary>
    [Fact]
    public void Between_two_points_the_larger_uncertainty_counts()
    {
        CalibrationPoint Steady(double torque) => CalibrationPoint.At(Newton(torque), [.. Enumerable.Repeat(Newton(torque), 5)]);
        var calibration = new ToolCalibration(
            Wrench, CalibrationState.AsFound, Found,
            [Steady(40), Steady(120), CalibrationPoint.At(Newton(200), [Newton(198), Newton(202), Newton(199), Newton(201), Newton(200)])], Exact);
        ToolRecall recall = calibration.Rejudge(Found.AddDays(-2), [
            new ToolReading("7", Found, Newton(160), ToleranceWindow.FromLimits(Newton(150), Newton(161.5))),
            new ToolReading("8", Found, Newton(160), ToleranceWindow.FromLimits(Newton(150), Newton(162.5)))], DecisionRule.IlacG8);
        Assert.Equal([Conformity.Undecidable, Conformity.Within], recall.Readings.Select(reading => reading.After));
    }

    /// <summary>A reference device that is off by 1 % and was not corrected: the tool may be off by that much more than it seems.</summary>
    [Fact]
    public void An_uncorrected_deviation_of_the_reference_counts_in_every_decision()
    {
        CalibrationUncertainty off = Exact.WithSystematicDeviation(Ratio.FromPercent(-0.9));
        ToolCalibration Of(CalibrationUncertainty uncertainty) => new(Wrench, CalibrationState.AsFound, Found, Points(1 / 1.035), uncertainty);
        Assert.True(Of(Exact).Judge(DecisionRule.IlacG8).Conforms);
        Assert.Null(Of(off).Judge(DecisionRule.IlacG8).Conforms);
        var reading = new ToolReading("7", Found, Newton(120), ToleranceWindow.FromLimits(Newton(115.5), Newton(130)));
        Assert.Equal(Conformity.Within, Of(Exact).Rejudge(Found.AddDays(-2), [reading], DecisionRule.IlacG8).Readings[0].After);
        Assert.Equal(Conformity.Undecidable, Of(off).Rejudge(Found.AddDays(-2), [reading], DecisionRule.IlacG8).Readings[0].After);
        Assert.Equal(RecallDoubt.NearLimit, Of(off).Rejudge(Found.AddDays(-2), [reading], DecisionRule.IlacG8).Readings[0].Doubt);
        Assert.Contains("the reference device has an uncertainty of 1.1 %; for this tool at most 1 %",
            Assert.Single(Of(Exact.WithSystematicDeviation(Ratio.FromPercent(1.1))).Judge(DecisionRule.SimpleAcceptance).Reasons).ToString(), StringComparison.Ordinal);
    }

    /// <summary>What a person reads must say why nothing was decided: the reasons stand in the one line, each of them is data too.</summary>
    [Fact]
    public void An_undecidable_verdict_says_why_in_its_own_line()
    {
        CalibrationVerdict verdict = Calibration(120, [124.5, 120.2]).Judge(DecisionRule.IlacG8);
        Assert.Equal(
            [CalibrationReasonKind.ReadingNearLimit, CalibrationReasonKind.PointMissing, CalibrationReasonKind.ReadingsMissing, CalibrationReasonKind.PointMissing],
            verdict.Reasons.Select(reason => reason.Kind));
        Assert.Equal([120, 40, 120, 200], verdict.Reasons.Select(reason => reason.At!.Value.NewtonMeters));
        Assert.StartsWith("undecidable: worst deviation −3.61 %, permitted ±4 %, ILAC-G8, guard band 1 U: 1 of 2 readings at 120 N·m are too near the limit", verdict.ToString(), StringComparison.Ordinal);
        Assert.EndsWith("no point at 200 N·m; class II A takes one there (ISO 6789-1:2017, provisional)", verdict.ToString(), StringComparison.Ordinal);
        Assert.All(verdict.Reasons, reason => Assert.Contains(reason.ToString(), verdict.ToString(), StringComparison.Ordinal));
        CommaCulture.Run(() => Assert.Equal(verdict.ToString(), Calibration(120, [124.5, 120.2]).Judge(DecisionRule.IlacG8).ToString()));
    }

    /// <summary>By hand at 120 N·m: delivered 116.5 to 121.2 N·m against a lower limit of 118, with nothing uncertain.</summary>
    [Fact]
    public void A_reading_judged_again_says_why_it_is_undecidable()
    {
        ToolReading At(double torque) => new("7", Found, Newton(torque), ToleranceWindow.FromLimits(Newton(118), Newton(130)));
        ToolCalibration unsteady = new(Wrench, CalibrationState.AsFound, Found, [
            CalibrationPoint.At(Newton(40), [.. Enumerable.Repeat(Newton(40), 5)]), CalibrationPoint.At(Newton(120), [Newton(116.5), Newton(121.2), Newton(119), Newton(120), Newton(120)]),
            CalibrationPoint.At(Newton(200), [.. Enumerable.Repeat(Newton(200), 5)])], Exact);
        ToolRecall recall = unsteady.Rejudge(Found.AddDays(-2), [At(120), At(30)], DecisionRule.SimpleAcceptance);
        Assert.Equal([RecallDoubt.ExtremesDisagree, RecallDoubt.OutsidePoints], recall.Readings.Select(reading => reading.Doubt));
        Assert.EndsWith("now Undecidable: the lowest and the highest disagree", recall.Readings[0].ToString(), StringComparison.Ordinal);
        Assert.EndsWith("now Undecidable: outside the points of the calibration", recall.Readings[1].ToString(), StringComparison.Ordinal);
    }

    /// <summary>A resolution in the wrong unit makes the uncertainty wider than any window: nothing can be told, and no argument of the recall is to blame.</summary>
    [Fact]
    public void An_uncertainty_beyond_every_window_leaves_it_undecidable()
    {
        CalibrationPoint At(double torque) => CalibrationPoint.At(Newton(torque), [.. Enumerable.Repeat(Newton(torque), 5)]);
        TorqueTool tool = TorqueTool.WithRange("W-1", TorqueToolClass.Parse("II A"), Newton(1e-5), Newton(1e7));
        var calibration = new ToolCalibration(
            tool, CalibrationState.AsFound, Found, [At(1e-5), At(6e6), At(1e7)], Exact.WithResolution(Newton(1e7)));
        ToolRecall recall = calibration.Rejudge(
            Found.AddDays(-2), [new ToolReading("7", Found, Newton(1e6), ToleranceWindow.FromLimits(Newton(9e5), Newton(1.1e6)))], DecisionRule.IlacG8);
        Assert.Equal(RecallDoubt.NearLimit, recall.Readings[0].Doubt);
    }

    [Fact]
    public void A_calibration_that_cannot_tell_clears_no_work()
    {
        var reading = new ToolReading("7", Found, Newton(120), ToleranceWindow.FromLimits(Newton(110), Newton(130)));
        ToolRecall whole = Whole(1).Rejudge(Found.AddDays(-2), [reading], DecisionRule.IlacG8);
        Assert.Equal((Conformity.Within, 0), (whole.Readings[0].After, whole.Lacking.Count));
        ToolRecall partly = Calibration(120, [120, 120]).Rejudge(Found.AddDays(-2), [reading], DecisionRule.IlacG8);
        Assert.Equal((Conformity.Undecidable, 3), (partly.Readings[0].After, partly.Lacking.Count));
        Assert.Equal((null, RecallDoubt.CalibrationIncomplete), (whole.Readings[0].Doubt, partly.Readings[0].Doubt));
        Assert.EndsWith("Within, now Undecidable: the calibration is not complete", partly.Readings[0].ToString(), StringComparison.Ordinal);
    }

    /// <summary>ISO 6789-1:2017, from memory: 6 % for a tool of at most 10 N·m, whatever it is set to.</summary>
    [Fact]
    public void What_is_permitted_goes_by_the_greatest_torque_of_the_tool()
    {
        TorqueToolClass c = TorqueToolClass.Parse("II C");
        Assert.Equal(4, TorqueTool.SetTo("W", c, Newton(8)).PermittedDeviation.Percent, 1e-9);
        Assert.Equal(6, TorqueTool.SetTo("W", c, Newton(8), maximum: Newton(10)).PermittedDeviation.Percent, 1e-9);
        Assert.Equal(4, TorqueTool.SetTo("W", c, Newton(8), maximum: Newton(25)).PermittedDeviation.Percent, 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => TorqueTool.SetTo("W", c, Newton(8), maximum: Newton(7)));
    }

    [Fact]
    public void Work_since_the_last_good_calibration_is_judged_with_what_was_delivered()
    {
        var window = ToleranceWindow.FromLimits(Newton(140), Newton(160));
        ToolReading Reading(string bolt, int day, double indicated) => new(bolt, Found.AddDays(day), Newton(indicated), window);
        ToolRecall recall = Whole(0.94).Rejudge(Found.AddDays(-30), [
            Reading("3", -1, 155), Reading("1", -20, 148), Reading("2", -10, 149.5), Reading("old", -30, 148), Reading("late", 1, 148), Reading("low", -5, 20)], DecisionRule.SimpleAcceptance);

        Assert.Equal(["1", "2", "low", "3"], recall.Readings.Select(r => r.Reading.Fastener));
        Assert.Equal([Conformity.Below, Conformity.Within, Conformity.Undecidable, Conformity.Within], recall.Readings.Select(r => r.After));
        Assert.Equal(Conformity.Within, recall.Readings[0].Before);
        Close.To(148 * 0.94, recall.Readings[0].DeliveredTorque!.Value.NewtonMeters);
        Assert.Null(recall.Readings[2].DeliveredTorque);
        Assert.Equal(2, recall.LeftOut);
        Assert.Equal(["1", "low"], recall.ToRevisit.Select(r => r.Reading.Fastener));
        Assert.Equal("2 of 4 readings need a second look", recall.ToString());
    }

    [Fact]
    public void Readings_that_scatter_across_a_limit_are_undecidable()
    {
        var calibration = new ToolCalibration(Wrench, CalibrationState.AsFound, Found, [
            CalibrationPoint.At(Newton(120), [Newton(114), Newton(118)]), CalibrationPoint.At(Newton(200), [Newton(180), Newton(190)])], Exact);
        ToolRecall recall = calibration.Rejudge(Found.AddDays(-2), [
            new ToolReading("7", Found, Newton(160), ToleranceWindow.FromLimits(Newton(150), Newton(170)))], DecisionRule.SimpleAcceptance);

        // Second route: half way between the points the deviations are the mean of those at the points.
        double least = ((120 - 118.0) / 118 + (200 - 190.0) / 190) / 2, greatest = ((120 - 114.0) / 114 + (200 - 180.0) / 180) / 2;
        Close.To(160 / (1 + greatest), recall.Readings[0].LowDelivered!.Value.NewtonMeters);
        Close.To(160 / (1 + least), recall.Readings[0].HighDelivered!.Value.NewtonMeters);
        Assert.Equal(Conformity.Undecidable, recall.Readings[0].After);
        Assert.True(recall.Readings[0].NeedsRevisit);
    }

    /// <summary>A tool that is right, known to 1 %: 141 N·m delivered is within 140 N·m, but not by more than the uncertainty.</summary>
    [Fact]
    public void The_uncertainty_of_the_calibration_counts_when_work_is_judged_again()
    {
        var calibration = new ToolCalibration(Wrench, CalibrationState.AsFound, Found, Points(1), new CalibrationUncertainty(MeasurementUncertainty.Expanded(Ratio.FromPercent(1), 2)).WithResolution(Torque.Zero));
        ToolReading[] readings = [new("1", Found, Newton(141), ToleranceWindow.FromLimits(Newton(140), Newton(160)))];

        Assert.Equal(Conformity.Within, calibration.Rejudge(Found.AddDays(-1), readings, DecisionRule.SimpleAcceptance).Readings[0].After);
        ToolRecall guarded = calibration.Rejudge(Found.AddDays(-1), readings, DecisionRule.IlacG8);
        Assert.Equal(Conformity.Undecidable, guarded.Readings[0].After);
        Assert.Same(DecisionRule.IlacG8, guarded.Rule);
    }

    /// <summary>1 % of the maximum is as much as the whole lowest torque of a tool that goes down to 1 %: it must not count as that point.</summary>
    [Fact]
    public void A_point_at_twice_the_lowest_torque_is_not_the_lowest_point()
    {
        TorqueTool wide = TorqueTool.WithRange("W-18", TorqueToolClass.Parse("I C"), Newton(5), Newton(500));
        CalibrationPoint At(double torque) => CalibrationPoint.At(Newton(torque), [.. Enumerable.Repeat(Newton(torque), 5)]);
        bool? Verdict(double lowest) => new ToolCalibration(wide, CalibrationState.AsFound, Found, [At(lowest), At(300), At(500)], Exact)
            .Judge(DecisionRule.SimpleAcceptance).Conforms;

        Assert.Null(Verdict(10));
        Assert.Null(Verdict(6));
        Assert.True(Verdict(5.2));
        Assert.True(Verdict(5));
    }

    [Fact]
    public void Work_far_below_the_lowest_point_is_undecidable()
    {
        TorqueTool wide = TorqueTool.WithRange("W-18", TorqueToolClass.Parse("I C"), Newton(5), Newton(500));
        CalibrationPoint At(double torque, double reference) => CalibrationPoint.At(Newton(torque), [.. Enumerable.Repeat(Newton(reference), 5)]);
        var calibration = new ToolCalibration(wide, CalibrationState.AsFound, Found, [At(5, 5), At(10.5, 9.5), At(300, 300), At(500, 500)], Exact);
        ToolReading Reading(double torque) => new("1", Found, Newton(torque), ToleranceWindow.FromLimits(Newton(0.1), Newton(400)));
        ToolRecall recall = calibration.Rejudge(Found.AddDays(-1), [Reading(1), Reading(4.8), Reading(9.5)], DecisionRule.SimpleAcceptance);

        Assert.Equal([Conformity.Undecidable, Conformity.Within, Conformity.Within], recall.Readings.Select(r => r.After));

        // Between the points the deviation is theirs in proportion, near to one of them too: (9.5 − 5)/5.5 of the way.
        Close.To(9.5 / (1 + (10.5 - 9.5) / 9.5 * 4.5 / 5.5), recall.Readings[2].DeliveredTorque!.Value.NewtonMeters);
    }

    [Property]
    public Property Delivered_torque_is_what_a_tool_of_that_deviation_gives() => Prop.ForAll(
        Arb.From(from deviation in Gen.Choose(-200, 200) from share in Gen.Choose(20, 100) select (deviation * 0.001, share * 0.01)),
        pair =>
        {
            (double deviation, double share) = pair;
            ToolCalibration calibration = Whole(1 / (1 + deviation));
            RejudgedReading reading = calibration.Rejudge(Found.AddDays(-1), [
                new ToolReading("1", Found, Newton(200 * share), ToleranceWindow.FromLimits(Newton(1), Newton(400)))], DecisionRule.SimpleAcceptance).Readings[0];
            double delivered = reading.DeliveredTorque!.Value.NewtonMeters;
            return Math.Abs((200 * share - delivered) / delivered - deviation) < 1e-12;
        });

    [Fact]
    public void What_cannot_be_a_calibration_is_refused()
    {
        Assert.Throws<InvalidOperationException>(() => new ToolCalibration(Wrench, CalibrationState.AsLeft, Found, Points(1), Exact).Rejudge(Found.AddDays(-1), [], DecisionRule.IlacG8));
        Assert.Throws<ArgumentOutOfRangeException>(() => Whole(1).Rejudge(Found, [], DecisionRule.IlacG8));
        Assert.Throws<ArgumentException>(() => new ToolCalibration(Wrench, CalibrationState.AsFound, Found, [], Exact));
        Assert.Throws<ArgumentException>(() => new ToolCalibration(Wrench, CalibrationState.AsFound, Found, [Points(1)[0], Points(1.01)[0]], Exact));
        Assert.Throws<ArgumentOutOfRangeException>(() => Calibration(203, [203, 203]));
        Assert.Throws<ArgumentException>(() => CalibrationPoint.At(Newton(50), [Newton(50)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => CalibrationPoint.At(Newton(50), [Newton(50), Newton(501)]));
        Assert.Throws<ArgumentException>(() => TorqueTool.SetTo("x", TorqueToolClass.Parse("II A"), Newton(20)));
        Assert.Throws<ArgumentException>(() => TorqueTool.WithRange("x", TorqueToolClass.Parse("II B"), Newton(20), Newton(30)));
    }

    private static Torque Newton(double newtonMeters) => Torque.FromNewtonMeters(newtonMeters);

    private static CalibrationPoint[] Points(double ratio) =>
        [.. new[] { 40.0, 120, 200 }.Select(torque => CalibrationPoint.At(Newton(torque), [.. Enumerable.Repeat(Newton(torque * ratio), 5)]))];

    /// <summary>A wrench that delivers the same share of what it says everywhere.</summary>
    private static ToolCalibration Whole(double ratio) => new(Wrench, CalibrationState.AsFound, Found, Points(ratio), Exact);

    /// <summary>A hydraulic wrench up to 5000 N·m of a class of its own: 3 %, three readings, at 20, 60 and 100 %.</summary>
    private static ToolCalibration Hydraulic(double minimum, params (double Torque, double[] References)[] points)
    {
        TorqueToolClass stated = TorqueToolClass.Stated(
            "HY", "hydraulic wrench", Ratio.FromPercent(3), 3, hasScale: true, [Ratio.FromPercent(20), Ratio.FromPercent(60), Ratio.FromPercent(100)]);
        return new ToolCalibration(
            TorqueTool.WithRange("H-2", stated, Newton(minimum), Newton(5000)), CalibrationState.AsFound, Found,
            [.. points.Select(point => CalibrationPoint.At(Newton(point.Torque), [.. point.References.Select(Newton)]))], Exact);
    }

    private static ToolCalibration Calibration(double torque, IEnumerable<double> references) =>
        new(Wrench, CalibrationState.AsFound, Found, [CalibrationPoint.At(Newton(torque), [.. references.Select(Newton)])], Exact);

    private static ToolCalibration OnePoint(string designation, double torque, IEnumerable<double> references, CalibrationUncertainty? uncertainty = null) => new(
        TorqueTool.SetTo("W-3", TorqueToolClass.Parse(designation), Newton(torque)), CalibrationState.AsFound, Found,
        [CalibrationPoint.At(Newton(torque), [.. references.Select(Newton)])], uncertainty ?? Exact);
}
