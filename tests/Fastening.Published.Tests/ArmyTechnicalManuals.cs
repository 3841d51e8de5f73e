using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>US Army TM 9-2350-277, TM 9-254 and TM 1-1500-204-23-9: torque wrenches and their adapters.</summary>
public sealed class ArmyTechnicalManuals : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("adp-tm9-2350", (row, _) => Wrench(row["wrench_length_in"])
            .WithAdapter(Length.FromInches(row["adapter_length_in"]), Angle.Zero)
            .SettingFor(Torque.FromPoundForceFeet(row["T_at_fastener_lbft"])).PoundForceFeet),
        new("adp-lever-", (row, _) => HandForce
            .TorqueOf(Force.FromPoundsForce(row["force_lb"]), Length.FromInches(row["lever_in"])).PoundForceInches),
        new("adp-derived-", (row, _) => Wrench(row["L"])
            .WithAdapter(Length.FromInches(row["A"]), Angle.FromDegrees(row["angle_deg"]))
            .SettingFor(Torque.FromPoundForceInches(row["T"])).PoundForceInches),
        new("adp-angled", (_, output) => CosineRule(output)),
        new("adp-loadpoint", (_, _) => LoadPoint()),
    ];

    /// <summary>The rules L = IT + IA cos(a), TT = TA·IT/L and TA = TT·L/IT, over lengths and angles: greatest relative deviation.</summary>
    private static double? CosineRule(string output)
    {
        const double Lever = 12, Inches = 300;
        var torque = Torque.FromPoundForceInches(Inches);
        return Greatest(
            from adapter in new[] { 1.5, 4, 9 }
            from degrees in new double[] { 0, 15, 45, 60, 90, 120, 180 }
            let wrench = Wrench(Lever).WithAdapter(Length.FromInches(adapter), Angle.FromDegrees(degrees))
            let effective = Lever + adapter * Math.Cos(degrees * Math.PI / 180)
            select output switch
            {
                "effective_length" => Deviation(Lever * wrench.TorqueRatio, effective),
                "setting" => Deviation(wrench.SettingFor(torque).PoundForceInches, Inches * Lever / effective),
                "delivered" => Deviation(wrench.FastenerTorqueAt(torque).PoundForceInches, Inches * effective / Lever),
                _ => double.NaN,
            });
    }

    /// <summary>L runs from the drive to the hand: a force at the hand turns the fastener with its full arm, wherever the hand is.</summary>
    private static double LoadPoint()
    {
        const double HandPounds = 20, Adapter = 4;
        return Greatest(
            from lever in new double[] { 6, 9, 10, 14 }
            let setting = HandForce.TorqueOf(Force.FromPoundsForce(HandPounds), Length.FromInches(lever))
            let delivered = Wrench(lever).WithAdapter(Length.FromInches(Adapter), Angle.Zero).FastenerTorqueAt(setting)
            select Deviation(delivered.PoundForceInches, HandPounds * (lever + Adapter)));
    }

    private static TorqueWrench Wrench(double leverInches) => new(Length.FromInches(leverInches));

    private static double Deviation(double computed, double expected) => computed / expected - 1;

    private static double Greatest(IEnumerable<double> deviations) => deviations.MaxBy(Math.Abs);
}
