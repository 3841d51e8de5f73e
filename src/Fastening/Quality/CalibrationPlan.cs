using Fastening.Internals;

namespace Fastening.Quality;

/// <summary>Which torques and how many readings a calibration takes.</summary>
internal static class CalibrationPlan
{
    /// <summary>Two torques count as one point of the tool within the smaller of these shares, of its maximum and of the torque: our choice, no source.</summary>
    private const double ShareOfMaximum = 0.01, ShareOfTorque = 0.05;

    public static bool IsSameTorque(TorqueTool tool, double one, double other) =>
        Tolerance.IsAtMost(Math.Abs(one - other), Math.Min(ShareOfMaximum * tool.SiHigh, ShareOfTorque * Math.Max(one, other)));

    /// <summary>The points of the class on the tool; what lies below its lowest value is taken there, once.</summary>
    public static IEnumerable<double> TorquesFor(TorqueTool tool) => tool.Class.IsSetToOneValue
        ? [tool.SiHigh]
        : tool.Class.Shares.Select(share => Math.Max(tool.SiLow, share * tool.SiHigh)).Distinct();

    /// <summary>What the calibration lacks.</summary>
    public static IEnumerable<CalibrationReason> Missing(TorqueTool tool, IReadOnlyList<CalibrationPoint> points)
    {
        int count = tool.Class.ReadingsPerPoint;
        foreach (double torque in TorquesFor(tool))
        {
            CalibrationPoint? point = points.Where(p => IsSameTorque(tool, p.SiTorque, torque)).OrderBy(p => Math.Abs(p.SiTorque - torque)).FirstOrDefault();
            if (point is null)
            {
                yield return new(
                    CalibrationReasonKind.PointMissing, $"no point at {torque:0.###} N·m; class {tool.Class.Designation} takes one there{tool.Class.Citation}", torque);
            }
            else if (point.SiReferences.Length < count)
            {
                yield return new(
                    CalibrationReasonKind.ReadingsMissing,
                    $"{point.SiReferences.Length} readings at {point.SiTorque:0.###} N·m; class {tool.Class.Designation} takes {count}{tool.Class.Citation}",
                    point.SiTorque);
            }
        }
    }
}
