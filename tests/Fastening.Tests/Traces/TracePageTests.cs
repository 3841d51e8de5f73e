using System.Text;
using Fastening.Tests.House;

namespace Fastening.Tests.Traces;

/// <summary>The page and its pictures are committed and compared; FASTENING_WRITE_DOCS=1 writes them anew instead.</summary>
public class TracePageTests
{
    [Fact]
    public void The_page_of_errors_is_what_the_analysis_makes() => Compare(TracePages.Page(), "docs", "verification", "traces.md");

    [Fact]
    public void Twelve_pictures_are_what_the_analysis_makes_and_name_their_source()
    {
        (string Name, string Svg)[] pictures = [.. TracePages.Pictures()];
        Assert.Equal(12, pictures.Length);
        Assert.All(pictures, picture =>
        {
            Assert.InRange(Encoding.UTF8.GetByteCount(picture.Svg), 2000, 60_000);
            Assert.Contains("Licence: ", picture.Svg, StringComparison.Ordinal);
            Compare(picture.Svg, "docs", "verification", "traces", picture.Name);
        });
    }

    [Fact]
    public void The_record_of_the_example_is_what_the_generator_makes() => Compare(TracePages.DemoRecord(), "docs", "examples", "read-a-trace.csv");

    private static void Compare(string written, params string[] path)
    {
        if (Environment.GetEnvironmentVariable("FASTENING_WRITE_DOCS") == "1") File.WriteAllText(Path.Combine([Repository.Root, .. path]), written);
        Assert.Equal(written, Repository.Read(path));
    }
}
