using Fastening.Equations;

namespace Fastening;

/// <summary>What a bolt computes of its sections.</summary>
internal sealed class BoltSprings
{
    public required Term Resilience { get; init; }

    /// <summary>Null where the stiffness is stated.</summary>
    public required Term? Twist { get; init; }
}
