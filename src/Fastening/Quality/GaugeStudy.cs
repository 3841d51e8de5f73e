using Fastening.Equations;
using Fastening.Internals;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace Fastening.Quality;

/// <summary>Creates gauge studies: how much of the scatter of readings is the gauge's own and the appraisers', and how much the parts'.</summary>
/// <remarks>
/// Common practice (AIAG, Measurement Systems Analysis, 4th ed., from memory). Every appraiser measures every part equally often. The two methods
/// differ where appraisers and parts interact, which average and range does not see.
/// </remarks>
/// <example><code>GaugeStudy&lt;Torque&gt; study = GaugeStudy.Anova(readings);
/// Console.WriteLine(study);     // gauge 27.9 % of the study (repeatability 18.4 %, reproducibility 20.9 %), 4 categories</code></example>
public static class GaugeStudy
{
    /// <summary>Average and range: repeatability from the ranges of the trials, reproducibility and parts from the ranges of their means.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="readings">The readings in any order: at least 2 parts, 2 appraisers, 2 trials.</param>
    /// <returns>The study; without an interaction.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> or one of them is null.</exception>
    /// <exception cref="ArgumentException">The readings are too few, or not equally many in every cell.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The trials do not scatter: the study is undefined.</exception>
    /// <example><code>GaugeStudy&lt;Torque&gt; study = GaugeStudy.AverageAndRange(readings);</code></example>
    public static GaugeStudy<TQuantity> AverageAndRange<TQuantity>(IReadOnlyList<GaugeReading<TQuantity>> readings)
        where TQuantity : struct, IQuantity
    {
        GaugeTable table = GaugeTable.Of(readings, nameof(readings));
        GaugeRanges ranges = GaugeRanges.Of(table);
        double repeatability = Repeating<TQuantity>(
            GaugeEquations.Repeatability(ranges.OfTrials, ControlChart.ForSubgroupsOf(table.Trials).RangeMean), nameof(readings));
        double reproducibility = GaugeEquations.Reproducibility(ranges.OfAppraisers, RangeOfOne(table.Appraisers), repeatability, table.Parts * table.Trials);
        return new(ranges, repeatability, reproducibility, ranges.OfParts / RangeOfOne(table.Parts));
    }

    /// <summary>Analysis of variance, parts and appraisers random, their interaction counted as reproducibility.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="readings">The readings in any order: at least 2 parts, 2 appraisers, 2 trials.</param>
    /// <returns>The study, with the probability of so large an interaction by chance.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> or one of them is null.</exception>
    /// <exception cref="ArgumentException">The readings are too few, or not equally many in every cell.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The trials do not scatter: the study is undefined.</exception>
    /// <example><code>GaugeStudy&lt;Torque&gt; study = GaugeStudy.Anova(readings);</code></example>
    public static GaugeStudy<TQuantity> Anova<TQuantity>(IReadOnlyList<GaugeReading<TQuantity>> readings)
        where TQuantity : struct, IQuantity
    {
        GaugeTable table = GaugeTable.Of(readings, nameof(readings));
        MeanSquares squares = MeanSquares.Of(table);
        double repeatability = Repeating<TQuantity>(Math.Sqrt(squares.Error), nameof(readings));
        double interaction = Component(squares.Interaction - squares.Error, table.Trials);
        double appraisers = Component(squares.Appraisers - squares.Interaction, table.Parts * table.Trials);
        double parts = Component(squares.Parts - squares.Interaction, table.Appraisers * table.Trials);
        return new(GaugeRanges.Of(table), repeatability, Math.Sqrt(appraisers + interaction), Math.Sqrt(parts), Math.Sqrt(interaction), squares.ChanceOfInteraction);
    }

    /// <summary>Analysis of variance with the interaction taken as repeatability: for when it is not more than chance brings.</summary>
    /// <typeparam name="TQuantity">The quantity.</typeparam>
    /// <param name="readings">The readings in any order: at least 2 parts, 2 appraisers, 2 trials.</param>
    /// <returns>The study, with the probability of so large an interaction by chance.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="readings"/> or one of them is null.</exception>
    /// <exception cref="ArgumentException">The readings are too few, or not equally many in every cell.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The trials do not scatter: the study is undefined.</exception>
    /// <example><code>GaugeStudy&lt;Torque&gt; study = GaugeStudy.AnovaWithoutInteraction(readings);</code></example>
    public static GaugeStudy<TQuantity> AnovaWithoutInteraction<TQuantity>(IReadOnlyList<GaugeReading<TQuantity>> readings)
        where TQuantity : struct, IQuantity
    {
        GaugeTable table = GaugeTable.Of(readings, nameof(readings));
        MeanSquares squares = MeanSquares.Of(table);
        Repeating<TQuantity>(Math.Sqrt(squares.Error), nameof(readings));
        double appraisers = Component(squares.Appraisers - squares.Pooled, table.Parts * table.Trials);
        double parts = Component(squares.Parts - squares.Pooled, table.Appraisers * table.Trials);
        return new(GaugeRanges.Of(table), Math.Sqrt(squares.Pooled), Math.Sqrt(appraisers), Math.Sqrt(parts), 0, squares.ChanceOfInteraction);
    }

    private static double Repeating<TQuantity>(double repeatability, string name)
        where TQuantity : struct, IQuantity
    {
        if (Domains.StandardDeviation.Contains(repeatability)) return repeatability;
        throw new ArgumentOutOfRangeException(
            name,
            $"{name} is a study with a repeatability of {Print.Quantity<TQuantity>(repeatability)}; it must be {ShopScale.Of<TQuantity>().Describe(Domains.StandardDeviation)}."
                + (repeatability == 0 ? " No trial differs from another of the same part by the same appraiser: the gauge shows steps too coarse for a study." : ""));
    }

    private static double RangeOfOne(int size)
    {
        ControlChart chart = ControlChart.ForSubgroupsOf(size);
        return GaugeEquations.RangeRootMeanSquare(chart.RangeMean, chart.RangeDeviation, 1);
    }

    private static double Component(double difference, int readings) => Math.Max(0, difference) / readings;

    /// <summary>Sums of squares over their degrees of freedom.</summary>
    private readonly record struct MeanSquares(double Parts, double Appraisers, double Interaction, double Error, double Pooled, double ChanceOfInteraction)
    {
        public static MeanSquares Of(GaugeTable table)
        {
            int parts = table.Parts - 1, appraisers = table.Appraisers - 1, interaction = parts * appraisers;
            int error = table.Parts * table.Appraisers * (table.Trials - 1);
            double interactionSquares = table.Trials * table.InteractionSquares();
            double errorSquares = table.Cells.Sum(cell => SampleMoments.SquaredDeviations(cell));
            double ratio = interactionSquares / interaction / (errorSquares / error);
            return new(
                table.Appraisers * table.Trials * SampleMoments.SquaredDeviations(table.PartMeans) / parts,
                table.Parts * table.Trials * SampleMoments.SquaredDeviations(table.AppraiserMeans) / appraisers,
                interactionSquares / interaction,
                errorSquares / error,
                (interactionSquares + errorSquares) / (interaction + error),
                errorSquares > 0 ? 1 - FisherSnedecor.CDF(interaction, error, ratio) : 0);
        }
    }
}
