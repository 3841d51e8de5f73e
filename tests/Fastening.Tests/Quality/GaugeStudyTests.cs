using Fastening.Quality;
using UnitsNet;

namespace Fastening.Tests.Quality;

/// <summary>
/// The example of AIAG, Measurement Systems Analysis, 4th ed.: 10 parts, 3 appraisers, 3 trials. Data and results from memory; that the data
/// give the printed mean ranges 0.184, 0.513, 0.328 and the results to their digits shows that they are the right ones.
/// </summary>
public class GaugeStudyTests
{
    private const string Printed =
        """
        0.29 -0.56 1.34 0.47 -0.80 0.02 0.59 -0.31 2.26 -1.36
        0.41 -0.68 1.17 0.50 -0.92 -0.11 0.75 -0.20 1.99 -1.25
        0.64 -0.58 1.27 0.64 -0.84 -0.21 0.66 -0.17 2.01 -1.31
        0.08 -0.47 1.19 0.01 -0.56 -0.20 0.47 -0.63 1.80 -1.68
        0.25 -1.22 0.94 1.03 -1.20 0.22 0.55 0.08 2.12 -1.62
        0.07 -0.68 1.34 0.20 -1.28 0.06 0.83 -0.34 2.19 -1.50
        0.04 -1.38 0.88 0.14 -1.46 -0.29 0.02 -0.46 1.77 -1.49
        -0.11 -1.13 1.09 0.20 -1.07 -0.67 0.01 -0.56 1.45 -1.77
        -0.15 -0.96 0.67 0.11 -1.45 -0.49 0.21 -0.49 1.87 -2.16
        """;

