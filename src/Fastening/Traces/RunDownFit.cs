namespace Fastening;

/// <summary>The run-down in samples and steps, its torque, how far its last two windows are from its last turn, and whether the torque climbs there or from there to the rise.</summary>
internal readonly record struct RunDownFit(int FirstSample, int PastSample, int EndStep, double Torque, double Drift, bool IsRising);
