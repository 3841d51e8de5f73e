using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using Fastening.Tests.House;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using UnitsNet;

namespace Fastening.Tests.Docs;

/// <summary>Where an example is complete in itself and a comment states its result, running it gives that result, to the digits that are printed.</summary>
public partial class DocExampleResultTests
{
    private static readonly Lazy<ILookup<string, Statement>> Told = new(() => Run([.. LibrarySource.Files.Keys.SelectMany(DocExample.In)]).ToLookup(told => told.File));

    public static TheoryData<string> FilesWithResults => [.. Told.Value.Select(file => file.Key).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(FilesWithResults))]
    public void Results_in_comments_are_those_of_a_run(string file) => Assert.All(Told.Value[file], told => Assert.True(
        Agrees(told.Value, told.Comment), $"{told.File}: the comment says {told.Comment}, a run gives {Shown(told.Value)}"));

    [Theory]
    [InlineData("1.5 + 0.04", "1.54", true)]
    [InlineData("1.5 + 0.04", "1.53", false)]
    [InlineData("2.0 / 3", "0.67", true)]
    [InlineData("2.0 / 3", "0.66", false)]
    [InlineData("2.0 / 3", "0.66…", true)]
    [InlineData("87_700", "87 700", true)]
    [InlineData("1 > 2", "true", false)]
    [InlineData("Torque.FromNewtonMeters(0.123)", "12.3 N·cm", true)]
    [InlineData("Torque.FromNewtonMeters(0.123)", "12.3 N·m", false)]
    [InlineData("\"M\" + 16", "\"M16\"", true)]
    [InlineData("Console.WriteLine(ScrewThread.Parse(\"M16\"));", "M16", true)]
    [InlineData("Console.WriteLine(ScrewThread.Parse(\"M16\"));", "M16x2", false)]
    [InlineData("double lead = ScrewThread.Parse(\"M16\").Lead.Millimeters;", "1.9", false)]
    [InlineData("TighteningPattern.Row(3).Order", "2, 1, 3", true)]
    [InlineData("ScrewThread.Parse(\"M0\").Lead.Millimeters", "0", false)]
    public void A_result_is_held_to_the_digits_printed(string expression, string comment, bool agrees)
    {
        Statement told = Assert.Single(Run([DocExample.Of("Threads/ScrewThread.cs", "Parse", $"{expression}   // {comment}")]));
        Assert.Equal(agrees, Agrees(told.Value, told.Comment));
    }

    private static List<Statement> Run(DocExample[] examples)
    {
        DocExample[] complete = [.. examples.Where(example => !example.Variables().Any())];
        using var image = new MemoryStream();
        Assert.True(ExampleCompiler.Compile([.. complete.Select(TellingMethod)]).Emit(image).Success, "an example does not compile: DocExampleTests says which");
        var assembly = Assembly.Load(image.ToArray());
        var told = new List<Statement>();
        for (int i = 0; i < complete.Length; i++)
        {
            string file = complete[i].File;
            var tell = (object? value, string comment) => told.Add(new Statement(file, value, comment));
            var run = assembly.GetType($"Example{i}")!.GetMethod("Run")!.CreateDelegate<Action<Action<object?, string>>>();
            if (Record.Exception(() => run(tell)) is Exception refusal) tell(refusal, $"nothing of a refusal ({complete[i].Member})");
        }

        return told;
    }

    /// <summary>The example as a method that tells every value behind which a comment stands.</summary>
    private static string TellingMethod(DocExample example)
    {
        var block = (BlockSyntax)SyntaxFactory.ParseStatement($"{{\n{example.Statements}}}", options: LibrarySource.Options);
        return $"public static void Run(Action<object?, string> tell)\n{{\n{string.Concat(block.Statements.Select(s => s.ToFullString() + Telling(s)))}}}\n";
    }

    private static string Telling(StatementSyntax statement)
    {
        string comment = statement.GetTrailingTrivia().ToFullString().Trim().TrimStart('/').Trim();
        (ExpressionSyntax? value, bool isStated) = statement switch
        {
            ExpressionStatementSyntax { Expression: InvocationExpressionSyntax { ArgumentList.Arguments: [ArgumentSyntax printed] } call }
                when call.Expression.ToString() == "Console.WriteLine" => (printed.Expression, comment.Length > 0),
            ExpressionStatementSyntax { Expression: AssignmentExpressionSyntax assignment } => (assignment.Right, Result().IsMatch(comment)),
            LocalDeclarationStatementSyntax { Declaration.Variables: [VariableDeclaratorSyntax variable] } => (SyntaxFactory.IdentifierName(variable.Identifier.Text), Result().IsMatch(comment)),
            _ => default,
        };
        return isStated ? $"tell({value!.WithoutTrivia()}, {SymbolDisplay.FormatLiteral(comment, quote: true)});\n" : "";
    }

    /// <summary>Numbers to the digits printed (an ellipsis stands for digits cut off), quantities in the unit printed; of other values the text begins the comment.</summary>
    private static bool Agrees(object? value, string comment)
    {
        bool isShown = Regex.IsMatch(comment, $@"^{Regex.Escape(Shown(value))}(?![\w.…])");
        if (value is null or string or bool or Exception) return isShown;
        Match number = Number().Match(comment);
        double? actual = !number.Success ? null : value switch
        {
            IQuantity quantity => InUnit(quantity, number.Groups["unit"].Value),
            double or int => Convert.ToDouble(value, CultureInfo.InvariantCulture),
            _ => null,
        };
        if (actual is not double x) return isShown;
        string digits = number.Groups["number"].Value.Replace(" ", "", StringComparison.Ordinal);
        double unit = Math.Pow(10, -(digits.Contains('.', StringComparison.Ordinal) ? digits.Length - digits.IndexOf('.', StringComparison.Ordinal) - 1 : 0));
        double off = (x - double.Parse(digits, CultureInfo.InvariantCulture)) / unit;
        return number.Groups["cut"].Success ? off is >= 0 and < 1 : Math.Abs(off) <= 0.5 + 1e-9;
    }

    private static double? InUnit(IQuantity quantity, string unit) =>
        UnitsNetSetup.Default.UnitParser.TryParse(unit, quantity.QuantityInfo.UnitType, CultureInfo.InvariantCulture, out Enum? parsed) ? quantity.As(parsed) : null;

    private static string Shown(object? value) => value switch
    {
        null => "null",
        bool truth => truth ? "true" : "false",
        string text => $"\"{text}\"",
        IEnumerable<int> list => string.Join(", ", list),
        IFormattable formattable => formattable.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString()!,
    };

    /// <summary>What begins otherwise is a remark, unless it stands behind what is printed.</summary>
    [GeneratedRegex(@"^(?:about )?(?:[-+]?\d|""|true\b|false\b|null\b)")]
    private static partial Regex Result();

    [GeneratedRegex(@"^(?:about )?(?<number>[-+]?\d[\d ]*(?:\.\d+)?)(?<cut>…)? ?(?<unit>[^\s,;:]*)")]
    private static partial Regex Number();

    private sealed record Statement(string File, object? Value, string Comment);
}
