using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Preload gained by a rotation past snug, and how it scatters: θ/r with r = stretch × (1 + ε) and the twist of bolt and tool.</summary>
internal sealed class RotationGain
{
    private readonly BandInput _rotation;
    private readonly BandInput _compliance;
    private readonly double _stretch;
    private readonly double _twist;

    public RotationGain(RotationTightening tightening, ToleranceWindow<Angle> rotation, double complianceError, ScatterShape shape)
    {
        _stretch = RotationTighteningEquations.RotationPerPreload(tightening.Joint.Springs.Total.Value, tightening.Joint.Bolt.Thread.Geometry.Lead.Value);
        _twist = Math.Max(0, Si.RadiansPerDegree / Si.Of(tightening.PreloadAt(Si.Angle(1)).PreloadGain) - _stretch);
        _rotation = new("rotation (°)", rotation.Limits.Lower, rotation.Limits.Upper, shape, Si.RadiansPerDegree);
        _compliance = new("joint compliance (%)", -100 * complianceError, 100 * complianceError, ScatterShape.Rectangular, 0.01);
    }

    public double Middle => Gain(_rotation.Middle, _compliance.Middle);

    public (double Low, double High) WorstCase() => (Gain(_rotation.Low, _compliance.High), Gain(_rotation.High, _compliance.Low));

    public void Fill(double[] columns, Span<double> gains)
    {
        Span<double> errors = stackalloc double[InputSampler.Rows];
        _rotation.Fill(columns, gains);
        _compliance.Fill(columns, errors.Slice(0, gains.Length));
        for (int i = 0; i < gains.Length; i++) gains[i] = Gain(gains[i], errors[i]);
    }

    /// <summary>∂F/∂θ = 1/r, ∂F/∂ε = −F_g r_stretch/r.</summary>
    public void AddTo(List<BandInput> budget, double unitsPerNewton)
    {
        _rotation.AddTo(budget, unitsPerNewton / (_stretch + _twist));
        _compliance.AddTo(budget, -unitsPerNewton * Middle * _stretch / (_stretch + _twist));
    }

    private double Gain(double rotation, double error) => RotationTighteningEquations.PreloadGain(rotation, _stretch * (1 + error) + _twist);
}
