using System.Numerics;
using System.Runtime.CompilerServices;
using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;
using UnitsNet.Units;

namespace Fastening;

/// <summary>Torque and preload of one tightening, both ways: M = κ F + M_p.</summary>
/// <remarks>
/// Equations torque.tightening-torque and torque.preload (ISO 16047:2005 and VDI 2230-1:2015 §5.4.3, from memory). The preload is what
/// the model gives for the friction that was stated; the preload in the bolt scatters with the friction that is there.
/// </remarks>
/// <example><code>TorquePreloadModel model = TorquePreloadModel.ForHexagonBolt(
///     ScrewThread.Parse("M16"), new FrictionCoefficients(thread: 0.12, bearing: 0.10));
/// Torque setting = model.TorqueFor(Force.FromKilonewtons(70));</code></example>
public abstract class TorquePreloadModel
{
    private readonly double _arm;
    private readonly Stated<Torque> _prevailing;
    private readonly double _diameter;

    private protected TorquePreloadModel(double arm, Stated<Torque> prevailing, double diameter)
    {
        _arm = arm;
        _prevailing = prevailing;
        _diameter = diameter;
    }

    /// <summary>Nut factor K = κ/d: torque over preload times nominal diameter, without the prevailing torque.</summary>
    public double NutFactor
    {
        get
        {
            double nutFactor = TorqueEquations.NutFactor(_arm, _diameter);
            if (Recording.IsAnywhere) WriteNutFactor(nutFactor);
            return nutFactor;
        }
    }

    /// <summary>Prevailing torque M_p: turns the nut before there is any preload, and carries none. Zero unless stated.</summary>
    public Torque PrevailingTorque => Si.Torque(PrevailingTerm);

    /// <summary>What was stated outside the ranges in which such values are published; empty when nothing was.</summary>
    public IReadOnlyList<PlausibilityRemark> Remarks => StatedRemarks;

    internal double Arm => _arm;

    /// <summary>None, until one is stated.</summary>
    internal static Stated<Torque> NoPrevailing { get; } = Stated<Torque>.Of(0, "prevailing torque");

    internal double Prevailing => _prevailing.Value;

    internal Term PrevailingTerm => _prevailing.Term;

    /// <summary>The arm with its origin.</summary>
    internal abstract Term ArmTerm { get; }

    private protected abstract Term DiameterTerm { get; }

    internal Stated<Torque> StatedPrevailing => _prevailing;

    private protected abstract IReadOnlyList<PlausibilityRemark> StatedRemarks { get; }

    private protected double Diameter => _diameter;

    /// <summary>A model from thread, bearing surface and coefficients of friction, after ISO 16047 (linear form).</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="bearing">The surface under the turned head or nut.</param>
    /// <param name="friction">Both coefficients; never defaulted.</param>
    /// <returns>The model.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <example><code>TorquePreloadModel.FromFriction(thread, bearing, new FrictionCoefficients(thread: 0.12, bearing: 0.10))</code></example>
    public static FrictionTorqueModel FromFriction(ScrewThread thread, BearingSurface bearing, FrictionCoefficients friction) =>
        FrictionTorqueModel.Create(
            Guard.NotNull(thread), Guard.NotNull(bearing), Guard.NotNull(friction), TorqueConvention.Iso16047, NoPrevailing);

    /// <summary>A model for a hexagon bolt of ISO 4014/4017 on a medium clearance hole of ISO 273.</summary>
    /// <param name="thread">An ISO metric thread with a size in both tables.</param>
    /// <param name="friction">Both coefficients; never defaulted.</param>
    /// <returns>The model.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The tables have no such size.</exception>
    /// <example><code>TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse("M16"), new FrictionCoefficients(thread: 0.12, bearing: 0.10))</code></example>
    public static FrictionTorqueModel ForHexagonBolt(ScrewThread thread, FrictionCoefficients friction) =>
        FromFriction(thread, BearingSurface.ForHexagonHead(thread), friction);

    /// <summary>A model from a nut factor: all that is known is torque over preload times diameter.</summary>
    /// <param name="nutFactor">Nut factor K, 0.0001 to 10; never defaulted.</param>
    /// <param name="diameter">Nominal diameter d.</param>
    /// <returns>The model.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>TorquePreloadModel.FromNutFactor(0.18, Length.FromInches(0.5))</code></example>
    public static NutFactorModel FromNutFactor(double nutFactor, Length diameter) =>
        new(Domains.NutFactor.Stated(nutFactor), Domains.Length.Stated(diameter), NoPrevailing);

