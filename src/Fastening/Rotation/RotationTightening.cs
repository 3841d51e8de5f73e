using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A snug torque, then a rotation: the preload that this gives on a joint whose stiffness is known.</summary>
/// <remarks>
/// F = F_snug + θ/r with r = 2π(δ_S + δ_P)/P_h, to which the twist of the bolt and the wind-up of the tool add when they are stated. Friction
/// scatters only the snug preload: the rotation gains the same preload whatever the friction. It holds from full contact of all faces, which
/// the snug torque must bring about, up to the elastic limit; beyond, the answer says that the number is not reached. Rotation is that of nut
/// and bolt against each other; what the held part turns along is subtracted first. Embedding during tightening is not covered.
/// <para>
/// With rotation it is the <em>highest</em> thread friction that twists the bolt most at a preload, so take the elastic limit there
/// (with <see cref="FrictionTorqueModel.PermittedPreload"/>, utilisation 100 % or less), and never above the strength of thread and bearing surface.
/// </para>
/// </remarks>
/// <example><code>FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(thread, range.Low);
/// Force limit = model.WithFriction(range.High).PermittedPreload(strength, utilisation: Ratio.FromPercent(100));
/// var tightening = new RotationTightening(joint, model, Torque.FromNewtonMeters(60), limit);
/// Console.WriteLine(tightening.PreloadAt(Angle.FromDegrees(60)));</code></example>
public sealed partial class RotationTightening : IDerives<RotationLine>
{
    private readonly Stated<Torque> _snugTorque;
    private readonly Stated<Force> _limit;
    private readonly bool _boltTwist;
    private readonly Func<Term, string, Term>[] _tool;
    private readonly Stated<Ratio>? _error;
    private readonly StiffnessCorner _corner;
    private readonly double _snug;
    private RotationLine? _line;

    /// <summary>A tightening by rotation, without bolt twist and tool wind-up until they are stated.</summary>
    /// <param name="joint">Bolt, clamped parts and thread.</param>
    /// <param name="model">Torque and preload, for the snug torque.</param>
    /// <param name="snugTorque">The torque from which the rotation counts; more than the prevailing torque.</param>
    /// <param name="elasticLimit">The preload at which bolt, thread or bearing surface begins to yield, whichever is first; above the snug preload.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <exception cref="ArgumentException">Joint and model have threads of different diameter or lead.</exception>
    /// <example><code>var tightening = new RotationTightening(joint, model, snugTorque: Torque.FromNewtonMeters(60), elasticLimit: permitted);</code></example>
    public RotationTightening(Joint joint, TorquePreloadModel model, Torque snugTorque, Force elasticLimit)
        : this(Guard.NotNull(joint), Guard.NotNull(model), Domains.PositiveTorque.Stated(snugTorque), Domains.Force.Stated(elasticLimit), boltTwist: false, [])
    {
    }

    private RotationTightening(
        Joint joint, TorquePreloadModel model, Stated<Torque> snugTorque, Stated<Force> elasticLimit, bool boltTwist, Func<Term, string, Term>[] tool,
        Stated<Ratio>? error = null, StiffnessCorner corner = StiffnessCorner.AsCalculated)
    {
        RefuseUnlessSameThread(joint, model);
        Joint = joint;
        Model = model;
        _snugTorque = snugTorque;
        _limit = elasticLimit;
        _boltTwist = boltTwist;
        _tool = tool;
        _error = error;
        _corner = corner;
        _snug = TorqueEquations.Preload(snugTorque.Value, model.Prevailing, model.Arm);
        if (_snug <= 0)
        {
            Guard.RefuseAgainst(nameof(snugTorque), snugTorque.AsStated, $"more than the prevailing torque, {Guard.ShowToCompare(model.PrevailingTorque)}: up to there nothing is clamped");
        }

        if (elasticLimit.Value <= _snug)
        {
            Guard.RefuseAgainst(nameof(elasticLimit), elasticLimit.AsStated, $"more than the preload at the snug torque, {Guard.ShowToCompare(Si.Force(_snug).ToUnit(UnitsNet.Units.ForceUnit.Kilonewton))}");
        }

        // A bolt of stated stiffness has no known twist: refused here, not at the first answer.
        if (boltTwist) _ = Line;
    }

