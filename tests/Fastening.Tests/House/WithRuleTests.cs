using System.Reflection;
using Fastening.Tests.Answers;

namespace Fastening.Tests.House;

/// <summary>
/// A With changes what it names and nothing else: of every public type, over random receivers and arguments, by reflection. Of two with different
/// names the order does not matter, to the last private field; so neither of them forgets what the other one set.
/// </summary>
public class WithRuleTests
{
    private const int Draws = 40;
    private const int DrawsOfPairs = 16;

    /// <summary>Properties that are computed from what is stated: they follow.</summary>
    private static readonly string[] Computed =
    [
        "BearingSurface.EffectiveDiameter",
        "CalibrationUncertainty.IsResolutionStated",
        "ClampedStack.IsInRange", "ClampedStack.MetersPerNewton", "ClampedStack.RangeNotes", "ClampedStack.Stiffness",
        "FrictionTorqueModel.Efficiency", "FrictionTorqueModel.HoldingFriction", "FrictionTorqueModel.NutFactor",
        "RotationTightening.ElasticRotation", "RotationTightening.ElasticSlope",
        "ThreadEngagement.ExternalShearArea", "ThreadEngagement.InternalShearArea",
        "TorquePreloadRange.LeastPreload", "TorquePreloadRange.MostPreload", "TorquePreloadRange.MostTwist",
        "TorqueWrench.TorqueRatio",
        "UncertaintyBudget.EffectiveDegreesOfFreedom", "UncertaintyBudget.MeanShift", "UncertaintyBudget.Rows", "UncertaintyBudget.StandardUncertainty",
        "UncertaintyBudget.StandardUncertaintyToSecondOrder",
    ];

    /// <summary>What a With names in other words than its property.</summary>
    private static readonly (string With, string[] Properties)[] OtherWords =
    [
        ("BearingSurface.WithHole", ["InnerDiameter"]),
        ("BearingSurface.WithWasher", ["InnerDiameter"]),
        ("JointTemperatures.WithModuli", ["BoltModulusRatio", "PartsModulusRatio"]),
        ("MonteCarlo.WithAdaptiveStop", ["SignificantDigits"]),
        ("JobEntry.WithContact", ["HasContact"]),
        ("JobEntry.WithTorque", ["Torque", "TorqueAtTool"]),
        ("TighteningProgram.WithEffect", ["ChangedEffects"]),
        ("TighteningStep.With", ["Criteria", "TorqueWindow"]),
        ("TighteningTrace.WithoutWindUp", ["AnglesDegrees"]),
        ("TorquePreloadRange.WithPrevailing", ["HighPrevailingTorque", "LowPrevailingTorque"]),
        ("TorqueWrench.WithRange", ["HighTorque", "LowTorque"]),
        ("UncertaintyContribution.WithDoubt", ["DegreesOfFreedom"]),
    ];

    /// <summary>What a With carries along by design, each with the reason.</summary>
    private static readonly (string With, string Property, string Because)[] Carried =
    [
        ("FrictionTorqueModel.WithConvention", "Bearing", "a convention brings its rule for the bearing diameter"),
        ("UncertaintyContribution.WithDegreesOfFreedom", "Distribution", "a normal with few degrees of freedom is drawn as Student's t"),
        ("UncertaintyContribution.WithDegreesOfFreedom", "DrawnStandardDeviation", "a normal with few degrees of freedom is drawn as Student's t"),
        ("UncertaintyContribution.WithDoubt", "Distribution", "a doubt is degrees of freedom in other words"),
        ("UncertaintyContribution.WithDoubt", "DrawnStandardDeviation", "a doubt is degrees of freedom in other words"),
    ];

    /// <summary>Pairs whose order matters by design, each with the reason.</summary>
    private static readonly (string One, string Other, string Because)[] Ordered =
    [
        ("BearingSurface.WithHole", "BearingSurface.WithWasher", "each takes the place of the other: the inner edge is that of the hole or of the washer"),
        ("JointCapacity.WithNutBearing", "JointCapacity.WithoutNut", "each takes the other back"),
        ("RotationTightening.WithCoaxialExtension", "RotationTightening.WithToolWindUp", "what gives is listed and added up in the order it was stated"),
        ("UncertaintyBudget.WithCorrelations", "UncertaintyBudget.WithKnownCorrelations", "both state the coefficient of the same pair"),
        ("UncertaintyContribution.WithDegreesOfFreedom", "UncertaintyContribution.WithDoubt", "both state the degrees of freedom"),
    ];

