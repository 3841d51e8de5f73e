namespace System.Diagnostics.CodeAnalysis;

// Read by the compiler alone.
[AttributeUsage(AttributeTargets.Method)]
internal sealed class DoesNotReturnAttribute : Attribute;