    /// <summary>Bolt, clamped parts and thread.</summary>
    public Joint Joint { get; }

    /// <summary>Torque and preload at the snug torque.</summary>
    public TorquePreloadModel Model { get; }

    /// <summary>The torque from which the rotation counts.</summary>
    public Torque SnugTorque => Si.Torque(_snugTorque.Term);

    /// <summary>Preload at the snug torque, for the friction of the model.</summary>
    public Force SnugPreload => Si.Force(Line.Snug);

    /// <summary>The preload up to which rotation determines preload.</summary>
    public Force ElasticLimit => Si.Force(_limit.Term);

    /// <summary>The greatest relative error of δ_S + δ_P that the preload ranges count; null when not stated: the ranges then take the stiffness as calculated.</summary>
    public Ratio? StiffnessError => _error is Stated<Ratio> error ? Si.Ratio(error.Term) : null;

    /// <summary>The rotation past snug at which the elastic limit is reached, for the friction of the model.</summary>
    public Angle ElasticRotation => Si.AngleFromRadians(RotationTighteningEquations.RotationForGainEquation.Of(
        RotationTighteningEquations.GainBeyondSnugEquation.Of(_limit.Term, Line.Snug), Line.AtTool));

    /// <summary>
    /// Slope of torque over rotation in the elastic range, dM/dθ: the torque rate of the joint, one of the two measures of its hardness; the
    /// other is <see cref="HardnessAngleFromShare"/>. With tool wind-up it is the slope that the tool shows.
    /// </summary>
    public RotationalStiffness ElasticSlope => Si.RotationalStiffness(SlopeTerm);

    /// <summary>The same tightening with the twist of the bolt between head and first engaged thread, whichever end is turned.</summary>
    /// <returns>A new tightening.</returns>
    /// <exception cref="InvalidOperationException">The model has a nut factor only: the torque in the thread is not known.</exception>
    /// <example><code>tightening.WithBoltTwist().RotationFor(Force.FromKilonewtons(90))</code></example>
    public RotationTightening WithBoltTwist() =>
        new(Joint, FrictionModel("the twist of the bolt"), _snugTorque, _limit, boltTwist: true, _tool, _error, _corner);

    /// <summary>The same tightening with one coaxial bar more between the rotation that is read and the fastener.</summary>
    /// <param name="extension">The bar; rotations are from then on those read at the tool.</param>
    /// <returns>A new tightening.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="extension"/> is null.</exception>
    /// <example><code>tightening.WithCoaxialExtension(CoaxialExtension.Square(Length.FromMillimeters(250), Length.FromMillimeters(12.7), Pressure.FromGigapascals(79)))</code></example>
    public RotationTightening WithCoaxialExtension(CoaxialExtension extension)
    {
        Guard.NotNull(extension);
        return WithTool(extension.AddCompliance);
    }

    /// <summary>The same tightening with a tool whose wind-up was measured against a fixed socket, in series with what was stated before.</summary>
    /// <param name="windUp">How far the tool turned.</param>
    /// <param name="torque">At which torque.</param>
    /// <returns>A new tightening; rotations are from then on those read at the tool.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>tightening.WithToolWindUp(Angle.FromDegrees(3.5), Torque.FromNewtonMeters(200))</code></example>
    public RotationTightening WithToolWindUp(Angle windUp, Torque torque)
    {
        Stated<Angle> angle = Domains.ToolWindUp.Stated(windUp);
        Stated<Torque> moment = Domains.PositiveTorque.Stated(torque);
        return WithTool((before, owner) => RotationTighteningEquations.MeasuredComplianceEquation.Of(before, angle.TermOf(owner), moment.TermOf(owner)));
    }