    [Fact]
    public void A_With_changes_what_it_names_and_nothing_else()
    {
        var used = new HashSet<string>(StringComparer.Ordinal);
        var wrong = new SortedSet<string>(StringComparer.Ordinal);
        foreach ((string pool, MethodInfo with) in Withs())
        {
            foreach ((object receiver, object changed) in Changes(pool, with))
            {
                foreach (PropertyInfo property in AnswerReader.PropertiesOf(receiver.GetType()))
                {
                    object? before = Value(property, receiver), after = Value(property, changed);
                    if (DeepComparison.Difference(before, after) is null) continue;
                    string method = $"{receiver.GetType().Name.Split('`')[0]}.{with.Name}", shown = $"{receiver.GetType().Name.Split('`')[0]}.{property.Name}";
                    if (Computed.Contains(shown)) used.Add(shown);
                    else if (Carried.Any(carried => carried.With == method && carried.Property == property.Name)) used.Add($"{method} {property.Name}");
                    else if (!Names(method, property.Name)) wrong.Add($"{method} changes {property.Name}");
                }
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
        string[] idle = [.. Computed.Concat(Carried.Select(carried => $"{carried.With} {carried.Property}")).Where(listed => !used.Contains(listed))];
        Assert.Equal([], idle);
    }

    [Fact]
    public void The_order_of_two_Withs_does_not_matter()
    {
        var wrong = new SortedSet<string>(StringComparer.Ordinal);
        var ordered = new HashSet<string>(StringComparer.Ordinal);
        int pairs = 0;
        foreach (IGrouping<string, (string Pool, MethodInfo With)> type in Withs().GroupBy(with => with.Pool))
        {
            MethodInfo[] withs = [.. type.Select(with => with.With)];
            foreach (MethodInfo one in withs)
            {
                foreach (MethodInfo other in withs.Where(with => string.CompareOrdinal(with.Name, one.Name) > 0))
                {
                    bool isOrdered = Ordered.Any(pair => $"{type.Key}.{one.Name}" == pair.One && $"{type.Key}.{other.Name}" == pair.Other);
                    for (int n = 0; n < DrawsOfPairs; n++)
                    {
                        var draw = new Draw($"{type.Key} {one.Name} {other.Name} {n}");
                        object receiver = draw.Of(RandomObjects.Pool(type.Key));
                        if (receiver.GetType() != one.ReflectedType) continue;
                        object?[] first = ArgumentsOf(one, draw), second = ArgumentsOf(other, draw);
                        object? there = Try(Try(receiver, one, first), other, second), back = Try(Try(receiver, other, second), one, first);
                        if (there is null && back is null) continue;
                        pairs++;
                        if (DeepComparison.Difference(there, back) is not string difference) continue;
                        if (isOrdered) ordered.Add($"{type.Key}.{one.Name}");
                        else wrong.Add($"{type.Key}: {one.Name} and {other.Name}: {difference}");
                    }
                }
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong.GroupBy(line => string.Join(':', line.Split(':').Take(2))).Select(group => group.First())));
        Assert.Equal([], Ordered.Select(pair => pair.One).Where(listed => !ordered.Contains(listed)));
        Assert.True(pairs > 500, $"only {pairs} pairs answered");
    }

    [Fact]
    public void Every_type_with_a_With_is_asked()
    {
        string[] all =
        [
            .. typeof(ScrewThread).Assembly.GetExportedTypes()
                .Where(type => type.GetMethods(BindingFlags.Public | BindingFlags.Instance).Any(IsWith))
                .Where(type => !type.IsAbstract)
                .Select(type => type.Name.Split('`')[0]).Distinct().Order(StringComparer.Ordinal),
        ];
        Assert.Equal(all, Withs().Select(with => with.With.ReflectedType!.Name.Split('`')[0]).Distinct().Order(StringComparer.Ordinal));
    }

    private static IEnumerable<(string Pool, MethodInfo With)> Withs() =>
        from pool in RandomObjects.Makers.Keys
        where pool != "TorquePreloadModel"
        let type = RandomObjects.Pool(pool)[0].GetType()
        from method in type.GetMethods(BindingFlags.Public | BindingFlags.Instance)
        where IsWith(method) && method.GetParameters().All(Arguments.Knows)
        select (pool, method);

    private static bool IsWith(MethodInfo method) => method.Name.StartsWith("With", StringComparison.Ordinal);

    private static IEnumerable<(object Receiver, object Changed)> Changes(string pool, MethodInfo with)
    {
        for (int n = 0; n < Draws; n++)
        {
            var draw = new Draw($"{pool} {with.Name} {n}");
            object receiver = draw.Of(RandomObjects.Pool(pool));
            if (receiver.GetType() == with.ReflectedType && Try(receiver, with, ArgumentsOf(with, draw)) is object changed) yield return (receiver, changed);
        }
    }

    private static object?[] ArgumentsOf(MethodInfo with, Draw draw) => [.. with.GetParameters().Select(parameter => Arguments.For(parameter.ParameterType, parameter.Name!, draw))];

    private static object? Try(object? receiver, MethodInfo with, object?[] arguments)
    {
        if (receiver is null) return null;
        try
        {
            return with.Invoke(receiver, arguments);
        }
        catch (TargetInvocationException)
        {
            return null;
        }
    }

    private static object? Value(PropertyInfo property, object receiver)
    {
        try
        {
            return property.GetValue(receiver);
        }
        catch (TargetInvocationException wrapped)
        {
            return wrapped.InnerException!.GetType();
        }
    }

    private static bool Names(string with, string property)
    {
        string named = with.Split('.')[1]["With".Length..];
        return property.StartsWith(named, StringComparison.Ordinal) || named.StartsWith(property, StringComparison.Ordinal) || property.EndsWith(named, StringComparison.Ordinal)
            || OtherWords.Any(words => words.With == with && words.Properties.Contains(property));
    }
}
