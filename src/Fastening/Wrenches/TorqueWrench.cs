using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A torque wrench with what stands between its drive and the fastener: adapters at any angle, coaxial bars, a pull out of square.</summary>
/// <remarks>
/// Fastener torque over wrench torque is ρ = 1 + Σ E_i cos(θ_i + β)/(L cos β) (equation wrench.torque-ratio; for a square pull US Army
/// TM 9-254 para 4-1). L runs from the centre of the drive to where the hand really is: the centre of the grip, or its pivot. Plane, rigid
/// adapters only; universal joints and torque multipliers are something else.
/// </remarks>
/// <example><code>TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400))
///     .WithAdapter(Length.FromMillimeters(100), Angle.FromDegrees(45));
/// Torque setting = wrench.SettingFor(Torque.FromNewtonMeters(150));   // less than 150: the adapter lengthens the lever</code></example>
public sealed partial class TorqueWrench
{
    private static readonly Interval RatioDomain = new(1e-3, 1e3);

    private readonly Stated<Length> _lever;
    private readonly Stated<Angle> _pull;
    private readonly WrenchAdapter[] _adapters;
    private readonly CoaxialExtension[] _extensions;
    private readonly double _ratio;
    private readonly double _compliance;

    /// <summary>A wrench of a given lever length, without anything between drive and fastener.</summary>
    /// <param name="leverLength">Centre of the drive to the hand.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="leverLength"/> is not positive or beyond its domain.</exception>
    /// <example><code>new TorqueWrench(leverLength: Length.FromMillimeters(400))</code></example>
    public TorqueWrench(Length leverLength)
        : this(Domains.Length.Stated(leverLength), new Stated<Angle>(Angle.Zero, 0, nameof(PullOffSquare)), [], [])
    {
    }

    private TorqueWrench(Stated<Length> lever, Stated<Angle> pull, WrenchAdapter[] adapters, CoaxialExtension[] extensions, TorqueWrench? source = null)
    {
        _lever = lever;
        _pull = pull;
        _adapters = adapters;
        _extensions = extensions;
        Adapters = Array.AsReadOnly(adapters);
        CoaxialExtensions = Array.AsReadOnly(extensions);
        LowTorque = source?.LowTorque;
        HighTorque = source?.HighTorque;
        Resolution = source?.Resolution;
        Accuracy = source?.Accuracy;
        _ratio = RatioOf(adapters, lever.Value, Si.ToRadians(pull.Value));
        _compliance = ComplianceTerm.Value;
    }

    /// <summary>Lever length L, centre of the drive to the hand.</summary>
    public Length LeverLength => Si.Length(_lever.Term);

    /// <summary>Lean of the pull from square to the handle; positive pushes along the handle towards the head.</summary>
    public Angle PullOffSquare => _pull.AsStated;

    /// <summary>The adapters, from the drive outwards.</summary>
    public IReadOnlyList<WrenchAdapter> Adapters { get; }

    /// <summary>The coaxial bars.</summary>
    public IReadOnlyList<CoaxialExtension> CoaxialExtensions { get; }

    /// <summary>Low end of the wrench's range; null when not stated.</summary>
    public Torque? LowTorque { get; private init; }

    /// <summary>High end of the wrench's range; null when not stated.</summary>
    public Torque? HighTorque { get; private init; }

    /// <summary>Step of the display or scale; null when not stated.</summary>
    public Torque? Resolution { get; private init; }

    /// <summary>Permitted deviation of the wrench, of the reading; null when not stated.</summary>
    public Ratio? Accuracy { get; private init; }

    /// <summary>Torque at the fastener over torque at the drive, ρ.</summary>
    public double TorqueRatio
    {
        get
        {
            if (Recording.IsAnywhere) WriteRatio();
            return _ratio;
        }
    }

    /// <summary>Values outside the ranges in which such values are published; empty when there are none.</summary>
    public IReadOnlyList<PlausibilityRemark> Remarks =>
        PlausibilityRemark.Of(PlausibleRange.LeverLength, _lever.Value * 1e3, PlausibleRange.TorqueRatio, _ratio);

