using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Fastening.Tests.House;

/// <summary>What a user calls is shown being called: every public method, factory and constructor of the models has an example of its own, overloads of one name share one.</summary>
public class ExampleRuleTests
{
    /// <summary>They print or compare, and everybody knows how to call them.</summary>
    private static readonly string[] NeedNone = ["ToString", "Equals", "GetHashCode", "CompareTo"];

    public static TheoryData<string> Folders => [.. LibrarySource.Files.Keys.Select(FolderOf)
        .Where(folder => folder is not ("Internals" or "Equations")).Distinct().Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Folders))]
    public void Every_call_is_shown_in_an_example(string folder)
    {
        var calls = LibrarySource.Files.Where(file => FolderOf(file.Key) == folder)
            .SelectMany(file => CallsIn(file.Value)).ToLookup(call => call.Name, call => call.Syntax);
        Assert.True(calls.Count > 0 || folder == "Plausibility", $"no call found in {folder}");     // that folder is data without a call
        string[] bare = [.. calls.Where(overloads => !overloads.Any(syntax => LibrarySource.ExamplesOf(syntax).Any())).Select(overloads => overloads.Key)];
        Assert.True(bare.Length == 0, $"without an example: {string.Join(", ", bare)}");
    }

    private static IEnumerable<(string Name, BaseMethodDeclarationSyntax Syntax)> CallsIn(CompilationUnitSyntax file) =>
        from type in file.DescendantNodes().OfType<TypeDeclarationSyntax>()
        where IsPublic(type)
        from call in type.Members.OfType<BaseMethodDeclarationSyntax>()
        where call.Modifiers.Any(SyntaxKind.PublicKeyword)
        let name = (call as MethodDeclarationSyntax)?.Identifier.Text ?? (call is ConstructorDeclarationSyntax ? "new" : null)
        where name is not null && !NeedNone.Contains(name)
        select ($"{type.Identifier}{type.TypeParameterList}.{name}", call);

    private static bool IsPublic(TypeDeclarationSyntax type) => type.Parent is BaseNamespaceDeclarationSyntax home
        && typeof(ScrewThread).Assembly.GetType($"{home.Name}.{type.Identifier}{(type.Arity == 0 ? "" : $"`{type.Arity}")}")?.IsPublic == true;

    private static string FolderOf(string file) => file.Split('/')[0];
}