    /// <summary>The same tightening with a limit of error for the stiffness of the joint, which every preload range then counts.</summary>
    /// <remarks>
    /// Calculated resiliences differ from measured ones, often by 10 % and more (common practice, no source). State the limit that the joint is held
    /// to, not its standard uncertainty: twice that for a coverage of 95 %. The error e may be one of the stiffness or of the resilience δ_S + δ_P; a
    /// range counts the wider, resiliences of (1 − e)…1/(1 − e) times the calculated one. A single answer, such as <see cref="PreloadAt"/>, keeps the
    /// stiffness as calculated.
    /// </remarks>
    /// <param name="atMost">Greatest relative error of the stiffness, or of δ_S + δ_P, either way: 0 %, or 1 % to 90 %.</param>
    /// <returns>A new tightening.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="atMost"/> is outside its domain.</exception>
    /// <example><code>tightening.WithStiffnessError(Ratio.FromPercent(16)).PreloadRangeAt(Angle.FromDegrees(60), friction)</code></example>
    public RotationTightening WithStiffnessError(Ratio atMost)
    {
        double error = Domains.StiffnessError.CheckNoneOrAtLeast(1, atMost);
        return new(Joint, Model, _snugTorque, _limit, _boltTwist, _tool, new Stated<Ratio>(atMost, error, "error of the stiffness"), _corner);
    }

    /// <summary>Preload after a rotation past snug.</summary>
    /// <param name="rotation">Rotation past snug, 0 or more; read at the tool if wind-up was stated.</param>
    /// <returns>Preload by the elastic line, and whether it is within the elastic limit.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="rotation"/> is negative or beyond its domain.</exception>
    /// <example><code>if (!tightening.PreloadAt(Angle.FromDegrees(120)).IsElastic) Console.WriteLine("the bolt yields");</code></example>
    public PreloadAfterRotation PreloadAt(Angle rotation) => After(rotation, Line.Snug);

    /// <summary>The rotation past snug to set for a preload.</summary>
    /// <param name="preload">The preload wanted: from the snug preload to the elastic limit.</param>
    /// <returns>The rotation; at the tool if wind-up was stated.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="preload"/> is below the snug preload, where snugging alone goes past it, or beyond the elastic limit.</exception>
    /// <example><code>tightening.RotationFor(Force.FromKilonewtons(90))</code></example>
    public Angle RotationFor(Force preload)
    {
        double force = Domains.Force.Check(preload);
        RefuseOutsideElasticRange(preload, force);
        double rotation = RotationTighteningEquations.RotationForGain(RotationTighteningEquations.GainBeyondSnug(force, _snug), Line.AtTool.Value);
        if (Recording.IsAnywhere) WriteRotation(rotation, preload.Value, preload.Unit);
        return Si.AngleFromRadians(rotation);
    }

    /// <summary>The rotation of the fastener for one that was read at the tool, while the torque changed; independent of the joint.</summary>
    /// <param name="toolRotation">Rotation read at the tool.</param>
    /// <param name="startTorque">Torque at its start.</param>
    /// <param name="endTorque">Torque at its end; a fall gives the twist back.</param>
    /// <returns>The rotation less the wind-up that was stated; negative when the tool wound up further than it turned.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>tightening.WithCoaxialExtension(bar).FastenerRotationAt(
    ///     Angle.FromDegrees(64), startTorque: Torque.FromNewtonMeters(60), endTorque: Torque.FromNewtonMeters(310))</code></example>
    public Angle FastenerRotationAt(Angle toolRotation, Torque startTorque, Torque endTorque) =>
        Si.AngleFromRadians(RotationTighteningEquations.FastenerRotationEquation.Of(
            Domains.Rotation.Argument(toolRotation), Domains.Torque.Argument(endTorque), Domains.Torque.Argument(startTorque), ToolCompliance));

    /// <summary>Hardness of the joint as an angle: the rotation from the snug torque to a target torque.</summary>
    /// <remarks>The trade measures hardness in two ways that are not to be mixed: as this angle, and as the torque rate <see cref="ElasticSlope"/>.</remarks>
    /// <param name="targetTorque">The target, above the snug torque.</param>
    /// <returns>The rotation along the elastic line.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="targetTorque"/> is outside its domain or not above the snug torque.</exception>
    /// <example><code>tightening.HardnessAngleFromSnug(targetTorque: Torque.FromNewtonMeters(200)).Degrees</code></example>
    public Angle HardnessAngleFromSnug(Torque targetTorque)
    {
        Term target = Domains.Torque.Argument(targetTorque);
        if (target.Value <= _snugTorque.Value) Guard.RefuseAgainst(nameof(targetTorque), targetTorque, $"more than the snug torque, {Guard.ShowToCompare(Si.Torque(_snugTorque.Value))}");
        return HardnessAngle(target, _snugTorque.Term);
    }

