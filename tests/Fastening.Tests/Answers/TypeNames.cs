namespace Fastening.Tests.Answers;

/// <summary>Types as a person writes them: <c>ToleranceWindow&lt;Torque&gt;</c>, <c>Double?</c>.</summary>
internal static class TypeNames
{
    /// <summary>As it is called today.</summary>
    public static string Now(Type type) => Write(type, name => name);

    /// <summary>As the record calls it.</summary>
    public static string InRecord(Type type) => Write(type, FormerNames.OfType);

    private static string Write(Type type, Func<string, string> rename)
    {
        if (type.IsArray) return Write(type.GetElementType()!, rename) + "[]";
        if (Nullable.GetUnderlyingType(type) is Type bare) return Write(bare, rename) + "?";
        if (!type.IsGenericType) return rename(type.Name);
        string arguments = string.Join(", ", type.GetGenericArguments().Select(argument => Write(argument, rename)));
        string name = type.Name.Split('`')[0];
        return name == "ValueTuple" ? $"({arguments})" : rename($"{name}<{arguments}>");
    }
}
