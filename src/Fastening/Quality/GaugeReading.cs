using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

/// <summary>One reading of a gauge study: which part, by whom.</summary>
/// <typeparam name="TQuantity">Torque, Angle, Force, RotationalSpeed or Length.</typeparam>
/// <example><code>new GaugeReading&lt;Torque&gt;("joint 3", "B", Torque.FromNewtonMeters(50.4))</code></example>
public sealed class GaugeReading<TQuantity>
    where TQuantity : struct, IQuantity
{
    /// <summary>A reading.</summary>
    /// <param name="part">The part or joint that was measured.</param>
    /// <param name="appraiser">Who measured, or with which tool.</param>
    /// <param name="reading">The reading.</param>
    /// <exception cref="ArgumentNullException"><paramref name="part"/> or <paramref name="appraiser"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="reading"/> is beyond its domain.</exception>
    /// <example><code>var reading = new GaugeReading&lt;Torque&gt;(part: "joint 3", appraiser: "B", Torque.FromNewtonMeters(50.4));</code></example>
    public GaugeReading(string part, string appraiser, TQuantity reading)
    {
        Part = Guard.NotNull(part);
        Appraiser = Guard.NotNull(appraiser);
        ReadingSi = Si.Of(reading);
        if (!Domains.Sample.Contains(ReadingSi)) Guard.RefuseAgainst(nameof(reading), reading, ShopScale.Of<TQuantity>().Describe(Domains.Sample));
    }

    /// <summary>The part or joint.</summary>
    public string Part { get; }

    /// <summary>Who measured.</summary>
    public string Appraiser { get; }

    /// <summary>The reading.</summary>
    public TQuantity Reading => Si.Make<TQuantity>(ReadingSi);

    internal double ReadingSi { get; }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Part}, {Appraiser}: {Reading}");
}