    /// <summary>The same wrench with its range.</summary>
    /// <param name="low">Lowest torque of the declared range.</param>
    /// <param name="high">Highest torque, above <paramref name="low"/>.</param>
    /// <returns>A new wrench.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A torque is outside its domain, or the two are the wrong way round.</exception>
    /// <example><code>wrench.WithRange(Torque.FromNewtonMeters(40), Torque.FromNewtonMeters(200))</code></example>
    public TorqueWrench WithRange(Torque low, Torque high)
    {
        double begins = Domains.Torque.Check(low);
        if (Domains.PositiveTorque.Check(high) <= begins) Guard.RefuseAgainst(nameof(high), high, $"greater than low, {Guard.ShowToCompare(low)}");

        return new TorqueWrench(_lever, _pull, _adapters, _extensions, this) { LowTorque = low, HighTorque = high };
    }

    /// <summary>The same wrench with the step of its display or scale.</summary>
    /// <param name="resolution">The step.</param>
    /// <returns>A new wrench.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="resolution"/> is not positive or beyond its domain.</exception>
    /// <example><code>wrench.WithResolution(Torque.FromNewtonMeters(0.5))</code></example>
    public TorqueWrench WithResolution(Torque resolution)
    {
        Domains.PositiveTorque.Check(resolution);
        return new TorqueWrench(_lever, _pull, _adapters, _extensions, this) { Resolution = resolution };
    }

    /// <summary>The same wrench with its permitted deviation, as a share of the reading.</summary>
    /// <param name="accuracy">0 % to 50 %; 4 % for ±4 %.</param>
    /// <returns>A new wrench.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="accuracy"/> is outside its domain.</exception>
    /// <example><code>wrench.WithAccuracy(Ratio.FromPercent(4))</code></example>
    public TorqueWrench WithAccuracy(Ratio accuracy)
    {
        Domains.Accuracy.Check(accuracy);
        return new TorqueWrench(_lever, _pull, _adapters, _extensions, this) { Accuracy = accuracy };
    }

    /// <summary>The same wrench with one adapter more.</summary>
    /// <param name="length">Length, centre to centre; 0 is allowed.</param>
    /// <param name="angleFromHandle">Angle from the line of the handle produced beyond the drive, −360° to 360°, positive to the side to which the
    /// hand moves; absolute, not from the adapter before.</param>
    /// <returns>A new wrench.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the chain would turn the fastener backwards.</exception>
    /// <example><code>new TorqueWrench(Length.FromMillimeters(400)).WithAdapter(Length.FromMillimeters(100), Angle.FromDegrees(45)).TorqueRatio   // 1.177</code></example>
    public TorqueWrench WithAdapter(Length length, Angle angleFromHandle)
    {
        var adapter = new WrenchAdapter(Domains.LengthOrZero.Stated(length), Domains.Direction.Stated(angleFromHandle));
        var wrench = new TorqueWrench(_lever, _pull, [.. _adapters, adapter], _extensions, this);
        if (!RatioDomain.Contains(wrench._ratio))
        {
            Guard.RefuseAgainst(nameof(length), length, Print.Text(
                $"such that the torque ratio stays between 0.001 and 1000; with this adapter at {Guard.Show(angleFromHandle)} it would be {wrench._ratio:G4} (add adapters that point ahead first)"));
        }

        return wrench;
    }

    /// <summary>The same wrench with one coaxial bar more.</summary>
    /// <param name="extension">The bar.</param>
    /// <returns>A new wrench.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="extension"/> is null.</exception>
    /// <example><code>wrench.WithCoaxialExtension(CoaxialExtension.Round(Length.FromMillimeters(300), Length.FromMillimeters(16), Pressure.FromGigapascals(79)))</code></example>
    public TorqueWrench WithCoaxialExtension(CoaxialExtension extension) =>
        new(_lever, _pull, _adapters, [.. _extensions, Guard.NotNull(extension)], this);

