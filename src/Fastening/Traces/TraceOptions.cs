using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>How a trace is read. How snug is found and over how much rotation the curve is smoothed is always stated; so is every threshold that is looked for.</summary>
/// <remarks>
/// The smoothed torque and the local slope are those of the line of least squares over one smoothing window, centred, moved in steps of a
/// sixteenth of it: no finding is shifted by more than the window. Choose the window a few times the period of the ripple, well below the
/// length of the elastic region, and not less than four samples with different angles. What a <c>With…</c> method has not stated is not looked for; the slope fraction alone has a default, 1/2.
/// </remarks>
/// <example><code>TraceOptions options = TraceOptions.SnugByProjection(smoothingWindow: Angle.FromDegrees(8))
///     .WithStickSlip(Torque.FromNewtonMeters(3)).WithReversal(Angle.FromDegrees(2)).WithTorqueDrop(Torque.FromNewtonMeters(5));</code></example>
public sealed class TraceOptions
{
    private const double HalfTheElasticSlope = 0.5;

    private TraceOptions(double? snugTorque, double window)
    {
        SnugTorque = snugTorque;
        Window = window;
        SmoothingWindow = Si.Angle(window);
    }

    private TraceOptions(TraceOptions other)
        : this(other.SnugTorque, other.Window)
    {
        SlopeShare = other.SlopeShare;
        YieldOffset = other.YieldOffset;
        RunningTorque = other.RunningTorque;
        StickSlip = other.StickSlip;
        Reversal = other.Reversal;
        TorqueDrop = other.TorqueDrop;
    }

    /// <summary>The rotation over which torque and slope are smoothed.</summary>
    public Angle SmoothingWindow { get; }

    /// <summary>Yield is where the local slope falls below this share of the elastic slope, for good.</summary>
    public Ratio SlopeFraction => Si.Ratio(SlopeShare);

    internal double SlopeShare { get; private init; } = HalfTheElasticSlope;

    internal double? SnugTorque { get; }

    internal double Window { get; }

    internal double? YieldOffset { get; private init; }

    internal double? RunningTorque { get; private init; }

    internal double? StickSlip { get; private init; }

    internal double? Reversal { get; private init; }

    internal double? TorqueDrop { get; private init; }

    /// <summary>Snug is where the smoothed torque rises through a threshold before its peak; of several rises the one nearest to where the elastic line has it.</summary>
    /// <param name="threshold">The snug torque of the procedure.</param>
    /// <param name="smoothingWindow">The rotation over which torque and slope are smoothed.</param>
    /// <returns>The options.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>TraceOptions.SnugAtTorque(Torque.FromNewtonMeters(20), smoothingWindow: Angle.FromDegrees(8))</code></example>
    public static TraceOptions SnugAtTorque(Torque threshold, Angle smoothingWindow) =>
        new(Domains.PositiveTorque.Check(threshold), Domains.SmoothingWindow.Check(smoothingWindow));

    /// <summary>Snug is where the elastic line, extended back, meets the running (prevailing) torque: there the preload begins.</summary>
    /// <param name="smoothingWindow">The rotation over which torque and slope are smoothed.</param>
    /// <returns>The options.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="smoothingWindow"/> is outside its domain.</exception>
    /// <example><code>TraceOptions.SnugByProjection(smoothingWindow: Angle.FromDegrees(8))</code></example>
    public static TraceOptions SnugByProjection(Angle smoothingWindow) => new(null, Domains.SmoothingWindow.Check(smoothingWindow));

    /// <summary>The running torque as known from elsewhere, for a record that begins on the rise; the run-down is then not used for it.</summary>
    /// <param name="runningTorque">Running torque just before snug; 0 for a free-running nut.</param>
    /// <returns>New options.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="runningTorque"/> is outside its domain.</exception>
    /// <example><code>options.WithRunningTorque(Torque.FromNewtonMeters(4.5))</code></example>
    public TraceOptions WithRunningTorque(Torque runningTorque) => new(this) { RunningTorque = Domains.Torque.Check(runningTorque) };

    /// <summary>Another share of the elastic slope for yield.</summary>
    /// <param name="slopeFraction">1 to 99 %; from 1/3 to 2/3 in print (from memory: Boys and Wallace, SAE 770572; VDI 2230).</param>
    /// <returns>New options.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="slopeFraction"/> is outside its domain.</exception>
    /// <example><code>options.WithSlopeFraction(Ratio.FromPercent(60))</code></example>
    public TraceOptions WithSlopeFraction(Ratio slopeFraction) => new(this) { SlopeShare = Domains.SlopeFraction.Check(slopeFraction) };

    /// <summary>Yield by an offset line too: where the smoothed torque falls below the elastic line moved along by an angle.</summary>
    /// <param name="offset">The angle by which the elastic line is moved.</param>
    /// <returns>New options.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="offset"/> is outside its domain.</exception>
    /// <example><code>options.WithYieldOffset(Angle.FromDegrees(6))</code></example>
    public TraceOptions WithYieldOffset(Angle offset) => new(this) { YieldOffset = Domains.PositiveRotation.Check(offset) };

    /// <summary>Looks for stick–slip: three swings or more within one smoothing window, each more than this from peak to trough, about the local line.</summary>
    /// <param name="peakToPeak">The swing from which it counts.</param>
    /// <returns>New options.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="peakToPeak"/> is outside its domain.</exception>
    /// <example><code>options.WithStickSlip(peakToPeak: Torque.FromNewtonMeters(3))</code></example>
    public TraceOptions WithStickSlip(Torque peakToPeak) => new(this) { StickSlip = Domains.PositiveTorque.Check(peakToPeak) };

    /// <summary>Looks for turning back before shut-off by more than this.</summary>
    /// <param name="reversal">The angle from which it counts; more than the resolution of the angle.</param>
    /// <returns>New options.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="reversal"/> is outside its domain.</exception>
    /// <example><code>options.WithReversal(Angle.FromDegrees(2))</code></example>
    public TraceOptions WithReversal(Angle reversal) => new(this) { Reversal = Domains.PositiveRotation.Check(reversal) };

    /// <summary>Looks for a fall of the torque before shut-off by more than this, between means over a quarter of the smoothing window.</summary>
    /// <param name="torqueDrop">The fall from which it counts.</param>
    /// <returns>New options.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="torqueDrop"/> is outside its domain.</exception>
    /// <example><code>options.WithTorqueDrop(Torque.FromNewtonMeters(5))</code></example>
    public TraceOptions WithTorqueDrop(Torque torqueDrop) => new(this) { TorqueDrop = Domains.PositiveTorque.Check(torqueDrop) };

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"snug {(SnugTorque is double torque ? Print.Text($"at {torque:0.###} N·m") : "by projection")}, smoothed over {Window:0.###}°, yield below {SlopeShare:0.###} of the elastic slope");
}
