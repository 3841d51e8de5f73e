using System.Globalization;
using System.Reflection;
using UnitsNet;

namespace Fastening.Tests.House;

/// <summary>Every public member outside the equations refuses what is outside its domain, in the words of the house.</summary>
public class RefusalTests
{
    /// <summary>A reading may be anything: every finite value has a verdict.</summary>
    private static readonly (Type Type, string Method, string Parameter)[] TakesAnything =
    [
        (typeof(ToleranceWindow<Torque>), "Classify", "reading"),
        (typeof(ToleranceWindow<Torque>), "ZoneOf", "reading"),
        (typeof(ToleranceWindow<Torque>), "Decide", "reading"),
        (typeof(WrenchFit), "Has", "warning"),
    ];

    public static TheoryData<string> Members => [.. PublicMembers().Select(Name).Distinct()];

    [Theory]
    [MemberData(nameof(Members))]
    public void Refuses_hostile_values_and_says_which_what_and_what_is_permitted(string member)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = new CultureInfo("de-DE");
        try
        {
            foreach (MethodBase method in PublicMembers().Where(m => Name(m) == member)) RefuseEachParameter(method);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [MemberData(nameof(Members))]
    public void Refuses_null_by_name(string member)
    {
        foreach (MethodBase method in PublicMembers().Where(m => Name(m) == member))
        {
            ParameterInfo[] parameters = method.GetParameters();
            object?[] valid = [.. parameters.Select(p => Samples.For(p.ParameterType, p.Name!))];
            var nullability = new NullabilityInfoContext();
            for (int i = 0; i < parameters.Length; i++)
            {
                bool mayBeNull = parameters[i].ParameterType.IsValueType || nullability.Create(parameters[i]).WriteState == NullabilityState.Nullable;
                if (mayBeNull || parameters[i].IsOut) continue;
                object?[] arguments = [.. valid];
                arguments[i] = null;
                Exception refusal = Assert.IsAssignableFrom<ArgumentNullException>(Thrown(method, arguments));
                Assert.Equal(parameters[i].Name, ((ArgumentNullException)refusal).ParamName);
            }
        }
    }

    [Fact]
    public void The_walk_reaches_the_public_face()
    {
        // A member dropped from the walk would be a rule that cannot fail.
        string[] names = [.. PublicMembers().Select(Name).Distinct()];
        Assert.True(names.Length >= 70, $"only {names.Length} members: {string.Join(", ", names)}");
        Assert.Contains("TorqueWrench.WithAdapter", names);
        Assert.Contains("ToleranceWindow.FromDeviations", names);
        Assert.Contains("TorquePreloadModel.FromNutFactor", names);
    }

    private static void RefuseEachParameter(MethodBase method)
    {
        ParameterInfo[] parameters = method.GetParameters();
        object?[] valid = [.. parameters.Select(p => Samples.For(p.ParameterType, p.Name!))];
        if (parameters.All(p => !p.ParameterType.IsByRef)) Assert.Null(Thrown(method, valid));
        for (int i = 0; i < parameters.Length; i++)
        {
            ParameterInfo parameter = parameters[i];
            if (TakesAnything.Contains((method.DeclaringType!, method.Name, parameter.Name!))) continue;
            foreach (object hostile in Samples.HostileFor(parameter.ParameterType))
            {
                object?[] arguments = [.. valid];
                arguments[i] = hostile;
                Exception? thrown = Thrown(method, arguments);
                var refusal = thrown as ArgumentOutOfRangeException;
                Assert.True(refusal is not null, $"{Name(method)}({parameter.Name} = {hostile}): {thrown?.ToString() ?? "accepted"}");
                Assert.Equal(parameter.Name, refusal.ParamName);
                Assert.Matches($"^{parameter.Name} is .+; it must be .+\\.", refusal.Message);
                Assert.DoesNotMatch(@"\d,\d", refusal.Message);
            }
        }
    }

    private static Exception? Thrown(MethodBase method, object?[] arguments)
    {
        try
        {
            if (method is ConstructorInfo constructor) constructor.Invoke(arguments);
            else method.Invoke(method.IsStatic ? null : Samples.InstanceOf(method.DeclaringType!), arguments);
            return null;
        }
        catch (TargetInvocationException wrapped)
        {
            return wrapped.InnerException;
        }
    }

    /// <summary>Constructors and methods with parameters that reflection can pass; generic ones closed over Torque. Spans have tests of their own.</summary>
    internal static IEnumerable<MethodBase> PublicMembers()
    {
        const BindingFlags Declared = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        foreach (Type type in PublicTypes())
        {
            foreach (MethodBase member in type.GetMembers(Declared).OfType<MethodBase>())
            {
                if (member.GetParameters().Length == 0 || member is MethodInfo { IsSpecialName: true }) continue;
                MethodBase closed = member is MethodInfo { IsGenericMethodDefinition: true } generic ? generic.MakeGenericMethod(typeof(Torque)) : member;
                if (closed.GetParameters().Any(p => p.ParameterType.IsByRefLike || p.ParameterType.IsGenericType && p.ParameterType.Name.StartsWith("ReadOnlyMemory", StringComparison.Ordinal))) continue;
                if (closed.Name.StartsWith("Parse", StringComparison.Ordinal) || closed.Name.StartsWith("TryParse", StringComparison.Ordinal)) continue;
                yield return closed;
            }
        }
    }

    internal static IEnumerable<Type> PublicTypes() => typeof(ScrewThread).Assembly.GetExportedTypes()
        .Where(t => t.Namespace is "Fastening" or "Fastening.Quality" && t.IsClass)
        .Select(t => t.IsGenericTypeDefinition ? t.MakeGenericType(typeof(Torque)) : t);

    internal static string Name(MethodBase method) => $"{method.DeclaringType!.Name.Split('`')[0]}.{method.Name}";
}
