namespace System.Runtime.CompilerServices;

// The compiler builds texts through such a type.
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Struct)]
internal sealed class InterpolatedStringHandlerAttribute : Attribute;
