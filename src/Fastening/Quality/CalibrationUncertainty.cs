using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

/// <summary>What makes a calibration uncertain, after ISO 6789-2:2017: reference device, resolution, and the ranges found when the conditions were varied.</summary>
/// <remarks>
/// Provisional: the components and W' were recalled and not read. Repeatability comes from the readings of the point. A component that is not
/// stated counts as 0, so state all that apply; of a tool with a scale the verdict needs the resolution. A range is the width of group means: the
/// conditions are varied in one way, a series is taken under each, and the greatest mean less the least mean is the range, not that of single readings.
/// Each kind counts once: stated again, it replaces what was stated before. Equations <c>calibration.reference-component</c>,
/// <c>calibration.range-component</c>, <c>calibration.repeatability-component</c>, <c>calibration.combine</c>, <c>calibration.expand</c>.
/// </remarks>
/// <example><code>CalibrationUncertainty uncertainty = new CalibrationUncertainty(MeasurementUncertainty.Expanded(Ratio.FromPercent(0.5), coverageFactor: 2))
///     .WithResolution(Torque.FromNewtonMeters(0.5))
///     .WithReproducibility(Torque.FromNewtonMeters(0.3), at: Torque.FromNewtonMeters(40))
///     .WithOutputDrive(Torque.FromNewtonMeters(0.4), at: Torque.FromNewtonMeters(40));
/// MeasurementUncertainty&lt;Ratio&gt; atPoint = uncertainty.At(point);</code></example>
public sealed class CalibrationUncertainty
{
    private static readonly Domain<Ratio> ReferenceDomain = new(0, 0.1);
    private static readonly Domain<Ratio> SystematicDomain = new(-0.1, 0.1);
    private static readonly Stated<Torque> NoResolution = Stated<Torque>.Of(0, "resolution, none stated");

    private readonly Stated<Ratio> _reference;

    /// <summary>The uncertainty of the reference device alone.</summary>
    /// <param name="reference">Relative uncertainty of the reference device, from its certificate; its W_md (k = 2) is 0 to 10 %.</param>
    /// <exception cref="ArgumentException">No uncertainty was stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is outside its domain.</exception>
    /// <example><code>var uncertainty = new CalibrationUncertainty(MeasurementUncertainty.Expanded(Ratio.FromPercent(0.5), coverageFactor: 2));</code></example>
    public CalibrationUncertainty(MeasurementUncertainty<Ratio> reference)
    {
        _reference = Stated<Ratio>.Of(ReferenceDomain.Check(Si.Ratio(reference.OfRules(nameof(reference))), nameof(reference)), "expanded uncertainty of the reference device");
    }

    private CalibrationUncertainty(CalibrationUncertainty before)
    {
        _reference = before._reference;
        Resolution = before.Resolution;
        Reproducibility = before.Reproducibility;
        OutputDrive = before.OutputDrive;
        Interface = before.Interface;
        ForceLoadingPoint = before.ForceLoadingPoint;
        Systematic = before.Systematic;
    }

    /// <summary>Expanded relative uncertainty W_md of the reference device, k = 2.</summary>
    public Ratio ReferenceExpanded => Si.Ratio(_reference.Term);

    /// <summary>Whether the resolution of a scale or display was stated; 0 is a statement too.</summary>
    public bool IsResolutionStated => Resolution is not null;

    internal double Reference => _reference.Value;

    private Stated<Torque>? Resolution { get; init; }

    private (Stated<Torque> Range, Stated<Torque> At)? Reproducibility { get; init; }

    private (Stated<Torque> Range, Stated<Torque> At)? OutputDrive { get; init; }

    private (Stated<Torque> Range, Stated<Torque> At)? Interface { get; init; }

    private (Stated<Torque> Range, Stated<Torque> At)? ForceLoadingPoint { get; init; }

    private Stated<Ratio> Systematic { get; init; } = Stated<Ratio>.Of(0, "systematic deviation");

    /// <summary>The relative standard uncertainties from the ranges that were stated, in the order in which they are combined.</summary>
    private IEnumerable<(Stated<Torque> Range, Stated<Torque> At)> Ranges =>
        new[] { Reproducibility, OutputDrive, Interface, ForceLoadingPoint }.OfType<(Stated<Torque> Range, Stated<Torque> At)>();

    /// <summary>The same with the resolution of the tool's scale or display; a tool without a scale has none.</summary>
    /// <param name="resolution">Resolution r. It is not compared with the torques of the points: a wrong unit shows in <see cref="At"/>.</param>
    /// <returns>A new value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The resolution is outside its domain.</exception>
    /// <example><code>uncertainty.WithResolution(Torque.FromNewtonMeters(0.1))</code></example>
    public CalibrationUncertainty WithResolution(Torque resolution) =>
        new(this) { Resolution = Domains.Torque.Stated(resolution) };

    /// <summary>The same with the range of the means of repeated series.</summary>
    /// <param name="range">Greatest less least mean, b_rep.</param>
    /// <param name="at">Reference torque of the series.</param>
    /// <returns>A new value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A torque is outside its domain.</exception>
    /// <example><code>uncertainty.WithReproducibility(Torque.FromNewtonMeters(0.3), at: Torque.FromNewtonMeters(40))</code></example>
    public CalibrationUncertainty WithReproducibility(Torque range, Torque at) => new(this) { Reproducibility = RangeOf(range, at) };

