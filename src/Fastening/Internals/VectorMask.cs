using System.Numerics;
using System.Runtime.CompilerServices;

namespace Fastening.Internals;

/// <summary>Puts NaN where an input lies outside its (closed) domain, NaN itself included.</summary>
internal static class VectorMask
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector<double> Within(in Interval domain, Vector<double> inputs, Vector<double> results)
    {
        Vector<long> inside = Vector.GreaterThanOrEqual(inputs, new Vector<double>(domain.Low))
            & Vector.LessThanOrEqual(inputs, new Vector<double>(domain.High));
        return Vector.ConditionalSelect(inside, results, new Vector<double>(double.NaN));
    }
}
