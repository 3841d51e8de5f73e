using System.Reflection;

namespace Fastening.Tests.House;

/// <summary>Where the checkout is, as the build wrote it into this assembly.</summary>
internal static class Repository
{
    public static string Root { get; } = typeof(Repository).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>()
        .Single(a => a.Key == "RepositoryRoot").Value!;

    public static string Read(params string[] path) => File.ReadAllText(Path.Combine([Root, .. path])).ReplaceLineEndings("\n");
}
