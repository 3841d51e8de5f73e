using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <content>Preload along the trace, two ways, and the friction that both together imply.</content>
public sealed partial class TraceAnalysis
{
    private const int MostRounds = 200;
    private const double Settled = 1e-14;

    /// <summary>Preload along the trace from the torque: what the friction of the model makes of it.</summary>
    /// <remarks>After shut-off the torque says nothing about the preload any more: NaN. Torques below the prevailing torque of the model, negative ones too, give none: 0.</remarks>
    /// <param name="model">Torque and preload of the fastener; with the prevailing torque that is to be taken off.</param>
    /// <param name="preloadsNewtons">As many preloads as the trace has samples, in newtons.</param>
    /// <exception cref="ArgumentNullException"><paramref name="model"/> is null.</exception>
    /// <exception cref="ArgumentException">The lengths differ; nothing was written.</exception>
    /// <example><code>analysis.PreloadsFromTorque(model.WithPrevailing(analysis.RunDown!.Torque), preloads);</code></example>
    public void PreloadsFromTorque(TorquePreloadModel model, Span<double> preloadsNewtons)
    {
        Guard.NotNull(model);
        Batch.RefuseUnequal(_trace.Count, preloadsNewtons.Length, nameof(preloadsNewtons));
        ReadOnlySpan<double> torques = _trace.TorquesNewtonMeters.Span;
        for (int i = 0; i < torques.Length; i++) preloadsNewtons[i] = i > ShutOff.Index ? double.NaN : Math.Max(torques[i], 0);
        model.PreloadsAt(preloadsNewtons, preloadsNewtons);
    }

    /// <summary>Preload along the trace from the rotation past snug: what the stiffness of the joint makes of it, whatever the friction.</summary>
    /// <remarks>
    /// From snug to yield onset, or to shut-off when none is seen; NaN before and after, where the joint is not elastic. The rotation is the
    /// furthest so far: a small step back releases no preload. The angle must be that of the fastener: take the wind-up of the tool off first
    /// (<see cref="TighteningTrace.WithoutWindUp"/>). The twist of the bolt is not taken off here, as it depends on friction: the preload comes
    /// out too high by the share of <see cref="RotationTightening.WithBoltTwist"/>, some hundredths on common bolts.
    /// </remarks>
    /// <param name="joint">Bolt and clamped parts.</param>
    /// <param name="snugPreload">Preload at snug: 0 when snug is the elastic line extended back to the running torque, that of the threshold torque otherwise.</param>
    /// <param name="preloadsNewtons">As many preloads as the trace has samples, in newtons.</param>
    /// <exception cref="ArgumentNullException"><paramref name="joint"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="snugPreload"/> is outside its domain.</exception>
    /// <exception cref="ArgumentException">The lengths differ; nothing was written.</exception>
    /// <example><code>analysis.PreloadsFromRotation(joint, snugPreload: Force.Zero, preloads);</code></example>
    public void PreloadsFromRotation(Joint joint, Force snugPreload, Span<double> preloadsNewtons)
    {
        Guard.NotNull(joint);
        double atSnug = Domains.Force.Check(snugPreload);
        Batch.RefuseUnequal(_trace.Count, preloadsNewtons.Length, nameof(preloadsNewtons));
        preloadsNewtons.Fill(double.NaN);
        if (Snug?.Angle is null) return;
        ReadOnlySpan<double> angles = _trace.AnglesDegrees.Span;
        double furthest = double.NegativeInfinity, perDegree = Si.Of(joint.PreloadGainAt(Si.Angle(1)));
        for (int i = Snug.Index; i <= ShutOff.Index && i < (YieldOnset?.Index ?? int.MaxValue); i++)
        {
            furthest = Math.Max(furthest, angles[i]);
            preloadsNewtons[i] = atSnug + perDegree * Math.Max(furthest - Snug.AngleDegrees, 0);
        }
    }

    /// <summary>One coefficient of friction for thread and bearing, from the elastic slope and the stiffness of the joint, in the linear form of ISO 16047.</summary>
    /// <inheritdoc cref="FrictionFrom(Joint, BearingSurface, TorqueConvention)" path="/remarks|/param|/returns|/exception" />
    /// <example><code>double? friction = trace.WithoutWindUp(extension.Stiffness).Analyze(options)
    ///     .FrictionFrom(joint, BearingSurface.ForHexagonHead(joint.Bolt.Thread));</code></example>
    public double? FrictionFrom(Joint joint, BearingSurface bearing) => FrictionFrom(joint, bearing, TorqueConvention.Iso16047);