    private static readonly double[][] Rows =
    [
        .. Printed.Split('\n').Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(x => double.Parse(x, System.Globalization.CultureInfo.InvariantCulture)).ToArray()),
    ];

    [Fact]
    public void Average_and_range_of_the_printed_example()
    {
        GaugeStudy<Torque> study = GaugeStudy.AverageAndRange(Example());
        Assert.Equal(0.20188, study.Repeatability.NewtonMeters, 5e-5);

        // Printed from the rounded range of means, 0.4446, and the rounded factor 0.5231.
        Assert.Equal(0.22963, study.Reproducibility.NewtonMeters, 1e-4);
        Assert.Equal(0.30575, study.Gauge.NewtonMeters, 1e-4);
        Assert.Equal(1.10456, study.PartVariation.NewtonMeters, 2e-4);
        Assert.Equal(1.14610, study.TotalVariation.NewtonMeters, 2e-4);
        Assert.Equal(17.62, study.RepeatabilityShare.Percent, 0.01);
        Assert.Equal(20.04, study.ReproducibilityShare.Percent, 0.01);
        Assert.Equal(26.68, study.GaugeShare.Percent, 0.01);
        Assert.Equal(96.38, study.PartShare.Percent, 0.01);
        Assert.Equal(5, study.DistinctCategories);
        Assert.Null(study.ChanceOfInteraction);

        // The form prints R̄ 0.3417, X̄diff 0.4446 and R_p 3.511.
        Assert.Equal(0.3417, study.MeanRange.NewtonMeters, 5e-5);
        Assert.Equal(0.4446, study.RangeOfAppraiserMeans.NewtonMeters, 1e-4);
        Assert.Equal(3.511, study.RangeOfPartMeans.NewtonMeters, 5e-4);
        Assert.Equal(study.MeanRange, GaugeStudy.Anova(Example()).MeanRange);
    }

    [Fact]
    public void Analysis_of_variance_of_the_printed_example()
    {
        GaugeStudy<Torque> study = GaugeStudy.AnovaWithoutInteraction(Example());
        Assert.Equal(0.199933, study.Repeatability.NewtonMeters, 1e-6);
        Assert.Equal(0.226838, study.Reproducibility.NewtonMeters, 1e-6);
        Assert.Equal(0.302373, study.Gauge.NewtonMeters, 2e-6);
        Assert.Equal(1.042327, study.PartVariation.NewtonMeters, 1e-6);
        Assert.Equal(27.9, study.GaugeShare.Percent, 0.05);
        Assert.Equal(4, study.DistinctCategories);
        Assert.InRange(study.ChanceOfInteraction!.Value, 0.97, 0.98);
    }

    [Fact]
    public void Analysis_of_variance_by_sums_of_squares()
    {
        // The other route: raw sums of squares of the totals over the correction term, no means and no deviations.
        double[][] interacting = [.. Rows.Select((row, i) => row.Select((x, part) => x + (i / 3 == part % 3 ? 0.4 : 0)).ToArray())];
        double correction = Math.Pow(interacting.Sum(r => r.Sum()), 2) / 90;
        double all = interacting.Sum(r => r.Sum(x => x * x)) - correction;
        double parts = Enumerable.Range(0, 10).Sum(p => Math.Pow(interacting.Sum(r => r[p]), 2)) / 9 - correction;
        double appraisers = Enumerable.Range(0, 3).Sum(a => Math.Pow(Trials(interacting, a).Sum(r => r.Sum()), 2)) / 30 - correction;
        double cells = Enumerable.Range(0, 3).Sum(a => Enumerable.Range(0, 10).Sum(p => Math.Pow(Trials(interacting, a).Sum(r => r[p]), 2))) / 3 - correction;
        double error = (all - cells) / 60, interaction = (cells - parts - appraisers) / 18;

        GaugeStudy<Torque> study = GaugeStudy.Anova(Example(interacting));
        Close.To(Math.Sqrt(error), study.Repeatability.NewtonMeters, 1e-11);
        Close.To(Math.Sqrt((interaction - error) / 3), study.Interaction.NewtonMeters, 1e-11);
        double between = Math.Max(0, (appraisers / 2 - interaction) / 30);
        Close.To(Math.Sqrt(between + (interaction - error) / 3), study.Reproducibility.NewtonMeters, 1e-11);
        Close.To(Math.Sqrt((parts / 9 - interaction) / 9), study.PartVariation.NewtonMeters, 1e-11);
        Assert.InRange(study.ChanceOfInteraction!.Value, 0, 0.05);
        Close.To(Math.Sqrt((all - parts - appraisers) / 78), GaugeStudy.AnovaWithoutInteraction(Example(interacting)).Repeatability.NewtonMeters, 1e-11);
    }

    [Theory]
    [InlineData(2, 0.7071)]
    [InlineData(3, 0.5231)]
    [InlineData(4, 0.4467)]
    [InlineData(5, 0.4030)]
    [InlineData(6, 0.3742)]
    [InlineData(7, 0.3534)]
    [InlineData(8, 0.3375)]
    [InlineData(9, 0.3249)]
    [InlineData(10, 0.3146)]
    public void Factor_of_the_range_of_parts_is_that_of_the_table(int parts, double k3)
    {
        // AIAG MSA, 4th ed., K3 and K2, from memory: parts with means 0 … 1 and trials that differ by a hair.
        GaugeReading<Torque>[] readings =
        [
            .. from part in Enumerable.Range(0, parts)
               from appraiser in new[] { "A", "B" }
               from trial in new[] { -1e-3, 1e-3 }
               select new GaugeReading<Torque>($"{part}", appraiser, Torque.FromNewtonMeters(part / (parts - 1.0) + trial)),
        ];
        Assert.Equal(k3, GaugeStudy.AverageAndRange(readings).PartVariation.NewtonMeters, 6e-5);
    }

    [Fact]
    public void Order_zero_and_unit_do_not_matter()
    {
        GaugeReading<Torque>[] shuffled = [.. Example()];
        new Random(4).Shuffle(shuffled);
        GaugeReading<Length>[] lengths = [.. shuffled.Select(r => new GaugeReading<Length>(r.Part, r.Appraiser, Length.FromMillimeters(1e5 + r.Reading.NewtonMeters)))];
        foreach ((GaugeStudy<Torque> torque, GaugeStudy<Length> length) in new[]
            {
                (GaugeStudy.AverageAndRange(Example()), GaugeStudy.AverageAndRange(lengths)),
                (GaugeStudy.Anova(Example()), GaugeStudy.Anova(lengths)),
            })
        {
            Close.To(torque.Repeatability.NewtonMeters, length.Repeatability.Millimeters, 1e-8);
            Close.To(torque.Reproducibility.NewtonMeters, length.Reproducibility.Millimeters, 1e-8);
            Close.To(torque.PartVariation.NewtonMeters, length.PartVariation.Millimeters, 1e-8);
            Assert.Equal(torque.DistinctCategories, length.DistinctCategories);
        }
    }

    [Fact]
    public void Gauge_against_a_window()
    {
        GaugeStudy<Torque> study = GaugeStudy.AverageAndRange(Example());
        ToleranceWindow<Torque> window = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(-3), Torque.FromNewtonMeters(5));
        Close.To(100 * 6 * study.Gauge.NewtonMeters / 8, study.GaugeShareOf(window).Percent);
        Assert.Throws<ArgumentException>(() => study.GaugeShareOf(ToleranceWindow.FromLimits(Torque.Zero, Torque.Zero)));
        CommaCulture.Run(() => Assert.Equal("gauge 26.7 % of the study (repeatability 17.6 %, reproducibility 20 %), 5 categories", study.ToString()));
        Assert.Equal("2, A: -0.56 N·m", Example()[1].ToString());
    }

    [Fact]
    public void A_gauge_that_adds_nothing_else_has_no_reproducibility()
    {
        // Two appraisers with the same readings: the repeatability in their means is taken off, and no less than nothing is left.
        GaugeReading<Torque>[] twins = [.. Example().Where(r => r.Appraiser == "A").SelectMany(r => new[] { r, new GaugeReading<Torque>(r.Part, "twin", r.Reading) })];
        Assert.Equal(0, GaugeStudy.AverageAndRange(twins).Reproducibility.NewtonMeters);
        Assert.Equal(0, GaugeStudy.Anova(twins).Reproducibility.NewtonMeters);
    }

    /// <summary>Appraiser B left out the second trial of part 7: of 89 readings the odd cell is that one, not the first with three.</summary>
    [Fact]
    public void A_missing_reading_is_named_where_it_is_missing()
    {
        GaugeReading<Torque>[] lacking = [.. Example().Where((_, i) => i != 46)];
        Assert.Equal(
            "readings has 2 trials of part '7' by 'B', of the others 3; every appraiser must measure every part equally often. (Parameter 'readings')",
            Assert.Throws<ArgumentException>(() => GaugeStudy.Anova(lacking)).Message);
        GaugeReading<Torque>[] strange = [.. Example().Select((r, i) => i == 20 ? new GaugeReading<Torque>(r.Part, "a", r.Reading) : r)];
        string several = Assert.Throws<ArgumentException>(() => GaugeStudy.AverageAndRange(strange)).Message;
        Assert.StartsWith("readings has 2 trials of part '1' by 'A', 0 trials of part '2' by 'a'", several.Replace("1 trials of part '1' by 'a', ", ""), StringComparison.Ordinal);
        Assert.Contains(" more such, of the others 3;", several, StringComparison.Ordinal);
    }

    /// <summary>The sample scatters (parts and appraisers differ): what is still is the repetition, and the text must say so.</summary>
    [Fact]
    public void A_repeatability_of_nothing_is_called_that()
    {
        GaugeReading<Torque>[] still =
        [
            .. from part in Enumerable.Range(0, 3) from appraiser in new[] { "A", "B" } from trial in new[] { 1, 2 }
               select new GaugeReading<Torque>($"{part}", appraiser, Torque.FromNewtonMeters(50 + part + (appraiser == "A" ? 0.5 : 0))),
        ];
        foreach (Func<IReadOnlyList<GaugeReading<Torque>>, object> study in new Func<IReadOnlyList<GaugeReading<Torque>>, object>[]
            { GaugeStudy.AverageAndRange, GaugeStudy.Anova, GaugeStudy.AnovaWithoutInteraction })
        {
            string refusal = Assert.Throws<ArgumentOutOfRangeException>(() => study(still)).Message;
            Assert.StartsWith("readings is a study with a repeatability of 0 N·m; it must be at least ", refusal, StringComparison.Ordinal);
            Assert.Contains("No trial differs from another of the same part by the same appraiser", refusal, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Studies_that_are_none_are_refused()
    {
        GaugeReading<Torque>[] example = Example();
        foreach (Func<IReadOnlyList<GaugeReading<Torque>>, object> study in new Func<IReadOnlyList<GaugeReading<Torque>>, object>[]
            { GaugeStudy.AverageAndRange, GaugeStudy.Anova, GaugeStudy.AnovaWithoutInteraction })
        {
            Assert.Throws<ArgumentException>(() => study([]));
            Assert.Throws<ArgumentException>(() => study([.. example.Where(r => r.Appraiser == "B")]));
            Assert.Throws<ArgumentException>(() => study([.. example.Where(r => r.Part == "3")]));
            Assert.Throws<ArgumentException>(() => study([.. example.Take(30).Concat(example.Skip(60)).Take(40)]));
            Assert.Contains("'3'", Assert.Throws<ArgumentException>(() => study([.. example.Append(new("3", "A", Torque.Zero))])).Message, StringComparison.Ordinal);
            Assert.Throws<ArgumentNullException>(() => study([example[0], null!]));
            GaugeReading<Torque>[] coarse = [.. example.Select(r => new GaugeReading<Torque>(r.Part, r.Appraiser, Torque.FromNewtonMeters(10)))];
            Assert.Equal("readings", Assert.Throws<ArgumentOutOfRangeException>(() => study(coarse)).ParamName);
        }
    }

    private static IEnumerable<double[]> Trials(double[][] rows, int appraiser) => rows.Skip(3 * appraiser).Take(3);

    private static GaugeReading<Torque>[] Example() => Example(Rows);

    private static GaugeReading<Torque>[] Example(double[][] rows) =>
    [
        .. rows.SelectMany((row, i) => row.Select((x, part) => new GaugeReading<Torque>($"{part + 1}", "ABC".Substring(i / 3, 1), Torque.FromNewtonMeters(x)))),
    ];
}
