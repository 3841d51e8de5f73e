using Fastening.Equations;
using Fastening.Internals;

namespace Fastening;

/// <summary>The two coefficients of friction of a tightening: in the thread, and under the turned head or nut.</summary>
/// <remarks>There is no default: friction is measured (ISO 16047) or taken from the maker of the fastener and its lubricant, as a range.</remarks>
/// <example><code>var friction = new FrictionCoefficients(thread: 0.12, bearing: 0.10);</code></example>
public sealed class FrictionCoefficients
{
    private readonly StatedNumber _thread, _bearing;

    /// <summary>States both coefficients.</summary>
    /// <param name="thread">Coefficient of friction in the thread, 0 to 2; outside 0.04 to 0.45 it is remarked.</param>
    /// <param name="bearing">Coefficient of friction at the bearing surface, 0 to 2; outside 0.04 to 0.45 it is remarked.</param>
    /// <exception cref="ArgumentOutOfRangeException">A coefficient is outside 0 to 2.</exception>
    /// <example><code>new FrictionCoefficients(thread: 0.12, bearing: 0.10)</code></example>
    public FrictionCoefficients(double thread, double bearing)
    {
        Domains.Friction.Check(thread);
        Domains.Friction.Check(bearing);
        _thread = new StatedNumber(thread, "thread friction");
        _bearing = new StatedNumber(bearing, "bearing friction");
    }

    /// <summary>Coefficient of friction in the thread, µ_th.</summary>
    public double Thread => _thread.Value;

    /// <summary>Coefficient of friction at the bearing surface, µ_b.</summary>
    public double Bearing => _bearing.Value;

    /// <summary>Values outside the ranges in which such values are published; empty when there are none.</summary>
    public IReadOnlyList<PlausibilityRemark> Remarks => PlausibilityRemark.Of(PlausibleRange.ThreadFriction, Thread, PlausibleRange.BearingFriction, Bearing);

    /// <summary>The same coefficient in the thread and at the bearing surface, µ_tot.</summary>
    /// <param name="friction">The coefficient, 0 to 2; outside 0.04 to 0.45 it is remarked.</param>
    /// <returns>The pair.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The coefficient is outside 0 to 2.</exception>
    /// <example><code>FrictionCoefficients.Uniform(0.14)</code></example>
    public static FrictionCoefficients Uniform(double friction)
    {
        Domains.Friction.Check(friction);
        return new FrictionCoefficients(friction, friction);
    }

    private FrictionCoefficients(StatedNumber thread, StatedNumber bearing)
    {
        _thread = thread;
        _bearing = bearing;
    }

    /// <summary>This bearing friction with the thread friction of another pair.</summary>
    internal FrictionCoefficients WithThreadOf(FrictionCoefficients other) => new(other._thread, _bearing);

    internal Term ThreadTerm => _thread.Term;

    internal Term BearingTerm => _bearing.Term;

    /// <inheritdoc />
    public override string ToString() => Print.Text($"µ_th {Thread:0.####}, µ_b {Bearing:0.####}{PlausibilityRemark.Mention(Remarks)}");
}
