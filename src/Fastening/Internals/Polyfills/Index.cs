namespace System;

// The compiler makes x[^1] and list patterns of it.
internal readonly struct Index(int value, bool fromEnd = false)
{
    public int GetOffset(int length) => fromEnd ? length - value : value;
}
