using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>What scatters when joints are tightened to one torque: the torque, the friction, the geometry of the wrench.</summary>
/// <remarks>
/// The friction is always a stated range; the model's own coefficients are not used. Limits are read as rectangular (nothing else is known
/// of them) unless a shape is stated. Errors of geometry are limits, rectangular.
/// </remarks>
/// <example><code>FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse("M16"), friction.Low);
/// TorqueWrench wrench = new TorqueWrench(Length.FromMillimeters(400)).WithAccuracy(Ratio.FromPercent(4));
/// PreloadBand band = PreloadBand.Evaluate(new PreloadBandInputs(model, wrench, Torque.FromNewtonMeters(150), friction, FrictionCorrelation.Full));</code></example>
public sealed class PreloadBandInputs
{
    private readonly TorquePreloadModel _model;
    private readonly Func<PreloadBandInputs, FrictionSide> _friction;
    private readonly Func<PreloadBandInputs, TorqueSide> _torque;
    private readonly TorqueWrench? _wrench;

    /// <summary>A torque window at the fastener.</summary>
    /// <param name="model">Thread, bearing surface, convention and prevailing torque.</param>
    /// <param name="torqueAtFastener">The torques that the fastener may get; the target is not used.</param>
    /// <param name="friction">The friction to reckon with.</param>
    /// <param name="correlation">How thread and bearing friction vary together; never defaulted.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A torque is outside its domain.</exception>
    /// <example><code>var inputs = new PreloadBandInputs(model, ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(137), Ratio.FromPercent(4), Ratio.FromPercent(6)), friction, FrictionCorrelation.Independent);</code></example>
    public PreloadBandInputs(FrictionTorqueModel model, ToleranceWindow<Torque> torqueAtFastener, FrictionRange friction, FrictionCorrelation correlation)
        : this(Guard.NotNull(model), Window(torqueAtFastener), null, Coefficients(model, friction)) => FrictionCorrelation = Guard.NotNull(correlation);

    /// <summary>A setting of a torque wrench.</summary>
    /// <param name="model">Thread, bearing surface, convention and prevailing torque.</param>
    /// <param name="wrench">The wrench, with its accuracy; its resolution counts when it is stated: the setting is uncertain by half a step.</param>
    /// <param name="setting">Torque at the drive, as the wrench shows it.</param>
    /// <param name="friction">The friction to reckon with.</param>
    /// <param name="correlation">How thread and bearing friction vary together; never defaulted.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">No accuracy was stated for the wrench: it is not guessed.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The setting is outside its domain.</exception>
    public PreloadBandInputs(FrictionTorqueModel model, TorqueWrench wrench, Torque setting, FrictionRange friction, FrictionCorrelation correlation)
        : this(Guard.NotNull(model), Setting(wrench, setting), wrench, Coefficients(model, friction)) => FrictionCorrelation = Guard.NotNull(correlation);

    /// <summary>A torque window at the fastener, and a range of nut factors.</summary>
    /// <param name="model">Nominal diameter and prevailing torque; its own K is not used.</param>
    /// <param name="torqueAtFastener">The torques that the fastener may get; the target is not used.</param>
    /// <param name="lowNutFactor">Lowest K.</param>
    /// <param name="highNutFactor">Highest K, at least <paramref name="lowNutFactor"/>.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the factors are the wrong way round.</exception>
    /// <example><code>NutFactorModel dry = TorquePreloadModel.FromNutFactor(0.19, Length.FromMillimeters(16));
    /// var inputs = new PreloadBandInputs(dry, window, lowNutFactor: 0.12, highNutFactor: 0.26);</code></example>
    public PreloadBandInputs(NutFactorModel model, ToleranceWindow<Torque> torqueAtFastener, double lowNutFactor, double highNutFactor)
        : this(Guard.NotNull(model), Window(torqueAtFastener), null, NutFactors(model, lowNutFactor, highNutFactor))
    {
    }

