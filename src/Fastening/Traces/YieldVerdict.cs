namespace Fastening;

/// <summary>Where yield sets in, in steps of the curve, or from where on it cannot be decided; neither when there is none.</summary>
internal readonly record struct YieldVerdict(double? Onset, double? Untold);
