using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

/// <summary>One input of a measurement: its best value, its standard uncertainty, and the distribution behind it.</summary>
/// <remarks>
/// JCGM 100:2008 (GUM) §4.2 (Type A) and §4.3 (Type B); divisors √3 rectangular, √6 triangular, √2 arcsine, k normal and
/// a·√((1 + β²)/6) trapezoidal. Values are plain numbers, all in units that fit the measurement function.
/// </remarks>
/// <example><code>UncertaintyContribution reference = UncertaintyContribution.Normal("l_s", 50_000_623, 25).WithDegreesOfFreedom(18);   // in nm
/// UncertaintyContribution expansion = UncertaintyContribution.Rectangular("α", 11.5e-6, 2e-6);                       // in 1/K</code></example>
public sealed partial class UncertaintyContribution
{
    private UncertaintyContribution(string name, UncertaintyDistribution distribution, double value, double uncertainty)
    {
        if (Guard.NotNull(name).Length == 0) throw new ArgumentException("name is empty; an input needs a name.", nameof(name));
        Name = name;
        Distribution = distribution;
        Value = value;
        StandardUncertainty = uncertainty;
        DegreesOfFreedom = double.PositiveInfinity;
        TailFreedom = double.PositiveInfinity;
    }

    private UncertaintyContribution(UncertaintyContribution source, UncertaintyDistribution distribution)
        : this(source.Name, distribution, source.Value, source.StandardUncertainty)
    {
        HalfWidth = source.HalfWidth;
        FlatShare = source.FlatShare;
        DegreesOfFreedom = source.DegreesOfFreedom;
        TailFreedom = source.TailFreedom;
        Sensitivity = source.Sensitivity;
        Joint = source.Joint;
        Place = source.Place;
    }

    /// <summary>The name of the input in the measurement function and the table.</summary>
    public string Name { get; }

    /// <summary>Best value: the mean of the distribution.</summary>
    public double Value { get; }

    /// <summary>Standard uncertainty u, in the unit of the value.</summary>
    public double StandardUncertainty { get; }

    /// <summary>The distribution.</summary>
    public UncertaintyDistribution Distribution { get; }

    /// <summary>Degrees of freedom ν of the standard uncertainty; positive infinity when it is known exactly.</summary>
    public double DegreesOfFreedom { get; private init; }

    /// <summary>Sensitivity coefficient ∂f/∂x as it was given; null when it is to be found by differences.</summary>
    public double? Sensitivity { get; private init; }

    internal double HalfWidth { get; private init; }

    internal double FlatShare { get; private init; }

    internal JointReadings? Joint { get; private init; }

    internal int Place { get; private init; }

    /// <summary>A normal input by its standard uncertainty.</summary>
    /// <param name="name">The name.</param>
    /// <param name="value">Best value.</param>
    /// <param name="standardUncertainty">Standard uncertainty u, 0 or more.</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its domain.</exception>
    /// <example><code>UncertaintyContribution diameter = UncertaintyContribution.Normal("diameter (mm)", 16, standardUncertainty: 0.05);</code></example>
    public static UncertaintyContribution Normal(string name, double value, double standardUncertainty) => new(
        name, UncertaintyDistribution.Normal, Domains.Number.Check(value), Domains.Uncertainty.Check(standardUncertainty));

    /// <summary>A normal input by the expanded uncertainty of a certificate.</summary>
    /// <param name="name">The name.</param>
    /// <param name="value">Best value.</param>
    /// <param name="expandedUncertainty">Expanded uncertainty U, 0 or more.</param>
    /// <param name="coverageFactor">Its coverage factor k, 0.01 to 100; certificates print it, mostly 2.</param>
    /// <returns>The input, u = U/k.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its domain.</exception>
    /// <example><code>UncertaintyContribution.FromCertificate("torque transducer", value: 0, expandedUncertainty: 0.2, coverageFactor: 2)</code></example>
    public static UncertaintyContribution FromCertificate(string name, double value, double expandedUncertainty, double coverageFactor) => new(
        name,
        UncertaintyDistribution.Normal,
        Domains.Number.Check(value),
        Domains.Uncertainty.Check(expandedUncertainty) / Domains.CoverageFactor.Check(coverageFactor));