    /// <summary>A setting of a torque wrench, and a range of nut factors.</summary>
    /// <param name="model">Nominal diameter and prevailing torque; its own K is not used.</param>
    /// <param name="wrench">The wrench, with its accuracy; its resolution counts when it is stated: the setting is uncertain by half a step.</param>
    /// <param name="setting">Torque at the drive, as the wrench shows it.</param>
    /// <param name="lowNutFactor">Lowest K.</param>
    /// <param name="highNutFactor">Highest K, at least <paramref name="lowNutFactor"/>.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">No accuracy was stated for the wrench: it is not guessed.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the factors are the wrong way round.</exception>
    public PreloadBandInputs(NutFactorModel model, TorqueWrench wrench, Torque setting, double lowNutFactor, double highNutFactor)
        : this(Guard.NotNull(model), Setting(wrench, setting), wrench, NutFactors(model, lowNutFactor, highNutFactor))
    {
    }

    private PreloadBandInputs(
        TorquePreloadModel model, Func<PreloadBandInputs, TorqueSide> torque, TorqueWrench? wrench, Func<PreloadBandInputs, FrictionSide> friction)
    {
        _model = model;
        _torque = torque;
        _wrench = wrench;
        _friction = friction;
        PrevailingLow = PrevailingHigh = Si.Of(model.PrevailingTorque);
    }

    private PreloadBandInputs(PreloadBandInputs source)
        : this(source._model, source._torque, source._wrench, source._friction)
    {
        TorqueShape = source.TorqueShape;
        FrictionShape = source.FrictionShape;
        FrictionCorrelation = source.FrictionCorrelation;
        PrevailingLow = source.PrevailingLow;
        PrevailingHigh = source.PrevailingHigh;
        BearingDiameterError = source.BearingDiameterError;
        Errors = source.Errors;
        Rotation = source.Rotation;
    }

    /// <summary>How the torque scatters between its limits.</summary>
    public ScatterShape TorqueShape { get; private init; } = ScatterShape.Rectangular;

    /// <summary>How the friction scatters over its range.</summary>
    public ScatterShape FrictionShape { get; private init; } = ScatterShape.Rectangular;

    /// <summary>How thread and bearing friction vary together; null with a nut factor. The worst case takes both at the same end anyway.</summary>
    public FrictionCorrelation? FrictionCorrelation { get; private init; }

    /// <summary>Unusual values of friction, nut factor or geometry of the wrench; the calculation uses them as stated.</summary>
    /// <example><code>foreach (PlausibilityRemark remark in inputs.Remarks) Console.WriteLine(remark);</code></example>
    public IReadOnlyList<PlausibilityRemark> Remarks => PlausibilityRemark.Join(_friction(this).Remarks, _wrench?.Remarks ?? []);

    internal double PrevailingLow { get; private init; }

    internal double PrevailingHigh { get; private init; }

    private double BearingDiameterError { get; init; }

    private GeometryErrors Errors { get; init; }

    private Func<RotationGain>? Rotation { get; init; }

    /// <summary>The same with a shape of the torque: of a window, between its limits; of a wrench, within ± its accuracy.</summary>
    /// <param name="shape">The shape.</param>
    /// <returns>New inputs.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="shape"/> is null.</exception>
    /// <example><code>inputs = inputs.WithTorqueShape(ScatterShape.Normal(coverageFactor: 2));     // 95 % within the limits</code></example>
    public PreloadBandInputs WithTorqueShape(ScatterShape shape) => new(this) { TorqueShape = Guard.NotNull(shape) };

    /// <summary>The same with a shape of the friction, or of the nut factor.</summary>
    /// <param name="shape">The shape.</param>
    /// <returns>New inputs.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="shape"/> is null.</exception>
    /// <example><code>inputs = inputs.WithFrictionShape(ScatterShape.Triangular);</code></example>
    public PreloadBandInputs WithFrictionShape(ScatterShape shape) => new(this) { FrictionShape = Guard.NotNull(shape) };

    /// <summary>The same with another correlation of thread and bearing friction: where it is not known, evaluate both ends.</summary>
    /// <param name="correlation">The correlation.</param>
    /// <returns>New inputs.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="correlation"/> is null.</exception>
    /// <exception cref="InvalidOperationException">There is a nut factor in place of two coefficients.</exception>
    /// <example><code>PreloadBand wider = PreloadBand.Evaluate(inputs.WithFrictionCorrelation(FrictionCorrelation.Full));</code></example>
    public PreloadBandInputs WithFrictionCorrelation(FrictionCorrelation correlation)
    {
        Guard.NotNull(correlation);
        Model("a correlation of thread and bearing friction");
        return new(this) { FrictionCorrelation = correlation };
    }

