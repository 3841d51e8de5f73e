namespace Fastening.Tests.House;

/// <content>Valid values for traces.</content>
internal static partial class Samples
{
    private static IEnumerable<KeyValuePair<Type, object>> Traces() => [];

    private static IEnumerable<KeyValuePair<(Type, string), object>> TraceNames() => [];
}
