using System.Reflection;
using System.Text.RegularExpressions;

namespace Fastening.Tests.House;

/// <summary>The shape of the house: immutable public types, one type per file, arrows that run down.</summary>
public class HouseRuleTests
{
    /// <summary>What each folder may use besides itself and the ground floor.</summary>
    private static readonly Dictionary<string, string[]> Arrows = new()
    {
        ["Internals"] = [],
        ["Equations"] = [],
        ["ShopUnits"] = [],
        ["Tolerances"] = ["ShopUnits"],
        ["Plausibility"] = [],
        ["Threads"] = [],
        ["Materials"] = ["Plausibility", "Threads"],
        ["Friction"] = ["Threads", "Plausibility"],
        ["Tightening"] = ["Threads", "Materials", "Friction", "Tolerances", "Plausibility"],
        ["Wrenches"] = ["Tolerances", "Plausibility"],
        ["Joints"] = ["Threads", "Materials", "Friction", "Tightening", "Tolerances", "Plausibility"],
        ["Rotation"] = ["Tightening", "Tolerances", "Joints", "Traces", "Wrenches", "Threads", "Materials", "Friction", "Plausibility"],
        ["Uncertainty"] = ["Threads", "Materials", "Friction", "Tightening", "Wrenches", "Tolerances", "Joints", "Rotation", "Plausibility"],
        ["Quality"] = ["Tolerances", "Plausibility"],
        ["Procedures"] = ["Tolerances", "Rotation", "Wrenches", "Quality"],
        ["Traces"] = ["Tightening", "Friction", "Threads", "Joints"],
    };

    private static readonly string Source = Path.Combine(Repository.Root, "src", "Fastening");

    public static TheoryData<Type> PublicTypes => [.. typeof(ScrewThread).Assembly.GetExportedTypes()];

    [Theory]
    [MemberData(nameof(PublicTypes))]
    public void Public_types_are_immutable_and_closed(Type type)
    {
        if (type.IsEnum) return;
        Assert.True(type.IsSealed || type.IsAbstract && type.GetConstructors(BindingFlags.Instance | BindingFlags.Public).Length == 0, $"{type} can be derived from");
        Assert.All(type.GetProperties(), p => Assert.True(p.SetMethod?.IsPublic != true, $"{type.Name}.{p.Name} can be set"));
        Assert.Empty(type.GetFields(BindingFlags.Public | BindingFlags.Instance));
        Assert.All(
            type.GetProperties(BindingFlags.Public | BindingFlags.Static).Where(p => p.PropertyType.IsGenericType && p.PropertyType.GetGenericTypeDefinition() == typeof(IReadOnlyList<>)),
            p => Assert.StartsWith("ReadOnlyCollection", p.GetValue(null)!.GetType().Name, StringComparison.Ordinal));
        Assert.DoesNotContain(type.GetMethods(), m => m.IsVirtual && !m.IsFinal && m.DeclaringType == type && m.GetBaseDefinition() == m && !type.IsSealed && m.IsPublic);
    }

    [Theory]
    [MemberData(nameof(PublicTypes))]
    public void Only_two_namespaces_and_no_name_that_collides(Type type)
    {
        Assert.Contains(type.Namespace, new[] { "Fastening", "Fastening.Equations" });
        Assert.DoesNotContain(type.Name, new[] { "Torque", "Angle", "Force", "Thread", "Unit", "Fastening" });
    }

    [Fact]
    public void Folders_are_those_of_the_house() =>
        Assert.Equal(Arrows.Keys.Order(StringComparer.Ordinal), FilesByFolder().Select(g => g.Key).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_file_declares_the_type_it_is_named_after_and_stays_short()
    {
        foreach (string file in FilesByFolder().SelectMany(g => g))
        {
            string text = File.ReadAllText(file);
            Assert.True(text.Split('\n').Length <= 301, $"{file} is longer than 300 lines");
            var declared = Regex.Matches(text, @"^(?:public|internal)[\w\s]*?(?:record\s+struct|record\s+class|record|class|struct|enum|interface)\s+(\w+)", RegexOptions.Multiline);
            Assert.True(declared.Count == 1, $"{file} declares {declared.Count} types");
            Assert.StartsWith(declared[0].Groups[1].Value, Path.GetFileNameWithoutExtension(file), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Arrows_run_down()
    {
        var folderOf = FilesByFolder()
            .SelectMany(g => g.Select(file => (Type: TypeOf(file), Folder: g.Key)))
            .DistinctBy(x => x.Type).ToDictionary(x => x.Type, x => x.Folder);
        foreach (IGrouping<string, string> folder in FilesByFolder())
        {
            string[] permitted = [folder.Key, "Internals", "Equations", .. Arrows[folder.Key]];
            foreach (string file in folder)
            {
                string code = Regex.Replace(File.ReadAllText(file), @"//.*|""(?:[^""\\]|\\.)*""", "");
                foreach ((string type, string home) in folderOf)
                {
                    bool used = Regex.IsMatch(code, $@"(?<![\w.])(?<!string ){type}(?:<|\.|\s+\w|\(|\?|\[|>|,|\))");
                    Assert.True(!used || permitted.Contains(home), $"{Path.GetFileName(file)} ({folder.Key}) uses {type} ({home})");
                }
            }
        }
    }

    [Fact]
    public void Only_one_file_turns_quantities_into_doubles()
    {
        // Reading .NewtonMeters and the like outside Si is for printing only, which happens inside interpolated strings.
        foreach (string file in FilesByFolder().SelectMany(g => g).Where(f => Path.GetFileName(f) != "Si.cs"))
        {
            string code = Regex.Replace(File.ReadAllText(file), @"//.*|\$?""(?:[^""\\]|\\.)*""", "");
            Assert.False(
                Regex.IsMatch(code, @"\.(?:NewtonMeters|Meters|Millimeters|Newtons|Kilonewtons|Pascals|Megapascals|Degrees|Radians|DegreesPerSecond|Seconds)\b(?!\s*\()"),
                $"{Path.GetFileName(file)} converts a quantity outside Si");
        }
    }

    [Fact]
    public void The_asset_under_test_is_the_one_meant()
    {
        string framework = typeof(ScrewThread).Assembly.GetCustomAttribute<System.Runtime.Versioning.TargetFrameworkAttribute>()!.FrameworkName;
#if NETSTANDARD_ASSET
        Assert.Equal(".NETStandard,Version=v2.0", framework);
#else
        Assert.Equal(".NETCoreApp,Version=v10.0", framework);
#endif
    }

    /// <summary>But for the attributes that netstandard2.0 lacks: they are the compiler's, by its names.</summary>
    private static IEnumerable<IGrouping<string, string>> FilesByFolder() => Directory
        .EnumerateFiles(Source, "*.cs", SearchOption.AllDirectories)
        .Where(f => !Path.GetRelativePath(Source, f).StartsWith("obj", StringComparison.Ordinal) && !Path.GetRelativePath(Source, f).StartsWith("bin", StringComparison.Ordinal))
        .GroupBy(f => Path.GetFileName(Path.GetDirectoryName(f)!))
        .Where(folder => folder.Key != "Polyfills");

    private static string TypeOf(string file) => Path.GetFileNameWithoutExtension(file).Split('.')[0].Split("Of")[0] is { Length: > 0 } stem && File.Exists(Path.Combine(Path.GetDirectoryName(file)!, stem + ".cs"))
        ? stem
        : Path.GetFileNameWithoutExtension(file);
}
