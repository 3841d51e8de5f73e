using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A recorded tightening, sample by sample: torques with their times, angles unless they were not measured, forces if they were. The memory is not copied.</summary>
/// <remarks>
/// Repeated time stamps, small steps back of the angle, gaps and the tail after shut-off are normal in real records: accepted, and reported by
/// <see cref="TraceAnalysis.Irregularities"/>. Time going back and numbers that are not finite are refused by index.
/// </remarks>
/// <example><code>TighteningTrace trace = TighteningTrace.FromSamples(times, angles, torques);
/// TraceAnalysis analysis = trace.Analyze(TraceOptions.SnugByProjection(smoothingWindow: Angle.FromDegrees(8)));</code></example>
public sealed partial class TighteningTrace
{
    private const int LeastCount = 2;

    private readonly double _start;
    private readonly double _interval;

    private TighteningTrace(ReadOnlyMemory<double> times, double start, double interval, ReadOnlyMemory<double> angles, ReadOnlyMemory<double> torques, ReadOnlyMemory<double> forces)
    {
        (TimesSeconds, AnglesDegrees, TorquesNewtonMeters, ForcesNewtons) = (times, angles, torques, forces);
        (_start, _interval) = (start, interval);
    }

    /// <summary>Times in seconds, never decreasing; empty when the trace was made from a start and a sampling interval.</summary>
    public ReadOnlyMemory<double> TimesSeconds { get; }

    /// <summary>Angles of the fastener in degrees, positive in the tightening sense; empty when not measured.</summary>
    public ReadOnlyMemory<double> AnglesDegrees { get; }

    /// <summary>Torques in newton-metres.</summary>
    public ReadOnlyMemory<double> TorquesNewtonMeters { get; }

    /// <summary>Clamp forces in newtons; empty when not measured.</summary>
    public ReadOnlyMemory<double> ForcesNewtons { get; }

    /// <summary>Whether the angle was measured.</summary>
    public bool HasAngles => AnglesDegrees.Length > 0;

    /// <summary>Whether the clamp force was measured.</summary>
    public bool HasForces => ForcesNewtons.Length > 0;

    /// <summary>Number of samples.</summary>
    public int Count => TorquesNewtonMeters.Length;

    internal SampleClock Clock => new(TimesSeconds.Span, _start, _interval);

    /// <summary>A trace from three columns of equal length.</summary>
    /// <param name="timesSeconds">Times in seconds, never decreasing.</param>
    /// <param name="anglesDegrees">Angles in degrees.</param>
    /// <param name="torquesNewtonMeters">Torques in newton-metres.</param>
    /// <returns>The trace over the same memory; do not change it afterwards.</returns>
    /// <exception cref="ArgumentException">There are fewer than two samples, or the lengths differ.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A sample is not finite or beyond its domain, or time goes back; the message names the index.</exception>
    /// <example><code>TighteningTrace.FromSamples(times, angles, torques)     // three columns of the log</code></example>
    public static TighteningTrace FromSamples(
        ReadOnlyMemory<double> timesSeconds, ReadOnlyMemory<double> anglesDegrees, ReadOnlyMemory<double> torquesNewtonMeters)
    {
        RefuseShort(timesSeconds, nameof(timesSeconds));
        Batch.RefuseUnequal(timesSeconds.Length, anglesDegrees.Length, nameof(anglesDegrees));
        Batch.RefuseUnequal(timesSeconds.Length, torquesNewtonMeters.Length, nameof(torquesNewtonMeters));
        ScanTimes(timesSeconds.Span, nameof(timesSeconds));
        Scan(anglesDegrees.Span, "°", nameof(anglesDegrees));
        Scan(torquesNewtonMeters.Span, "N·m", nameof(torquesNewtonMeters));
        return new TighteningTrace(timesSeconds, 0, 0, anglesDegrees, torquesNewtonMeters, default);
    }

