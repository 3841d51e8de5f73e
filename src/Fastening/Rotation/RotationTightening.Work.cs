using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <content>The sequences of equations, their work, and the preload range.</content>
public sealed partial class RotationTightening
{
    /// <summary>The preloads that one rotation gives over a range of friction; the friction of the model is not used.</summary>
    /// <remarks>
    /// Friction scatters the snug preload. The gain scatters through the stiffness of the joint, when <see cref="WithStiffnessError"/> states its
    /// limit of error, and through the twist of bolt and tool, where these were stated. Without a stated limit the range takes the stiffness as
    /// calculated, and <see cref="PreloadRangeAfterRotation.StiffnessError"/> is null. Embedding and the tightening of adjacent bolts are not counted.
    /// </remarks>
    /// <param name="rotation">Rotation past snug, 0 or more; read at the tool if wind-up was stated.</param>
    /// <param name="friction">Lowest friction gives the highest preload, highest friction the lowest.</param>
    /// <returns>Lowest and highest preload.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="friction"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="rotation"/> is negative or beyond its domain.</exception>
    /// <exception cref="ArgumentException">At the highest friction no torque turns the thread (exact form), or the lowest reaches the elastic limit by snugging alone.</exception>
    /// <exception cref="InvalidOperationException">The model has a nut factor only.</exception>
    /// <example><code>PreloadRangeAfterRotation range = tightening.PreloadRangeAt(Angle.FromDegrees(60), friction);</code></example>
    public PreloadRangeAfterRotation PreloadRangeAt(Angle rotation, FrictionRange friction)
    {
        Domains.Rotation.Check(rotation);
        FrictionTorqueModel model = FrictionModel("its spread over a range of friction");
        Guard.NotNull(friction);
        return new PreloadRangeAfterRotation(
            Corner(model.WithFriction(friction.High), _snugTorque, Softest, nameof(friction)).PreloadAt(rotation),
            Corner(model.WithFriction(friction.Low), _snugTorque, Stiffest, nameof(friction)).PreloadAt(rotation),
            StiffnessError);
    }

    /// <summary>The preloads that a window of rotation gives after a window of snug torque over a range of friction.</summary>
    /// <remarks>Corners of rotation, snug torque, friction and, when stated, stiffness. Embedding and the tightening of adjacent bolts are not counted.</remarks>
    /// <param name="rotation">Rotation past snug with its limits, from 0; read at the tool if wind-up was stated.</param>
    /// <param name="snugTorque">Snug torque with its limits, wrench accuracy included; used instead of the snug torque stated before.</param>
    /// <param name="friction">The range of friction.</param>
    /// <returns>Lowest preload (lower limits, highest friction) and highest (upper limits, lowest friction).</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A limit is outside its domain.</exception>
    /// <exception cref="ArgumentException">A window has one limit, at the highest friction no torque turns the thread (exact form), or a corner of the snug preload leaves the elastic range.</exception>
    /// <exception cref="InvalidOperationException">The model has a nut factor only.</exception>
    public PreloadRangeAfterRotation PreloadRangeAt(ToleranceWindow<Angle> rotation, ToleranceWindow<Torque> snugTorque, FrictionRange friction)
    {
        WindowLimits snug = Guard.NotNull(snugTorque).BothLimits(nameof(snugTorque)), turn = Guard.NotNull(rotation).BothLimits(nameof(rotation));
        double lower = Domains.PositiveTorque.Check(Si.Torque(snug.Lower), nameof(snugTorque));
        double upper = Domains.PositiveTorque.Check(Si.Torque(snug.Upper), nameof(snugTorque));
        Angle least = Si.Angle(turn.Lower), most = Si.Angle(turn.Upper);
        Domains.Rotation.Check(least, nameof(rotation));
        Domains.Rotation.Check(most, nameof(rotation));
        FrictionTorqueModel model = FrictionModel("its spread over a range of friction");
        Guard.NotNull(friction);
        return new PreloadRangeAfterRotation(
            Corner(model.WithFriction(friction.High), lower, Softest, nameof(snugTorque)).PreloadAt(least),
            Corner(model.WithFriction(friction.Low), upper, Stiffest, nameof(snugTorque)).PreloadAt(most),
            StiffnessError);
    }

