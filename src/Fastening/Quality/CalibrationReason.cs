using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

/// <summary>One reason why a tool does not comply, or why its calibration cannot decide: its kind, where, and a sentence with the figures.</summary>
/// <example><code>foreach (CalibrationReason reason in calibration.Judge(DecisionRule.IlacG8).Reasons)
/// {
///     if (reason.Kind == CalibrationReasonKind.PointMissing) Console.WriteLine(reason.At);
/// }</code></example>
public sealed class CalibrationReason
{
    private readonly string _text;
    private readonly double? _at;

    internal CalibrationReason(CalibrationReasonKind kind, Print text, double? at = null)
    {
        Kind = kind;
        _text = Print.Text(text);
        _at = at;
    }

    /// <summary>What kind of reason.</summary>
    public CalibrationReasonKind Kind { get; }

    /// <summary>The point of the tool it is about; null for the resolution and the reference device, which concern all points.</summary>
    public Torque? At => _at is double torque ? Si.Torque(torque) : null;

    /// <summary>The sentence.</summary>
    /// <returns>For example <c>2 readings at 120 N·m; class II A takes 5</c>.</returns>
    public override string ToString() => _text;
}