    /// <summary>Anything within ± <paramref name="halfWidth"/> alike: u = a/√3.</summary>
    /// <param name="name">The name.</param>
    /// <param name="value">Middle of the interval.</param>
    /// <param name="halfWidth">Half its width a, 0 or more.</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its domain.</exception>
    /// <example><code>UncertaintyContribution nutFactor = UncertaintyContribution.Rectangular("K", 0.17, halfWidth: 0.02);     // u = 0.0115</code></example>
    public static UncertaintyContribution Rectangular(string name, double value, double halfWidth) =>
        Bounded(name, UncertaintyDistribution.Rectangular, Domains.Number.Check(value), Domains.Uncertainty.Check(halfWidth), 1);

    /// <summary>Within ± <paramref name="halfWidth"/>, most often in the middle: u = a/√6.</summary>
    /// <param name="name">The name.</param>
    /// <param name="value">Middle of the interval.</param>
    /// <param name="halfWidth">Half its width a, 0 or more.</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its domain.</exception>
    /// <example><code>UncertaintyContribution pull = UncertaintyContribution.Triangular("pull off square (°)", 2, halfWidth: 3);     // u = 1.22°</code></example>
    public static UncertaintyContribution Triangular(string name, double value, double halfWidth) =>
        Bounded(name, UncertaintyDistribution.Triangular, Domains.Number.Check(value), Domains.Uncertainty.Check(halfWidth), 0);

    /// <summary>Within ± <paramref name="halfWidth"/>, most often at the ends: u = a/√2.</summary>
    /// <param name="name">The name.</param>
    /// <param name="value">Middle of the interval.</param>
    /// <param name="halfWidth">Half its width a, 0 or more.</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its domain.</exception>
    /// <example><code>UncertaintyContribution temperature = UncertaintyContribution.Arcsine("thermostat (°C)", 23, halfWidth: 3);     // u = 2.12 °C</code></example>
    public static UncertaintyContribution Arcsine(string name, double value, double halfWidth) =>
        Bounded(name, UncertaintyDistribution.Arcsine, Domains.Number.Check(value), Domains.Uncertainty.Check(halfWidth), 0);

    /// <summary>Within ± <paramref name="halfWidth"/>, alike in the middle and less often towards the ends: u = a√((1 + β²)/6).</summary>
    /// <param name="name">The name.</param>
    /// <param name="value">Middle of the interval.</param>
    /// <param name="halfWidth">Half its width a, 0 or more.</param>
    /// <param name="flatShare">β: width of the flat top over the width of the whole, 0 % (triangular) to 100 % (rectangular).</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="name"/> is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its domain.</exception>
    /// <example><code>UncertaintyContribution lever = UncertaintyContribution.Trapezoidal("lever (mm)", 400, halfWidth: 12, flatShare: Ratio.FromPercent(40));     // u = 5.28 mm</code></example>
    public static UncertaintyContribution Trapezoidal(string name, double value, double halfWidth, Ratio flatShare) => Bounded(
        name,
        UncertaintyDistribution.Trapezoidal,
        Domains.Number.Check(value),
        Domains.Uncertainty.Check(halfWidth),
        Domains.Share.Check(flatShare));

    /// <summary>The mean of repeated readings (Type A): u = s/√n with ν = n − 1; u is the scale of Student's t in Monte Carlo (JCGM 101:2008 §6.4.9.2, from memory).</summary>
    /// <param name="name">The name.</param>
    /// <param name="readings">Two readings or more, taken independently under the same conditions.</param>
    /// <returns>The input.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty, or there are fewer than two readings.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is outside its domain.</exception>
    /// <example><code>UncertaintyContribution torque = UncertaintyContribution.FromReadings("torque (N·m)", [98.1, 98.4, 98.2, 98.6, 98.3]);     // the mean is 98.32, its u 0.086</code></example>
    public static UncertaintyContribution FromReadings(string name, IReadOnlyList<double> readings)
    {
        var one = new JointReadings([Guard.NotNull(readings)], nameof(readings));
        return new(name, UncertaintyDistribution.Readings, one.Means[0], Math.Sqrt(one.Covariance[0, 0]))
        {
            DegreesOfFreedom = one.DegreesOfFreedom,
            TailFreedom = one.DegreesOfFreedom,
        };
    }

