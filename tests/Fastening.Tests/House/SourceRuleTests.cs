using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Fastening.Tests.House;

/// <summary>The shape of the house as the compiler sees it: what each folder uses, how long a file is, and that no value loses its origin.</summary>
public class SourceRuleTests
{
    private const int MostLinesOfCode = 200;

    /// <summary>What each folder may use besides itself and the ground floor (Internals, Equations).</summary>
    private static readonly Dictionary<string, string[]> Arrows = new()
    {
        ["Internals"] = [],
        ["Equations"] = [],
        ["ShopUnits"] = [],
        ["Tolerances"] = ["ShopUnits"],
        ["Plausibility"] = [],
        ["Threads"] = [],
        ["Materials"] = ["Threads", "Plausibility"],
        ["Friction"] = ["Threads", "Plausibility"],
        ["Tightening"] = ["Threads", "Materials", "Friction", "Tolerances", "Plausibility"],
        ["Wrenches"] = ["Tolerances", "Plausibility"],
        ["Joints"] = ["Threads", "Materials", "Friction", "Tightening", "Tolerances", "Plausibility"],
        ["Rotation"] = ["Tightening", "Tolerances", "Joints", "Traces", "Wrenches", "Threads", "Materials", "Friction", "Plausibility"],
        ["Uncertainty"] = ["Tolerances", "Plausibility"],
        ["PreloadBands"] = ["Threads", "Materials", "Friction", "Tightening", "Wrenches", "Tolerances", "Joints", "Rotation", "Plausibility", "Uncertainty"],
        ["Quality"] = ["Tolerances", "Plausibility"],
        ["Procedures"] = ["Tolerances", "Rotation", "Wrenches", "Quality"],
        ["Traces"] = ["Tightening", "Friction", "Threads", "Joints"],
    };

    private static readonly string[] GroundFloor = ["Internals", "Equations"];

    [Fact]
    public void Arrows_run_down()
    {
        Assert.Equal(Arrows.Keys.Order(StringComparer.Ordinal), LibrarySource.Files.Keys.Select(FolderOf).Distinct().Order(StringComparer.Ordinal));
        string[] upwards =
        [
            .. Names().Where(use => use.Symbol is not INamespaceSymbol)
                .SelectMany(use => HomesOf(use.Symbol).Select(home => (use.File, use.Symbol, Home: home)))
                .Where(use => FolderOf(use.File) is string folder && folder != use.Home && !GroundFloor.Contains(use.Home) && !Arrows[folder].Contains(use.Home))
                .Select(use => $"{use.File} uses {use.Symbol.ToDisplayString()} ({use.Home})").Distinct(),
        ];
        Assert.Empty(upwards);
    }

    [Fact]
    public void The_folder_gives_the_namespace_of_public_types() => Assert.All(
        LibrarySource.Files.Where(file => file.Value.DescendantNodes().OfType<BaseTypeDeclarationSyntax>().Any(type => type.Modifiers.Any(SyntaxKind.PublicKeyword) && type.Parent is BaseNamespaceDeclarationSyntax)),
        file => Assert.Equal(
            FolderOf(file.Key) switch
            {
                "Equations" => "Fastening.Equations",
                "Quality" or "Uncertainty" => "Fastening.Quality",
                _ => "Fastening",
            },
            file.Value.Members.OfType<BaseNamespaceDeclarationSyntax>().Single().Name.ToString()));

    [Fact]
    public void Every_file_stays_short()
    {
        string[] long_ = [.. LibrarySource.Files.Select(file => (file.Key, Lines: LinesOfCode(file.Value))).Where(file => file.Lines > MostLinesOfCode).Select(file => $"{file.Key}: {file.Lines}")];
        Assert.Empty(long_);
    }

    [Fact]
    public void A_term_is_made_by_an_equation_or_of_what_was_stated()
    {
        string[] made =
        [
            .. LibrarySource.Files.Where(file => !GroundFloor.Contains(FolderOf(file.Key)))
                .SelectMany(file => file.Value.DescendantNodes().OfType<BaseObjectCreationExpressionSyntax>()
                    .Where(creation => LibrarySource.Model(file.Key).GetTypeInfo(creation).Type?.Name == "Term").Select(creation => $"{file.Key}: {creation}")),
        ];
        Assert.Empty(made);
    }

