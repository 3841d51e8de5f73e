using System.Reflection;
using System.Runtime.Loader;
using Fastening.Tests.House;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Fastening.Tests.Procedures;

/// <summary>
/// The rules of jobs with one of them changed, compiled beside the checks that have to notice it. It goes by the name of these tests, so that it sees what is internal in the
/// library; its own types of the same names come first (CS0436).
/// </summary>
internal static class ChangedLibrary
{
    private const string Usings = """
        global using System;
        global using System.Collections.Generic;
        global using System.IO;
        global using System.Linq;
        global using System.Threading;
        global using System.Threading.Tasks;
        """;

    private const string Entry = """
        namespace Fastening.Tests.Procedures;
        public static class Checks
        {
            public static string Complaints(int firstSeed, int days) => string.Join("\n",
                JobCases.All.Select(one => (one.Name, Complaint: one.Complaint())).Where(one => one.Complaint is not null).Select(one => one.Name + ": " + one.Complaint)
                .Concat(Enum.GetValues<DayKind>().SelectMany(kind => days == 0 ? [] : DayCheck.Run(kind, firstSeed, days).Complaints.Select(text => kind + ", " + text.Split('\n')[0]))));
        }
        """;

    private static readonly string[] Checks = ["RealBolt", "DayProgram", "DayKind", "PhysicalDay", "DayCount", "DayCheck", "CaseLog", "JobCases"];

    private static readonly string Source = Path.Combine(Repository.Root, "src", "Fastening", "Procedures");

    private static readonly CSharpParseOptions Options = new(LanguageVersion.CSharp14);

    private static readonly Lazy<CSharpCompilation> Unchanged = new(() => CSharpCompilation.Create(
        "Fastening.Tests",
        Files().Select(Parse).Append(CSharpSyntaxTree.ParseText(Usings, Options)).Append(CSharpSyntaxTree.ParseText(Entry, Options)),
        ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(path => new[] { "System.", "netstandard.", "UnitsNet.", "MathNet.", "Fastening.dll" }.Any(start => Path.GetFileName(path).StartsWith(start, StringComparison.Ordinal)))
            .Select(path => MetadataReference.CreateFromFile(path)),
        new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, optimizationLevel: OptimizationLevel.Release, nullableContextOptions: NullableContextOptions.Enable, allowUnsafe: true)));

    /// <summary>What the checks say of the library with one text in one file replaced by another; the text stands there once.</summary>
    public static string ComplaintsAbout(string file, string text, string replacement, int firstSeed, int days)
    {
        CSharpCompilation compilation = Unchanged.Value;
        SyntaxTree tree = compilation.SyntaxTrees.Single(one => one.FilePath == Path.Combine(Source, file));
        string before = tree.ToString();
        Assert.Equal(2, before.Split(text).Length);
        SyntaxTree changed = CSharpSyntaxTree.ParseText(before.Replace(text, replacement, StringComparison.Ordinal), Options, tree.FilePath);
        using var image = new MemoryStream();
        var result = compilation.ReplaceSyntaxTree(tree, changed).Emit(image);
        Assert.True(result.Success, string.Join("\n", result.Diagnostics.Where(one => one.Severity == DiagnosticSeverity.Error).Take(5)));
        image.Position = 0;
        var context = new AssemblyLoadContext(null, isCollectible: true);
        MethodInfo complaints = context.LoadFromStream(image).GetType("Fastening.Tests.Procedures.Checks")!.GetMethod("Complaints")!;
        string said = (string)complaints.Invoke(null, [firstSeed, days])!;
        context.Unload();
        return said;
    }

    private static IEnumerable<string> Files() => Directory.EnumerateFiles(Source, "*.cs")
        .Concat(Checks.Select(name => Path.Combine(Repository.Root, "tests", "Fastening.Tests", "Procedures", name + ".cs")));

    private static SyntaxTree Parse(string path) => CSharpSyntaxTree.ParseText(File.ReadAllText(path), Options, path);
}
