namespace Fastening.Tests.House;

/// <content>Valid values for tightening by rotation.</content>
internal static partial class Samples
{
    private static IEnumerable<KeyValuePair<Type, object>> RotationTightenings() => [];

    private static IEnumerable<KeyValuePair<(Type, string), object>> RotationTighteningNames() => [];
}