    /// <summary>But for what is looked up by it: a table asked for the clearance at a pitch.</summary>
    [Fact]
    public void No_value_of_a_term_is_given_again_as_if_it_had_been_stated()
    {
        string[] lost =
        [
            .. LibrarySource.Files.SelectMany(file => file.Value.DescendantNodes().OfType<InvocationExpressionSyntax>()
                .Where(call => IsGiving(LibrarySource.Model(file.Key).GetSymbolInfo(call).Symbol))
                .Where(call => call.ArgumentList.Arguments[0].DescendantNodesAndSelf(node => node is not InvocationExpressionSyntax).OfType<MemberAccessExpressionSyntax>()
                    .Any(access => IsValueOfTerm(file.Key, access)))
                .Select(call => $"{file.Key}: {call}")),
        ];
        Assert.Empty(lost);
    }

    [Fact]
    public void Computed_state_is_read_where_a_derivation_can_hear_it()
    {
        var kept = LibrarySource.Files.SelectMany(file => file.Value.DescendantNodes().OfType<ArgumentSyntax>()
            .Where(argument => argument.RefKindKeyword.IsKind(SyntaxKind.RefKeyword) && argument.Parent!.Parent!.ToString().StartsWith("Derived.Of(", StringComparison.Ordinal))
            .Select(argument => (Argument: argument, Field: LibrarySource.Model(file.Key).GetSymbolInfo(argument.Expression).Symbol!))).ToList();
        Assert.NotEmpty(kept);
        var fields = new HashSet<ISymbol>(kept.Select(state => state.Field), SymbolEqualityComparer.Default);
        string[] past =
        [
            .. Names().Where(use => fields.Contains(use.Symbol)
                && !use.Name.Ancestors().OfType<ArgumentSyntax>().Any(argument => argument.RefKindKeyword.IsKind(SyntaxKind.RefKeyword))
                && !(use.Name.Parent is AssignmentExpressionSyntax assignment && assignment.Left == use.Name && use.Name.Ancestors().OfType<ConstructorDeclarationSyntax>().Any()))
                .Select(use => $"{use.File}: {use.Name.Parent}"),
        ];
        Assert.Empty(past);
    }

    private static bool IsGiving(ISymbol? called) => called is IMethodSymbol
    {
        Name: "Given", ContainingType.Name: "Term",
    } or IMethodSymbol { Name: "Of", ContainingType.Name: "Stated" };

    private static bool IsValueOfTerm(string file, MemberAccessExpressionSyntax access) =>
        access.Name.Identifier.Text == "Value" && LibrarySource.Model(file).GetTypeInfo(access.Expression).Type?.Name == "Term";

    private static IEnumerable<(string File, SimpleNameSyntax Name, ISymbol Symbol)> Names()
    {
        foreach ((string file, CompilationUnitSyntax root) in LibrarySource.Files)
        {
            SemanticModel model = LibrarySource.Model(file);
            foreach (SimpleNameSyntax name in root.DescendantNodes().OfType<SimpleNameSyntax>())
            {
                if (model.GetSymbolInfo(name).Symbol is ISymbol symbol) yield return (file, name, symbol);
            }
        }
    }

    /// <summary>The folders in which the type of a symbol is declared.</summary>
    private static IEnumerable<string> HomesOf(ISymbol symbol) => ((symbol as ITypeSymbol ?? symbol.ContainingType)?.OriginalDefinition.DeclaringSyntaxReferences ?? [])
        .Select(place => FolderOf(LibrarySource.PathOf(place.SyntaxTree))).Distinct();

    private static string FolderOf(string path) => path.Split('/')[0];

    private static int LinesOfCode(CompilationUnitSyntax root) => root.DescendantTokens()
        .SelectMany(token => Enumerable.Range(token.GetLocation().GetLineSpan().StartLinePosition.Line, 1 + token.GetLocation().GetLineSpan().EndLinePosition.Line - token.GetLocation().GetLineSpan().StartLinePosition.Line))
        .Distinct().Count();
}
