using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using SyntaxNode = Microsoft.CodeAnalysis.SyntaxNode;

namespace Fastening.Tests.House;

/// <summary>The source of the library, parsed once with its documentation comments.</summary>
internal static class LibrarySource
{
    public static CSharpParseOptions Options { get; } = new(LanguageVersion.CSharp14, Microsoft.CodeAnalysis.DocumentationMode.Parse);

    private static readonly Lazy<Dictionary<string, CompilationUnitSyntax>> Parsed = new(Parse);

    /// <summary>Path from src/Fastening, with forward slashes, to the syntax of the file.</summary>
    public static IReadOnlyDictionary<string, CompilationUnitSyntax> Files => Parsed.Value;

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
            .ToDictionary(x => x.Path, x => CSharpSyntaxTree.ParseText(File.ReadAllText(x.File).ReplaceLineEndings("\n"), Options).GetCompilationUnitRoot());
    }
}
