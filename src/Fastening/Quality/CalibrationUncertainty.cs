using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

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

    /// <summary>The uncertainty of the reference device alone.</summary>
    /// <param name="reference">Relative uncertainty of the reference device, from its certificate; its W_md (k = 2) is 0 to 10 %.</param>
    /// <exception cref="ArgumentException">No uncertainty was stated.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is outside its domain.</exception>
    /// <example><code>var uncertainty = new CalibrationUncertainty(MeasurementUncertainty.Expanded(Ratio.FromPercent(0.5), coverageFactor: 2));</code></example>
    public CalibrationUncertainty(MeasurementUncertainty<Ratio> reference)
    {
        Reference = ReferenceDomain.Check(Si.Ratio(reference.OfRules(nameof(reference))), nameof(reference));
    }

    private CalibrationUncertainty(CalibrationUncertainty before)
    {
        Reference = before.Reference;
        Resolution = before.Resolution;
        Reproducibility = before.Reproducibility;
        OutputDrive = before.OutputDrive;
        Interface = before.Interface;
        ForceLoadingPoint = before.ForceLoadingPoint;
        Systematic = before.Systematic;
    }

    /// <summary>Expanded relative uncertainty W_md of the reference device, k = 2.</summary>
    public Ratio ReferenceExpanded => Si.Ratio(Reference);

    /// <summary>Whether the resolution of a scale or display was stated; 0 is a statement too.</summary>
    public bool IsResolutionStated => Resolution is not null;

    internal double Reference { get; }

    private double? Resolution { get; init; }

    private double? Reproducibility { get; init; }

    private double? OutputDrive { get; init; }

    private double? Interface { get; init; }

    private double? ForceLoadingPoint { get; init; }

    private double Systematic { get; init; }

    /// <summary>The relative standard uncertainties from the ranges that were stated, in the order in which they are combined.</summary>
    private double[] Ranges => [.. new[] { Reproducibility, OutputDrive, Interface, ForceLoadingPoint }.OfType<double>()];

    /// <summary>The same with the resolution of the tool's scale or display; a tool without a scale has none.</summary>
    /// <param name="resolution">Resolution r. It is not compared with the torques of the points: a wrong unit shows in <see cref="At"/>.</param>
    /// <returns>A new value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The resolution is outside its domain.</exception>
    /// <example><code>uncertainty.WithResolution(Torque.FromNewtonMeters(0.1))</code></example>
    public CalibrationUncertainty WithResolution(Torque resolution) =>
        new(this) { Resolution = Domains.Torque.Check(resolution) };

    /// <summary>The same with the range of the means of repeated series.</summary>
    /// <param name="range">Greatest less least mean, b_rep.</param>
    /// <param name="at">Reference torque of the series.</param>
    /// <returns>A new value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A torque is outside its domain.</exception>
    /// <example><code>uncertainty.WithReproducibility(Torque.FromNewtonMeters(0.3), at: Torque.FromNewtonMeters(40))</code></example>
    public CalibrationUncertainty WithReproducibility(Torque range, Torque at) => new(this) { Reproducibility = ComponentOf(range, at) };

    /// <summary>The same with the range of the means over positions of the output drive.</summary>
    /// <param name="range">Greatest less least mean, b_od.</param>
    /// <param name="at">Reference torque of the series.</param>
    /// <returns>A new value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A torque is outside its domain.</exception>
    /// <example><code>uncertainty.WithOutputDrive(Torque.FromNewtonMeters(0.4), at: Torque.FromNewtonMeters(40))</code></example>
    public CalibrationUncertainty WithOutputDrive(Torque range, Torque at) => new(this) { OutputDrive = ComponentOf(range, at) };

    /// <summary>The same with the range of the means over positions of the drive interface between tool and reference.</summary>
    /// <param name="range">Greatest less least mean, b_int.</param>
    /// <param name="at">Reference torque of the series.</param>
    /// <returns>A new value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A torque is outside its domain.</exception>
    /// <example><code>uncertainty.WithInterface(Torque.FromNewtonMeters(0.2), at: Torque.FromNewtonMeters(40))</code></example>
    public CalibrationUncertainty WithInterface(Torque range, Torque at) => new(this) { Interface = ComponentOf(range, at) };

    /// <summary>The same with the range of the means over places of the hand on the grip.</summary>
    /// <param name="range">Greatest less least mean, b_l.</param>
    /// <param name="at">Reference torque of the series.</param>
    /// <returns>A new value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A torque is outside its domain.</exception>
    /// <example><code>uncertainty.WithForceLoadingPoint(Torque.FromNewtonMeters(0.6), at: Torque.FromNewtonMeters(40))</code></example>
    public CalibrationUncertainty WithForceLoadingPoint(Torque range, Torque at) => new(this) { ForceLoadingPoint = ComponentOf(range, at) };

    /// <summary>The same with a systematic deviation of the reference device that was not corrected.</summary>
    /// <param name="deviation">Systematic relative deviation b_ep, −10 to 10 %; its size counts in W' and in every decision, its sign does not.</param>
    /// <returns>A new value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The ratio is outside its domain.</exception>
    /// <example><code>uncertainty.WithSystematicDeviation(Ratio.FromPercent(0.1))</code></example>
    public CalibrationUncertainty WithSystematicDeviation(Ratio deviation) =>
        new(this) { Systematic = SystematicDomain.Check(deviation) };

    /// <summary>Relative uncertainty at one point, W = 2w: as <see cref="TorqueWrench.GuaranteedSettingFor"/> takes it.</summary>
    /// <param name="point">The point.</param>
    /// <returns>The uncertainty with k = 2, relative to the reference torque.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="point"/> is null.</exception>
    /// <example><code>uncertainty.At(point).ExpandedWith(coverageFactor: 2).Percent</code></example>
    public MeasurementUncertainty<Ratio> At(CalibrationPoint point) => new(ExpandedOf(null, Guard.NotNull(point)) / 2, 2);

    /// <summary>Relative uncertainty interval W' = |a_s| + |b_ep| + W at one point: how far a delivered torque may be off.</summary>
    /// <param name="point">The point.</param>
    /// <returns>W'.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="point"/> is null.</exception>
    /// <example><code>uncertainty.IntervalAt(point).Percent</code></example>
    public Ratio IntervalAt(CalibrationPoint point) => Si.Ratio(IntervalOf(null, Guard.NotNull(point)));

    /// <summary>The work behind <see cref="IntervalAt"/>, with that behind <see cref="At"/> in it.</summary>
    /// <param name="point">The point.</param>
    /// <returns>The steps; the last is W', bit for bit.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="point"/> is null.</exception>
    /// <example><code>Console.WriteLine(uncertainty.DeriveIntervalAt(point));</code></example>
    public Derivation DeriveIntervalAt(CalibrationPoint point)
    {
        var work = new Derivation(Print.Text($"uncertainty of the calibration at {Guard.NotNull(point).SiTorque:0.###} N·m"));
        IntervalOf(work, point);
        return work.KeepWhatCounts();
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"reference device {Si.Ratio(Reference):0.###}, {(Resolution is double resolution ? Print.Text($"resolution {resolution:0.####} N·m") : "no resolution stated")}, {Ranges.Length} of 4 ranges from varied conditions");

    internal double ExpandedOf(Derivation? work, CalibrationPoint point)
    {
        double combined = CalibrationEquations.ReferenceComponentEquation.Step(work, Reference);
        combined = Add(work, combined, CalibrationEquations.RangeComponentEquation.Step(work, Resolution ?? 0, point.MeanReference));
        combined = Add(work, combined, CalibrationEquations.RepeatabilityComponentEquation.Step(
            work, point.StandardDeviation, point.SiReferences.Length, point.MeanReference));
        foreach (double component in Ranges) combined = Add(work, combined, component);
        return CalibrationEquations.ExpandEquation.Step(work, combined);
    }

    /// <summary>What a decision counts: W, and the uncorrected deviation of the reference device.</summary>
    internal double DecidingAt(CalibrationPoint point) => ExpandedOf(null, point) + Math.Abs(Systematic);

    /// <summary>The same of the reference device alone.</summary>
    internal double DecidingReference => Reference + Math.Abs(Systematic);

    private static double Add(Derivation? work, double combined, double component) =>
        CalibrationEquations.CombineEquation.Step(work, combined, component);

    private double IntervalOf(Derivation? work, CalibrationPoint point) => CalibrationEquations.IntervalOfEquation.Step(
        work, CalibrationEquations.DeviationEquation.Step(work, point.SiTorque, point.MeanReference), Systematic, ExpandedOf(work, point));

    private static double ComponentOf(Torque range, Torque at)
    {
        double width = Domains.Torque.Check(range);
        double reference = Domains.PositiveTorque.Check(at);
        if (width > reference) Guard.RefuseAgainst(nameof(range), range, $"at most the torque it was found at, {Guard.ShowToCompare(at)}");
        return CalibrationEquations.RangeComponentEquation.Step(null, width, reference);
    }
}
