using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using UnitsNet;
using SyntaxNode = Microsoft.CodeAnalysis.SyntaxNode;

namespace Fastening.Tests.House;

/// <summary>Numbers are printed in one place and compared with a limit in one place.</summary>
public class PrinterRuleTests
{
    /// <summary>Where a culture may be named: the printer, text kept as entered, and what reads numbers.</summary>
    private static readonly string[] NamesACulture = ["Internals/Print.cs", "ShopUnits/NumberText.cs", "Internals/DataRow.cs", "Equations/ExpressionParser.cs"];

    /// <summary>Where the widening is used for something that is not a comparison with one limit.</summary>
    private static readonly Dictionary<string, string> Widens = new()
    {
        ["Internals/Tolerance.cs"] = "the four comparisons, and whole steps of a display",
        ["Tolerances/WindowLimits.cs"] = "the slack of a window belongs to the largest of limits and target; limits that cross by rounding are one",
        ["Rotation/RateWalk.cs"] = "a limit that also carries two steps of the clock",
        ["Threads/InchSize.cs"] = "whether an inch size is a fraction",
        ["Traces/DoubtSearch.cs"] = "whether a torque stays the very same",
        ["Uncertainty/UncertaintyBudget.cs"] = "degrees of freedom that miss a whole number by rounding",
    };

    private static readonly string[] Separated = ["System.Double", "System.Single", "System.Decimal", "System.DateTime", "System.DateTimeOffset", "System.TimeSpan"];

    private static readonly Lazy<CSharpCompilation> Library = new(Compile);

    [Fact]
    public void Only_the_printer_names_a_culture() => Assert.Equal(
        NamesACulture.Order(StringComparer.Ordinal), FilesNaming("CultureInfo", "FormattableString", "NumberFormatInfo").Order(StringComparer.Ordinal));

    [Fact]
    public void Only_the_printer_gives_ToString_a_format() => Assert.Empty(
        LibrarySource.Files.Where(file => !NamesACulture.Contains(file.Key)).SelectMany(file => file.Value.DescendantNodes()
            .OfType<InvocationExpressionSyntax>()
            .Where(call => call.Expression is MemberAccessExpressionSyntax { Name.Identifier.Text: "ToString" }
                && call.ArgumentList.Arguments.FirstOrDefault()?.Expression is LiteralExpressionSyntax or InterpolatedStringExpressionSyntax)
            .Select(call => $"{file.Key}: {call}")));

    [Fact]
    public void Only_the_comparisons_widen_a_limit()
    {
        Assert.Equal(Widens.Keys.Order(StringComparer.Ordinal), FilesNaming("Widening").Order(StringComparer.Ordinal));
        Assert.Empty(LibrarySource.Files.SelectMany(file => file.Value.DescendantNodes()
            .OfType<BinaryExpressionSyntax>()
            .Where(sum => sum.Kind() is SyntaxKind.AddExpression or SyntaxKind.SubtractExpression && IsSmall(sum.Right) && sum.Left is LiteralExpressionSyntax)
            .Select(sum => $"{file.Key}: {sum}")));
    }

    /// <summary>A plain interpolated string or a sum with a string takes the separators of the user's country, and UnitsNet's own.</summary>
    [Fact]
    public void No_number_and_no_quantity_goes_into_text_past_the_printer()
    {
        var past = new List<string>();
        foreach (SyntaxTree tree in Library.Value.SyntaxTrees.Where(tree => tree.FilePath.Length > 0))
        {
            SemanticModel model = Library.Value.GetSemanticModel(tree);
            foreach (SyntaxNode node in tree.GetRoot().DescendantNodes())
            {
                IEnumerable<ExpressionSyntax> parts = node switch
                {
                    InterpolatedStringExpressionSyntax text when IsString(model.GetTypeInfo(text).ConvertedType) => text.Contents.OfType<InterpolationSyntax>().Select(hole => hole.Expression),
                    BinaryExpressionSyntax sum when sum.IsKind(SyntaxKind.AddExpression) && IsString(model.GetTypeInfo(sum).Type) => [sum.Left, sum.Right],
                    InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax { Name.Identifier.Text: "ToString" } called, ArgumentList.Arguments.Count: 0 } => [called.Expression],
                    _ => [],
                };
                past.AddRange(parts.Where(part => DependsOnCulture(model.GetTypeInfo(part).Type)).Select(part => $"{tree.FilePath}: {part}"));
            }
        }

        Assert.Empty(past);
    }

    /// <summary>A rule that saw no file, or could not tell a type, would hold anything.</summary>
    [Fact]
    public void The_library_compiles_for_the_rule()
    {
        Assert.Empty(Library.Value.GetDiagnostics().Where(d => d.Severity == DiagnosticSeverity.Error).Select(d => d.ToString()));
        Assert.True(LibrarySource.Files.Count > 300);
    }

    private static IEnumerable<string> FilesNaming(params string[] names) => LibrarySource.Files
        .Where(file => file.Value.DescendantTokens().Any(token => names.Contains(token.Text)))
        .Select(file => file.Key);

    private static bool IsSmall(ExpressionSyntax expression) =>
        expression is LiteralExpressionSyntax { Token.Value: double value } && value is > 1e-15 and < 1e-6;

    private static bool IsString(ITypeSymbol? type) => type?.SpecialType == SpecialType.System_String;

    private static bool DependsOnCulture(ITypeSymbol? type)
    {
        if (type is INamedTypeSymbol { OriginalDefinition.SpecialType: SpecialType.System_Nullable_T } nullable) return DependsOnCulture(nullable.TypeArguments[0]);
        if (type is ITypeParameterSymbol parameter) return parameter.ConstraintTypes.Any(DependsOnCulture);
        if (type is null) return false;
        return Separated.Contains($"{type.ContainingNamespace}.{type.Name}")
            || type.Name == nameof(IQuantity) || type.AllInterfaces.Any(face => face.Name == nameof(IQuantity));
    }

    private static CSharpCompilation Compile()
    {
        const string usings = "global using System; global using System.Collections.Generic; global using System.IO; global using System.Linq; global using System.Net.Http; global using System.Threading; global using System.Threading.Tasks;";
        IEnumerable<SyntaxTree> trees = LibrarySource.Files.Select(file => CSharpSyntaxTree.Create(file.Value, LibrarySource.Options, file.Key))
            .Append(CSharpSyntaxTree.ParseText(usings, LibrarySource.Options));
        IEnumerable<MetadataReference> references = ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(path => Path.GetFileName(path) is var name && !name.StartsWith("Fastening", StringComparison.Ordinal))
            .Select(path => MetadataReference.CreateFromFile(path));
        return CSharpCompilation.Create(
            "Fastening", trees, references, new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable));
    }
}
