using Fastening.Equations;

namespace Fastening.Published.Tests;

/// <summary>VDI 2230-1 §5.5.5 (R11) after Alexander (1977): factors for widening nut and bending threads, length of engagement. From memory.</summary>
public sealed class Vdi2230Stripping : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("alexander-C1-", (row, _) => EngagementEquations.NutDilationFactor(row["s_over_d"], 1)),
        new("alexander-C2-", (row, _) => EngagementEquations.ExternalBendingFactor(row["R_S"])),
        new("alexander-C3-", (row, _) => EngagementEquations.InternalBendingFactor(row["R_S"])),
        new("bickford-sr2-", (row, _) => EngagementEquations.ExternalBendingFactor(row["strength_ratio"])),
        new("vdi-r11-", Length),
    ];

    /// <summary>In millimetres and newtons; the area of the row is that of one millimetre of engagement.</summary>
    private static double? Length(PublishedRow row, string output)
    {
        double effective = EngagementEquations.InternalLeastLength(
            1,
            EngagementEquations.GreatestBoltBreakingForce(row["Rm_max_MPa"], row["As_mm2"]),
            EngagementEquations.InternalStripForce(row["tau_BM_MPa"], row["AS_n_mm2_per_mm"]));
        return output == "m_eff_mm" ? effective : EngagementEquations.TotalLength(effective, row["incomplete_pitches"], row["P_mm"]);
    }
}
