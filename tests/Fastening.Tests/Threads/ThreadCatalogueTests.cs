using System.Globalization;

namespace Fastening.Tests.Threads;

/// <summary>
/// The catalogue against tables of ISO 261:1998 and ASME B1.1 typed here a second time, from memory, by one who had seen the data files: this
/// guards against slips and edits, not against an error of the sources. The coarse pitches of ISO 261 are checked independently, by the printed
/// stress areas of ISO 898-1, in <see cref="ThreadGeometryTests"/>.
/// </summary>
public class ThreadCatalogueTests
{
    [Theory]
    [InlineData("M3", 0.5, "0.35")]
    [InlineData("M3.5", 0.6, "0.35")]
    [InlineData("M4", 0.7, "0.5")]
    [InlineData("M4.5", 0.75, "0.5")]
    [InlineData("M5", 0.8, "0.5")]
    [InlineData("M6", 1, "0.75")]
    [InlineData("M7", 1, "0.75")]
    [InlineData("M8", 1.25, "1 0.75")]
    [InlineData("M9", 1.25, "1 0.75")]
    [InlineData("M10", 1.5, "1.25 1 0.75")]
    [InlineData("M11", 1.5, "1 0.75")]
    [InlineData("M12", 1.75, "1.5 1.25 1")]
    [InlineData("M14", 2, "1.5 1.25 1")]
    [InlineData("M16", 2, "1.5 1")]
    [InlineData("M18", 2.5, "2 1.5 1")]
    [InlineData("M20", 2.5, "2 1.5 1")]
    [InlineData("M22", 2.5, "2 1.5 1")]
    [InlineData("M24", 3, "2 1.5 1")]
    [InlineData("M27", 3, "2 1.5 1")]
    [InlineData("M30", 3.5, "3 2 1.5 1")]
    [InlineData("M33", 3.5, "3 2 1.5")]
    [InlineData("M36", 4, "3 2 1.5")]
    public void Coarse_and_fine_pitches_of_ISO_261(string name, double coarse, string fine)
    {
        ThreadSize size = Assert.Single(ThreadStandard.IsoMetric.Catalogue.Sizes, s => s.Name == name);
        IEnumerable<double> expected = fine.Split(' ').Select(text => double.Parse(text, CultureInfo.InvariantCulture)).Prepend(coarse);

        Assert.Equal(expected, size.Threads.Select(t => t.Thread.Pitch.Millimeters));
        Assert.Equal(coarse, ScrewThread.Parse(name).Pitch.Millimeters);
        Assert.Equal(name, ScrewThread.Parse(name).Designation);
    }

    [Fact]
    public void Sizes_of_ISO_261_from_M3_to_M36_without_a_coarse_pitch() => Assert.Equal(
        ["M5.5", "M15", "M17", "M25", "M26", "M28", "M32", "M35"],
        ThreadStandard.IsoMetric.Catalogue.Sizes
            .Where(s => s.Diameter is >= 3_000_000 and <= 36_000_000 && s.Threads[0].Series != IsoMetricThreads.Coarse)
            .Select(s => s.Name));

    [Theory]
    [InlineData("1/4", 20, 28, 32)]
    [InlineData("5/16", 18, 24, 32)]
    [InlineData("3/8", 16, 24, 32)]
    [InlineData("7/16", 14, 20, 28)]
    [InlineData("1/2", 13, 20, 28)]
    [InlineData("9/16", 12, 18, 24)]
    [InlineData("5/8", 11, 18, 24)]
    [InlineData("3/4", 10, 16, 20)]
    [InlineData("7/8", 9, 14, 20)]
    [InlineData("1", 8, 12, 20)]
    [InlineData("1 1/8", 7, 12, 18)]
    [InlineData("1 1/4", 7, 12, 18)]
    [InlineData("1 3/8", 6, 12, 18)]
    [InlineData("1 1/2", 6, 12, 18)]
    public void Series_of_ASME_B1_1(string size, double coarse, double fine, double extraFine)
    {
        AssertThread($"{size}-{coarse} UNC", coarse);
        AssertThread($"{size}-{fine} UNF", fine);
        AssertThread($"{size}-{extraFine} UNEF", extraFine);
    }

    [Theory]
    [InlineData("#0", 0.060, null, 80)]
    [InlineData("#1", 0.073, 64, 72)]
    [InlineData("#2", 0.086, 56, 64)]
    [InlineData("#3", 0.099, 48, 56)]
    [InlineData("#4", 0.112, 40, 48)]
    [InlineData("#5", 0.125, 40, 44)]
    [InlineData("#6", 0.138, 32, 40)]
    [InlineData("#8", 0.164, 32, 36)]
    [InlineData("#10", 0.190, 24, 32)]
    [InlineData("#12", 0.216, 24, 28)]
    public void Numbered_sizes_of_ASME_B1_1(string size, double inches, int? coarse, int fine)
    {
        if (coarse is int threads) AssertThread($"{size}-{threads} UNC", threads, inches);
        AssertThread($"{size}-{fine} UNF", fine, inches);
    }

    [Theory]
    [InlineData("1 1/8-8 UN", 1.125, 8)]
    [InlineData("3/4-12 UN", 0.75, 12)]
    [InlineData("1-16 UN", 1, 16)]
    [InlineData("2-4.5 UNC", 2, 4.5)]
    [InlineData("4-4 UNC", 4, 4)]
    public void Constant_pitch_and_large_threads(string designation, double inches, double threadsPerInch) =>
        AssertThread(designation, threadsPerInch, inches);

    [Fact]
    public void Every_thread_is_found_by_its_own_designation_and_has_finite_ordered_dimensions()
    {
        List<CatalogueThread> all = [.. ThreadStandard.IsoMetric.Catalogue.Sizes.Concat(ThreadStandard.Unified.Catalogue.Sizes).SelectMany(s => s.Threads)];
        Assert.True(all.Count > 300, $"only {all.Count} threads");
        foreach (ScrewThread thread in all.Select(t => t.Thread))
        {
            Assert.Same(thread, ScrewThread.Parse(thread.Designation));
            ThreadGeometryTests.AssertOrdered(thread);
        }
    }

    [Fact]
    public void Sizes_ascend_and_no_size_has_a_pitch_twice()
    {
        foreach (IReadOnlyList<ThreadSize> sizes in new[] { ThreadStandard.IsoMetric.Catalogue.Sizes, ThreadStandard.Unified.Catalogue.Sizes })
        {
            Assert.Equal(sizes.OrderBy(s => s.Diameter).Select(s => s.Name), sizes.Select(s => s.Name));
            Assert.All(sizes, s => Assert.Equal(s.Threads.Count, s.Threads.Select(t => t.Pitch).Distinct().Count()));
        }
    }

    [Fact]
    public void Many_threads_of_execution_get_one_catalogue()
    {
        var found = new ScrewThread[64];
        Parallel.For(0, found.Length, i => found[i] = ScrewThread.Parse("M16"));

        Assert.All(found, thread => Assert.Same(found[0], thread));
    }

    private static void AssertThread(string designation, double threadsPerInch, double? inches = null)
    {
        ScrewThread thread = ScrewThread.Parse(designation);
        Assert.Equal(designation, thread.Designation);
        Assert.Equal(ThreadProfile.Unified, thread.Profile);
        Assert.Equal(25.4 / threadsPerInch, thread.Pitch.Millimeters, 12);
        if (inches is double diameter) Assert.Equal(diameter, thread.NominalDiameter.Inches, 12);
    }
}
