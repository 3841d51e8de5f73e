using Fastening.Equations;

namespace Fastening;

/// <summary>What the strength of an engaged thread computes of its areas and the strengths of its materials.</summary>
internal sealed class EngagementForces
{
    /// <summary>Breaks a bolt of the least tensile strength.</summary>
    public required Term Bolt { get; init; }

    /// <summary>Breaks a bolt of the greatest tensile strength.</summary>
    public required Term StrongBolt { get; init; }

    public required Term External { get; init; }

    public required Term Internal { get; init; }
}
