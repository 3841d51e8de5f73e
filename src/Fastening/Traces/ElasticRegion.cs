using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The stretch of the curve that rises along a line, and that line.</summary>
/// <remarks>
/// The line is fitted robustly (Huber weights) to the means over a sixteenth of the smoothing window each. The standard error allows for
/// neighbouring means that err alike; slow drift and a wrong choice of the region are not in it: those are remarks of doubt. The slope
/// is that at the tool; with friction and stiffness it is dM/dθ = κ P_h/(2π(δ_S + δ_P)) at the fastener, less what the tool winds up.
/// </remarks>
/// <example><code>RotationalStiffness? slope = analysis.ElasticRegion?.Slope;</code></example>
public sealed class ElasticRegion
{
    private readonly RobustLine _line;

    internal ElasticRegion(TracePoint start, TracePoint end, in ElasticFit fit)
    {
        (Start, End, _line) = (start, end, fit.Line);
        Slope = Si.RotationalStiffnessPerDegree(_line.Slope);
        SlopeStandardError = Si.RotationalStiffnessPerDegree(_line.SlopeError);
        Scatter = Si.Torque(fit.Scatter);
    }

    /// <summary>First sample of the fit.</summary>
    public TracePoint Start { get; }

    /// <summary>Last sample of the fit.</summary>
    public TracePoint End { get; }

    /// <summary>Slope of the line, torque per angle.</summary>
    public RotationalStiffness Slope { get; }

    /// <summary>Standard error of the slope, from the scatter about the line only.</summary>
    /// <remarks>It is not the uncertainty of the line: waves on the rise, a bend or a wrong choice of the region can move the slope by many standard errors.</remarks>
    public RotationalStiffness SlopeStandardError { get; }

    /// <summary>Standard deviation about the line of the samples that turned the fastener on, from their mean distance.</summary>
    public Torque Scatter { get; }

    /// <summary>Number of samples in the fit.</summary>
    public int Count => End.Index - Start.Index + 1;

    /// <summary>The torque of the line at an angle, also beyond the region.</summary>
    /// <param name="angle">Angle as the trace counts it.</param>
    /// <returns>The torque.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="angle"/> is outside its domain.</exception>
    /// <example><code>Torque? onTheLine = analysis.ElasticRegion?.TorqueAt(Angle.FromDegrees(95));</code></example>
    public Torque TorqueAt(Angle angle) => Si.Torque(_line.At(Domains.SampleAngle.Check(angle)));

    internal double SlopeSi => _line.Slope;

    internal double RotationSi => End.AngleDegrees - Start.AngleDegrees;

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"{_line.Slope:0.####} N·m/° ± {_line.SlopeError:0.#####} N·m/° from sample {Start.Index} to sample {End.Index}");
}
