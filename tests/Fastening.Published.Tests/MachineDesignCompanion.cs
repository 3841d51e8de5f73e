using Fastening.Equations;

namespace Fastening.Published.Tests;

/// <summary>Companion to a machine-design textbook (no. 764), threaded joints: the area that a preloaded bolt needs under a load; in both examples the joint has opened.</summary>
public sealed class MachineDesignCompanion : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("tbc764-716", (row, _) => Area(row, row["E_plate_MPa"] * row["Ac_over_Ab"] / row["E_bolt_MPa"])),
        new("tbc764-717", (row, _) => Area(row, row["kc_over_kb"])),
    ];

    /// <summary>Square millimetres; only the ratio of the stiffnesses counts.</summary>
    private static double Area(PublishedRow row, double partsPerBolt) =>
        LoadShareEquations.BoltForce(row["Pi_N"], JointEquations.LoadFactor(1, 1 / partsPerBolt), row["P_N"]) / row["sigma_allow_MPa"];
}