    /// <summary>The same wrench pulled out of square. Without adapters it changes nothing: the wrench measures the torque at its drive.</summary>
    /// <param name="pullOffSquare">Lean of the pull, above −90° to below 90°; positive pushes along the handle towards the drive of the wrench.</param>
    /// <returns>A new wrench.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its domain, or so large that the fastener would turn backwards.</exception>
    /// <example><code>wrench.WithPullOffSquare(Angle.FromDegrees(12)).TorqueRatio</code></example>
    public TorqueWrench WithPullOffSquare(Angle pullOffSquare)
    {
        var wrench = new TorqueWrench(_lever, Domains.BelowRightAngle.Stated(pullOffSquare), _adapters, _extensions, this);
        if (!RatioDomain.Contains(wrench._ratio))
        {
            Guard.RefuseAgainst(nameof(pullOffSquare), pullOffSquare, Print.Text(
                $"such that the torque ratio stays between 0.001 and 1000; it would be {wrench._ratio:G4}"));
        }

        return wrench;
    }

    /// <summary>What to set on the wrench for a torque at the fastener.</summary>
    /// <param name="atFastener">The torque wanted at the fastener.</param>
    /// <returns>The setting, not rounded to the display.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="atFastener"/> is negative or beyond its domain.</exception>
    /// <example><code>wrench.SettingFor(Torque.FromNewtonMeters(150))</code></example>
    public Torque SettingFor(Torque atFastener)
    {
        double setting = WrenchEquations.Setting(Domains.Torque.Check(atFastener), _ratio);
        if (Recording.IsAnywhere) WriteSetting(setting, atFastener.Value, atFastener.Unit);
        return Si.Torque(setting);
    }

    /// <summary>What the fastener gets at a setting or reading of the wrench.</summary>
    /// <param name="setting">Torque at the drive, as the wrench shows it.</param>
    /// <returns>Torque at the fastener.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="setting"/> is negative or beyond its domain.</exception>
    /// <example><code>wrench.FastenerTorqueAt(Torque.FromNewtonMeters(120))</code></example>
    public Torque FastenerTorqueAt(Torque setting)
    {
        double torque = WrenchEquations.FastenerTorque(Domains.Torque.Check(setting), _ratio);
        if (Recording.IsAnywhere) WriteFastenerTorque(torque, setting.Value, setting.Unit);
        return Si.Torque(torque);
    }

    /// <summary>The window at the wrench that belongs to a window at the fastener.</summary>
    /// <param name="atFastener">The window wanted at the fastener.</param>
    /// <returns>Limits and target over ρ; round inward before setting a display by it.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="atFastener"/> is null.</exception>
    /// <example><code>wrench.SettingWindowFor(window).RoundInward(Torque.FromNewtonMeters(0.5))</code></example>
    public ToleranceWindow<Torque> SettingWindowFor(ToleranceWindow<Torque> atFastener) => Guard.NotNull(atFastener).Scale(1 / _ratio);

    /// <summary>The torques that the fastener can get at a setting while the wrench is within its accuracy.</summary>
    /// <param name="setting">Torque at the drive, as the wrench shows it.</param>
    /// <returns>From setting × ρ/(1 + a) to setting × ρ/(1 − a), a being the accuracy (deviation = (shown − true)/true, ISO 6789-1, from memory).</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="setting"/> is negative or beyond its domain.</exception>
    /// <exception cref="InvalidOperationException">No accuracy was stated: it is not guessed.</exception>
    /// <example><code>wrench.WithAccuracy(Ratio.FromPercent(4)).DeliveredWindowAt(Torque.FromNewtonMeters(120))</code></example>
    public ToleranceWindow<Torque> DeliveredWindowAt(Torque setting)
    {
        double atFastener = WrenchEquations.FastenerTorque(Domains.Torque.Check(setting), _ratio);
        double accuracy = StatedAccuracy.Value;
        return ToleranceWindow.FromLimits(Si.Torque(atFastener / (1 + accuracy)), Si.Torque(atFastener), Si.Torque(atFastener / (1 - accuracy)));
    }