    /// <summary>A trace sampled at a steady interval.</summary>
    /// <param name="start">Time of the first sample, 0 or more.</param>
    /// <param name="samplingInterval">Time from sample to sample.</param>
    /// <param name="anglesDegrees">Angles in degrees.</param>
    /// <param name="torquesNewtonMeters">Torques in newton-metres.</param>
    /// <returns>The trace over the same memory; do not change it afterwards.</returns>
    /// <exception cref="ArgumentException">There are fewer than two samples, or the lengths differ.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A time or a sample is not finite or beyond its domain; the message names the index.</exception>
    /// <example><code>TighteningTrace.FromSamples(start: Duration.Zero, samplingInterval: Duration.FromMilliseconds(1), angles, torques)</code></example>
    public static TighteningTrace FromSamples(
        Duration start, Duration samplingInterval, ReadOnlyMemory<double> anglesDegrees, ReadOnlyMemory<double> torquesNewtonMeters)
    {
        double first = Domains.ClockReading.Check(start);
        double interval = Domains.SamplingInterval.Check(samplingInterval);
        RefuseShort(anglesDegrees, nameof(anglesDegrees));
        Batch.RefuseUnequal(anglesDegrees.Length, torquesNewtonMeters.Length, nameof(torquesNewtonMeters));
        Scan(anglesDegrees.Span, "°", nameof(anglesDegrees));
        Scan(torquesNewtonMeters.Span, "N·m", nameof(torquesNewtonMeters));
        return new TighteningTrace(default, first, interval, anglesDegrees, torquesNewtonMeters, default);
    }

    /// <summary>A trace without angles: only what torque alone shows is found on it.</summary>
    /// <param name="timesSeconds">Times in seconds, never decreasing.</param>
    /// <param name="torquesNewtonMeters">Torques in newton-metres.</param>
    /// <returns>The trace over the same memory; do not change it afterwards.</returns>
    /// <exception cref="ArgumentException">There are fewer than two samples, or the lengths differ.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A sample is not finite or beyond its domain, or time goes back; the message names the index.</exception>
    public static TighteningTrace FromTorques(ReadOnlyMemory<double> timesSeconds, ReadOnlyMemory<double> torquesNewtonMeters)
    {
        RefuseShort(timesSeconds, nameof(timesSeconds));
        Batch.RefuseUnequal(timesSeconds.Length, torquesNewtonMeters.Length, nameof(torquesNewtonMeters));
        ScanTimes(timesSeconds.Span, nameof(timesSeconds));
        Scan(torquesNewtonMeters.Span, "N·m", nameof(torquesNewtonMeters));
        return new TighteningTrace(timesSeconds, 0, 0, default, torquesNewtonMeters, default);
    }

    /// <summary>A trace without angles, sampled at a steady interval.</summary>
    /// <param name="start">Time of the first sample, 0 or more.</param>
    /// <param name="samplingInterval">Time from sample to sample.</param>
    /// <param name="torquesNewtonMeters">Torques in newton-metres.</param>
    /// <returns>The trace over the same memory; do not change it afterwards.</returns>
    /// <exception cref="ArgumentException">There are fewer than two samples.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A time or a sample is not finite or beyond its domain; the message names the index.</exception>
    /// <example><code>TighteningTrace.FromTorques(start: Duration.Zero, samplingInterval: Duration.FromMilliseconds(1), torques)</code></example>
    public static TighteningTrace FromTorques(Duration start, Duration samplingInterval, ReadOnlyMemory<double> torquesNewtonMeters)
    {
        double first = Domains.ClockReading.Check(start);
        double interval = Domains.SamplingInterval.Check(samplingInterval);
        RefuseShort(torquesNewtonMeters, nameof(torquesNewtonMeters));
        Scan(torquesNewtonMeters.Span, "N·m", nameof(torquesNewtonMeters));
        return new TighteningTrace(default, first, interval, default, torquesNewtonMeters, default);
    }

    /// <summary>The same trace with the clamp forces that were measured beside it.</summary>
    /// <param name="forcesNewtons">As many clamp forces as the trace has samples, in newtons.</param>
    /// <returns>A new trace over the same memory.</returns>
    /// <exception cref="ArgumentException">The lengths differ.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A sample is not finite or beyond its domain; the message names the index.</exception>
    /// <example><code>trace.WithForces(forces)     // newtons, from a load cell</code></example>
    public TighteningTrace WithForces(ReadOnlyMemory<double> forcesNewtons)
    {
        Batch.RefuseUnequal(Count, forcesNewtons.Length, nameof(forcesNewtons));
        Scan(forcesNewtons.Span, "N", nameof(forcesNewtons));
        return new TighteningTrace(TimesSeconds, _start, _interval, AnglesDegrees, TorquesNewtonMeters, forcesNewtons);
    }

