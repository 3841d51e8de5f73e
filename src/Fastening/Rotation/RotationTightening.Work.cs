using System.Runtime.CompilerServices;
using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;
using UnitsNet.Units;

namespace Fastening;

/// <content>The elastic line and the preload ranges.</content>
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
            Corner(model.WithFriction(friction.High), _snugTorque, StiffnessCorner.Softest, nameof(friction)).PreloadAt(rotation),
            Corner(model.WithFriction(friction.Low), _snugTorque, StiffnessCorner.Stiffest, nameof(friction)).PreloadAt(rotation),
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
        Stated<Torque> lower = Domains.PositiveTorque.Stated(Si.Torque(snug.Lower), nameof(snugTorque));
        Stated<Torque> upper = Domains.PositiveTorque.Stated(Si.Torque(snug.Upper), nameof(snugTorque));
        Angle least = Si.Angle(turn.Lower), most = Si.Angle(turn.Upper);
        Domains.Rotation.Check(least, nameof(rotation));
        Domains.Rotation.Check(most, nameof(rotation));
        FrictionTorqueModel model = FrictionModel("its spread over a range of friction");
        Guard.NotNull(friction);
        return new PreloadRangeAfterRotation(
            Corner(model.WithFriction(friction.High), lower, StiffnessCorner.Softest, nameof(snugTorque)).PreloadAt(least),
            Corner(model.WithFriction(friction.Low), upper, StiffnessCorner.Stiffest, nameof(snugTorque)).PreloadAt(most),
            StiffnessError);
    }

    /// <summary>The preloads that one rotation gives after a snug preload that scatters, however that was found.</summary>
    /// <param name="rotation">Rotation past snug, 0 or more; read at the tool if wind-up was stated.</param>
    /// <param name="snugPreload">Lowest and highest snug preload: of a range of nut factors, or of a scatter.</param>
    /// <returns>Lowest and highest preload. Bolt twist and tool wind-up are those at the friction of the model.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="snugPreload"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The rotation or a preload is negative or beyond its domain.</exception>
    /// <example><code>tightening.PreloadRangeAt(Angle.FromDegrees(60), nutFactorModel.PreloadRangeAt(snugTorque, lowNutFactor: 0.14, highNutFactor: 0.22))</code></example>
    public PreloadRangeAfterRotation PreloadRangeAt(Angle rotation, Range<Force> snugPreload)
    {
        Domains.Rotation.Check(rotation);
        Guard.NotNull(snugPreload);
        var lowest = new Stated<Force>(snugPreload.Low, Domains.Force.Check(snugPreload.Low), "lowest preload at the snug torque");
        var highest = new Stated<Force>(snugPreload.High, Domains.Force.Check(snugPreload.High), "highest preload at the snug torque");
        return new PreloadRangeAfterRotation(At(StiffnessCorner.Softest).After(rotation, lowest.Term), At(StiffnessCorner.Stiffest).After(rotation, highest.Term), StiffnessError);
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
        MeasurementUncertainty<Ratio> complianceUncertainty)
    {
        Term turn = Domains.Rotation.Argument(rotation);
        Term ofSnug = Domains.Force.Argument(Si.Force(snugPreloadUncertainty.Standard(nameof(snugPreloadUncertainty))), nameof(snugPreloadUncertainty));
        Term ofReading = Domains.Rotation.Argument(Si.Angle(rotationUncertainty.Standard(nameof(rotationUncertainty))), nameof(rotationUncertainty));
        Term ofCompliance = Term.Given(complianceUncertainty.Standard(nameof(complianceUncertainty)), "relative uncertainty of the compliance");
        RotationLine line = Line;
        if (!After(rotation, line.Snug).IsElastic) Guard.RefuseAgainst(nameof(rotation), rotation, $"at most {Guard.ShowToCompare(ElasticRotation)}, where the elastic limit is reached");
        Term gain = RotationTighteningEquations.PreloadGainEquation.Of(turn, line.AtTool);
        Term relative = RotationTighteningEquations.RelativeUncertaintyEquation.Of(line.Stretch, line.AtTool, ofCompliance);
        return Si.Force(RotationTighteningEquations.PreloadUncertaintyEquation.Of(ofSnug, ofReading, line.AtTool, gain, relative));
    }

    internal RotationLine Line => Derived.Of(ref _line, this);

    private Term SlopeTerm => RotationTighteningEquations.ElasticSlopeEquation.Of(Line.Arm, Line.AtTool);

    private Term ToolCompliance
    {
        get
        {
            Term compliance = CoaxialExtension.NothingBefore;
            for (int i = 0; i < _tool.Length; i++) compliance = _tool[i](compliance, Recording.IsOn ? Print.Text($"part {i + 1} of the tool") : "");
            return compliance;
        }
    }

    RotationLine IDerives<RotationLine>.Derive()
    {
        Term arm = Model.ArmTerm;
        Term stretch = RotationTighteningEquations.RotationPerPreloadEquation.Of(ResilienceAtCorner(), Joint.Bolt.Thread.Geometry.Lead);
        Term atFastener = _boltTwist && Model is FrictionTorqueModel model
            ? RotationTighteningEquations.WithBoltTwistEquation.Of(stretch, model.Arms.Thread, Joint.Bolt.TwistTerm)
            : stretch;
        return new RotationLine
        {
            Arm = arm,
            Snug = TorqueEquations.PreloadEquation.Of(_snugTorque.Term, Model.PrevailingTerm, arm),
            Stretch = stretch,
            AtFastener = atFastener,
            AtTool = _tool.Length > 0 ? RotationTighteningEquations.WithToolWindUpEquation.Of(atFastener, arm, ToolCompliance) : atFastener,
        };
    }

    /// <summary>Of springs softer or resiliences greater by the error, the wider: 16 % less stiffness is 19 % more resilience.</summary>
    private Term ResilienceAtCorner()
    {
        Term resilience = Joint.Springs.Total;
        if (_error is not Stated<Ratio> error || _corner == StiffnessCorner.AsCalculated) return resilience;
        return _corner == StiffnessCorner.Softest
            ? RotationTighteningEquations.SoftestResilienceEquation.Of(resilience, error.Term)
            : RotationTighteningEquations.StiffestResilienceEquation.Of(resilience, error.Term);
    }

    private PreloadAfterRotation After(Angle rotation, Term snug)
    {
        RotationLine line = Line;
        Term gain = RotationTighteningEquations.PreloadGainEquation.Of(Domains.Rotation.Argument(rotation), line.AtTool);
        return new PreloadAfterRotation(
            Si.Of(rotation), snug, gain, _limit.Term, line.AtFastener.Value - line.Stretch.Value, line.AtTool.Value - line.AtFastener.Value);
    }

    private RotationTightening At(StiffnessCorner corner) => new(Joint, Model, _snugTorque, _limit, _boltTwist, _tool, _error, corner);

    private RotationTightening Corner(FrictionTorqueModel model, Stated<Torque> snugTorque, StiffnessCorner corner, string name)
    {
        double snug = TorqueEquations.Preload(snugTorque.Value, model.Prevailing, model.Arm);
        if (snug <= 0 || snug >= _limit.Value)
        {
            throw new ArgumentException(
                Print.Text($"at a corner of it the snug torque of {snugTorque.Value:G6} N·m gives {Si.Force(snug):G6}; snugging must give preload, and less than the elastic limit of {Si.Force(_limit.Value):G6}."),
                name);
        }

        return new RotationTightening(Joint, model, snugTorque, _limit, _boltTwist, _tool, _error, corner);
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void WriteRotation(double rotation, double value, ForceUnit unit)
    {
        if (!Recording.IsOn) return;
        Term preload = Domains.Force.Argument(new Force(value, unit), nameof(preload));
        Term gain = RotationTighteningEquations.GainBeyondSnugEquation.Of(preload, Line.Snug);
        Si.AngleFromRadians(Recording.Agree(rotation, RotationTighteningEquations.RotationForGainEquation.Of(gain, Line.AtTool)));
    }
}
