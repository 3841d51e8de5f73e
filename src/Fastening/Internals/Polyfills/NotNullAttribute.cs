namespace System.Diagnostics.CodeAnalysis;

// Read by the compiler alone.
[AttributeUsage(AttributeTargets.Parameter | AttributeTargets.Property | AttributeTargets.Field | AttributeTargets.ReturnValue)]
internal sealed class NotNullAttribute : Attribute;