    /// <summary>The same trace with the angles of the fastener, where the angles of the tool were recorded: what the tool winds up under its torque is taken off.</summary>
    /// <remarks>
    /// θ − M/k at every sample (equation <c>rotation.fastener-rotation</c>). State once what lies between the angle sensor and the fastener; parts in
    /// series are taken off one after the other. A tool that was seen to wind up 3.5° at 200 N·m against a fixed socket has 200/3.5 N·m/°.
    /// </remarks>
    /// <param name="toolStiffness">Torque per angle of wind-up; of a bar <see cref="CoaxialExtension.Stiffness"/>.</param>
    /// <returns>A new trace with angles of its own; times, torques and forces in the same memory.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="toolStiffness"/> is outside its domain.</exception>
    /// <exception cref="InvalidOperationException">The trace has no angles.</exception>
    /// <example><code>TighteningTrace fastener = trace.WithoutWindUp(RotationalStiffness.FromNewtonMetersPerDegree(200 / 3.5));</code></example>
    public TighteningTrace WithoutWindUp(RotationalStiffness toolStiffness)
    {
        double compliance = 1 / Domains.ToolStiffness.Check(toolStiffness);
        if (!HasAngles) throw new InvalidOperationException("The trace has no angles: there is no wind-up to take off.");
        ReadOnlySpan<double> torques = TorquesNewtonMeters.Span;
        double[] angles = AnglesDegrees.ToArray();
        for (int i = 0; i < angles.Length; i++)
        {
            angles[i] = Si.ToDegrees(RotationTighteningEquations.FastenerRotation(Si.ToRadians(angles[i]), torques[i], 0, compliance));
            if (!Domains.Sample.Contains(angles[i])) Guard.RefuseAgainst(nameof(toolStiffness), toolStiffness, $"greater: the wind-up at sample {i} is beyond any rotation");
        }

        return new TighteningTrace(TimesSeconds, _start, _interval, angles, TorquesNewtonMeters, ForcesNewtons);
    }

    /// <summary>The time of one sample.</summary>
    /// <param name="index">Index of the sample, 0 to <see cref="Count"/> − 1.</param>
    /// <returns>Its time on the clock of the trace.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="index"/> is not an index of the trace.</exception>
    /// <example><code>trace.TimeAt(trace.Count - 1).Seconds</code></example>
    public Duration TimeAt(int index)
    {
        if (index < 0 || index >= Count) Guard.RefuseAgainst(nameof(index), index, $"from 0 to {Count - 1}");
        return Si.Duration(Clock[index]);
    }

    /// <summary>Reads the curve: snug, elastic region, yield, peak, end, and remarks on what went wrong or makes a finding doubtful.</summary>
    /// <param name="options">How snug is found, how much is smoothed, and what is looked for.</param>
    /// <returns>The findings, each with its sample index. The time taken is proportional to the number of samples; the working memory is rented and bounded.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="options"/> is null.</exception>
    /// <example><code>Angle? past = trace.Analyze(TraceOptions.SnugAtTorque(Torque.FromNewtonMeters(20), Angle.FromDegrees(8))).RotationPastSnug;</code></example>
    public TraceAnalysis Analyze(TraceOptions options) => TraceSearch.Run(this, Guard.NotNull(options));

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Count} samples from {Clock[0]:0.###} s to {Clock[Count - 1]:0.###} s");

    private static void RefuseShort(ReadOnlyMemory<double> samples, string name)
    {
        if (samples.Length < LeastCount) throw new ArgumentException($"{name} has {samples.Length} samples; a trace has at least {LeastCount}.", name);
    }

    private static void ScanTimes(ReadOnlySpan<double> times, string name)
    {
        Scan(times, "s", name);
        for (int i = 1; i < times.Length; i++)
        {
            if (times[i] < times[i - 1]) Guard.RefuseAgainst($"{name}[{i}]", times[i], $"at least the time before it, {Guard.Show(times[i - 1])} s");
        }
    }

    private static void Scan(ReadOnlySpan<double> samples, string unit, string name)
    {
        for (int i = 0; i < samples.Length; i++)
        {
            if (!Domains.Sample.Contains(samples[i])) Domains.Sample.Check(samples[i], unit, $"{name}[{i}]");
        }
    }
}
