using System.Collections.Concurrent;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Fastening.Tests.House;

/// <summary>The source of the library, parsed once with its documentation comments.</summary>
internal static class LibrarySource
{
    public static CSharpParseOptions Options { get; } = new(LanguageVersion.CSharp14, DocumentationMode.Parse);

    private const string GlobalUsings = """
        global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq;
        global using System.Net.Http; global using System.Threading; global using System.Threading.Tasks;
        """;

    private static readonly Lazy<Dictionary<string, CompilationUnitSyntax>> Parsed = new(Parse);

    /// <summary>Path from src/Fastening, with forward slashes, to the syntax of the file.</summary>
    public static IReadOnlyDictionary<string, CompilationUnitSyntax> Files => Parsed.Value;

    private static readonly Lazy<CSharpCompilation> Compiled = new(() => CSharpCompilation.Create(
        "Fastening",
        Files.Values.Select(root => root.SyntaxTree).Append(CSharpSyntaxTree.ParseText(GlobalUsings, Options)),
        ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(path => Path.GetFileName(path) != "Fastening.dll").Select(path => MetadataReference.CreateFromFile(path)),
        new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable)));

    private static readonly ConcurrentDictionary<string, SemanticModel> Models = new();

    /// <summary>What the compiler knows of a file.</summary>
    public static SemanticModel Model(string file) => Models.GetOrAdd(file, path => Compiled.Value.GetSemanticModel(Files[path].SyntaxTree));

    public static string PathOf(SyntaxTree tree) => tree.FilePath;

    public static IEnumerable<XmlElementSyntax> ExamplesIn(SyntaxNode node) => node
        .DescendantNodesAndSelf(descendIntoTrivia: true).OfType<XmlElementSyntax>()
        .Where(element => element.StartTag.Name.ToString() == "example");

    /// <summary>Those of a declaration itself, not of its members.</summary>
    public static IEnumerable<XmlElementSyntax> ExamplesOf(MemberDeclarationSyntax declaration) =>
        declaration.GetLeadingTrivia().Select(trivia => trivia.GetStructure()).OfType<DocumentationCommentTriviaSyntax>().SelectMany(ExamplesIn);

    private static Dictionary<string, CompilationUnitSyntax> Parse()
    {
        string source = Path.Combine(Repository.Root, "src", "Fastening");
        return Directory.EnumerateFiles(source, "*.cs", SearchOption.AllDirectories)
            .Select(file => (File: file, Path: Path.GetRelativePath(source, file).Replace('\\', '/')))
            .Where(x => !x.Path.StartsWith("obj/", StringComparison.Ordinal) && !x.Path.StartsWith("bin/", StringComparison.Ordinal))
            .ToDictionary(x => x.Path, x => CSharpSyntaxTree.ParseText(File.ReadAllText(x.File).ReplaceLineEndings("\n"), Options, path: x.Path).GetCompilationUnitRoot());
    }
}
