namespace Fastening.Tests.House;

/// <content>Valid values for decisions.</content>
internal static partial class Samples
{
    private static IEnumerable<KeyValuePair<Type, object>> Decisions() => [];

    private static IEnumerable<KeyValuePair<(Type, string), object>> DecisionNames() => [];
}