    /// <summary>The tightening torque for a preload.</summary>
    /// <param name="preload">The preload wanted, 0 to 10⁹ N.</param>
    /// <returns>Torque at the fastener, prevailing torque included.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="preload"/> is negative or beyond its domain.</exception>
    /// <example><code>model.TorqueFor(Force.FromKilonewtons(70))</code></example>
    public Torque TorqueFor(Force preload)
    {
        double torque = TorqueEquations.TighteningTorque(_arm, Domains.Force.Check(preload), _prevailing.Value);
        if (Recording.IsAnywhere) WriteTorque(torque, preload.Value, preload.Unit);
        return Si.Torque(torque);
    }

    /// <summary>The preload at a tightening torque; below the prevailing torque there is none.</summary>
    /// <param name="torque">Torque at the fastener, 0 to 10⁷ N·m.</param>
    /// <returns>Preload for the friction that was stated.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="torque"/> is negative or beyond its domain.</exception>
    /// <example><code>model.PreloadAt(Torque.FromNewtonMeters(150))</code></example>
    public Force PreloadAt(Torque torque)
    {
        double preload = TorqueEquations.Preload(Domains.Torque.Check(torque), _prevailing.Value, _arm);
        if (Recording.IsAnywhere) WritePreload(preload, torque.Value, torque.Unit);
        return Si.Force(preload);
    }

    /// <summary>Many torques at once. An element that <see cref="TorqueFor"/> would refuse becomes NaN.</summary>
    /// <param name="preloadsNewtons">Preloads in newtons.</param>
    /// <param name="torquesNewtonMeters">As many torques, in newton-metres; may be the same memory, must not overlap in part.</param>
    /// <exception cref="ArgumentException">The lengths differ, or the spans overlap in part; nothing was written.</exception>
    /// <example><code>double[] torques = new double[2];
    /// model.TorquesFor([52_000, 68_000], torques);     // newtons in, newton-metres out</code></example>
    public void TorquesFor(ReadOnlySpan<double> preloadsNewtons, Span<double> torquesNewtonMeters) =>
        Batch.Map(preloadsNewtons, torquesNewtonMeters, new TorqueKernel(_arm, _prevailing.Value));

    /// <summary>Many preloads at once. An element that <see cref="PreloadAt"/> would refuse becomes NaN.</summary>
    /// <param name="torquesNewtonMeters">Torques in newton-metres.</param>
    /// <param name="preloadsNewtons">As many preloads, in newtons; may be the same memory, must not overlap in part.</param>
    /// <exception cref="ArgumentException">The lengths differ, or the spans overlap in part; nothing was written.</exception>
    /// <example><code>double[] preloads = new double[2];
    /// model.PreloadsAt([110, 145], preloads);     // newton-metres in, newtons out</code></example>
    public void PreloadsAt(ReadOnlySpan<double> torquesNewtonMeters, Span<double> preloadsNewtons) =>
        Batch.Map(torquesNewtonMeters, preloadsNewtons, new PreloadKernel(_arm, _prevailing.Value));

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void WriteTorque(double torque, double preload, ForceUnit unit)
    {
        if (!Recording.IsOn) return;
        Term force = Domains.Force.Argument(new Force(preload, unit), nameof(preload));
        Si.Torque(Recording.Agree(torque, TorqueEquations.TighteningTorqueEquation.Of(ArmTerm, force, PrevailingTerm)));
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void WritePreload(double preload, double torque, TorqueUnit unit)
    {
        if (!Recording.IsOn) return;
        Term moment = Domains.Torque.Argument(new Torque(torque, unit), nameof(torque));
        Si.Force(Recording.Agree(preload, TorqueEquations.PreloadEquation.Of(moment, PrevailingTerm, ArmTerm)));
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void WriteNutFactor(double nutFactor)
    {
        if (Recording.IsOn) Si.Number(Recording.Agree(nutFactor, TorqueEquations.NutFactorEquation.Of(ArmTerm, DiameterTerm)));
    }

    private readonly struct TorqueKernel(double arm, double prevailing) : IBatchKernel
    {
        public double Apply(double value) =>
            Domains.Force.Contains(value) ? TorqueEquations.TighteningTorque(arm, value, prevailing) : double.NaN;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector<double> Apply(Vector<double> values)
        {
            Vector<double> torques = values * new Vector<double>(arm) + new Vector<double>(prevailing);
            return VectorMask.Within(Domains.Force, values, torques);
        }
    }

    private readonly struct PreloadKernel(double arm, double prevailing) : IBatchKernel
    {
        public double Apply(double value) =>
            Domains.Torque.Contains(value) ? TorqueEquations.Preload(value, prevailing, arm) : double.NaN;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public Vector<double> Apply(Vector<double> values)
        {
            Vector<double> preloads = (values - new Vector<double>(prevailing)) / new Vector<double>(arm);
            preloads = Vector.ConditionalSelect(Vector.LessThanOrEqual(preloads, Vector<double>.Zero), Vector<double>.Zero, preloads);
            return VectorMask.Within(Domains.Torque, values, preloads);
        }
    }
}
