using Fastening.Internals;

namespace Fastening;

/// <summary>A recorded tightening: times, angles and torques, sample by sample. The memory is not copied.</summary>
/// <remarks>Repeated time stamps and small steps back of the angle are normal in real records and accepted; time going back is not.</remarks>
/// <example><code>TighteningTrace trace = TighteningTrace.FromSamples(times, angles, torques);
/// RotationRateCheck check = limit.Check(trace, Duration.FromSeconds(0.5));</code></example>
public sealed class TighteningTrace
{
    private TighteningTrace(ReadOnlyMemory<double> timesSeconds, ReadOnlyMemory<double> anglesDegrees, ReadOnlyMemory<double> torquesNewtonMeters)
    {
        TimesSeconds = timesSeconds;
        AnglesDegrees = anglesDegrees;
        TorquesNewtonMeters = torquesNewtonMeters;
    }

    /// <summary>Times in seconds, never decreasing.</summary>
    public ReadOnlyMemory<double> TimesSeconds { get; }

    /// <summary>Angles of the fastener in degrees, positive in the tightening sense.</summary>
    public ReadOnlyMemory<double> AnglesDegrees { get; }

    /// <summary>Torques in newton-metres.</summary>
    public ReadOnlyMemory<double> TorquesNewtonMeters { get; }

    /// <summary>Number of samples.</summary>
    public int Count => TimesSeconds.Length;

    /// <summary>A trace from three columns of equal length.</summary>
    /// <param name="timesSeconds">Times in seconds, never decreasing.</param>
    /// <param name="anglesDegrees">Angles in degrees.</param>
    /// <param name="torquesNewtonMeters">Torques in newton-metres.</param>
    /// <returns>The trace over the same memory; do not change it afterwards.</returns>
    /// <exception cref="ArgumentException">There are fewer than two samples, or the lengths differ.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A sample is not finite or beyond its domain, or time goes back; the message names the index.</exception>
    public static TighteningTrace FromSamples(
        ReadOnlyMemory<double> timesSeconds, ReadOnlyMemory<double> anglesDegrees, ReadOnlyMemory<double> torquesNewtonMeters)
    {
        if (timesSeconds.Length < 2)
        {
            throw new ArgumentException($"timesSeconds has {timesSeconds.Length} samples; a trace has at least 2.", nameof(timesSeconds));
        }

        Batch.RefuseUnequal(timesSeconds.Length, anglesDegrees.Length, nameof(anglesDegrees));
        Batch.RefuseUnequal(timesSeconds.Length, torquesNewtonMeters.Length, nameof(torquesNewtonMeters));
        Scan(timesSeconds.Span, "s", nameof(timesSeconds));
        Scan(anglesDegrees.Span, "°", nameof(anglesDegrees));
        Scan(torquesNewtonMeters.Span, "N·m", nameof(torquesNewtonMeters));
        ReadOnlySpan<double> times = timesSeconds.Span;
        for (int i = 1; i < times.Length; i++)
        {
            if (times[i] < times[i - 1])
            {
                Guard.RefuseAgainst($"timesSeconds[{i}]", times[i], $"at least the time before it, {Guard.Show(times[i - 1])} s");
            }
        }

        return new TighteningTrace(timesSeconds, anglesDegrees, torquesNewtonMeters);
    }

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant(
        $"{Count} samples from {TimesSeconds.Span[0]:0.###} s to {TimesSeconds.Span[Count - 1]:0.###} s");

    private static void Scan(ReadOnlySpan<double> samples, string unit, string name)
    {
        for (int i = 0; i < samples.Length; i++)
        {
            if (!Domains.Sample.Contains(samples[i])) Guard.Check(samples[i], Domains.Sample, unit, $"{name}[{i}]");
        }
    }
}
