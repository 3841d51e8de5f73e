namespace System.Runtime.CompilerServices;

// The text of an argument, for the words of a refusal.
[AttributeUsage(AttributeTargets.Parameter)]
internal sealed class CallerArgumentExpressionAttribute(string parameterName) : Attribute
{
    public string ParameterName { get; } = parameterName;
}
