using System.Reflection;
using UnitsNet;

namespace Fastening.Tests.Answers;

/// <summary>One member of the public face with the pool its receivers come from; null for what has no receiver.</summary>
internal sealed record Member(string Subject, MemberInfo Info)
{
    /// <summary>Kinds that the record leaves out: texts, readings of texts, batches, and what the derivations cover.</summary>
    private static readonly string[] LeftOut = ["ToString", "Equals", "GetHashCode", "GetType", "Parse", "TryParse", "Format", "Derive"];

    public bool HasReceiver => !IsStatic && !WasStatic && Info is not ConstructorInfo;

    private bool IsStatic => Info is MethodBase { IsStatic: true } or PropertyInfo { GetMethod.IsStatic: true };

    /// <summary>An object that a property shows is read for itself; one that a call made may hold others.</summary>
    public int Depth => Info is PropertyInfo ? 1 : 2;

    /// <summary>A call that was static when the record was first written: its receiver was the first argument.</summary>
    public bool WasStatic { get; init; }

    public Type AnswerType => Info switch
    {
        ConstructorInfo constructor => constructor.DeclaringType!,
        MethodInfo method => method.ReturnType,
        PropertyInfo property => property.PropertyType,
        _ => throw new InvalidOperationException(Info.Name),
    };

    /// <summary>Types and names of the arguments, the names those of the record.</summary>
    public (Type Type, string Name)[] Parameters
    {
        get
        {
            IEnumerable<(Type Type, string Name)> stated = Info is MethodBase method ? method.GetParameters().Select(parameter => (parameter.ParameterType, parameter.Name ?? "value")) : [];
            return WasStatic ? [(Info.ReflectedType!, "receiver"), .. stated] : [.. stated];
        }
    }

    /// <summary>The name in the record, parameter types without names: <c>TorquePreloadModel.FromNutFactor(Double, Length)</c>.</summary>
    public string Signature
    {
        get
        {
            if (WasStatic) return FormerNames.WasStatic[$"{TypeNames.Now(Info.ReflectedType!)}.{Info.Name}"];
            string name = Info is ConstructorInfo ? "new" : FormerNames.OfMember(TypeNames.Now(Info.ReflectedType!), Info.Name);
            string arguments = Info is MethodBase ? $"({string.Join(", ", Parameters.Select(parameter => TypeNames.InRecord(parameter.Type)))})" : "";
            return FormerNames.OfKey($"{Subject}.{name}{arguments}");
        }
    }

    public object? Ask(object? receiver, object?[] arguments) => Info switch
    {
        MethodInfo method when WasStatic => method.Invoke(arguments[0], arguments[1..]),
        ConstructorInfo constructor => constructor.Invoke(arguments),
        MethodInfo method => method.Invoke(receiver, arguments),
        PropertyInfo property => property.GetValue(receiver),
        _ => throw new InvalidOperationException(Info.Name),
    };

    /// <summary>Random arguments, each from a seed of its own unless only certain ones go together.</summary>
    public object?[] DrawArguments(string seed, Draw draw)
    {
        string[]? first = ParameterNames.Of(Signature);
        return Together.For(Signature, draw)
            ?? [.. Parameters.Select((parameter, i) => Arguments.For(parameter.Type, first is null ? parameter.Name : first[i], new Draw($"{seed} {i}")))];
    }

    /// <summary>Every member that is asked: of each pool's objects, and the constructors and static members of each type.</summary>
    public static IEnumerable<Member> All()
    {
        foreach (string subject in RandomObjects.Makers.Keys.Where(subject => subject != "TorquePreloadModel"))
        {
            foreach (Type type in RandomObjects.Pool(subject).Select(one => one.GetType()).Distinct().Where(type => !type.IsArray && type.Assembly == typeof(ScrewThread).Assembly))
            {
                foreach (MemberInfo member in type.GetMembers(BindingFlags.Public | BindingFlags.Instance).SelectMany(Closed).Where(IsAsked))
                {
                    yield return new Member(subject, member);
                    if (member is MethodInfo && FormerNames.WasStatic.TryGetValue($"{TypeNames.Now(type)}.{member.Name}", out string? signature)) yield return new Member(signature.Split('.')[0], member) { WasStatic = true };
                }
            }
        }

        foreach (Type type in typeof(ScrewThread).Assembly.GetExportedTypes().Where(type => type.Namespace!.StartsWith("Fastening", StringComparison.Ordinal) && type.Namespace != "Fastening.Equations" && !type.IsEnum))
        {
            Type closed = type.IsGenericTypeDefinition ? type.MakeGenericType(typeof(Torque)) : type;
            IEnumerable<MemberInfo> members = closed.GetMembers(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly).Concat(closed.GetConstructors());
            foreach (MemberInfo member in members.SelectMany(Closed).Where(IsAsked)) yield return new Member(TypeNames.InRecord(closed), member);
        }
    }

    private static IEnumerable<MemberInfo> Closed(MemberInfo member) =>
        member is MethodInfo { IsGenericMethodDefinition: true } generic ? [generic.MakeGenericMethod(typeof(Torque))] : [member];

    private static bool IsAsked(MemberInfo member)
    {
        if (LeftOut.Any(left => member.Name.StartsWith(left, StringComparison.Ordinal))) return false;
        return member switch
        {
            ConstructorInfo constructor => constructor.GetParameters() is { Length: > 0 } parameters && parameters.All(Arguments.Knows),
            MethodInfo { IsSpecialName: true } => false,
            MethodInfo { Name: "Evaluate" } evaluate when evaluate.GetParameters().Length == 1 => false,
            MethodInfo method => method.ReturnType != typeof(void) && !AnswerReader.IsText(method.ReturnType) && method.GetParameters().All(Arguments.Knows),
            PropertyInfo property => property.GetIndexParameters().Length == 0 && !AnswerReader.IsText(property.PropertyType),
            _ => false,
        };
    }
}
