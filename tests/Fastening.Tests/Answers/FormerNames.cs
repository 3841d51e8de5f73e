namespace Fastening.Tests.Answers;

/// <summary>
/// The record speaks of every type and member by the name it had when it was first written. Who renames one writes the new name here beside the
/// old one, and the record goes on holding the answers. Parameters need no entry: the record holds their first names.
/// </summary>
internal static class FormerNames
{
    private const string Moved = "in the provenance, which the record reads where its owner is asked for it";

    /// <summary>New name of a type, generic arguments included (<c>Range&lt;Force&gt;</c>), to its name in the record.</summary>
    private static readonly Dictionary<string, string> Types = new(StringComparer.Ordinal)
    {
        ["Range<Force>"] = "PreloadRange",
    };

    /// <summary>New name of a member (<c>Range&lt;Force&gt;.Low</c>; the type by its new name) to the member's name in the record, without its type.</summary>
    private static readonly Dictionary<string, string> Members = new(StringComparer.Ordinal)
    {
        ["Range<Force>.Low"] = "Minimum",
        ["Range<Force>.High"] = "Maximum",
        ["Range<Force>.HighOverLow"] = "TighteningFactor",
        ["PreloadRangeAfterRotation.Low"] = "Lowest",
        ["PreloadRangeAfterRotation.High"] = "Highest",
        ["RejudgedReading.LowDelivered"] = "LowestDelivered",
        ["RejudgedReading.HighDelivered"] = "HighestDelivered",
        ["StatisticalToleranceInterval<Torque>.Low"] = "Lower",
        ["StatisticalToleranceInterval<Torque>.High"] = "Upper",
        ["ElasticMaterial.LowYoungsModulus"] = "LeastYoungsModulus",
        ["ElasticMaterial.HighYoungsModulus"] = "GreatestYoungsModulus",
        ["ElasticMaterial.LowPoissonRatio"] = "LeastPoissonRatio",
        ["ElasticMaterial.HighPoissonRatio"] = "GreatestPoissonRatio",
        ["ElasticMaterial.LowThermalExpansion"] = "LeastThermalExpansion",
        ["ElasticMaterial.HighThermalExpansion"] = "GreatestThermalExpansion",
        ["JointDuty.LowAxialLoad"] = "LeastAxialLoad",
        ["JointDuty.HighAxialLoad"] = "GreatestAxialLoad",
        ["TorquePreloadRange.LowPrevailingTorque"] = "LowestPrevailingTorque",
        ["TorquePreloadRange.HighPrevailingTorque"] = "HighestPrevailingTorque",
        ["TorqueTool.LowTorque"] = "Minimum",
        ["TorqueTool.HighTorque"] = "Maximum",
        ["TorqueWrench.LowTorque"] = "Minimum",
        ["TorqueWrench.HighTorque"] = "Maximum",
    };

    /// <summary>What the two tables above cannot say (two old types became one): the beginning of a key as the walk writes it, to the beginning in the record.</summary>
    private static readonly (string Now, string Record)[] Keys =
    [
        ("BoltStress.WhileTightening(", "AssemblyStress.At("),
        ("BoltStress.HighestAt(", "AssemblyStress.HighestAt("),
        ("BoltStress.InService(", "WorkingStress.At("),
        ("FrictionTest.Of(", "FrictionTest.CoefficientsFrom("),
    ];

    /// <summary>Calls of an object that were static, by their names now, to the signature in the record: the first argument is the receiver.</summary>
    public static readonly Dictionary<string, string> WasStatic = new(StringComparer.Ordinal)
    {
        ["FrictionTorqueModel.PermittedPreload"] = "AssemblyStress.PermittedPreload(FrictionTorqueModel, BoltStrength, Ratio, TorsionDistribution, Length?)",
        ["TorquePreloadRange.PermittedTorque"] = "AssemblyStress.PermittedTorque(TorquePreloadRange, BoltStrength, Ratio, TorsionDistribution, Length?)",
    };

    /// <summary>The end of a key below one call, where two types with other names for one thing became one: beginning, end now, end in the record.</summary>
    private static readonly (string Call, string Now, string Record)[] Ends =
    [
        ("CapabilityIndex.Interval(", " | .Low", " | .Lower"),
        ("CapabilityIndex.Interval(", " | .High", " | .Upper"),
    ];

    /// <summary>Keys of the record that are gone for good, by their beginning, each with the reason.</summary>
    public static readonly (string Key, string Because)[] Gone =
    [
        ("FrictionGuidance.Coefficients | [].IsFromMemory", Moved), ("FrictionGuidance.NutFactors | [].IsFromMemory", Moved),
        ("PublishedFriction.IsFromMemory", Moved), ("PublishedNutFactor.IsFromMemory", Moved), ("PublishedRotation.IsFromMemory", Moved),
        ("PublishedPreloadScatter.All | [].IsFromMemory", Moved), ("PublishedPreloadScatter.Of(TighteningMethod method) | [].IsFromMemory", Moved),
        ("PublishedRotation.All | [].IsFromMemory", Moved), ("PublishedRotation.En1090Part2(Length clampedThickness, Length diameter) | .IsFromMemory", Moved),
        ("PublishedRotation.Rcsc2014(Length boltLength, Length diameter, SlopedFaces slopedFaces) | .IsFromMemory", Moved),
        ("PublishedRotation.RcscBefore2014(Length boltLength, Length diameter, SlopedFaces slopedFaces) | .IsFromMemory", Moved),
        ("RotationTightening.Compare(PublishedRotation published, Force requiredPreload) | .Published.IsFromMemory", Moved),
        ("RotationTightening.Compare(PublishedRotation published, Force requiredPreload, FrictionRange friction) | .Published.IsFromMemory", Moved),
        ("StructuralTightening.CombinedMethodK1(PropertyClass propertyClass, ScrewThread thread, Length clampedThickness) | .FurtherRotation.IsFromMemory", Moved),
        ("StructuralTightening.CombinedMethodK2(PropertyClass propertyClass, ScrewThread thread, Double meanNutFactor, Length clampedThickness) | .FurtherRotation.IsFromMemory", Moved),
        ("PreloadRange.Between(", "Range<Force> has a constructor; what takes a range of preload checks its domain"),
        ("CapabilityIndex.Interval(Double confidence) | .Confidence", "a range does not repeat the argument of the call"),
        ("MonteCarloResult.ShortestInterval(Double coverageProbability) | .CoverageProbability", "a range does not repeat the argument of the call"),
        ("MonteCarloResult.SymmetricInterval(Double coverageProbability) | .CoverageProbability", "a range does not repeat the argument of the call"),
    ];

    public static string OfType(string name) => Types.GetValueOrDefault(name, name);

    public static string OfMember(string type, string member) => Members.GetValueOrDefault($"{type}.{member}", member);

    public static string OfAnswer(string key)
    {
        foreach ((string call, string now, string record) in Ends)
        {
            if (key.StartsWith(call, StringComparison.Ordinal) && key.EndsWith(now, StringComparison.Ordinal)) return key[..^now.Length] + record;
        }

        return key;
    }

    public static string OfKey(string key)
    {
        foreach ((string now, string record) in Keys)
        {
            if (key.StartsWith(now, StringComparison.Ordinal)) return record + key[now.Length..];
        }

        return key;
    }
}
