using System.Collections.ObjectModel;
using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The friction test of ISO 16047: coefficients of friction from the clamp force and the torques read while tightening.</summary>
/// <remarks>
/// The coefficients are exact by default: put back into a model of the same convention they return the torques to rounding.
/// <see cref="TorqueConvention.Iso16047Printed"/> evaluates with the printed 0.577. From memory of ISO 16047:2005: turn at 10 to 40 rpm up to
/// M16 and at 5 to 15 rpm above, without stopping, and read at 75 % of the proof load; friction depends on speed and on force, so that
/// coefficients from another regime belong to that regime. A prevailing torque is no friction of the clamped thread: subtract it from both
/// torques first. The coefficients are not limited: one of the thread below zero means a thread torque below the pitch torque; one of the bearing
/// below zero, a thread torque above the total. Both point to the force or torque cell, or to readings of different moments, not to a slippery bolt.
/// </remarks>
/// <example><code>FrictionTest test = FrictionTest.Of(
///     ScrewThread.Parse("M10"), BearingSurface.ForHexagonHead(ScrewThread.Parse("M10")),
///     clampForce: Force.FromKilonewtons(25.2), totalTorque: Torque.FromNewtonMeters(52), threadTorque: Torque.FromNewtonMeters(25));
/// if (test.IsPlausible) Console.WriteLine(model.WithFriction(test.ToCoefficients()).TorqueFor(preload));</code></example>
public sealed class FrictionTest
{
    private static readonly Domain<Force> ClampForceDomain = new(1e-3, 1e9);

    private readonly ScrewThread _thread;
    private readonly BearingSurface _bearing;
    private readonly TorqueConvention _convention;
    private readonly Stated<Force> _force;
    private readonly Stated<Torque> _total, _threadTorque;

    private FrictionTest(
        ScrewThread thread, BearingSurface bearing, TorqueConvention convention, Stated<Force> force, Stated<Torque> total, Stated<Torque> threadTorque)
    {
        _thread = thread;
        _bearing = bearing;
        _convention = convention;
        _force = force;
        _total = total;
        _threadTorque = threadTorque;
        Doubts = DoubtsOf(ThreadTerm.Value, BearingTerm.Value);
    }

    /// <summary>Coefficient of friction in the thread, µ_th, not limited.</summary>
    public double Thread => Si.Number(ThreadTerm);

    /// <summary>Coefficient of friction at the bearing surface, µ_b, not limited.</summary>
    public double Bearing => Si.Number(BearingTerm);

    /// <summary>Why the coefficients are not possible; empty where both lie between 0 and 2.</summary>
    public IReadOnlyList<FrictionTestDoubt> Doubts { get; }

    /// <summary>Whether both lie where coefficients of friction can lie, 0 to 2: nothing is doubted.</summary>
    public bool IsPlausible => Doubts.Count == 0;

    /// <summary>The pair for a model.</summary>
    /// <returns>The coefficients.</returns>
    /// <exception cref="InvalidOperationException">A coefficient is negative or above 2: look at the readings first.</exception>
    /// <example><code>model.WithFriction(test.ToCoefficients())</code></example>
    public FrictionCoefficients ToCoefficients() => IsPlausible
        ? new FrictionCoefficients(Thread, Bearing)
        : throw new InvalidOperationException($"The readings give {this}; coefficients of friction lie between 0 and 2. Look at the readings first: {string.Join("; ", Doubts.Select(Describe))}.");

    private Term ThreadTerm =>
        ThreadLaw.Of(_thread, _convention).FrictionOf(FrictionTestEquations.MeasuredThreadArmEquation.Of(_threadTorque.Term, _force.Term));

    private Term BearingTerm => FrictionTestEquations.BearingFrictionEquation.Of(
        FrictionTestEquations.MeasuredBearingArmEquation.Of(_total.Term, _threadTorque.Term, _force.Term), _bearing.FrictionRadius);

    /// <summary>Thread and bearing friction from a test that measured the thread torque too, in the linear form of ISO 16047.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="bearing">The surface under the turned head or nut.</param>
    /// <param name="clampForce">Clamp force at the moment of the reading, 1 mN or more.</param>
    /// <param name="totalTorque">Tightening torque at that moment.</param>
    /// <param name="threadTorque">Its part in the thread at that moment.</param>
    /// <returns>Both coefficients, not limited: a faulty reading can make one negative.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> or <paramref name="bearing"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is outside its domain.</exception>
    public static FrictionTest Of(
        ScrewThread thread, BearingSurface bearing, Force clampForce, Torque totalTorque, Torque threadTorque) =>
        Of(thread, bearing, clampForce, totalTorque, threadTorque, TorqueConvention.Iso16047);

