using UnitsNet;

namespace Fastening.Tests.Rotation;

public class RotationRateLimitTests
{
    private static RotationRateLimit Limit(double degreesPerSecond) => RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(degreesPerSecond));

    [Theory]
    [InlineData(180, 6, 1, true)]
    [InlineData(180, 6, 1.08, true)]
    [InlineData(180, 6, 0.98, false)]
    [InlineData(100, 4, 1, true)]
    [InlineData(100, 4, 0.99, false)]
    [InlineData(90, 1.5, 1.01, true)]
    [InlineData(90, 1.5, 0.99, false)]
    public void A_travel_in_no_less_than_its_shortest_time(double degrees, double shortest, double share, bool conforms)
    {
        RotationRateLimit limit = RotationRateLimit.FromTravel(Angle.FromDegrees(degrees), Duration.FromSeconds(shortest));
        Assert.Equal(conforms, limit.Check(Angle.FromDegrees(degrees), Duration.FromSeconds(share * shortest)).Conforms);
        Assert.Equal(conforms, limit.Check(Angle.FromDegrees(degrees / 2), Duration.FromSeconds(share * shortest / 2)).Conforms);
    }

    [Fact]
    public void A_stroke_at_the_limit_conforms_for_every_decimal_travel()
    {
        for (int tenths = 1; tenths < 3600; tenths++)
        {
            RotationRateLimit limit = RotationRateLimit.FromTravel(Angle.FromDegrees(180), Duration.FromSeconds(6));
            Assert.True(limit.Check(Angle.FromDegrees(tenths / 10.0), Duration.FromSeconds(tenths / 300.0)).Conforms);
        }
    }

    [Fact]
    public void A_steady_turn_reads_its_rate_whatever_the_sampling_and_the_window()
    {
        foreach (int samples in new[] { 2, 3, 10, 1001 })
        {
            foreach (double window in new[] { 0.05, 0.37, 1, 4, 100 })
            {
                TighteningTrace trace = Sampled(samples, 4, t => 25 * t);
                Assert.Equal(25, Limit(30).Check(trace, Duration.FromSeconds(window)).HighestRate.DegreesPerSecond, 1e-9);
            }
        }
    }

    [Fact]
    public void Rate_over_a_window_agrees_with_brute_force_at_thousands_of_times()
    {
        var random = new Random(42);
        int mirrored = 0;
        for (int run = 0; run < 60; run++)
        {
            int count = random.Next(2, 40);
            double[] times = new double[count], angles = new double[count];
            for (int i = 1; i < count; i++)
            {
                times[i] = times[i - 1] + (random.Next(6) == 0 ? 0.3 : 0.01 + random.NextDouble() * 0.1);
                angles[i] = angles[i - 1] + random.NextDouble() * 10 - 2;
            }

            double window = times[^1] * (0.05 + 0.9 * random.NextDouble());
            for (int mirror = 0; mirror < 2; mirror++, angles = [.. angles.Select(angle => -angle)])
            {
                (double forward, double back) = Turned(times, angles);
                double sense = angles[^1] < angles[0] && back > forward ? -1 : 1, expected = double.NegativeInfinity;
                for (int n = 0; n <= 20_000; n++)
                {
                    double end = window + (times[^1] - window) * n / 20_000;
                    expected = Math.Max(expected, sense * (At(times, angles, end) - At(times, angles, end - window)) / window);
                }

                RotationRateCheck check = Limit(1).Check(TighteningTrace.FromSamples(times, angles, new double[count]), Duration.FromSeconds(window));
                double found = check.HighestRate.DegreesPerSecond, endTime = check.EndOfFastestWindow.Seconds;
                Assert.Equal(sense < 0, check.IsFalling);
                Assert.InRange(found, expected - 1e-9, expected + 2e-3 * Math.Abs(expected) + 0.05);
                Assert.Equal(found, sense * (At(times, angles, endTime) - At(times, angles, endTime - window)) / window, 1e-6);
                if (sense < 0) mirrored++;
            }
        }

        Assert.InRange(mirrored, 50, 60);
    }

    [Fact]
    public void A_smooth_burst_reads_the_same_at_any_sampling_step()
    {
        // θ' peaks at 60 °/s; over half a second the mean about the peak is 30 + 30·sin(π/4)/(π/4) for this cosine burst.
        static double Burst(double t) => 30 * t + 30 / Math.PI * Math.Sin(Math.PI * (t - 2));
        double expected = 30 + 30 * Math.Sin(Math.PI / 4) / (Math.PI / 4);
        foreach (int samples in new[] { 81, 401, 4001 })
        {
            RotationRateCheck check = Limit(50).Check(Sampled(samples, 4, Burst), Duration.FromSeconds(0.5));
            Assert.Equal(expected, check.HighestRate.DegreesPerSecond, 0.06);
            Assert.Equal(2.25, check.EndOfFastestWindow.Seconds, 0.03);
            Assert.False(check.Conforms);
        }
    }

    [Fact]
    public void A_trace_shorter_than_the_window_gives_one_value_over_all_of_it()
    {
        TighteningTrace trace = TighteningTrace.FromSamples(new double[] { 1, 1.5, 2 }, new double[] { 0, 30, 40 }, new double[3]);
        RotationRateCheck check = Limit(50).Check(trace, Duration.FromSeconds(5));
        Assert.Equal(40, check.HighestRate.DegreesPerSecond, 1e-12);
        Assert.Equal(2, check.EndOfFastestWindow.Seconds, 1e-12);
        Assert.True(check.Conforms);
    }

    [Fact]
    public void Repeated_time_stamps_and_steps_back_are_survived()
    {
        TighteningTrace trace = TighteningTrace.FromSamples(
            new[] { 0, 0, 0.1, 0.1, 0.2, 0.3, 0.3 }, new double[] { 0, 1, 4, 3, 5, 4.5, 9 }, new double[7]);
        RotationRateCheck check = Limit(50).Check(trace, Duration.FromSeconds(0.1));
        Assert.Equal((9 - 5) / 0.1, check.HighestRate.DegreesPerSecond, 1e-9);
        Assert.Throws<ArgumentException>(
            () => Limit(5).Check(TighteningTrace.FromSamples(new double[] { 1, 1 }, new double[] { 0, 5 }, new double[2]), Duration.FromSeconds(1)));
    }

    [Fact]
    public void A_falling_angle_does_not_pass_as_slow_enough()
    {
        TighteningTrace falling = Sampled(400, 4, t => -80 * t);
        foreach (double window in new[] { 0.1, 0.5, 10 }) Assert.False(Limit(30).Check(falling, Duration.FromSeconds(window)).Conforms);
        Assert.True(Limit(81).Check(falling, Duration.FromSeconds(0.5)).Conforms);
    }

    [Fact]
    public void A_record_that_turns_back_is_judged_as_its_mirror_image()
    {
        TighteningTrace forward = Sampled(400, 4, t => 50 * t + 5 * Math.Sin(9 * t)), back = Sampled(400, 4, t => -50 * t - 5 * Math.Sin(9 * t));
        foreach (double window in new[] { 0.1, 0.5, 10 })
        {
            RotationRateCheck one = Limit(60).Check(forward, Duration.FromSeconds(window)), other = Limit(60).Check(back, Duration.FromSeconds(window));
            Assert.Equal((false, true), (one.IsFalling, other.IsFalling));
            Assert.Equal(
                (one.HighestRate, one.EndOfFastestWindow, one.FirstExceedance, one.LastExceedance, one.TimeAbove),
                (other.HighestRate, other.EndOfFastestWindow, other.FirstExceedance, other.LastExceedance, other.TimeAbove));
            Assert.Equal(one.ToString(), other.ToString().Replace(", angle falling", "", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void An_angle_that_wraps_is_judged_forward()
    {
        // It ends behind its start, and turned forward for longer.
        TighteningTrace trace = Sampled(401, 4, t => (300 + 20 * t) % 360);
        RotationRateCheck check = Limit(25).Check(trace, Duration.FromSeconds(0.5));
        Assert.False(check.IsFalling);
        Assert.Equal(20, check.HighestRate.DegreesPerSecond, 1e-9);

        // The same in steps of 1°: the time between two steps is neither forward nor back.
        RotationRateCheck steps = Limit(25).Check(Sampled(401, 4, t => Math.Floor((300 + 20 * t) % 360)), Duration.FromSeconds(0.5));
        Assert.False(steps.IsFalling);
        Assert.InRange(steps.HighestRate.DegreesPerSecond, 20, 22);

        // One window over all of it cannot tell: the fall counts, and nothing passes.
        Assert.False(Limit(25).Check(trace, Duration.FromSeconds(5)).Conforms);
    }

    [Fact]
    public void From_snug_on_a_fast_run_down_does_not_count()
    {
        // 400 °/s to 2 s, then 20 °/s: all of it is too fast, the part from 2 s on is not; a window that begins in the run-down counts to neither.
        double[] times = [.. Enumerable.Range(0, 501).Select(i => i * 0.01)], angles = [.. times.Select(t => 400 * Math.Min(t, 2) + 20 * Math.Max(t - 2, 0))];
        double[] torques = [.. times.Select(t => 2 + 40 * Math.Max(t - 2, 0))];
        TighteningTrace trace = TighteningTrace.FromSamples(times, angles, torques);
        TraceAnalysis analysis = trace.Analyze(TraceOptions.SnugAtTorque(Torque.FromNewtonMeters(6), Angle.FromDegrees(2)));
        Duration window = Duration.FromSeconds(0.5);
        Assert.False(Limit(30).Check(trace, window).Conforms);
        RotationRateCheck check = Limit(30).Check(trace, window, analysis.Snug!, analysis.Final);
        Assert.Equal(20, check.HighestRate.DegreesPerSecond, 1e-9);
        Assert.InRange(check.EndOfFastestWindow.Seconds, 2.5, 5);
        Assert.Equal(check.ToString(), Limit(30).Check(trace[analysis.Snug!.Index..], window).ToString());
        Assert.False(Limit(19).Check(trace, window, analysis.Snug!, analysis.Final).Conforms);
        Assert.Throws<ArgumentException>(() => Limit(30).Check(trace, window, analysis.Final, analysis.Snug!));
        Assert.Throws<ArgumentNullException>(() => Limit(30).Check(trace, window, null!, analysis.Final));
    }

    [Fact]
    public void The_verdict_says_up_to_for_many_windows_and_one_value_for_one()
    {
        TighteningTrace trace = TighteningTrace.FromSamples([0, 1, 2, 3], [0, 20, 90, 100], [10, 30, 90, 120]);
        Assert.Equal("up to 70°/s over 0.5 s, limit 25°/s: too fast", Limit(25).Check(trace, Duration.FromSeconds(0.5)).ToString());
        Assert.Equal("33.33°/s over 3 s, limit 35°/s: slow enough", Limit(35).Check(trace, Duration.FromSeconds(9)).ToString());
        Assert.Equal("37.5°/s over 2.4 s, limit 25°/s: too fast", Limit(25).Check(Angle.FromDegrees(90), Duration.FromSeconds(2.4)).ToString());
    }

    [Fact]
    public void A_window_as_long_as_the_record_or_longer_sees_all_of_it_whatever_the_rounding_of_the_clock()
    {
        TighteningTrace trace = TighteningTrace.FromSamples(new[] { 3.23, 3.23, 7.44 }, new double[] { 0, 50, 60 }, new double[3]);
        Assert.Equal(60 / (7.44 - 3.23), Limit(50).Check(trace, Duration.FromSeconds(7.44 - 3.23)).HighestRate.DegreesPerSecond, 1e-9);
        Assert.Equal(60 / (7.44 - 3.23), Limit(50).Check(trace, Duration.FromSeconds(100)).HighestRate.DegreesPerSecond, 1e-9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1000)]
    [InlineData(86_000)]
    [InlineData(1.77e9)]
    public void A_turn_at_the_limit_conforms_at_any_reading_of_the_clock(double start)
    {
        double[] times = [.. Enumerable.Range(0, 200).Select(i => start + i * 0.01)], angles = [.. times.Select(t => (t - start) * 30)];
        TighteningTrace trace = TighteningTrace.FromSamples(times, angles, new double[200]);
        Assert.True(Limit(30).Check(trace, Duration.FromSeconds(0.1)).Conforms);
        Assert.False(Limit(29.99).Check(trace, Duration.FromSeconds(0.1)).Conforms);
    }

    [Fact]
    public void A_window_that_the_clock_cannot_resolve_is_refused()
    {
        TighteningTrace trace = TighteningTrace.FromSamples(new[] { 1e10 - 2, 1e10 - 1, 1e10 }, new double[] { 0, 1000, 2000 }, new double[3]);
        Assert.Equal("window", Assert.Throws<ArgumentOutOfRangeException>(() => Limit(5).Check(trace, Duration.FromSeconds(0.0001))).ParamName);
    }

    [Fact]
    public void A_trace_refuses_by_index()
    {
        Assert.Equal("timesSeconds[2]", Refused([0, 2, 1], [0, 0, 0], [0, 0, 0]).ParamName);
        Assert.Equal("anglesDegrees[1]", Refused([0, 1, 2], [0, double.NaN, 0], [0, 0, 0]).ParamName);
        Assert.Equal("torquesNewtonMeters[0]", Refused([0, 1, 2], [0, 0, 0], [double.PositiveInfinity, 0, 0]).ParamName);
        Assert.Throws<ArgumentException>(() => TighteningTrace.FromSamples(new double[3], new double[2], new double[3]));
        Assert.Throws<ArgumentException>(() => TighteningTrace.FromSamples(new double[1], new double[1], new double[1]));

        static ArgumentOutOfRangeException Refused(double[] t, double[] a, double[] m) =>
            Assert.Throws<ArgumentOutOfRangeException>(() => TighteningTrace.FromSamples(t, a, m));
    }

    [Fact]
    public void Turning_forth_and_back_within_the_window_is_not_slow()
    {
        // 180° in 0.5 s and back: at least 180°/s over the record of 1 s, whatever the angle at its end.
        TighteningTrace trace = Sampled(101, 1, t => 360 * Math.Min(t, 1 - t));
        RotationRateCheck check = RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(30)).Check(trace, Duration.FromSeconds(2));
        Assert.False(check.Conforms);
        Assert.Equal(180, check.HighestRate.DegreesPerSecond, 1e-9);
    }

    private static TighteningTrace Sampled(int samples, double length, Func<double, double> angle)
    {
        double[] times = [.. Enumerable.Range(0, samples).Select(i => length * i / (samples - 1))];
        return TighteningTrace.FromSamples(times, times.Select(angle).ToArray(), new double[samples]);
    }

    private static (double Forward, double Back) Turned(double[] times, double[] angles)
    {
        double forward = 0, back = 0;
        for (int i = 1; i < times.Length; i++)
        {
            if (angles[i] > angles[i - 1]) forward += times[i] - times[i - 1];
            if (angles[i] < angles[i - 1]) back += times[i] - times[i - 1];
        }

        return (forward, back);
    }

    private static double At(double[] times, double[] angles, double time)
    {
        for (int i = 1; i < times.Length; i++)
        {
            if (time <= times[i]) return angles[i - 1] + (angles[i] - angles[i - 1]) * Math.Clamp((time - times[i - 1]) / (times[i] - times[i - 1]), 0, 1);
        }

        return angles[^1];
    }
}
