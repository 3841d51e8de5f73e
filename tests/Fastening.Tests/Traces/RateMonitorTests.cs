using UnitsNet;

namespace Fastening.Tests.Traces;

/// <summary>One sample at a time and the whole record at once give one answer, to the last bit.</summary>
public class RateMonitorTests
{
    private static readonly double[] Windows = [0.003, 0.02, 0.11, 0.5, 30];

    [Fact]
    public void Monitor_and_batch_agree_on_every_generated_trace()
    {
        foreach (KnownTrace known in KnownTrace.All)
        {
            Agree(known.Trace, known.Recorder.DegreesPerSecond * (0.9 + 0.2 * (known.Number % 7) / 6), Windows[known.Number % Windows.Length]);
        }
    }

    [Fact]
    public void Monitor_and_batch_agree_on_every_measured_trace()
    {
        foreach (MeasuredRun run in MeasuredRun.All)
        {
            foreach (double limit in new[] { 250.0, 1000, 3700 })
            {
                foreach (double window in Windows)
                {
                    Agree(run.Trace, limit, window);
                    Agree(Mirrored(run.Trace), limit, window);
                }
            }
        }
    }

    [Fact]
    public void Rate_and_time_above_agree_with_brute_force()
    {
        var dice = new Dice(7);
        for (int round = 0; round < 40; round++)
        {
            (double[] times, double[] angles) = Walk(dice, 30, 0.02, 0.15);
            double sense = round % 2 == 0 ? 1 : -1;
            if (sense < 0) angles = [.. angles.Select(angle => -angle)];
            double window = times[^1] * dice.Uniform(0.1, 0.5), limit = dice.Uniform(20, 60);
            RotationRateCheck check = Limit(limit).Check(TighteningTrace.FromSamples(times, angles, new double[times.Length]), Duration.FromSeconds(window));
            const int Steps = 40_000;
            double step = (times[^1] - window) / Steps, above = 0, first = double.NaN, last = double.NaN;
            for (int n = 0; n <= Steps; n++)
            {
                double end = window + n * step;
                if (sense * (At(times, angles, end) - At(times, angles, end - window)) / window <= limit) continue;
                above += step;
                if (double.IsNaN(first)) first = end;
                last = end;
            }

            Assert.Equal(sense < 0, check.IsFalling);
            Assert.Equal(double.IsNaN(first), check.Conforms);
            Assert.InRange(check.TimeAbove.Seconds, above - 12 * step, above + 12 * step);
            if (check.Conforms) continue;
            Assert.InRange(check.FirstExceedance!.Value.Seconds, first - step - 1e-9, first + 1e-9);
            Assert.InRange(check.LastExceedance!.Value.Seconds, last - 1e-9, last + step + 1e-9);
        }
    }

    [Fact]
    public void A_full_monitor_says_so_and_gives_no_verdict()
    {
        var monitor = new RotationRateMonitor(Limit(30), Duration.FromSeconds(1), capacity: 4);
        for (int i = 0; i < 4; i++) Assert.True(monitor.TryAdd(Duration.FromSeconds(0.1 * i), Angle.FromDegrees(i)));
        Assert.False(monitor.TryAdd(Duration.FromSeconds(0.4), Angle.FromDegrees(4)));
        Assert.Equal(1, monitor.RefusedCount);
        Assert.Equal(4, monitor.Count);
        Assert.Throws<InvalidOperationException>(() => monitor.Check());
        monitor.Reset();
        Assert.Throws<InvalidOperationException>(() => monitor.Check());
        for (int i = 0; i < 40; i++) Assert.True(monitor.TryAdd(Duration.FromSeconds(0.5 * i), Angle.FromDegrees(10 * i)));
        Assert.Equal(20, monitor.Check().HighestRate.DegreesPerSecond, 1e-9);
    }

    [Fact]
    public void A_sample_back_in_time_is_refused_and_not_taken()
    {
        var monitor = new RotationRateMonitor(Limit(30), Duration.FromSeconds(1), capacity: 8);
        monitor.TryAdd(Duration.FromSeconds(2), Angle.FromDegrees(1));
        Assert.Equal("time", Assert.Throws<ArgumentOutOfRangeException>(() => monitor.TryAdd(Duration.FromSeconds(1.9), Angle.FromDegrees(2))).ParamName);
        Assert.Equal(1, monitor.Count);
        Assert.True(monitor.TryAdd(Duration.FromSeconds(2), Angle.FromDegrees(2)));
    }

    [Fact]
    public void A_sample_costs_no_allocation()
    {
        var monitor = new RotationRateMonitor(Limit(30), Duration.FromSeconds(0.1), capacity: 128);
        monitor.TryAdd(Duration.FromSeconds(0), Angle.FromDegrees(0));
        int i = 1;
        Assert.Equal(0, Allocation.Of(() =>
        {
            for (int sample = 0; sample < 5_000; sample++, i++) monitor.TryAdd(Duration.FromSeconds(0.001 * i), Angle.FromDegrees(0.02 * i));
        }));
    }

