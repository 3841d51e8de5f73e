namespace System.Diagnostics;

// Later runtimes leave such a method out of the stack trace.
[AttributeUsage(AttributeTargets.Method | AttributeTargets.Constructor | AttributeTargets.Class | AttributeTargets.Struct)]
internal sealed class StackTraceHiddenAttribute : Attribute;