    /// <summary>The means of several inputs read together, time after time: their uncertainties, ν = n − 1, and their correlations.</summary>
    /// <param name="inputs">Names and readings; the first readings belong together, the second, and so on.</param>
    /// <returns>One input per name, in their order. In a budget they count as one component, exactly (JCGM 100:2008 H.2).</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, there are fewer than two readings, or not as many of each input.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A reading is outside its domain.</exception>
    /// <example><code>UncertaintyBudget resistance = UncertaintyBudget.Of("R", "Ω", x => x["V"] / x["I"] * Math.Cos(x["φ"]),
    ///     UncertaintyContribution.FromJointReadings(("V", volts), ("I", amperes), ("φ", radians)));</code></example>
    public static IReadOnlyList<UncertaintyContribution> FromJointReadings(
        params IReadOnlyList<(string Name, IReadOnlyList<double> Readings)> inputs)
    {
        var joint = new JointReadings([.. Guard.NotNull(inputs).Select(input => input.Readings)], nameof(inputs));
        return Array.AsReadOnly(inputs.Select((input, i) => new UncertaintyContribution(
            input.Name, UncertaintyDistribution.JointReadings, joint.Means[i], Math.Sqrt(joint.Covariance[i, i]))
        {
            DegreesOfFreedom = joint.DegreesOfFreedom,
            TailFreedom = joint.DegreesOfFreedom,
            Joint = joint,
            Place = i,
        }).ToArray());
    }

    /// <summary>The same input with its sensitivity coefficient, when a model offers it.</summary>
    /// <param name="sensitivity">∂f/∂x at the best values.</param>
    /// <returns>A new input.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="sensitivity"/> is outside its domain.</exception>
    /// <example><code>UncertaintyContribution torque = UncertaintyContribution.Normal("torque (N·m)", 150, 3).WithSensitivity(0.368);     // kN for each N·m</code></example>
    public UncertaintyContribution WithSensitivity(double sensitivity) => new(this, Distribution) { Sensitivity = Domains.Number.Check(sensitivity) };

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"{Name} = {Value:G9}, u {StandardUncertainty:G4}, {Shape}{(double.IsInfinity(DegreesOfFreedom) ? "" : Print.Text($", ν {DegreesOfFreedom:0.#}"))}");

    /// <summary>The distribution in words; of Student's t also which width u is, and the ν that u itself does not carry.</summary>
    internal string Shape => Distribution switch
    {
        UncertaintyDistribution.Normal => "normal",
        UncertaintyDistribution.Rectangular => "rectangular",
        UncertaintyDistribution.Triangular => "triangular",
        UncertaintyDistribution.Arcsine => "arcsine",
        UncertaintyDistribution.Trapezoidal => "trapezoidal",
        UncertaintyDistribution.StudentByScale => "Student, u its scale",
        UncertaintyDistribution.StudentByStandardDeviation => Print.Text($"Student of ν {TailFreedom:0.#}, u its standard deviation"),
        UncertaintyDistribution.Readings => "readings",
        _ => "joint readings",
    };

    private static UncertaintyContribution Bounded(string name, UncertaintyDistribution distribution, double value, double halfWidth, double flatShare)
    {
        double divisor = distribution == UncertaintyDistribution.Arcsine ? Math.Sqrt(2) : Math.Sqrt(6 / (1 + flatShare * flatShare));
        return new(name, distribution, value, halfWidth / divisor) { HalfWidth = halfWidth, FlatShare = flatShare };
    }
}