    /// <summary>One coefficient of friction for thread and bearing, from the elastic slope and the stiffness of the joint, in a named convention.</summary>
    /// <remarks>
    /// Over the elastic region the joint gains a preload by its rotation, and it took a torque to do so: µ_tot is the coefficient by which that
    /// torque gives that preload (the friction test of ISO 16047). What the torque in the thread twists the bolt is taken off the rotation; what
    /// the tool winds up is not: take it off first (<see cref="TighteningTrace.WithoutWindUp"/>), or the friction is too low. Prevailing
    /// torque, snug and a false zero of the torque do not enter: only differences do. The error of the stiffness enters in full.
    /// </remarks>
    /// <param name="joint">Bolt, with its thread and its twist, and clamped parts.</param>
    /// <param name="bearing">The surface under the turned head or nut.</param>
    /// <param name="convention">The convention in which the coefficient will be used.</param>
    /// <returns>The coefficient, not limited: negative when the torque is below the pitch torque; null without an elastic region, or when twist alone would take up its rotation.</returns>
    /// <exception cref="ArgumentNullException">A part is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Torque or preload gained over the region is outside the domain of the friction test.</exception>
    /// <exception cref="ArgumentException">The convention does not hold for the thread.</exception>
    /// <example><code>double? friction = analysis.FrictionFrom(joint, BearingSurface.ForHexagonHead(joint.Bolt.Thread), TorqueConvention.Vdi2230);</code></example>
    public double? FrictionFrom(Joint joint, BearingSurface bearing, TorqueConvention convention)
    {
        Guard.NotNull(joint);
        Guard.NotNull(bearing);
        TorqueConvention.RefuseUnlessItHolds(Guard.NotNull(convention), joint.Bolt.Thread);
        return ElasticRegion is null ? null : FrictionOfTwistedBolt(joint, bearing.By(convention.Bearing, joint.Bolt.Thread), convention);
    }

    /// <summary>One coefficient of friction for thread and bearing, from the elastic slope of the torque and that of the clamp force that was measured beside it.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="bearing">The surface under the turned head or nut.</param>
    /// <returns>The coefficient, not limited; null without forces, without an elastic region, or when the force does not rise in it.</returns>
    /// <exception cref="ArgumentNullException">A part is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Torque or force gained over the region is outside the domain of the friction test.</exception>
    /// <example><code>double? friction = analysis.FrictionFrom(thread, BearingSurface.ForHexagonHead(thread));</code></example>
    public double? FrictionFrom(ScrewThread thread, BearingSurface bearing)
    {
        Guard.NotNull(thread);
        Guard.NotNull(bearing);
        if (ElasticRegion is null || !_trace.HasForces) return null;
        int from = ElasticRegion.Start.Index, count = ElasticRegion.Count;
        RobustLine force = RobustLine.Through(_trace.AnglesDegrees.Span.Slice(from, count), _trace.ForcesNewtons.Span.Slice(from, count));
        if (force.Slope <= 0) return null;
        return FrictionTest.UniformCoefficientFrom(thread, bearing, Si.Force(force.Slope * ElasticRegion.RotationSi), TorqueGained);
    }

    private Torque TorqueGained => Si.Torque(ElasticRegion!.SlopeSi * ElasticRegion.RotationSi);

    // The preload gives the friction, the friction the torque in the thread, that torque the twist, and the twist the preload: a few rounds settle it.
    private double? FrictionOfTwistedBolt(Joint joint, BearingSurface bearing, TorqueConvention convention)
    {
        double twist = Si.ToDegrees(joint.Bolt.TwistTerm.Value), torque = Si.Of(TorqueGained);
        double perDegree = Si.Of(joint.PreloadGainAt(Si.Angle(1))), rotation = ElasticRegion!.RotationSi;
        double inThread = 0, preload = 0, friction = 0;
        for (int round = 0; round < MostRounds; round++)
        {
            double before = preload;
            preload = perDegree * (rotation - twist * inThread);
            if (preload <= 0) return null;
            friction = FrictionTest.UniformCoefficientFrom(joint.Bolt.Thread, bearing, Si.Force(preload), TorqueGained, convention);
            inThread = torque - bearing.ArmAt(friction) * preload;
            if (Math.Abs(preload - before) <= Settled * preload) return friction;
        }

        return null;
    }
}
