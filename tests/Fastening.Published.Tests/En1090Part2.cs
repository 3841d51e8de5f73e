using Fastening.Equations;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>EN 1090-2: the preloading force F_p,C, the torque method both ways, and the rotations of the combined method.</summary>
public sealed class En1090Part2 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("en1090-torque-km-", (row, _) => TorqueEquations.NutFactor(
            row["T_1.10Mr_Nm"] / row["factor"] / Force.FromKilonewtons(row["FpC_kN"]).Newtons, Length.FromMillimeters(row["d_mm"]).Meters)),
        new("en1090-2-FpC-", (row, output) => PublishedPreload
            .StructuralEurope(PropertyClass.Parse(output.Split('_')[1]), ScrewThread.Parse(row.Text("thread"))).Tabulated?.Kilonewtons),
        new("en1090-torque-M", SecondStep),
        new("en1090-comb-6d <= t <= 10d", FurtherRotation),
    ];

    private static double? SecondStep(PublishedRow row, string output)
    {
        ScrewThread thread = ScrewThread.Parse($"M{row["d_mm"]}");
        StructuralTightening steps = StructuralTightening.TorqueMethod(PropertyClass.Parse("10.9"), thread, row["km"]);
        return output switch
        {
            "FpC_kN" => steps.Preload.Kilonewtons,
            "torque_Nm" => steps.FinalTorque!.Value.NewtonMeters,
            _ => null,
        };
    }

    /// <summary>The row names both of its ends; they must agree.</summary>
    private static double? FurtherRotation(PublishedRow row, string output)
    {
        double[] ends = [.. new[] { 6, 10 }.Select(diameters => PublishedRotation
            .En1090Part2(Length.FromMillimeters(diameters * 20), Length.FromMillimeters(20)).Rotation.Degrees)];
        double degrees = ends[0] == ends[1] ? ends[0] : double.NaN;
        return output switch
        {
            "further_rotation_deg" => degrees,
            "part_turn" => degrees / 360,
            _ => null,
        };
    }
}
