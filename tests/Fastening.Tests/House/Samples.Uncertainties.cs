namespace Fastening.Tests.House;

/// <content>Valid values for uncertainty.</content>
internal static partial class Samples
{
    private static IEnumerable<KeyValuePair<Type, object>> Uncertainties() => [];

    private static IEnumerable<KeyValuePair<(Type, string), object>> UncertaintyNames() => [];
}