    /// <summary>The preloads that one rotation gives after a snug preload that scatters, however that was found.</summary>
    /// <param name="rotation">Rotation past snug, 0 or more; read at the tool if wind-up was stated.</param>
    /// <param name="snugPreload">Lowest and highest snug preload: of a range of nut factors, or of a scatter.</param>
    /// <returns>Lowest and highest preload. Bolt twist and tool wind-up are those at the friction of the model.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="snugPreload"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="rotation"/> is negative or beyond its domain.</exception>
    /// <example><code>tightening.PreloadRangeAt(Angle.FromDegrees(60), nutFactorModel.PreloadRangeAt(snugTorque, lowNutFactor: 0.14, highNutFactor: 0.22))</code></example>
    public PreloadRangeAfterRotation PreloadRangeAt(Angle rotation, PreloadRange snugPreload)
    {
        double degrees = Domains.Rotation.Check(rotation);
        Guard.NotNull(snugPreload);
        return new PreloadRangeAfterRotation(
            WithResilience(Softest).After(degrees, Si.Of(snugPreload.Minimum)), WithResilience(Stiffest).After(degrees, Si.Of(snugPreload.Maximum)),
            StiffnessError);
    }

    /// <summary>Standard uncertainty of the preload after a rotation, by the law of propagation; inputs independent, none assumed.</summary>
    /// <remarks>
    /// u_F² = u_snug² + (u_θ/r)² + (F_g w_r)² (JCGM 100:2008 §5.1.2). The friction in bolt twist and tool wind-up is taken as known: its share of
    /// the gain is small and is in <see cref="PreloadRangeAt(Angle, FrictionRange)"/>.
    /// </remarks>
    /// <param name="rotation">Rotation past snug, within the elastic range; read at the tool if wind-up was stated.</param>
    /// <param name="snugPreloadUncertainty">Uncertainty of the preload at the snug torque.</param>
    /// <param name="rotationUncertainty">Uncertainty of the rotation, of the start at snug included.</param>
    /// <param name="complianceUncertainty">Relative uncertainty of δ_S + δ_P, its standard uncertainty 0 to 100 %.</param>
    /// <returns>Standard uncertainty (k = 1).</returns>
    /// <exception cref="ArgumentException">No uncertainty was stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the rotation goes past the elastic limit.</exception>
    /// <example><code>tightening.StandardUncertaintyAt(Angle.FromDegrees(60),
    ///     snugPreloadUncertainty: MeasurementUncertainty.Standard(Force.FromKilonewtons(3)),
    ///     rotationUncertainty: MeasurementUncertainty.Standard(Angle.FromDegrees(2)),
    ///     complianceUncertainty: MeasurementUncertainty.Standard(Ratio.FromPercent(8)))</code></example>
    public Force StandardUncertaintyAt(
        Angle rotation,
        MeasurementUncertainty<Force> snugPreloadUncertainty,
        MeasurementUncertainty<Angle> rotationUncertainty,
        MeasurementUncertainty<Ratio> complianceUncertainty) =>
        Si.Force(Uncertainty(null, rotation, snugPreloadUncertainty, rotationUncertainty, complianceUncertainty));

    /// <summary>The work behind <see cref="PreloadAt"/>; its last step is the preload, bit for bit.</summary>
    /// <param name="rotation">Rotation past snug.</param>
    /// <returns>The steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="rotation"/> is negative or beyond its domain.</exception>
    /// <example><code>Console.WriteLine(Derivation.Of(() => tightening.PreloadAt(Angle.FromDegrees(60))));</code></example>
    public Derivation DerivePreloadAt(Angle rotation)
    {
        double angle = Si.ToRadians(Domains.Rotation.Check(rotation));
        var work = new Derivation("Preload after snug torque and rotation");
        Arms arms = ArmsOf(work);
        double snug = Snug(work, arms);
        double gain = RotationTighteningEquations.PreloadGainEquation.Step(work, angle, AtTool(work, arms));
        RotationTighteningEquations.TurnedPreloadEquation.Step(work, snug, gain);
        return work.KeepWhatCounts();
    }

