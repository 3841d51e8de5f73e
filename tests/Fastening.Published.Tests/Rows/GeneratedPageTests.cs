using System.Reflection;

namespace Fastening.Published.Tests;

/// <summary>The committed page is what the tests compute; FASTENING_WRITE_DOCS=1 writes it anew instead.</summary>
public sealed class GeneratedPageTests
{
    [Fact]
    public void Page_of_published_values_is_up_to_date()
    {
        string root = Assembly.GetExecutingAssembly().GetCustomAttributes<AssemblyMetadataAttribute>().Single(a => a.Key == "RepositoryRoot").Value!;
        string path = Path.Combine(root, "docs", "verification", "published.md");
        string written = PublishedPage.Write();
        if (Environment.GetEnvironmentVariable("FASTENING_WRITE_DOCS") == "1") File.WriteAllText(path, written);
        Assert.Equal(written, File.ReadAllText(path).ReplaceLineEndings("\n"));
    }
}