    /// <summary>Thread and bearing friction from a test that measured the thread torque too, in a named convention.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="bearing">The surface under the turned head or nut.</param>
    /// <param name="clampForce">Clamp force at the moment of the reading, 1 mN or more.</param>
    /// <param name="totalTorque">Tightening torque at that moment.</param>
    /// <param name="threadTorque">Its part in the thread at that moment.</param>
    /// <param name="convention">The convention in which the coefficients will be used.</param>
    /// <returns>Both coefficients, not limited: a faulty reading can make one negative.</returns>
    /// <exception cref="ArgumentNullException">A part is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is outside its domain.</exception>
    /// <exception cref="ArgumentException">The convention does not hold for the thread.</exception>
    /// <example><code>FrictionTest.Of(thread, bearing, clampForce, totalTorque, threadTorque, TorqueConvention.Vdi2230).Bearing</code></example>
    public static FrictionTest Of(
        ScrewThread thread, BearingSurface bearing, Force clampForce, Torque totalTorque, Torque threadTorque, TorqueConvention convention)
    {
        Guard.NotNull(bearing);
        TorqueConvention.RefuseUnlessItHolds(Guard.NotNull(convention), Guard.NotNull(thread));
        return new FrictionTest(
            thread, bearing.By(convention.Bearing, thread), convention,
            ClampForceDomain.Stated(clampForce), Domains.Torque.Stated(totalTorque), Domains.Torque.Stated(threadTorque));
    }

    /// <summary>One coefficient for thread and bearing, µ_tot, from a test without thread torque, in the linear form of ISO 16047.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="bearing">The surface under the turned head or nut.</param>
    /// <param name="clampForce">Clamp force at the moment of the reading, 1 mN or more.</param>
    /// <param name="totalTorque">Tightening torque at that moment.</param>
    /// <returns>The coefficient, not limited: negative when the torque is below the pitch torque. It cannot be divided between thread and bearing.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> or <paramref name="bearing"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is outside its domain.</exception>
    /// <example><code>double friction = FrictionTest.UniformCoefficientFrom(
    ///     ScrewThread.Parse("M10"), BearingSurface.ForHexagonHead(ScrewThread.Parse("M10")),
    ///     clampForce: Force.FromKilonewtons(25.2), totalTorque: Torque.FromNewtonMeters(52));   // 0.157</code></example>
    public static double UniformCoefficientFrom(ScrewThread thread, BearingSurface bearing, Force clampForce, Torque totalTorque) =>
        UniformCoefficientFrom(thread, bearing, clampForce, totalTorque, TorqueConvention.Iso16047);

    /// <summary>One coefficient for thread and bearing, µ_tot, from a test without thread torque, in a named convention.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="bearing">The surface under the turned head or nut.</param>
    /// <param name="clampForce">Clamp force at the moment of the reading, 1 mN or more.</param>
    /// <param name="totalTorque">Tightening torque at that moment.</param>
    /// <param name="convention">The convention in which the coefficient will be used.</param>
    /// <returns>The coefficient, not limited: negative when the torque is below the pitch torque.</returns>
    /// <exception cref="ArgumentNullException">A part is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is outside its domain.</exception>
    /// <exception cref="ArgumentException">The convention does not hold for the thread.</exception>
    public static double UniformCoefficientFrom(
        ScrewThread thread, BearingSurface bearing, Force clampForce, Torque totalTorque, TorqueConvention convention)
    {
        Guard.NotNull(bearing);
        TorqueConvention.RefuseUnlessItHolds(Guard.NotNull(convention), Guard.NotNull(thread));
        Term force = ClampForceDomain.Argument(clampForce);
        Term arm = FrictionTestEquations.MeasuredTorqueArmEquation.Of(Domains.Torque.Argument(totalTorque), force);
        return Si.Number(ThreadLaw.Of(thread, convention).UniformFrictionOf(arm, bearing.By(convention.Bearing, thread).FrictionRadius));
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"µ_th {Thread:0.####}, µ_b {Bearing:0.####}");

    private static ReadOnlyCollection<FrictionTestDoubt> DoubtsOf(double thread, double bearing)
    {
        var doubts = new List<FrictionTestDoubt>();
        if (thread < 0) doubts.Add(FrictionTestDoubt.ThreadTorqueBelowPitchTorque);
        if (bearing < 0) doubts.Add(FrictionTestDoubt.ThreadTorqueAboveTotal);
        if (thread > Domains.Friction.High) doubts.Add(FrictionTestDoubt.ThreadFrictionAboveTwo);
        if (bearing > Domains.Friction.High) doubts.Add(FrictionTestDoubt.BearingFrictionAboveTwo);
        return doubts.AsReadOnly();
    }

    private static string Describe(FrictionTestDoubt doubt) => doubt switch
    {
        FrictionTestDoubt.ThreadTorqueBelowPitchTorque => "the thread took less than the pitch torque",
        FrictionTestDoubt.ThreadTorqueAboveTotal => "the thread took more than the whole torque",
        FrictionTestDoubt.ThreadFrictionAboveTwo => "the thread friction is above 2",
        _ => "the bearing friction is above 2",
    };
}
