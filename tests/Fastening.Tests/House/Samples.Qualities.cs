namespace Fastening.Tests.House;

/// <content>Valid values for quality.</content>
internal static partial class Samples
{
    private static IEnumerable<KeyValuePair<Type, object>> Qualities() => [];

    private static IEnumerable<KeyValuePair<(Type, string), object>> QualityNames() => [];
}
