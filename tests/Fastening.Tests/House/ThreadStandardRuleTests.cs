using System.Reflection;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Fastening.Tests.House;

/// <summary>All that depends on the profile of a thread stands in one file of each standard.</summary>
public class ThreadStandardRuleTests
{
    private static readonly Type[] Standards =
        [.. typeof(ThreadStandard).Assembly.GetTypes().Where(type => !type.IsAbstract && typeof(ThreadStandard).IsAssignableFrom(type))];

    [Fact]
    public void A_profile_is_named_in_the_file_of_its_standard_and_nowhere_else()
    {
        (string Profile, string File)[] named =
        [
            .. from file in LibrarySource.Files
               from access in file.Value.DescendantNodes().OfType<MemberAccessExpressionSyntax>()
               where access.Expression.ToString() is nameof(ThreadProfile) or "Fastening." + nameof(ThreadProfile)
               select (access.Name.ToString(), file.Key),
        ];

        Assert.Equal(Enum.GetNames<ThreadProfile>().Order(StringComparer.Ordinal), named.Select(x => x.Profile).Order(StringComparer.Ordinal));
        Assert.Equal(Standards.Select(type => $"Threads/{type.Name}.cs").Order(StringComparer.Ordinal), named.Select(x => x.File).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void No_file_gets_around_the_rule_by_a_static_using() => Assert.DoesNotContain(
        LibrarySource.Files.Values.SelectMany(file => file.Usings), directive => directive.ToString().Contains(nameof(ThreadProfile), StringComparison.Ordinal));

    [Fact]
    public void Every_standard_but_that_of_a_single_thread_is_listed_once()
    {
        Assert.Equal(
            Standards.Where(type => type != typeof(CustomThreads)).OrderBy(type => type.Name, StringComparer.Ordinal),
            ThreadStandard.All.Select(standard => standard.GetType()).OrderBy(type => type.Name, StringComparer.Ordinal));
        Assert.All(
            typeof(ThreadStandard).GetProperties(BindingFlags.Static | BindingFlags.Public).Where(p => typeof(ThreadStandard).IsAssignableFrom(p.PropertyType)),
            property => Assert.Contains((ThreadStandard)property.GetValue(null)!, ThreadStandard.All));
    }
}
