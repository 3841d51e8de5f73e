namespace Fastening.Tests.House;

/// <content>Valid values for joints.</content>
internal static partial class Samples
{
    private static IEnumerable<KeyValuePair<Type, object>> Joints() => [];

    private static IEnumerable<KeyValuePair<(Type, string), object>> JointNames() => [];
}