    /// <summary>The same with the range of the means over positions of the output drive.</summary>
    /// <param name="range">Greatest less least mean, b_od.</param>
    /// <param name="at">Reference torque of the series.</param>
    /// <returns>A new value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A torque is outside its domain.</exception>
    /// <example><code>uncertainty.WithOutputDrive(Torque.FromNewtonMeters(0.4), at: Torque.FromNewtonMeters(40))</code></example>
    public CalibrationUncertainty WithOutputDrive(Torque range, Torque at) => new(this) { OutputDrive = RangeOf(range, at) };

    /// <summary>The same with the range of the means over positions of the drive interface between tool and reference.</summary>
    /// <param name="range">Greatest less least mean, b_int.</param>
    /// <param name="at">Reference torque of the series.</param>
    /// <returns>A new value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A torque is outside its domain.</exception>
    /// <example><code>uncertainty.WithInterface(Torque.FromNewtonMeters(0.2), at: Torque.FromNewtonMeters(40))</code></example>
    public CalibrationUncertainty WithInterface(Torque range, Torque at) => new(this) { Interface = RangeOf(range, at) };

    /// <summary>The same with the range of the means over places of the hand on the grip.</summary>
    /// <param name="range">Greatest less least mean, b_l.</param>
    /// <param name="at">Reference torque of the series.</param>
    /// <returns>A new value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A torque is outside its domain.</exception>
    /// <example><code>uncertainty.WithForceLoadingPoint(Torque.FromNewtonMeters(0.6), at: Torque.FromNewtonMeters(40))</code></example>
    public CalibrationUncertainty WithForceLoadingPoint(Torque range, Torque at) => new(this) { ForceLoadingPoint = RangeOf(range, at) };

    /// <summary>The same with a systematic deviation of the reference device that was not corrected.</summary>
    /// <param name="deviation">Systematic relative deviation b_ep, −10 to 10 %; its size counts in W' and in every decision, its sign does not.</param>
    /// <returns>A new value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is outside its domain.</exception>
    /// <example><code>uncertainty.WithSystematicDeviation(Ratio.FromPercent(0.1))</code></example>
    public CalibrationUncertainty WithSystematicDeviation(Ratio deviation) =>
        new(this) { Systematic = SystematicDomain.Stated(deviation) };

    /// <summary>Relative uncertainty at one point, W = 2w: as <see cref="TorqueWrench.GuaranteedSettingFor"/> takes it.</summary>
    /// <param name="point">The point.</param>
    /// <returns>The uncertainty with k = 2, relative to the reference torque.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="point"/> is null.</exception>
    /// <example><code>uncertainty.At(point).ExpandedWith(coverageFactor: 2).Percent</code></example>
    public MeasurementUncertainty<Ratio> At(CalibrationPoint point) => new(ExpandedOf(Guard.NotNull(point)).Value / 2, 2);

    /// <summary>Relative uncertainty interval W' = |a_s| + |b_ep| + W at one point: how far a delivered torque may be off.</summary>
    /// <param name="point">The point.</param>
    /// <returns>W'.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="point"/> is null.</exception>
    /// <example><code>uncertainty.IntervalAt(point).Percent</code></example>
    public Ratio IntervalAt(CalibrationPoint point) => Si.Ratio(IntervalOf(Guard.NotNull(point)));

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"reference device {Si.Ratio(Reference):0.###}, {(Resolution is Stated<Torque> resolution ? Print.Text($"resolution {resolution.Value:0.####} N·m") : "no resolution stated")}, {Ranges.Count()} of 4 ranges from varied conditions");

    internal Term ExpandedOf(CalibrationPoint point)
    {
        Term reference = point.MeanReferenceTerm;
        Term combined = CalibrationEquations.ReferenceComponentEquation.Of(_reference.Term);
        combined = CalibrationEquations.CombineEquation.Of(combined, CalibrationEquations.RangeComponentEquation.Of((Resolution ?? NoResolution).Term, reference));
        combined = CalibrationEquations.CombineEquation.Of(combined, CalibrationEquations.RepeatabilityComponentEquation.Of(
            Stated<Torque>.Of(point.StandardDeviation, "standard deviation of the reference readings").Term,
            Term.Given(point.SiReferences.Length, "number of reference readings"), reference));
        foreach ((Stated<Torque> range, Stated<Torque> at) in Ranges)
        {
            combined = CalibrationEquations.CombineEquation.Of(combined, CalibrationEquations.RangeComponentEquation.Of(range.Term, at.Term));
        }

        return CalibrationEquations.ExpandEquation.Of(combined);
    }

    /// <summary>What a decision counts: W, and the uncorrected deviation of the reference device.</summary>
    internal double DecidingAt(CalibrationPoint point) => ExpandedOf(point).Value + Math.Abs(Systematic.Value);

    /// <summary>The same of the reference device alone.</summary>
    internal double DecidingReference => Reference + Math.Abs(Systematic.Value);

    private Term IntervalOf(CalibrationPoint point) => CalibrationEquations.IntervalOfEquation.Of(point.DeviationTerm, Systematic.Term, ExpandedOf(point));

    private static (Stated<Torque> Range, Stated<Torque> At) RangeOf(Torque range, Torque at)
    {
        double width = Domains.Torque.Check(range);
        Stated<Torque> reference = Domains.PositiveTorque.Stated(at);
        if (width > reference.Value) Guard.RefuseAgainst(nameof(range), range, $"at most the torque it was found at, {Guard.ShowToCompare(at)}");
        return (new(range, width, "range from varied conditions"), new(at, reference.Value, "torque of that range"));
    }
}
