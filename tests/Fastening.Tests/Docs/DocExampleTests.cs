using System.Globalization;
using Fastening.Tests.House;
using Microsoft.CodeAnalysis;

namespace Fastening.Tests.Docs;

/// <summary>Every example in a documentation comment is code that compiles against the library as a user has it.</summary>
public class DocExampleTests
{
    /// <summary>The faults of every file, from one compilation of all examples: by far the cheapest way.</summary>
    private static readonly Lazy<ILookup<string, string>> FaultsByFile = new(() => FaultsOf([.. LibrarySource.Files.Keys.SelectMany(DocExample.In)]));

    public static TheoryData<string> FilesWithExamples => [.. LibrarySource.Files
        .Where(file => LibrarySource.ExamplesIn(file.Value).Any()).Select(file => file.Key).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(FilesWithExamples))]
    public void Every_example_compiles(string file)
    {
        string[] faults = [.. FaultsByFile.Value[file]];
        Assert.True(faults.Length == 0, $"{file}\n{string.Join("\n", faults)}");
    }

    [Theory]
    [InlineData("thread.Pitches", "CS1061")]
    [InlineData("ScrewThread.Parse(16)", "CS1503")]
    [InlineData("model.TorqueFor(Force.FromKilonewtons(70)).Torque", "CS1061")]
    [InlineData("thread.Pitch\nthread.Pitch.Millimetres", "CS1061")]
    [InlineData("Length pitch = thread.Pitch\nthread.Lead", "CS1002")]
    [InlineData("Length pitch = undeclared.Pitch;", "CS0103")]
    [InlineData("model.TorquesFor(preloads, torques, 3);", "CS1501")]
    public void An_example_that_went_stale_is_found(string text, string error)
    {
        ILookup<string, string> faults = FaultsOf([DocExample.Of("Threads/ScrewThread.cs", "Parse", text)]);
        Assert.Contains(faults["Threads/ScrewThread.cs"], fault => fault.StartsWith($"Parse: {error}", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_variable_the_tests_know_is_used()
    {
        var used = LibrarySource.Files.Keys.SelectMany(DocExample.In).SelectMany(example => example.Undeclared().Select(name => (example.File, Name: name))).ToHashSet();
        Assert.Empty(ExampleVariables.Names.Except(used.Select(variable => variable.Name)));
        Assert.Empty(ExampleVariables.Exceptions.Except(used));
    }

    private static ILookup<string, string> FaultsOf(DocExample[] examples) => ExampleCompiler.Compile([.. examples.Select(example => example.ToMethod())])
        .GetDiagnostics().Where(d => d.Severity >= DiagnosticSeverity.Warning && d.Id != "CS0219")
        .Select(d => (Example: examples[int.Parse(d.Location.SourceTree!.FilePath, CultureInfo.InvariantCulture)], Diagnostic: d))
        .ToLookup(x => x.Example.File, x => $"{x.Example.Member}: {x.Diagnostic.Id} {x.Diagnostic.GetMessage(CultureInfo.InvariantCulture)}\n    {LineOf(x.Diagnostic.Location)}");

    private static string LineOf(Location location) => location.SourceTree!.GetText().Lines[location.GetLineSpan().StartLinePosition.Line].ToString().Trim();
}