    /// <summary>The work behind <see cref="RotationFor"/>; its last step is the rotation, in radians.</summary>
    /// <param name="preload">The preload wanted.</param>
    /// <returns>The steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="preload"/> is below the snug preload or beyond the elastic limit.</exception>
    /// <example><code>Console.WriteLine(tightening.DeriveRotationFor(Force.FromKilonewtons(90)));</code></example>
    public Derivation DeriveRotationFor(Force preload)
    {
        double force = Domains.Force.Check(preload);
        RefuseOutsideElasticRange(preload, force);
        var work = new Derivation("Rotation past snug for a preload");
        Arms arms = ArmsOf(work);
        double gain = RotationTighteningEquations.GainBeyondSnugEquation.Step(work, force, Snug(work, arms));
        RotationTighteningEquations.RotationForGainEquation.Step(work, gain, AtTool(work, arms));
        return work.KeepWhatCounts();
    }

    /// <summary>The work behind <see cref="ElasticSlope"/>; its last step is the slope in newton-metres per radian.</summary>
    /// <returns>The steps.</returns>
    /// <example><code>Console.WriteLine(tightening.DeriveElasticSlope());</code></example>
    public Derivation DeriveElasticSlope()
    {
        var work = new Derivation("Elastic slope of torque over rotation");
        Arms arms = ArmsOf(work);
        RotationTighteningEquations.ElasticSlopeEquation.Step(work, arms.Total, AtTool(work, arms));
        return work.KeepWhatCounts();
    }

    /// <summary>The work behind <see cref="StandardUncertaintyAt"/>; its last step is that uncertainty, bit for bit.</summary>
    /// <param name="rotation">Rotation past snug, within the elastic range.</param>
    /// <param name="snugPreloadUncertainty">Uncertainty of the preload at the snug torque.</param>
    /// <param name="rotationUncertainty">Uncertainty of the rotation.</param>
    /// <param name="complianceUncertainty">Relative uncertainty of δ_S + δ_P.</param>
    /// <returns>The steps.</returns>
    /// <exception cref="ArgumentException">No uncertainty was stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the rotation goes past the elastic limit.</exception>
    /// <example><code>Console.WriteLine(tightening.DeriveStandardUncertaintyAt(
    ///     Angle.FromDegrees(60), MeasurementUncertainty.Standard(Force.FromKilonewtons(3)),
    ///     MeasurementUncertainty.Standard(Angle.FromDegrees(2)), MeasurementUncertainty.Standard(Ratio.FromPercent(8))));</code></example>
    public Derivation DeriveStandardUncertaintyAt(
        Angle rotation,
        MeasurementUncertainty<Force> snugPreloadUncertainty,
        MeasurementUncertainty<Angle> rotationUncertainty,
        MeasurementUncertainty<Ratio> complianceUncertainty)
    {
        var work = new Derivation("Standard uncertainty of the preload after snug torque and rotation");
        Uncertainty(work, rotation, snugPreloadUncertainty, rotationUncertainty, complianceUncertainty);
        return work.KeepWhatCounts();
    }

