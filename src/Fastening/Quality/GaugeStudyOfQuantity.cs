using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

/// <summary>The scatter of a gauge study and where it comes from, each as a standard deviation.</summary>
/// <typeparam name="TQuantity">Torque, Angle, Force, RotationalSpeed or Length.</typeparam>
/// <remarks>Shares are of the total variation of the study and do not add up to 100 %: variances do. Equations gauge.*.</remarks>
/// <example><code>if (study.GaugeShareOf(window).Percent > 30) { /* the wrench cannot judge this window */ }</code></example>
public sealed class GaugeStudy<TQuantity>
    where TQuantity : struct, IQuantity
{
    private readonly GaugeRanges _ranges;
    private readonly double _repeatability;
    private readonly double _reproducibility;
    private readonly double _interaction;
    private readonly double _gauge;
    private readonly double _parts;
    private readonly double _total;

    internal GaugeStudy(GaugeRanges ranges, double repeatability, double reproducibility, double parts, double interaction = 0, double? chanceOfInteraction = null)
    {
        _ranges = ranges;
        (_repeatability, _reproducibility, _parts, _interaction) = (repeatability, reproducibility, parts, interaction);
        _gauge = GaugeEquations.GaugeVariation(repeatability, reproducibility);
        _total = GaugeEquations.TotalVariation(_gauge, parts);
        ChanceOfInteraction = chanceOfInteraction;
    }

    /// <summary>R̄: mean of the ranges of the trials, over all parts and appraisers.</summary>
    public TQuantity MeanRange => Si.Make<TQuantity>(_ranges.OfTrials);

    /// <summary>X̄diff: greatest less least mean of an appraiser.</summary>
    public TQuantity RangeOfAppraiserMeans => Si.Make<TQuantity>(_ranges.OfAppraisers);

    /// <summary>R_p: greatest less least mean of a part.</summary>
    public TQuantity RangeOfPartMeans => Si.Make<TQuantity>(_ranges.OfParts);

    /// <summary>Repeatability (equipment variation): one appraiser, one part, again and again.</summary>
    public TQuantity Repeatability => Si.Make<TQuantity>(_repeatability);

    /// <summary>Reproducibility (appraiser variation), with the interaction where it was counted.</summary>
    public TQuantity Reproducibility => Si.Make<TQuantity>(_reproducibility);

    /// <summary>The interaction of appraisers and parts inside the reproducibility; zero where it was not counted.</summary>
    public TQuantity Interaction => Si.Make<TQuantity>(_interaction);

    /// <summary>Repeatability and reproducibility together: the gauge.</summary>
    public TQuantity Gauge => Si.Make<TQuantity>(_gauge);

    /// <summary>Variation from part to part.</summary>
    public TQuantity PartVariation => Si.Make<TQuantity>(_parts);

    /// <summary>Total variation of the study.</summary>
    public TQuantity TotalVariation => Si.Make<TQuantity>(_total);

    /// <summary>Probability that chance alone brings so large an interaction (F test); null for average and range, which does not see it.</summary>
    public double? ChanceOfInteraction { get; }

    /// <summary>Repeatability as a share of the total variation.</summary>
    public Ratio RepeatabilityShare => Si.Ratio(_repeatability / _total);

    /// <summary>Reproducibility as a share of the total variation.</summary>
    public Ratio ReproducibilityShare => Si.Ratio(_reproducibility / _total);

    /// <summary>The gauge as a share of the total variation.</summary>
    public Ratio GaugeShare => Si.Ratio(_gauge / _total);

    /// <summary>Part variation as a share of the total variation.</summary>
    public Ratio PartShare => Si.Ratio(_parts / _total);

    /// <summary>Number of distinct categories: 1.41 times part variation over gauge, cut to a whole number, at least 1.</summary>
    public int DistinctCategories => (int)Math.Min(int.MaxValue, Math.Max(1, Math.Floor(GaugeEquations.DistinctCategories(_parts, _gauge))));

    /// <summary>Six standard deviations of the gauge as a share of the width of a window.</summary>
    /// <param name="window">The window, with limits that differ.</param>
    /// <returns>The share.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="window"/> is null.</exception>
    /// <exception cref="ArgumentException">The limits are equal, or there is only one.</exception>
    /// <example><code>double percent = study.GaugeShareOf(window).Percent;</code></example>
    public Ratio GaugeShareOf(ToleranceWindow<TQuantity> window)
    {
        WindowLimits limits = Guard.NotNull(window).BothLimits(nameof(window));
        double width = limits.Upper - limits.Lower;
        if (width < Domains.StandardDeviation.Low) throw new ArgumentException("window has no width; its limits must differ.", nameof(window));
        return Si.Ratio(6 * _gauge / width);
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"gauge {GaugeShare:0.#} of the study (repeatability {RepeatabilityShare:0.#}, reproducibility {ReproducibilityShare:0.#}), {DistinctCategories} categories");
}
