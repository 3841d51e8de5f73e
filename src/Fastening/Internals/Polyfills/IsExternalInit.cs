namespace System.Runtime.CompilerServices;

// The compiler marks init accessors with it.
internal static class IsExternalInit;
