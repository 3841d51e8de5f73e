using System.Text.RegularExpressions;
using Fastening.Tests.House;

namespace Fastening.Tests.Docs;

/// <summary>Every C# block of the pages a person reads is a region of an asserted test, to the letter.</summary>
public partial class SnippetTests
{
    public static TheoryData<string> Pages => [.. PagesWithCode()];

    [Theory]
    [MemberData(nameof(Pages))]
    public void Code_on_the_page_is_code_that_was_run(string page)
    {
        string text = Repository.Read(page.Split('/'));
        Dictionary<string, string> regions = Regions();
        MatchCollection marked = Marked().Matches(text);
        Assert.Equal(Regex.Count(text, "^```csharp", RegexOptions.Multiline), marked.Count);
        foreach (Match match in marked)
        {
            string name = match.Groups[1].Value;
            Assert.True(regions.TryGetValue(name, out string? region), $"{page}: no region {name}");
            string code = match.Groups[2].Value.Replace("using Fastening;\nusing UnitsNet;\n\n", "", StringComparison.Ordinal);
            Assert.Equal(region, code);
        }
    }

    [Fact]
    public void First_example_is_short_and_needs_one_using_beside_UnitsNet()
    {
        Match first = Marked().Match(Repository.Read("README.md"));
        string code = first.Groups[2].Value;
        Assert.StartsWith("using Fastening;\nusing UnitsNet;\n\n", code, StringComparison.Ordinal);
        Assert.InRange(code.Split('\n').Count(line => line.Length > 0 && !line.StartsWith("using ", StringComparison.Ordinal)), 5, 20);
    }

    [Fact]
    public void The_sheet_in_the_readme_is_what_the_job_prints()
    {
        string readme = Repository.Read("README.md");
        int begin = readme.IndexOf("```\nTarget at the fastener", StringComparison.Ordinal) + 4;
        string[] shown = readme[begin..readme.IndexOf("```", begin, StringComparison.Ordinal)].Split('\n', StringSplitOptions.RemoveEmptyEntries);
        string[] printed = Repository.Read("docs", "examples", "pump-cover.expected.txt").Split('\n');
        Assert.True(shown.Length >= 8);
        Assert.All(shown.Where(line => line != "..."), line => Assert.Contains(line, printed));
    }

    [Fact]
    public void Links_between_the_pages_lead_somewhere()
    {
        string[] pages = [.. Directory.EnumerateFiles(Path.Combine(Repository.Root, "docs"), "*.md", SearchOption.AllDirectories), Path.Combine(Repository.Root, "README.md"), Path.Combine(Repository.Root, "DEVELOPERS.md")];
        foreach (string page in pages.Where(p => !p.Contains($"{Path.DirectorySeparatorChar}out{Path.DirectorySeparatorChar}", StringComparison.Ordinal)))
        {
            foreach (Match link in Link().Matches(File.ReadAllText(page)))
            {
                string target = Path.Combine(Path.GetDirectoryName(page)!, link.Groups[1].Value);
                Assert.True(File.Exists(target) || Directory.Exists(target), $"{Path.GetFileName(page)} links {link.Groups[1].Value}");
            }
        }
    }

    [Fact]
    public void Every_region_is_shown_on_a_page()
    {
        string pages = string.Concat(PagesWithCode().Select(p => Repository.Read(p.Split('/'))));
        Assert.All(Regions().Keys, name => Assert.Contains($"<!-- code: {name} -->", pages, StringComparison.Ordinal));
    }

    private static IEnumerable<string> PagesWithCode() =>
        Directory.EnumerateFiles(Path.Combine(Repository.Root, "docs", "guide"), "*.md")
            .Select(f => "docs/guide/" + Path.GetFileName(f)).Order(StringComparer.Ordinal).Prepend("README.md");

    private static Dictionary<string, string> Regions()
    {
        var regions = new Dictionary<string, string>();
        foreach (string file in Directory.EnumerateFiles(Path.Combine(Repository.Root, "tests", "Fastening.Tests", "Docs"), "*Examples.cs"))
        {
            foreach (Match match in Region().Matches(File.ReadAllText(file).ReplaceLineEndings("\n")))
            {
                regions.Add(match.Groups[1].Value, Regex.Replace(match.Groups[2].Value, "^        ", "", RegexOptions.Multiline));
            }
        }

        return regions;
    }

    [GeneratedRegex(@"<!-- code: ([\w-]+) -->\n```csharp\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Marked();

    [GeneratedRegex(@"\]\(((?!#|\w+:)[^)#]+)")]
    private static partial Regex Link();

    [GeneratedRegex(@"#region ([\w-]+)\n(.*?) *#endregion", RegexOptions.Singleline)]
    private static partial Regex Region();
}
