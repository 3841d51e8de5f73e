using Fastening;

namespace PumpCover;

/// <summary>What the job file states, checked.</summary>
internal sealed record Job(
    string Title, string Note, BoltedJoint Joint, PercentWindow TorqueWindow, TorqueWrench Wrench, WrenchDeviation Deviation,
    IReadOnlyList<BoltGroup> Groups, RotationRules Rotation)
{
    public IReadOnlyList<int> Bolts => [.. Groups.SelectMany(group => group.Bolts).Order()];

    public BoltGroup? GroupOf(int bolt) => Groups.FirstOrDefault(group => group.Bolts.Contains(bolt));
}