    /// <summary>The settings at which every torque that the fastener can get lies within the required window, adapters, accuracy and calibration counted.</summary>
    /// <param name="atFastener">The window that the true torque at the fastener must keep; a lower limit below 0, or none, counts as 0.</param>
    /// <param name="calibrationUncertainty">Relative uncertainty of the calibration behind the accuracy. It counts as expanded with its own coverage
    /// factor, with 2 where less was stated, 0 % to 40 %; <c>MeasurementUncertainty.Standard(Ratio.Zero)</c> when the accuracy was stated with it counted in.</param>
    /// <returns>The settings in whole steps of the display and within the range, as far as these were stated; or none, why, and what would make it fit.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="atFastener"/> is null.</exception>
    /// <exception cref="ArgumentException">No uncertainty was stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <exception cref="InvalidOperationException">No accuracy was stated: it is not guessed.</exception>
    /// <example><code>GuaranteedSetting guaranteed = wrench.GuaranteedSettingFor(window, MeasurementUncertainty.Expanded(Ratio.FromPercent(1), coverageFactor: 2));</code></example>
    public GuaranteedSetting GuaranteedSettingFor(ToleranceWindow<Torque> atFastener, MeasurementUncertainty<Ratio> calibrationUncertainty) =>
        GuaranteedSetting.Find(this, atFastener, calibrationUncertainty);

    /// <summary>How far the coaxial bars wind up.</summary>
    /// <param name="torque">The torque that the bars carry: the setting for bars at the drive, the fastener's torque for bars beyond the adapters.</param>
    /// <returns>The angle by which the wrench turns further than the fastener.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="torque"/> is negative or beyond its domain.</exception>
    /// <example><code>wrench.WithCoaxialExtension(bar).WindUpAt(Torque.FromNewtonMeters(150))</code></example>
    public Angle WindUpAt(Torque torque)
    {
        double windUp = WrenchEquations.WindUp(Domains.Torque.Check(torque), _compliance);
        if (Recording.IsAnywhere) WriteWindUp(windUp, torque.Value, torque.Unit);
        return Si.AngleFromRadians(windUp);
    }

    /// <summary>Whether a setting suits the wrench: range, display step, hand position, and lengths that are unusual.</summary>
    /// <param name="setting">Torque at the drive.</param>
    /// <returns>The warnings, as data; none when it fits.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="setting"/> is negative or beyond its domain.</exception>
    /// <example><code>foreach (string message in wrench.FitOf(Torque.FromNewtonMeters(215)).Messages) Console.WriteLine(message);</code></example>
    public WrenchFit FitOf(Torque setting)
    {
        Domains.Torque.Check(setting);
        return new WrenchFit(this, setting);
    }

    /// <summary>How much the fastener torque changes with every length and angle of the chain, at a setting.</summary>
    /// <param name="setting">Torque at the drive.</param>
    /// <returns>Analytic derivatives.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="setting"/> is negative or beyond its domain.</exception>
    /// <example><code>wrench.SensitivitiesAt(Torque.FromNewtonMeters(120)).PerAdapterAngle[0].NewtonMetersPerRadian</code></example>
    public WrenchSensitivities SensitivitiesAt(Torque setting) =>
        new(Domains.Torque.Check(setting), _ratio, _lever.Value, Si.ToRadians(_pull.Value), _adapters);

    internal double RatioSi => _ratio;

    internal Stated<Ratio> StatedAccuracy => Accuracy is Ratio accuracy
        ? new Stated<Ratio>(accuracy, Si.Of(accuracy), "accuracy of the wrench")
        : throw new InvalidOperationException("No accuracy was stated for this wrench; state it with WithAccuracy.");

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"lever {Si.Length(_lever.Value):0.###}{string.Concat(Array.ConvertAll(_adapters, a => " + " + a))}, torque ratio {_ratio:0.####}{PlausibilityRemark.Mention(Remarks)}");
}
