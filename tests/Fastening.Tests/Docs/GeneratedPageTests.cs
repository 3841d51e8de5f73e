using Fastening.Tests.House;

namespace Fastening.Tests.Docs;

/// <summary>Generated pages are committed and compared; FASTENING_WRITE_DOCS=1 writes them anew instead.</summary>
public class GeneratedPageTests
{
    [Fact]
    public void Equations_page_is_what_the_library_prints()
    {
        string[] path = ["docs", "equations.md"];
        string written = EquationsPage.Write();
        if (Environment.GetEnvironmentVariable("FASTENING_WRITE_DOCS") == "1") File.WriteAllText(Path.Combine([Repository.Root, .. path]), written);
        Assert.Equal(written, Repository.Read(path));
    }
}