    /// <summary>The same with a range of the prevailing torque, in place of the model's.</summary>
    /// <param name="low">Lowest prevailing torque.</param>
    /// <param name="high">Highest, at least <paramref name="low"/>.</param>
    /// <returns>New inputs.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A torque is outside its domain, or the two are the wrong way round.</exception>
    /// <example><code>inputs = inputs.WithPrevailingRange(Torque.FromNewtonMeters(8), Torque.FromNewtonMeters(17));</code></example>
    public PreloadBandInputs WithPrevailingRange(Torque low, Torque high)
    {
        double least = Domains.Torque.Check(low), greatest = Domains.Torque.Check(high);
        if (greatest < least) Guard.RefuseAgainst(nameof(high), high, $"at least the low prevailing torque, {Guard.ShowToCompare(low)}");
        return new(this) { PrevailingLow = least, PrevailingHigh = greatest };
    }

    /// <summary>The same with a measuring error of the effective bearing diameter.</summary>
    /// <param name="error">Limit of the error, either side.</param>
    /// <returns>New inputs.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="error"/> is outside its domain, or as large as the diameter.</exception>
    /// <exception cref="InvalidOperationException">There is a nut factor in place of a bearing surface.</exception>
    /// <example><code>inputs = inputs.WithBearingDiameterError(Length.FromMillimeters(0.4));</code></example>
    public PreloadBandInputs WithBearingDiameterError(Length error)
    {
        Domains.LengthOrZero.Check(error);
        return new(this) { BearingDiameterError = Below(error, Model("a bearing diameter").Bearing.EffectiveDiameter, "the effective diameter") };
    }

    /// <summary>The same with a measuring error of the lever length: the hand is not always at the same place.</summary>
    /// <param name="error">Limit of the error, either side.</param>
    /// <returns>New inputs.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="error"/> is outside its domain, or as large as the lever.</exception>
    /// <exception cref="InvalidOperationException">There is no wrench.</exception>
    /// <example><code>inputs = inputs.WithLeverLengthError(Length.FromMillimeters(10));</code></example>
    public PreloadBandInputs WithLeverLengthError(Length error)
    {
        Domains.LengthOrZero.Check(error);
        return new(this) { Errors = Errors with { Lever = Below(error, Wrench().LeverLength, "the lever length") } };
    }

    /// <summary>The same with measuring errors of every adapter.</summary>
    /// <param name="lengthError">Limit of the error of its length, either side.</param>
    /// <param name="angleError">Limit of the error of its angle, either side, 0° to 45°.</param>
    /// <returns>New inputs.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An error is outside its domain, or longer than an adapter.</exception>
    /// <exception cref="InvalidOperationException">There is no wrench.</exception>
    /// <example><code>inputs = inputs.WithAdapterErrors(Length.FromMillimeters(1.5), Angle.FromDegrees(4));</code></example>
    public PreloadBandInputs WithAdapterErrors(Length lengthError, Angle angleError)
    {
        Domains.LengthOrZero.Check(lengthError);
        double angle = Domains.AngleError.Check(angleError);
        foreach (WrenchAdapter adapter in Wrench().Adapters) Below(lengthError, adapter.Length, "the length of an adapter", nameof(lengthError));
        return new(this) { Errors = Errors with { AdapterLength = Si.Millimeters(lengthError), AdapterAngle = angle } };
    }

    /// <summary>The same with an error of the direction of the pull.</summary>
    /// <param name="error">Limit of the error, either side, 0° to 45°; with the pull itself it must stay below 90°.</param>
    /// <returns>New inputs.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="error"/> is outside its domain.</exception>
    /// <exception cref="InvalidOperationException">There is no wrench.</exception>
    /// <example><code>inputs = inputs.WithPullError(Angle.FromDegrees(3));</code></example>
    public PreloadBandInputs WithPullError(Angle error)
    {
        double degrees = Domains.AngleError.Check(error);
        double pull = Math.Abs(Si.Of(Wrench().PullOffSquare));
        if (pull + degrees >= 89) Guard.RefuseAgainst(nameof(error), error, Print.Text($"less than {89 - pull:0.###}° beside a pull {pull:0.###}° off square"));
        return new(this) { Errors = Errors with { Pull = degrees } };
    }