    /// <summary>Hardness of the joint as an angle: the rotation from a stated share of a target torque to that torque.</summary>
    /// <remarks>
    /// Test methods for tools state the share and the angles that they call hard and soft; neither is assumed here. Below snug a real
    /// joint turns further than this elastic line.
    /// </remarks>
    /// <param name="targetTorque">The target torque.</param>
    /// <param name="share">Share of the target at which the angle begins, above 0 % and below 100 %.</param>
    /// <returns>The rotation along the elastic line.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the angle would begin below the prevailing torque.</exception>
    /// <example><code>tightening.HardnessAngleFromShare(Torque.FromNewtonMeters(200), share: Ratio.FromPercent(50))</code></example>
    public Angle HardnessAngleFromShare(Torque targetTorque, Ratio share)
    {
        Term target = Domains.PositiveTorque.Argument(targetTorque);
        Term start = RotationTighteningEquations.TorqueAtShareEquation.Of(Domains.ShareBelowOne.Argument(share), target);
        if (start.Value < Model.Prevailing) Guard.RefuseAgainst(nameof(share), share, $"large enough that the angle begins above the prevailing torque, {Guard.ShowToCompare(Model.PrevailingTorque)}");
        return HardnessAngle(target, start);
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"snug {_snugTorque.Value:0.###} N·m ({Si.Force(_snug):0.#}), then {1e-3 / Line.AtTool.Value * Si.RadiansPerDegree:0.###} kN/° up to {Si.Force(_limit.Value):0.#}");

    private Angle HardnessAngle(Term target, Term start) => Si.AngleFromRadians(RotationTighteningEquations.RotationOverTorqueEquation.Of(target, start, SlopeTerm));

    private RotationTightening WithTool(Func<Term, string, Term> part) =>
        new(Joint, Model, _snugTorque, _limit, _boltTwist, [.. _tool, part], _error, _corner);

    private void RefuseOutsideElasticRange(Force preload, double force)
    {
        if (force < _snug)
        {
            Guard.RefuseAgainst(nameof(preload), preload, $"at least the preload that the snug torque alone gives, {Kilonewtons(_snug)}; a lower snug torque would be needed");
        }

        if (Tolerance.Exceeds(force, _limit.Value))
        {
            Guard.RefuseAgainst(nameof(preload), preload, $"at most the elastic limit, {Kilonewtons(_limit.Value)}: above it, rotation does not determine preload");
        }
    }

    private FrictionTorqueModel FrictionModel(string whatFor) => Model as FrictionTorqueModel
        ?? throw new InvalidOperationException($"From a nut factor alone the torque in the thread is not known, so {whatFor} is not known; give a model from coefficients of friction.");

    // M18, M20 and M22 have one lead: the diameter must agree too, or the snug preload is that of another bolt.
    private static void RefuseUnlessSameThread(Joint joint, TorquePreloadModel model)
    {
        ScrewThread bolt = joint.Bolt.Thread;
        if (model is NutFactorModel factor && Differs(factor.DiameterSi, bolt.Diameter, 1e-6))
        {
            throw new ArgumentException(
                Print.Text($"the nut factor is for a diameter of {Si.Length(factor.DiameterSi):0.####}, the joint has a thread of {Si.Length(bolt.Diameter):0.####}."),
                nameof(model));
        }

        if (model is FrictionTorqueModel friction
            && (Differs(friction.Thread.Geometry.Lead.Value, bolt.Geometry.Lead.Value, 1e-9) || Differs(friction.Thread.Diameter, bolt.Diameter, 1e-9)))
        {
            throw new ArgumentException(
                Print.Text($"the model has the thread {friction.Thread} with {Si.Length(friction.Thread.Geometry.Lead.Value):0.####} lead, the joint {bolt} with {Si.Length(bolt.Geometry.Lead.Value):0.####}."),
                nameof(model));
        }
    }

    private static bool Differs(double one, double other, double relative) => Math.Abs(one - other) > relative * other;

    private static string Kilonewtons(double newtons) => Print.Text($"{Si.Force(newtons):G6}");
}
