using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A stated quantity that an object may be without: a reference, so that objects which are without it stay small.</summary>
internal sealed class Held<T>(in Stated<T> stated)
    where T : struct, IQuantity
{
    private readonly Stated<T> _stated = stated;

    public double Value => _stated.Value;

    public Term Term => _stated.Term;

    public T AsStated => _stated.AsStated;

    public Term TermOf(string owner) => _stated.TermOf(owner);
}
