using Fastening.Internals;

namespace Fastening;

/// <summary>Which torques and how many readings a calibration takes.</summary>
internal static class CalibrationPlan
{
    /// <summary>Two torques count as one point of the tool within the smaller of these shares, of its maximum and of the torque: our choice, no source.</summary>
    private const double ShareOfMaximum = 0.01, ShareOfTorque = 0.05;
    private const double MiddlePoint = 0.6;

    public static bool IsSameTorque(TorqueTool tool, double one, double other) =>
        Math.Abs(one - other) <= Math.Min(ShareOfMaximum * tool.SiMaximum, ShareOfTorque * Math.Max(one, other)) * (1 + Tolerance.Widening);

    public static double[] TorquesFor(TorqueTool tool) =>
        tool.Class.IsSetToOneValue ? [tool.SiMaximum] : [tool.SiMinimum, MiddlePoint * tool.SiMaximum, tool.SiMaximum];

    /// <summary>What the calibration lacks, in sentences.</summary>
    public static IEnumerable<string> Missing(TorqueTool tool, IReadOnlyList<CalibrationPoint> points)
    {
        int count = tool.Class.ReadingsPerPoint;
        foreach (double torque in TorquesFor(tool))
        {
            CalibrationPoint? point = points.FirstOrDefault(p => IsSameTorque(tool, p.SiTorque, torque));
            if (point is null)
            {
                yield return FormattableString.Invariant($"no point at {torque:0.###} N·m; class {tool.Class.Designation} takes one there (ISO 6789-1:2017, provisional)");
            }
            else if (point.SiReferences.Length < count)
            {
                yield return FormattableString.Invariant(
                    $"{point.SiReferences.Length} readings at {point.SiTorque:0.###} N·m; class {tool.Class.Designation} takes {count} (ISO 6789-1:2017, provisional)");
            }
        }
    }
}
