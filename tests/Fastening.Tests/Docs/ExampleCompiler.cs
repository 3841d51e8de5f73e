using Fastening.Tests.House;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Fastening.Tests.Docs;

/// <summary>Compiles methods against the library as a user has it: public members only, the packages that come with it, the usual usings.</summary>
internal static class ExampleCompiler
{
    private const string Usings = """
        using System;
        using System.Collections.Generic;
        using System.IO;
        using System.Linq;
        using System.Threading;
        using Fastening;
        using Fastening.Equations;
        using Fastening.Quality;
        using UnitsNet;
        using UnitsNet.Units;

        """;

    private static readonly string[] AtHand = ["System.", "netstandard.", "UnitsNet.", "MathNet.", "Fastening.dll"];

    private static readonly CSharpCompilation Library = CSharpCompilation.Create(
        "Examples",
        references: ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
            .Where(path => AtHand.Any(start => Path.GetFileName(path).StartsWith(start, StringComparison.Ordinal)))
            .Select(path => MetadataReference.CreateFromFile(path)),
        options: new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable));

    /// <summary>Method i becomes <c>public static class Example{i}</c> in the syntax tree whose path is i.</summary>
    public static CSharpCompilation Compile(IReadOnlyList<string> methods) => Library.AddSyntaxTrees(methods.Select((method, i) =>
        CSharpSyntaxTree.ParseText($"{Usings}public static class Example{i}\n{{\n{method}}}\n", LibrarySource.Options, path: $"{i}")));
}
