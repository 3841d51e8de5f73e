using Fastening.Internals;

namespace Fastening.Tests.Internals;

public class DataFileTests
{
    [Fact]
    public void Comments_and_empty_lines_are_skipped_and_cells_found_by_column()
    {
        DataRow row = Assert.Single(Read("# provenance, of course\n\nname,pitch_mm,fine_mm\nM8,1.25,1 0.75\n"));

        Assert.Equal("M8", row["name"]);
        Assert.Equal([1, 0.75], row.Numbers("fine_mm"));
        CommaCulture.Run(() => Assert.Equal(1.25, row.Number("pitch_mm")));
    }

    [Fact]
    public void An_empty_cell_has_no_numbers() => Assert.Empty(Assert.Single(Read("a,b\n1,\n")).Numbers("b"));

    [Theory]
    [InlineData("a,b\n1\n", "line 2")]
    [InlineData("a,b\n1,2,3\n", "line 2")]
    [InlineData("# x\na,b\n\"1\",2\n", "line 3")]
    public void A_malformed_row_is_refused(string text, string place) =>
        Assert.Contains(place, Assert.Throws<InvalidDataException>(() => Read(text)).Message, StringComparison.Ordinal);

    [Fact]
    public void A_missing_column_a_missing_number_and_a_missing_file_are_refused()
    {
        DataRow row = Assert.Single(Read("a,b\nx,\n"));
        Assert.Throws<InvalidDataException>(() => row["c"]);
        Assert.Throws<InvalidDataException>(() => row.Number("a"));
        Assert.Throws<InvalidDataException>(() => row.Number("b"));
        Assert.Throws<InvalidDataException>(() => DataFile.Read("no-such-file.csv"));
    }

    /// <summary>Every data file of the package names its standard with edition and says how sure each row is.</summary>
    [Fact]
    public void Data_files_state_standard_and_confidence()
    {
        System.Reflection.Assembly package = typeof(ScrewThread).Assembly;
        string[] files = [.. package.GetManifestResourceNames().Where(name => name.EndsWith(".csv", StringComparison.Ordinal))];
        Assert.NotEmpty(files);
        foreach (string file in files)
        {
            using var reader = new StreamReader(package.GetManifestResourceStream(file)!);
            string text = reader.ReadToEnd();
            Assert.Matches(@"^# .*(19|20)\d\d", text);
            Assert.Contains("\n# confidence: ", text, StringComparison.Ordinal);
            Assert.Matches(@"(?m)^[^#].*confidence", text);
            Assert.NotEmpty(DataFile.Read(file));
        }
    }

    private static IReadOnlyList<DataRow> Read(string text) => DataFile.Read(new StringReader(text), "test");
}
