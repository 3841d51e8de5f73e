namespace Fastening.Published.Tests;

/// <summary>NASA NSTS 08307A (1998), paragraph 3.4: uncertainty of the preload by tightening method.</summary>
public sealed class NasaNsts08307 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } = [new("nasa-scatter", (_, output) => Percent(output))];

    private static double? Percent(string output) => output switch
    {
        "torque_unlubricated_pct" => Percent(TighteningMethod.TorqueWrench, "unlubricated"),
        "torque_cad_plated_pct" => Percent(TighteningMethod.TorqueWrench, "cadmium plated"),
        "torque_lubricated_pct" => Percent(TighteningMethod.TorqueWrench, "lubricated"),
        "hydraulic_tensioner_pct" => Percent(TighteningMethod.HydraulicTensioner),
        "preload_indicating_washer_pct" => Percent(TighteningMethod.LoadIndicatingWasher),
        "ultrasonic_pct" => Percent(TighteningMethod.Ultrasonic),
        "bolt_elongation_pct" => Percent(TighteningMethod.Elongation),
        "instrumented_bolt_pct" => Percent(TighteningMethod.InstrumentedBolt),
        _ => null,
    };

    private static double Percent(TighteningMethod method, string condition = "") =>
        ShippedScatter.Percent("NASA NSTS 08307A (1998) para 3.4", method, condition);
}