    private double Uncertainty(
        Derivation? work, Angle rotation,
        MeasurementUncertainty<Force> snugPreloadUncertainty,
        MeasurementUncertainty<Angle> rotationUncertainty,
        MeasurementUncertainty<Ratio> complianceUncertainty)
    {
        double angle = Si.ToRadians(Domains.Rotation.Check(rotation));
        double ofSnug = Domains.Force.Check(Si.Force(snugPreloadUncertainty.Standard(nameof(snugPreloadUncertainty))), nameof(snugPreloadUncertainty));
        double ofReading = Si.ToRadians(
            Domains.Rotation.Check(Si.Angle(rotationUncertainty.Standard(nameof(rotationUncertainty))), nameof(rotationUncertainty)));
        double ofCompliance = complianceUncertainty.Standard(nameof(complianceUncertainty));
        if (!PreloadAt(rotation).IsElastic) Guard.RefuseAgainst(nameof(rotation), rotation, $"at most {Guard.ShowToCompare(ElasticRotation)}, where the elastic limit is reached");
        double perPreload = AtTool(work, ArmsOf(work));
        double gain = RotationTighteningEquations.PreloadGainEquation.Step(work, angle, perPreload);
        double relative = RotationTighteningEquations.RelativeUncertaintyEquation.Step(work, _stretch, perPreload, ofCompliance);
        return RotationTighteningEquations.PreloadUncertaintyEquation.Step(work, ofSnug, ofReading, perPreload, gain, relative);
    }

    /// <summary>Thread and tightening torque per unit preload; the first is not known from a nut factor.</summary>
    private Arms ArmsOf(Derivation? work)
    {
        return Model is FrictionTorqueModel model ? new Arms(model.Arms.Thread.Value, model.Arms.Total.Value) : new Arms(double.NaN, Model.Arm);
    }

    private double Snug(Derivation? work, in Arms arms) => TorqueEquations.PreloadEquation.Step(work, _snugTorque, Model.Prevailing, arms.Total);

    // Of springs softer or resiliences greater by the error, the wider: 16 % less stiffness is 19 % more resilience.
    private double Softest => 1 / (1 - (_error ?? 0));

    private double Stiffest => 1 - (_error ?? 0);

    private double Stretch(Derivation? work) =>
        RotationTighteningEquations.RotationPerPreloadEquation.Step(work, Joint.ResilienceOf(work) * _resilienceFactor, Joint.Bolt.Thread.Geometry.Lead.Value);

    private double AtFastener(Derivation? work, in Arms arms)
    {
        double stretch = Stretch(work);
        return _boltTwist
            ? RotationTighteningEquations.WithBoltTwistEquation.Step(work, stretch, arms.Thread, Joint.Bolt.TwistOf(work))
            : stretch;
    }

    private double AtTool(Derivation? work, in Arms arms)
    {
        double atFastener = AtFastener(work, arms);
        return _tool.Length > 0
            ? RotationTighteningEquations.WithToolWindUpEquation.Step(work, atFastener, arms.Total, ToolCompliance(work))
            : atFastener;
    }

    private double ToolCompliance(Derivation? work)
    {
        double compliance = 0;
        foreach (Func<Derivation?, double, double> part in _tool) compliance = part(work, compliance);
        return compliance;
    }

    private PreloadAfterRotation After(double degrees, double snug) => new(
        degrees, snug, RotationTighteningEquations.PreloadGain(Si.ToRadians(degrees), _atTool), _limit, _boltTwistPerPreload, _atTool - _atFastener);

    private RotationTightening WithResilience(double factor) =>
        new(Joint, Model, SnugTorque, ElasticLimit, _boltTwist, _tool, _error, factor);

    /// <summary>The same tightening at a corner of friction, snug torque and stiffness.</summary>
    private RotationTightening Corner(FrictionTorqueModel model, double snugTorque, double resilienceFactor, string name)
    {
        double snug = TorqueEquations.Preload(snugTorque, model.Prevailing, model.Arm);
        if (snug <= 0 || snug >= _limit)
        {
            throw new ArgumentException(
                Print.Text($"at a corner of it the snug torque of {snugTorque:G6} N·m gives {Si.Force(snug):G6}; snugging must give preload, and less than the elastic limit of {Si.Force(_limit):G6}."),
                name);
        }

        return new RotationTightening(Joint, model, Si.Torque(snugTorque), ElasticLimit, _boltTwist, _tool, _error, resilienceFactor);
    }

    private readonly record struct Arms(double Thread, double Total);
}
