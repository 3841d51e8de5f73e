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
/// torques first.
/// </remarks>
/// <example><code>MeasuredFriction measured = FrictionTest.CoefficientsFrom(
///     ScrewThread.Parse("M10"), BearingSurface.ForHexagonHead(ScrewThread.Parse("M10")),
///     clampForce: Force.FromKilonewtons(25.2), totalTorque: Torque.FromNewtonMeters(52), threadTorque: Torque.FromNewtonMeters(25));</code></example>
public static class FrictionTest
{
    private static readonly Domain<Force> ClampForceDomain = new(1e-3, 1e9);

    /// <summary>Thread and bearing friction from a test that measured the thread torque too, in the linear form of ISO 16047.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="bearing">The surface under the turned head or nut.</param>
    /// <param name="clampForce">Clamp force at the moment of the reading, 1 mN or more.</param>
    /// <param name="totalTorque">Tightening torque at that moment.</param>
    /// <param name="threadTorque">Its part in the thread at that moment.</param>
    /// <returns>Both coefficients, not limited: a faulty reading can make one negative.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> or <paramref name="bearing"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is outside its domain.</exception>
    public static MeasuredFriction CoefficientsFrom(
        ScrewThread thread, BearingSurface bearing, Force clampForce, Torque totalTorque, Torque threadTorque) =>
        CoefficientsFrom(thread, bearing, clampForce, totalTorque, threadTorque, TorqueConvention.Iso16047);

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
    /// <example><code>FrictionTest.CoefficientsFrom(thread, bearing, clampForce, totalTorque, threadTorque, TorqueConvention.Vdi2230).Bearing</code></example>
    public static MeasuredFriction CoefficientsFrom(
        ScrewThread thread, BearingSurface bearing, Force clampForce, Torque totalTorque, Torque threadTorque, TorqueConvention convention)
    {
        Guard.NotNull(bearing);
        TorqueConvention.RefuseUnlessItHolds(Guard.NotNull(convention), Guard.NotNull(thread));
        return new MeasuredFriction(
            thread, bearing.By(convention.Bearing, thread), convention,
            ClampForceDomain.Check(clampForce), Domains.Torque.Check(totalTorque), Domains.Torque.Check(threadTorque));
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
        ScrewThread thread, BearingSurface bearing, Force clampForce, Torque totalTorque, TorqueConvention convention) =>
        Uniform(null, thread, bearing, clampForce, totalTorque, convention);

    /// <summary>The work behind the uniform coefficient; its last step is that coefficient, bit for bit.</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="bearing">The surface under the turned head or nut.</param>
    /// <param name="clampForce">Clamp force at the moment of the reading, 1 mN or more.</param>
    /// <param name="totalTorque">Tightening torque at that moment.</param>
    /// <param name="convention">The convention in which the coefficient will be used.</param>
    /// <returns>The steps.</returns>
    /// <exception cref="ArgumentNullException">A part is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is outside its domain.</exception>
    /// <exception cref="ArgumentException">The convention does not hold for the thread.</exception>
    /// <example><code>Console.WriteLine(FrictionTest.DeriveUniformCoefficientFrom(thread, bearing, clampForce, totalTorque, TorqueConvention.Iso16047));</code></example>
    public static Derivation DeriveUniformCoefficientFrom(
        ScrewThread thread, BearingSurface bearing, Force clampForce, Torque totalTorque, TorqueConvention convention)
    {
        var work = new Derivation("Uniform coefficient of friction from a test");
        Uniform(work, thread, bearing, clampForce, totalTorque, convention);
        return work.KeepWhatCounts();
    }

    private static double Uniform(
        Derivation? work, ScrewThread thread, BearingSurface bearing, Force clampForce, Torque totalTorque, TorqueConvention convention)
    {
        Guard.NotNull(bearing);
        TorqueConvention.RefuseUnlessItHolds(Guard.NotNull(convention), Guard.NotNull(thread));
        return FrictionOfTest.Uniform(
            work, thread, bearing.By(convention.Bearing, thread), convention, ClampForceDomain.Check(clampForce), Domains.Torque.Check(totalTorque));
    }
}
