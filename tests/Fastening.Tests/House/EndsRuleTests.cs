using System.Reflection;
using UnitsNet;

namespace Fastening.Tests.House;

/// <summary>The ends of a window are Lower and Upper, those of a range Low and High, and nothing else.</summary>
public class EndsRuleTests
{
    private static readonly string[] LowWords = ["Least", "Lowest", "Minimum", "Min", "Smallest", "Lower"], HighWords = ["Greatest", "Highest", "Maximum", "Max", "Largest", "Upper", "Most"];

    /// <summary>A pair that is not the two ends of one thing.</summary>
    private static readonly Dictionary<string, string> NoEnds = new()
    {
        ["GuaranteedSetting LowestSetting HighestSetting"] = "two answers of their own equations; without a setting that fits, the lowest is above the highest",
        ["RotationComparison AtLeast AtMost"] = "two results, at the corners of friction",
        ["ToleranceWindow`1 Lower Upper"] = "the limits of a window",
        ["TorquePreloadRange LeastPreload MostPreload"] = "two models, at the corners of friction",
    };

    [Fact]
    public void No_pair_of_properties_has_other_words_for_two_ends()
    {
        var pairs = new List<string>();
        foreach (Type type in typeof(ScrewThread).Assembly.GetExportedTypes().Where(type => type.Namespace != "Fastening.Equations"))
        {
            string[] names = [.. type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly).Select(property => property.Name)];
            pairs.AddRange(
                from low in names
                from high in names
                from lowWord in LowWords
                from highWord in HighWords
                where low.Contains(lowWord, StringComparison.Ordinal) && high.Contains(highWord, StringComparison.Ordinal)
                    && low.Replace(lowWord, "") == high.Replace(highWord, "")
                select $"{type.Name} {low} {high}");
        }

        Assert.Equal(NoEnds.Keys.Order(StringComparer.Ordinal), pairs.Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_low_end_has_a_high_one()
    {
        foreach (Type type in typeof(ScrewThread).Assembly.GetExportedTypes())
        {
            string[] names = [.. type.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly).Select(property => property.Name)];
            Assert.Equal(names.Contains("Low"), names.Contains("High"));
            Assert.True(!names.Contains("Low") || !names.Contains("Lower"), $"{type.Name} is a range and a window");
        }

        Assert.NotNull(typeof(Range<Force>).GetProperty("Low"));
    }
}
