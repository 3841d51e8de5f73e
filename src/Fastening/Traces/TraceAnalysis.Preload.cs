using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <content>Preload along the trace, two ways, and the friction that both together imply.</content>
public sealed partial class TraceAnalysis
{
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
    /// furthest so far: a small step back releases no preload. The angle must be that of the fastener against the bolt thread: wind-up of
    /// the tool and twist of the bolt, which are in the angle of a tool, are not taken off here, and the preload then comes out too high.
    /// </remarks>
    /// <param name="joint">Bolt and clamped parts.</param>
    /// <param name="snugPreload">Preload at snug: 0 when snug is the elastic line projected to the running torque, that of the threshold torque otherwise.</param>
    /// <param name="preloadsNewtons">As many preloads as the trace has samples, in newtons.</param>
    /// <exception cref="ArgumentNullException"><paramref name="joint"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="snugPreload"/> is outside its domain.</exception>
    /// <exception cref="ArgumentException">The lengths differ; nothing was written.</exception>
    /// <example><code>analysis.PreloadsFromRotation(joint, snugPreload: Force.Zero, preloads);</code></example>
    public void PreloadsFromRotation(Joint joint, Force snugPreload, Span<double> preloadsNewtons)
    {
        Guard.NotNull(joint);
        double atSnug = Guard.Check(snugPreload, Domains.Force);
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

    /// <summary>One coefficient of friction for thread and bearing, from the elastic slope and the stiffness of the joint.</summary>
    /// <remarks>
    /// The angle must be that of the fastener, as for <see cref="PreloadsFromRotation"/>: with wind-up in it the friction comes out too low.
    /// Over the elastic region the joint gains a preload by its rotation, and it took a torque to do so: µ_tot is the coefficient by which that
    /// torque gives that preload (the friction test of ISO 16047). Prevailing torque, snug and a false zero of the torque do not enter: only
    /// differences do. The error of the stiffness enters in full.
    /// </remarks>
    /// <param name="joint">Bolt and clamped parts.</param>
    /// <param name="thread">The thread.</param>
    /// <param name="bearing">The surface under the turned head or nut.</param>
    /// <returns>The coefficient as it comes out, negative when the torque is below the pitch torque; null without an elastic region.</returns>
    /// <exception cref="ArgumentNullException">A part is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Torque or preload gained over the region is outside the domain of the friction test.</exception>
    /// <example><code>double? friction = analysis.FrictionFrom(joint, thread, BearingSurface.ForHexagonHead(thread));</code></example>
    public double? FrictionFrom(Joint joint, ScrewThread thread, BearingSurface bearing)
    {
        Guard.NotNull(joint);
        Guard.NotNull(thread);
        Guard.NotNull(bearing);
        return ElasticRegion is null ? null : Friction(thread, bearing, joint.PreloadGainAt(Si.Angle(ElasticRegion.RotationSi)));
    }

    /// <summary>One coefficient of friction for thread and bearing, from the elastic slope of the torque and that of the clamp force that was measured beside it.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="bearing">The surface under the turned head or nut.</param>
    /// <returns>The coefficient as it comes out; null without forces, without an elastic region, or when the force does not rise in it.</returns>
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
        return force.Slope > 0 ? Friction(thread, bearing, Si.Force(force.Slope * ElasticRegion.RotationSi)) : null;
    }

    private double Friction(ScrewThread thread, BearingSurface bearing, Force gained) => FrictionTest.UniformCoefficientFrom(
        thread, bearing, gained, Si.Torque(ElasticRegion!.SlopeSi * ElasticRegion.RotationSi));
}