    [Theory]
    [InlineData(0.25, 0.0012, 0.1)]
    [InlineData(0.1, 0.01, 0.25)]
    [InlineData(1, 0.05, 0.6)]
    [InlineData(0, 0.02, 0.05)]
    public void The_smallest_safe_window_raises_no_false_alarm(double resolution, double interval, double margin)
    {
        const double Limit30 = 30;
        double window = Limit(Limit30).SmallestSafeWindow(Angle.FromDegrees(resolution), Duration.FromSeconds(interval), Ratio.FromDecimalFractions(margin)).Seconds;
        double highest = 0;
        var dice = new Dice((ulong)(1000 * resolution + 7));
        for (int round = 0; round < 300; round++)
        {
            TighteningTrace trace = Quantised(dice, Limit30 * (1 - margin), window, resolution, interval);
            RotationRateCheck check = Limit(Limit30).Check(trace, Duration.FromSeconds(window));
            Assert.True(check.Conforms, check.ToString());
            Assert.True(check.HighestRate.DegreesPerSecond <= (Limit30 * (1 - margin) * (window + interval) + resolution) / window * (1 + 1e-12), check.ToString());
            highest = Math.Max(highest, check.HighestRate.DegreesPerSecond);
        }

        Assert.True(highest > (1 - margin) * Limit30);
    }

    [Fact]
    public void A_window_shorter_than_safe_does_raise_a_false_alarm()
    {
        // 0.25° steps at 27 °/s against 30 °/s: safe from (0.25 + 27·0.001)/3 = 92 ms on; in 56 ms it turns
        // 1.512°, 6.048 steps, and some window sees 7: 31.25 °/s.
        Assert.Equal(0.277 / 3, Limit(30).SmallestSafeWindow(Angle.FromDegrees(0.25), Duration.FromMilliseconds(1), Ratio.FromPercent(10)).Seconds, 1e-12);
        double[] times = [.. Enumerable.Range(0, 2000).Select(i => 0.001 * i)];
        double[] angles = [.. times.Select(t => Math.Floor(27 * t / 0.25) * 0.25)];
        TighteningTrace trace = TighteningTrace.FromSamples(times, angles, new double[2000]);
        Assert.False(Limit(30).Check(trace, Duration.FromSeconds(0.056)).Conforms);
        Assert.True(Limit(30).Check(trace, Duration.FromSeconds(0.0924)).Conforms);
    }

    private static TighteningTrace Quantised(Dice dice, double rate, double window, double resolution, double interval)
    {
        List<double> times = [], angles = [];
        double time = 0, phase = dice.Uniform(0, 1);
        while (time < 4 * window + 4 * interval)
        {
            double angle = rate * Math.Max(time - dice.Uniform(0, 1) * interval, 0) + phase;
            times.Add(time);
            angles.Add(resolution > 0 ? Math.Round(angle / resolution) * resolution : angle);
            time += interval * dice.Uniform(0.05, 1);
        }

        return TighteningTrace.FromSamples(times.ToArray(), angles.ToArray(), new double[times.Count]);
    }

    private static TighteningTrace Mirrored(TighteningTrace trace) =>
        TighteningTrace.FromSamples(trace.TimesSeconds, trace.AnglesDegrees.ToArray().Select(angle => -angle).ToArray(), trace.TorquesNewtonMeters);

    private static void Agree(TighteningTrace trace, double limit, double window)
    {
        RotationRateCheck batch = Limit(limit).Check(trace, Duration.FromSeconds(window));
        var monitor = new RotationRateMonitor(Limit(limit), Duration.FromSeconds(window), trace.Count + 2);
        for (int i = 0; i < trace.Count; i++) Assert.True(monitor.TryAdd(trace.TimeAt(i), Angle.FromDegrees(trace.AnglesDegrees.Span[i])));
        RotationRateCheck live = monitor.Check();
        Assert.Equal(batch.HighestRate, live.HighestRate);
        Assert.Equal(batch.IsFalling, live.IsFalling);
        Assert.Equal(batch.EndOfFastestWindow, live.EndOfFastestWindow);
        Assert.Equal(batch.FirstExceedance, live.FirstExceedance);
        Assert.Equal(batch.LastExceedance, live.LastExceedance);
        Assert.Equal(batch.TimeAbove, live.TimeAbove);
        Assert.Equal(batch.Conforms, live.Conforms);
    }

    private static RotationRateLimit Limit(double rate) => RotationRateLimit.FromRate(RotationalSpeed.FromDegreesPerSecond(rate));

    private static (double[] Times, double[] Angles) Walk(Dice dice, int count, double least, double most)
    {
        double[] times = new double[count], angles = new double[count];
        for (int i = 1; i < count; i++)
        {
            double step = dice.Uniform(least, most);
            times[i] = times[i - 1] + step;
            angles[i] = angles[i - 1] + step * dice.Uniform(-10, 90);
        }

        return (times, angles);
    }

    private static double At(double[] times, double[] angles, double time)
    {
        int i = 1;
        while (i < times.Length - 1 && times[i] < time) i++;
        return angles[i - 1] + (angles[i] - angles[i - 1]) * Math.Clamp((time - times[i - 1]) / (times[i] - times[i - 1]), 0, 1);
    }
}
