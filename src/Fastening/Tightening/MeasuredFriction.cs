using System.Collections.ObjectModel;
using Fastening.Equations;
using Fastening.Internals;

namespace Fastening;

/// <summary>The coefficients of friction from a friction test, not limited: a faulty reading can make one negative.</summary>
/// <remarks>
/// A thread coefficient below zero means a thread torque below the pitch torque; a bearing coefficient below zero, a thread torque above the
/// total. Both point to the force or torque cell, or to readings of different moments, not to a slippery bolt.
/// </remarks>
/// <example><code>MeasuredFriction measured = FrictionTest.CoefficientsFrom(thread, bearing, clampForce, totalTorque, threadTorque);
/// if (measured.IsPlausible) model = model.WithFriction(measured.ToCoefficients());</code></example>
public sealed class MeasuredFriction
{
    private readonly ScrewThread _thread;
    private readonly BearingSurface _bearing;
    private readonly TorqueConvention _convention;
    private readonly double _force, _total, _threadTorque;

    internal MeasuredFriction(
        ScrewThread thread, BearingSurface bearing, TorqueConvention convention, double force, double total, double threadTorque)
    {
        _thread = thread;
        _bearing = bearing;
        _convention = convention;
        _force = force;
        _total = total;
        _threadTorque = threadTorque;
        Thread = FrictionOfTest.Thread(null, thread, convention, force, threadTorque);
        Bearing = FrictionOfTest.Bearing(null, bearing, force, total, threadTorque);
        Doubts = DoubtsOf(Thread, Bearing);
    }

    /// <summary>Coefficient of friction in the thread, µ_th, not limited.</summary>
    public double Thread { get; }

    /// <summary>Coefficient of friction at the bearing surface, µ_b, not limited.</summary>
    public double Bearing { get; }

    /// <summary>Why the coefficients are not possible; empty where both lie between 0 and 2.</summary>
    public IReadOnlyList<MeasuredFrictionDoubt> Doubts { get; }

    /// <summary>Whether both lie where coefficients of friction can lie, 0 to 2: nothing is doubted.</summary>
    public bool IsPlausible => Doubts.Count == 0;

    /// <summary>The pair for a model.</summary>
    /// <returns>The coefficients.</returns>
    /// <exception cref="InvalidOperationException">A coefficient is negative or above 2: look at the readings first.</exception>
    /// <example><code>model.WithFriction(measured.ToCoefficients())</code></example>
    public FrictionCoefficients ToCoefficients() => IsPlausible
        ? new FrictionCoefficients(Thread, Bearing)
        : throw new InvalidOperationException($"The readings give {this}; coefficients of friction lie between 0 and 2. Look at the readings first: {string.Join("; ", Doubts.Select(Describe))}.");

    /// <summary>The work behind <see cref="Thread"/>; its last step is that coefficient, bit for bit.</summary>
    /// <returns>The steps.</returns>
    /// <example><code>Console.WriteLine(measured.DeriveThread());</code></example>
    public Derivation DeriveThread()
    {
        var work = new Derivation("Thread friction from a test");
        FrictionOfTest.Thread(work, _thread, _convention, _force, _threadTorque);
        return work.KeepWhatCounts();
    }

    /// <summary>The work behind <see cref="Bearing"/>; its last step is that coefficient, bit for bit.</summary>
    /// <returns>The steps.</returns>
    /// <example><code>Console.WriteLine(measured.DeriveBearing());</code></example>
    public Derivation DeriveBearing()
    {
        var work = new Derivation("Bearing friction from a test");
        FrictionOfTest.Bearing(work, _bearing, _force, _total, _threadTorque);
        return work.KeepWhatCounts();
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"µ_th {Thread:0.####}, µ_b {Bearing:0.####}");

    private static ReadOnlyCollection<MeasuredFrictionDoubt> DoubtsOf(double thread, double bearing)
    {
        var doubts = new List<MeasuredFrictionDoubt>();
        if (thread < 0) doubts.Add(MeasuredFrictionDoubt.ThreadTorqueBelowPitchTorque);
        if (bearing < 0) doubts.Add(MeasuredFrictionDoubt.ThreadTorqueAboveTotal);
        if (thread > Domains.Friction.High) doubts.Add(MeasuredFrictionDoubt.ThreadFrictionAboveTwo);
        if (bearing > Domains.Friction.High) doubts.Add(MeasuredFrictionDoubt.BearingFrictionAboveTwo);
        return doubts.AsReadOnly();
    }

    private static string Describe(MeasuredFrictionDoubt doubt) => doubt switch
    {
        MeasuredFrictionDoubt.ThreadTorqueBelowPitchTorque => "the thread took less than the pitch torque",
        MeasuredFrictionDoubt.ThreadTorqueAboveTotal => "the thread took more than the whole torque",
        MeasuredFrictionDoubt.ThreadFrictionAboveTwo => "the thread friction is above 2",
        _ => "the bearing friction is above 2",
    };
}
