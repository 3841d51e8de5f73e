using Fastening;

namespace PumpCover;

/// <summary>Bolts that are reached in the same way; the wrench carries their adapters and the lean of the pull.</summary>
internal sealed record BoltGroup(string Name, IReadOnlyList<int> Bolts, TorqueWrench Wrench)
{
    public string Adapters => Wrench.Adapters.Count == 0 ? "none" : string.Join(", then ", Wrench.Adapters);
}
