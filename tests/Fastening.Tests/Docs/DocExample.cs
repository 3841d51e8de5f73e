using Fastening.Tests.House;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Fastening.Tests.Docs;

/// <summary>The code of one <c>example</c> element, made a method that a compiler accepts: a line that is a bare expression is assigned to a discard, undeclared variables become parameters.</summary>
internal sealed class DocExample
{
    private DocExample(string file, string member, string text)
    {
        File = file;
        Member = member;
        Statements = StatementsOf(text);
    }

    public string File { get; }

    public string Member { get; }

    public string Statements { get; }

    public static DocExample Of(string file, string member, string text) => new(file, member, text);

    public static IEnumerable<DocExample> In(string file) => LibrarySource.ExamplesIn(LibrarySource.Files[file])
        .Select(example => new DocExample(file, MemberOf(example), TextOf(example)));

    /// <summary>The method, its parameters the variables a reader has by then.</summary>
    public string ToMethod() => $"static void Run({string.Join(", ", Variables().Select(name => $"{ExampleVariables.TypeOf(name, File)} {name}"))})\n{{\n{Statements}}}\n";

    /// <summary>The names among <see cref="Undeclared"/> that are variables.</summary>
    public IEnumerable<string> Variables() => Undeclared().Where(name => ExampleVariables.TypeOf(name, File) is not null);

    /// <summary>Simple names that the statements use and do not declare, types among them.</summary>
    public SortedSet<string> Undeclared()
    {
        SyntaxNode block = SyntaxFactory.ParseStatement($"{{\n{Statements}}}", options: LibrarySource.Options);
        var names = new SortedSet<string>(
            block.DescendantNodes().OfType<IdentifierNameSyntax>()
                .Where(n => n.Parent is not (NameColonSyntax or MemberBindingExpressionSyntax) && !(n.Parent is MemberAccessExpressionSyntax access && access.Name == n))
                .Select(n => n.Identifier.Text),
            StringComparer.Ordinal);
        names.ExceptWith(block.DescendantNodes().Select(node => node switch
        {
            VariableDeclaratorSyntax declared => declared.Identifier.Text,
            SingleVariableDesignationSyntax declared => declared.Identifier.Text,
            ForEachStatementSyntax loop => loop.Identifier.Text,
            ParameterSyntax parameter => parameter.Identifier.Text,
            _ => "",
        }));
        return names;
    }

    /// <summary>A statement begins at the margin and takes the indented lines below it, and further lines while it does not parse.</summary>
    private static string StatementsOf(string text)
    {
        string[] lines = text.Split('\n');
        string statements = "";
        for (int first = 0; first < lines.Length;)
        {
            int end = first + 1;
            string? statement;
            while (true)
            {
                while (end < lines.Length && (lines[end].StartsWith(' ') || lines[end].Length == 0)) end++;
                statement = Completed(string.Join('\n', lines[first..end]));
                if (statement is not null || end == lines.Length) break;
                end++;
            }

            statements += (statement ?? string.Join('\n', lines[first..end])) + "\n";
            first = end;
        }

        return statements;
    }

    private static string? Completed(string code)
    {
        ExpressionSyntax expression = SyntaxFactory.ParseExpression(code, options: LibrarySource.Options);
        if (!expression.ContainsDiagnostics) return $"_ = {expression};{expression.GetTrailingTrivia().ToFullString()}";
        SyntaxNode block = SyntaxFactory.ParseStatement($"{{\n{code}\n}}", options: LibrarySource.Options);
        return block.ContainsDiagnostics ? null : code;
    }

    private static string MemberOf(XmlElementSyntax example) =>
        example.Ancestors().OfType<DocumentationCommentTriviaSyntax>().First().ParentTrivia.Token.Parent!
            .AncestorsAndSelf().OfType<MemberDeclarationSyntax>().First() switch
        {
            BaseTypeDeclarationSyntax type => type.Identifier.Text,
            MethodDeclarationSyntax method => method.Identifier.Text,
            PropertyDeclarationSyntax property => property.Identifier.Text,
            ConstructorDeclarationSyntax constructor => $"new {constructor.Identifier.Text}",
            MemberDeclarationSyntax other => other.Kind().ToString(),
        };

    /// <summary>What stands in the <c>code</c> element, without the one blank behind each <c>///</c>.</summary>
    private static string TextOf(XmlElementSyntax example)
    {
        XmlElementSyntax code = example.Content.OfType<XmlElementSyntax>().Single(element => element.StartTag.Name.ToString() == "code");
        string text = string.Concat(code.Content.Cast<XmlTextSyntax>().SelectMany(part => part.TextTokens).Select(token => token.ValueText));
        return text.Replace("\n ", "\n", StringComparison.Ordinal).Trim('\n');
    }
}
