using Fastening.Equations;

namespace Fastening;

/// <summary>The diameter at which a cone begins, and how deep below it a layer lies.</summary>
internal readonly struct ConeStart
{
    private readonly Term _diameter, _depth;

    public ConeStart(Term diameter)
    {
        _diameter = diameter;
        IsThere = true;
    }

    private ConeStart(Term diameter, Term depth)
    {
        _diameter = diameter;
        _depth = depth;
        IsThere = true;
    }

    /// <summary>No cone opens from a tapped part; only a layer that ends somewhere may begin one.</summary>
    public static ConeStart Nowhere => default;

    public bool IsThere { get; }

    /// <summary>Where the cone stands, as a number.</summary>
    public double At(double growth) => IsThere ? _diameter.Value + growth * _depth.Value : double.PositiveInfinity;

    public Term DiameterAt(Term angle) => _depth.Value > 0 ? ConeGeometryEquations.ConeDiameterEquation.Of(_diameter, _depth, angle) : _diameter;

    public ConeStart Below(Term layer) =>
        !IsThere ? this : new(_diameter, _depth.Value > 0 ? ConeGeometryEquations.DepthEquation.Of(_depth, layer) : layer);
}