    /// <summary>
    /// The same as the snugging before a rotation: the torque stated here is then the snug torque, and the preload is F_snug + θ/r, as far
    /// as the elastic line goes. Ask for the probability of exceeding <see cref="RotationTightening.ElasticLimit"/>.
    /// </summary>
    /// <param name="tightening">The joint, with bolt twist and tool wind-up if they count; its own snug torque is not used, the friction in its
    /// twist is taken as known.</param>
    /// <param name="rotation">Rotation past snug with its limits; the target is not used.</param>
    /// <param name="complianceError">Limit of the error of δ_S + δ_P, either side, 0 % to 50 %, rectangular.</param>
    /// <param name="shape">How the rotation scatters between its limits.</param>
    /// <returns>New inputs.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>var turn = ToleranceWindow.FromDeviations(Angle.FromDegrees(60), minus: Angle.FromDegrees(5), plus: Angle.FromDegrees(10));
    /// inputs = inputs.WithRotation(tightening, turn, complianceError: Ratio.FromPercent(15), ScatterShape.Rectangular);</code></example>
    public PreloadBandInputs WithRotation(
        RotationTightening tightening, ToleranceWindow<Angle> rotation, Ratio complianceError, ScatterShape shape)
    {
        Guard.NotNull(tightening);
        WindowLimits turn = Guard.NotNull(rotation).BothLimits(nameof(rotation));
        Domains.Rotation.Check(Si.Angle(turn.Lower), nameof(rotation));
        Domains.Rotation.Check(Si.Angle(turn.Upper), nameof(rotation));
        double error = Domains.Accuracy.Check(complianceError);
        Guard.NotNull(shape);
        return new(this) { Rotation = () => new RotationGain(tightening, rotation, error, shape) };
    }

    internal PreloadChain Chain() => new(
        _torque(this), _friction(this), new BandInput("prevailing torque (N·m)", PrevailingLow, PrevailingHigh, ScatterShape.Rectangular), Rotation?.Invoke(), FrictionCorrelation?.Coefficient ?? 0);

    private static Func<PreloadBandInputs, TorqueSide> Window(ToleranceWindow<Torque> torqueAtFastener)
    {
        WindowLimits limits = Guard.NotNull(torqueAtFastener).BothLimits(nameof(torqueAtFastener));
        if (!Domains.Torque.Contains(limits.Lower) || !Domains.Torque.Contains(limits.Upper))
        {
            throw new ArgumentOutOfRangeException(
                nameof(torqueAtFastener), $"torqueAtFastener is {torqueAtFastener}; it must be {Domains.Torque.Describe()}.");
        }

        return inputs => new TorqueSide.AtFastener(torqueAtFastener, inputs.TorqueShape);
    }

    private static Func<PreloadBandInputs, TorqueSide> Setting(TorqueWrench wrench, Torque setting)
    {
        if (Guard.NotNull(wrench).Accuracy is null)
        {
            throw new ArgumentException("No accuracy was stated for this wrench; state it with WithAccuracy.", nameof(wrench));
        }

        Domains.Torque.Check(setting);
        return inputs => new TorqueSide.AtWrench(wrench, setting, inputs.TorqueShape, inputs.Errors);
    }

    private static Func<PreloadBandInputs, FrictionSide> Coefficients(FrictionTorqueModel model, FrictionRange friction)
    {
        model.WithFriction(Guard.NotNull(friction).High);
        return inputs => new FrictionSide.OfCoefficients(model, friction, inputs.FrictionShape, inputs.BearingDiameterError);
    }

    private static Func<PreloadBandInputs, FrictionSide> NutFactors(NutFactorModel model, double lowNutFactor, double highNutFactor)
    {
        model.PreloadRangeAt(Torque.Zero, lowNutFactor, highNutFactor);
        return inputs => new FrictionSide.OfNutFactor(lowNutFactor, highNutFactor, model.DiameterSi, inputs.FrictionShape);
    }

    private static double Below(Length error, Length whole, string of, string name = "error")
    {
        if (Si.Of(error) >= Si.Of(whole) && Si.Of(error) > 0) Guard.RefuseAgainst(name, error, $"less than {of}, {Guard.ShowToCompare(whole)}");
        return Si.Millimeters(error);
    }

    private FrictionTorqueModel Model(string what) => _model as FrictionTorqueModel
        ?? throw new InvalidOperationException($"A nut factor does not contain {what}; state two coefficients of friction.");

    private TorqueWrench Wrench() => _wrench
        ?? throw new InvalidOperationException("The torque is a window at the fastener; errors of a wrench belong to a setting of a wrench.");
}
