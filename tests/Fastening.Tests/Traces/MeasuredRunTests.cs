using System.Text.Json;
using UnitsNet;

namespace Fastening.Tests.Traces;

/// <summary>Seventy-three measured runs: nothing throws, and what the machine reported is found again.</summary>
public class MeasuredRunTests
{
    [Fact]
    public void All_runs_are_there_with_source_licence_and_attribution()
    {
        Assert.Equal(39, MeasuredRun.All.Count(r => r.Set == "a-driving"));
        Assert.Equal(5, MeasuredRun.All.Count(r => r.Set == "b-driving-slow"));
        Assert.Equal(29, MeasuredRun.All.Count(r => r.IsLoosening));
        Assert.All(MeasuredRun.All, run => Assert.All(["source_repo", "source_commit", "licence", "attribution"], name => Assert.True(run.Text(name).Length > 5)));
    }

    [Fact]
    public void No_run_keeps_the_words_of_its_machine()
    {
        string[] run = ["set", "id", "source_repo", "source_commit", "licence", "licence_url", "attribution", "rig", "recorded", "label", "steps", "columns", "summary",
            "previous_uses_of_hole", "thread_size", "drive", "sign_note"], step = ["number", "speed_deg_s", "result", "ended_by", "points", "reported"];
        Assert.All(MeasuredRun.All, r =>
        {
            Assert.Equal(r.Id, r.Text("id"));
            Assert.Empty(r.About.EnumerateObject().Select(p => p.Name).Except(run));
            Assert.All(r.About.GetProperty("steps").EnumerateArray(), s => Assert.Empty(s.EnumerateObject().Select(p => p.Name).Except(step)));
        });
    }

    [Fact]
    public void Every_run_and_every_step_is_analysed_in_every_way()
    {
        foreach (MeasuredRun run in MeasuredRun.All)
        {
            foreach (TighteningTrace trace in run.Steps.Distinct().Select(run.Step).Prepend(run.Trace))
            {
                foreach (double window in new[] { 0.5, 4, 10, 40, 4000 })
                {
                    foreach (TraceOptions options in new[]
                    {
                        TraceOptions.SnugByProjection(Angle.FromDegrees(window)),
                        TraceOptions.SnugAtTorque(Torque.FromNewtonMeters(0.8), Angle.FromDegrees(window)),
                    })
                    {
                        Sound(trace, trace.Analyze(options.WithStickSlip(Torque.FromNewtonMeters(0.05)).WithReversal(Angle.FromDegrees(0.5))
                            .WithTorqueDrop(Torque.FromNewtonMeters(0.1)).WithYieldOffset(Angle.FromDegrees(2))));
                    }
                }
            }
        }
    }

    [Fact]
    public void Torque_controlled_steps_peak_at_the_reported_end_torque()
    {
        int checkedSteps = 0;
        foreach ((MeasuredRun run, TighteningTrace step, double value) in Reported("torque"))
        {
            Assert.Equal(value, step.Analyze(run.Options).Peak.Torque.NewtonMeters, 5e-4);
            checkedSteps++;
        }

        Assert.Equal(58, checkedSteps);
    }

    [Fact]
    public void Rotation_controlled_steps_travel_what_was_reported()
    {
        int checkedSteps = 0;
        foreach ((MeasuredRun run, TighteningTrace step, double value) in Reported("angle").Where(x => !x.Run.IsLoosening))
        {
            TraceAnalysis analysis = step.Analyze(run.Options);
            Assert.Equal(value, analysis.Final.Angle!.Value.Degrees - step.AnglesDegrees.Span[0], 1e-9);
            checkedSteps++;
        }

        Assert.Equal(84, checkedSteps);
    }

    [Fact]
    public void Quirks_are_counted_as_the_source_counts_them()
    {
        foreach (MeasuredRun run in MeasuredRun.All)
        {
            TraceIrregularities quirks = run.Trace.Analyze(run.Options).Irregularities;
            JsonElement summary = run.About.GetProperty("summary");
            Assert.Equal(summary.GetProperty("zero_dt_points").GetInt32(), quirks.RepeatedTimes);
            Assert.Equal(summary.GetProperty("angle_backsteps").GetInt32(), quirks.StepsBack);
            Assert.Equal(-summary.GetProperty("largest_backstep_deg").GetDouble(), quirks.LargestStepBack.Degrees, 1e-6);
            Assert.Equal(summary.GetProperty("max_time_gap_s").GetDouble(), quirks.LongestGap.Seconds, 1e-6);
        }
    }

    [Fact]
    public void The_last_sample_is_neither_the_peak_nor_the_shut_off_where_the_tool_recoiled()
    {
        TraceAnalysis analysis = MeasuredRun.All.Single(r => r.Id == "driving-01").Trace.Analyze(TraceOptions.SnugByProjection(Angle.FromDegrees(10)));
        Assert.Equal(1699.25, analysis.ShutOff.Angle!.Value.Degrees, 1e-9);
        Assert.Equal(1696, analysis.Final.Angle!.Value.Degrees, 1e-9);
        Assert.Equal(1.418, analysis.Peak.Torque.NewtonMeters, 1e-9);
        Assert.Equal(0.075, analysis.Final.Torque.NewtonMeters, 1e-9);
    }

    private static IEnumerable<(MeasuredRun Run, TighteningTrace Step, double Value)> Reported(string controlledBy)
    {
        foreach (MeasuredRun run in MeasuredRun.All)
        {
            foreach (JsonElement step in run.About.GetProperty("steps").EnumerateArray())
            {
                if (step.GetProperty("result").GetString() != "accepted" || step.GetProperty("ended_by").GetString() != controlledBy) continue;
                JsonElement reported = step.GetProperty("reported");
                Assert.Equal(controlledBy, reported.GetProperty("what").GetString());
                yield return (run, run.Step(step.GetProperty("number").GetInt32()), reported.GetProperty("value").GetDouble());
            }
        }
    }

    /// <summary>Whatever is found lies on the trace and is a number.</summary>
    private static void Sound(TighteningTrace trace, TraceAnalysis analysis)
    {
        TracePoint?[] points =
        [
            analysis.Snug, analysis.YieldOnset, analysis.OffsetYield, analysis.Peak, analysis.ShutOff, analysis.Final,
            analysis.RunDown?.Start, analysis.RunDown?.End, analysis.ElasticRegion?.Start, analysis.ElasticRegion?.End, .. analysis.Remarks.Select(r => r.At),
        ];
        Assert.All(points.OfType<TracePoint>(), point =>
        {
            Assert.InRange(point.Index, 0, trace.Count - 1);
            Assert.Equal(trace.TimeAt(point.Index), point.Time);
            Assert.True(double.IsFinite(point.Torque.NewtonMeters) && double.IsFinite(point.Angle!.Value.Degrees));
        });
        Assert.True(double.IsFinite(analysis.Energy!.Value.Joules));
        double[] torques = trace.TorquesNewtonMeters.ToArray();
        Assert.Equal(torques.Max() >= -torques.Min() ? torques.Max() : torques.Min(), analysis.Peak.Torque.NewtonMeters);
        if (analysis.ElasticRegion is not ElasticRegion region) return;
        Assert.True(region.Slope.NewtonMetersPerDegree > 0 && region.SlopeStandardError.NewtonMetersPerDegree >= 0);
        Assert.True(region.Start.Index < region.End.Index);
    }
}
