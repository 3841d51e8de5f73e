using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>What is known of a quantity before it is measured: a normal distribution N(y0, u0²).</summary>
/// <typeparam name="TQuantity">Torque, Angle, Force, RotationalSpeed or Length.</typeparam>
/// <remarks>For one reading it moves the probability of conformity towards the process; for many items it is the process.</remarks>
/// <example><code>Prior&lt;Torque&gt; process = Prior.Normal(Torque.FromNewtonMeters(50.2), standardDeviation: Torque.FromNewtonMeters(0.8));</code></example>
public sealed class Prior<TQuantity>
    where TQuantity : struct, IQuantity
{
    /// <summary>Below this a deviation is a slip, not a spread.</summary>
    internal const double LeastDeviation = 1e-12;

    internal Prior(double mean, double deviation)
    {
        MeanSi = mean;
        DeviationSi = deviation;
    }

    /// <summary>Mean.</summary>
    public TQuantity Mean => Si.Make<TQuantity>(MeanSi);

    /// <summary>Standard deviation.</summary>
    public TQuantity StandardDeviation => Si.Make<TQuantity>(DeviationSi);

    internal double MeanSi { get; }

    internal double DeviationSi { get; }

    /// <summary>What is known after a reading: equations decision.posterior-mean and decision.posterior-deviation.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="uncertainty">Uncertainty of the reading, greater than 0.</param>
    /// <returns>The posterior, which is the prior of the next reading.</returns>
    /// <exception cref="ArgumentException">No uncertainty was stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>Prior&lt;Torque&gt; after = process.After(Torque.FromNewtonMeters(51.7), MeasurementUncertainty.Standard(Torque.FromNewtonMeters(0.3)));</code></example>
    public Prior<TQuantity> After(TQuantity reading, MeasurementUncertainty<TQuantity> uncertainty)
    {
        double value = ToleranceWindow<TQuantity>.Check(reading, fromZero: false, nameof(reading));
        double measuring = uncertainty.Positive(nameof(uncertainty));
        return new(
            DecisionEquations.PosteriorMean(MeanSi, DeviationSi, value, measuring), DecisionEquations.PosteriorDeviation(DeviationSi, measuring));
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"normal, mean {Si.Make<TQuantity>(MeanSi)}, standard deviation {Si.Make<TQuantity>(DeviationSi)}");

    internal static double CheckDeviation(TQuantity value, string name)
    {
        double deviation = ToleranceWindow<TQuantity>.Check(value, fromZero: true, name);
        if (deviation < LeastDeviation) Guard.RefuseAgainst(name, value, $"at least {Print.Quantity<TQuantity>(LeastDeviation)}");
        return deviation;
    }
}
