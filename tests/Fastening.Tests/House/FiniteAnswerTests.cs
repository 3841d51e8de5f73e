using System.Collections;
using System.Reflection;
using UnitsNet;

namespace Fastening.Tests.House;

/// <summary>
/// Nothing answers with NaN or infinity. Every public call of the models, on its valid values and with one argument at a time at zero, below zero,
/// very small, very large or not finite, either refuses in our own words or gives an object of which every number, at any depth, is finite and can
/// be read and printed.
/// </summary>
public class FiniteAnswerTests
{
    private const int Depth = 3;
    private const int Elements = 12;

    private static readonly double[] Factors = [0, -1, 1e-30, 1e-12, 1e-6, 1e-3, 0.1, 0.5, 0.999, 1.001, 2, 10, 1e3, 1e6, 1e12, 1e30, 1e200];

    private static readonly double[] Numbers =
        [0, -1, 1, 2, 0.5, 1e-300, 1e-12, 1e-6, 1e-3, 0.999999, 1.000001, 3.7, 30, 99, 1e3, 1e6, 1e9, 1e49, double.Epsilon, double.MaxValue, double.NaN, double.PositiveInfinity];

    private static readonly int[] Counts = [int.MinValue, -1, 0, 1, 2, 3, 7, 30, 1000, 100_000, int.MaxValue];

    /// <summary>But for the monitor, the one object that a call changes: it has walks of its own.</summary>
    public static TheoryData<string> Members => RefusalTests.Members;

    public static TheoryData<Type> Types => [.. RefusalTests.PublicTypes().Where(type => Samples.InstanceOf(type) is not null)];

