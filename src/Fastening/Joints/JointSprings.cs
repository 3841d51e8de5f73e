namespace Fastening;

/// <summary>The resiliences of a joint and its load factor, in SI.</summary>
internal readonly record struct JointSprings(double Bolt, double Parts, double Total, double LoadFactor);
