namespace Fastening.Tests.House;

/// <summary>A call of the library with the arguments that it is given.</summary>
internal sealed record DerivableCall(Func<object?> Ask, object?[] Arguments);