    [Theory]
    [MemberData(nameof(Members))]
    public void A_call_answers_with_numbers_or_refuses(string member)
    {
        foreach (MethodBase method in RefusalTests.PublicMembers().Where(m => RefusalTests.Name(m) == member && m.DeclaringType != typeof(RotationRateMonitor)))
        {
            ParameterInfo[] parameters = method.GetParameters();
            object?[] valid = [.. parameters.Select(p => Samples.For(p.ParameterType, p.Name!))];
            Try(method, valid);
            for (int i = 0; i < parameters.Length; i++)
            {
                foreach (object edge in EdgesOf(parameters[i].ParameterType, valid[i]))
                {
                    object?[] arguments = [.. valid];
                    arguments[i] = edge;
                    Try(method, arguments);
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Types))]
    public void What_an_object_shows_are_numbers(Type type) => Read(Samples.InstanceOf(type), type.Name, Depth, []);

    [Fact]
    public void The_walk_finds_what_is_not_finite()
    {
        // A walk that looked past the numbers would be a rule that cannot fail.
        foreach (object rotten in new object[] { double.NaN, new[] { 1, double.PositiveInfinity }, (1, double.NaN), new Unfinished() })
        {
            Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => Read(rotten, "rotten", Depth, []));
        }

        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => Read(new Unreadable(), "rotten", Depth, []));
        Read(new[] { Torque.FromNewtonMeters(3) }, "sound", Depth, []);
    }

    private static void Try(MethodBase method, object?[] arguments)
    {
        string call = $"{RefusalTests.Name(method)}({string.Join(", ", arguments.Select(argument => argument?.ToString() ?? "null"))})";
        object? answer;
        try
        {
            answer = method is ConstructorInfo constructor ? constructor.Invoke(arguments)
                : method.Invoke(method.IsStatic ? null : Samples.InstanceOf(method.DeclaringType!), arguments);
        }
        catch (TargetInvocationException wrapped)
        {
            Exception refusal = wrapped.InnerException!;
            bool ours = refusal is ArgumentException or InvalidOperationException or FormatException or NotSupportedException;
            Assert.True(ours && !refusal.Message.Contains("valid number", StringComparison.Ordinal), $"{call}: {refusal}");
            return;
        }

        Read(answer, call, Depth, []);
        for (int i = 0; i < arguments.Length; i++)
        {
            if (method.GetParameters()[i].IsOut) Read(arguments[i], call, Depth, []);
        }
    }

    private static void Read(object? value, string path, int depth, HashSet<object> seen)
    {
        switch (value)
        {
            case null or string or Enum or bool or int or long or Delegate or DateTimeOffset or Type:
                return;
            case double number:
                Assert.True(double.IsFinite(number), $"{path} is {number}");
                return;
            case IQuantity quantity:
                Assert.True(double.IsFinite((double)quantity.Value), $"{path} is {quantity.Value}");
                return;
            case ReadOnlyMemory<double> column:
                Read(column.ToArray(), path, depth, seen);
                return;
            case IEnumerable many:
                int n = 0;
                foreach (object? one in many)
                {
                    Read(one, $"{path}[{n}]", depth, seen);
                    if (++n == Elements) break;
                }

                return;
        }

        if (depth == 0 || (!value.GetType().IsValueType && !seen.Add(value))) return;
        bool isTuple = value.GetType().Name.StartsWith("ValueTuple", StringComparison.Ordinal);
        if (!isTuple && value.GetType().Namespace is not ("Fastening" or "Fastening.Quality" or "Fastening.Equations" or "Fastening.Tests.House")) return;
        foreach (FieldInfo field in value.GetType().GetFields(BindingFlags.Public | BindingFlags.Instance)) Read(field.GetValue(value), $"{path}.{field.Name}", depth - 1, seen);
        foreach (PropertyInfo property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            if (property.GetIndexParameters().Length > 0 || property.PropertyType.IsByRefLike) continue;
            object? answer = Answer(() => property.GetValue(value), $"{path}.{property.Name}");
            if (!IsKnownExactly(property, answer)) Read(answer, $"{path}.{property.Name}", depth - 1, seen);
        }

        foreach (MethodInfo method in value.GetType().GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
        {
            bool isReading = method is { IsSpecialName: false, IsGenericMethod: false } && method.GetParameters().Length == 0 && method.ReturnType != typeof(void) && !method.ReturnType.IsByRefLike;
            if (isReading && depth > 1) Read(Answer(() => method.Invoke(value, null), $"{path}.{method.Name}()"), $"{path}.{method.Name}()", depth - 2, seen);
        }

        Assert.DoesNotMatch(@"\bNaN\b|Infinity", value.ToString());
    }

    /// <summary>Degrees of freedom are infinite where a standard uncertainty is known exactly (JCGM 100 G.4.3): the one infinity that is meant.</summary>
    private static bool IsKnownExactly(PropertyInfo property, object? answer) =>
        property.Name.EndsWith("DegreesOfFreedom", StringComparison.Ordinal) && answer is double.PositiveInfinity;

    private static object? Answer(Func<object?> question, string path)
    {
        try
        {
            return question();
        }
        catch (TargetInvocationException wrapped) when (wrapped.InnerException is InvalidOperationException)
        {
            return null;
        }
        catch (TargetInvocationException wrapped)
        {
            Assert.Fail($"{path}: {wrapped.InnerException}");
            return null;
        }
    }

    private static IEnumerable<object> EdgesOf(Type type, object? valid)
    {
        Type bare = Nullable.GetUnderlyingType(type) ?? type;
        if (bare == typeof(double)) return Numbers.Cast<object>().Concat(valid is double sample ? Factors.Select(factor => (object)(factor * sample)) : []);
        if (bare == typeof(int)) return Counts.Cast<object>();
        if (bare.IsEnum) return Enum.GetValues(bare).Cast<object>();
        if (bare == typeof(bool)) return [true, false];
        return valid is IQuantity quantity
            ? Factors.Select(factor => (object)Quantity.From(factor * (double)quantity.Value, quantity.Unit)).Append(Quantity.From(double.MaxValue, quantity.QuantityInfo.UnitInfos[^1].Value))
            : [];
    }

    private sealed class Unfinished
    {
        public double Value { get; } = double.NaN;
    }

    private sealed class Unreadable
    {
        private readonly double _value = double.NaN;

        public Torque Value => Torque.FromNewtonMeters(_value);
    }
}
