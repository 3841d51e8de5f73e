namespace Fastening.Tests.House;

/// <content>Valid values for procedures.</content>
internal static partial class Samples
{
    private static IEnumerable<KeyValuePair<Type, object>> Procedures() => [];

    private static IEnumerable<KeyValuePair<(Type, string), object>> ProcedureNames() => [];
}
