using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>How uncertain a measured value is, with the coverage factor by which that was stated.</summary>
/// <typeparam name="TQuantity">Torque, Angle, Force, RotationalSpeed, Length or Ratio.</typeparam>
/// <remarks>A value, so that single decisions allocate nothing. A default one states nothing: every call that takes it refuses it.</remarks>
/// <example><code>MeasurementUncertainty&lt;Torque&gt; uncertainty = MeasurementUncertainty.Expanded(Torque.FromNewtonMeters(0.6), coverageFactor: 2);
/// Torque standard = uncertainty.StandardUncertainty;     // 0.3 N·m</code></example>
public readonly struct MeasurementUncertainty<TQuantity>
    where TQuantity : struct, IQuantity
{
    private const double CoverageFactorOfRules = 2;

    private readonly double _standard;
    private readonly double _coverageFactor;

    internal MeasurementUncertainty(double standard, double coverageFactor)
    {
        _standard = standard;
        _coverageFactor = coverageFactor;
    }

    /// <summary>Coverage factor k by which it was stated; 1 for a standard uncertainty, 0 when nothing was stated.</summary>
    public double CoverageFactor => _coverageFactor;

    /// <summary>Standard uncertainty u.</summary>
    /// <exception cref="InvalidOperationException">No uncertainty was stated: this is a default value.</exception>
    public TQuantity StandardUncertainty => Si.MakeOrRatio<TQuantity>(Stated());

    /// <summary>Expanded uncertainty U = k u for a coverage factor.</summary>
    /// <param name="coverageFactor">k, above 0 to 100.</param>
    /// <returns>U.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="coverageFactor"/> is outside its domain.</exception>
    /// <exception cref="InvalidOperationException">No uncertainty was stated: this is a default value.</exception>
    /// <example><code>Torque expanded = readingUncertainty.ExpandedWith(coverageFactor: 2);</code></example>
    public TQuantity ExpandedWith(double coverageFactor) =>
        Si.MakeOrRatio<TQuantity>(Domains.CoverageFactor.Check(coverageFactor) * Stated());

    /// <inheritdoc />
    public override string ToString() => _coverageFactor switch
    {
        0 => "no uncertainty stated",
        1 => $"u = {Show(_standard)}",
        _ => $"U = {Show(_standard * _coverageFactor)} (k = {Print.Number(_coverageFactor)})",
    };

    internal static double Check(TQuantity value, string name)
    {
        if (typeof(TQuantity) != typeof(Ratio)) return ToleranceWindow<TQuantity>.Check(value, fromZero: true, name);
        double fraction = Si.ValueOf(value);
        if (!Domains.RelativeUncertainty.Contains(fraction)) Guard.RefuseAgainst(name, value, Domains.RelativeUncertainty.Describe());
        return fraction;
    }

    /// <summary>u in SI or degrees; what was never stated is refused.</summary>
    internal double Standard(string name) => _coverageFactor > 0 ? _standard : throw NotStated(name);

    /// <summary>U with k = 2, the factor for which every decision rule is written.</summary>
    internal double OfRules(string name) => CoverageFactorOfRules * Standard(name);

    /// <summary>A limit of the error: U with the stated coverage factor, which counts with 2 where less was stated.</summary>
    internal double Limit(string name) => Math.Max(_coverageFactor, CoverageFactorOfRules) * Standard(name);

    /// <summary>u where it divides.</summary>
    internal double Positive(string name)
    {
        double standard = Standard(name);
        if (standard < Prior<TQuantity>.LeastDeviation) Guard.RefuseAgainst(name, StandardUncertainty, $"at least {Print.Quantity<TQuantity>(Prior<TQuantity>.LeastDeviation)}");
        return standard;
    }

    private double Stated() => _coverageFactor > 0
        ? _standard
        : throw new InvalidOperationException("No uncertainty was stated: create it with MeasurementUncertainty.Standard or MeasurementUncertainty.Expanded.");

    private static ArgumentException NotStated(string name) =>
        new($"{name} states nothing: create it with MeasurementUncertainty.Standard or MeasurementUncertainty.Expanded.", name);

    private static string Show(double value) => Print.Quantity<TQuantity>(value);
}
