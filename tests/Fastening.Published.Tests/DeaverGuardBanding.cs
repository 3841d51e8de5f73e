using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>D. Deaver, papers on guard banding for NCSL (1990s): false acceptance and false rejection of a centred process. The ratio there is one of standard deviations.</summary>
public sealed class DeaverGuardBanding : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("deaver-", (row, output) => output == "PFA" ? Risk(row).Consumer : Risk(row).Producer),
    ];

    private static GlobalRisk Risk(PublishedRow row)
    {
        double limit = row["limit_in_process_sd"], measuring = 1 / row["TUR_process_sd_over_test_sd"];
        ToleranceWindow<Torque> window = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(-limit), Torque.FromNewtonMeters(limit));
        ToleranceWindow<Torque>? accepted = window.AcceptanceWindow(Torque.FromNewtonMeters(limit * (1 - row["guardband_factor"])));
        Prior<Torque> process = Prior.Normal(Torque.Zero, Torque.FromNewtonMeters(1));
        return GlobalRisk.Of(window, accepted, process, MeasurementUncertainty.Standard(Torque.FromNewtonMeters(measuring)));
    }
}
