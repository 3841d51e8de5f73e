using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Fastening.Internals;

/// <summary>
/// Maps a span to a span. Law: the result is NaN exactly where the scalar call would refuse the element.
/// Lengths and overlap are refused before the first write; identical spans are allowed.
/// </summary>
internal static class Batch
{
    public static void Map<TKernel>(
        ReadOnlySpan<double> source,
        Span<double> destination,
        TKernel kernel,
        [CallerArgumentExpression(nameof(destination))] string destinationName = "")
        where TKernel : struct, IBatchKernel
    {
        RefuseUnequal(source.Length, destination.Length, destinationName);
        if (source.Overlaps(destination, out int offset) && offset != 0)
        {
            throw new ArgumentException(
                $"{destinationName} overlaps the input in part; pass the same span or separate memory.", destinationName);
        }

        int done = 0;
        if (Vector.IsHardwareAccelerated)
        {
            ReadOnlySpan<Vector<double>> vectors = MemoryMarshal.Cast<double, Vector<double>>(source);
            Span<Vector<double>> results = MemoryMarshal.Cast<double, Vector<double>>(destination);
            for (int i = 0; i < vectors.Length; i++) results[i] = kernel.Apply(vectors[i]);
            done = vectors.Length * Vector<double>.Count;
        }

        for (int i = done; i < source.Length; i++) destination[i] = kernel.Apply(source[i]);
    }

    public static void RefuseUnequal(int sourceLength, int destinationLength, string destinationName)
    {
        if (sourceLength != destinationLength)
        {
            throw new ArgumentException(
                $"{destinationName} has {destinationLength} elements; it must have as many as the input, {sourceLength}.", destinationName);
        }
    }
}
