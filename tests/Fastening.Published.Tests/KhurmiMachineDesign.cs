using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>Khurmi and Gupta, A Textbook of Machine Design, ch. 17: a power screw with a square thread and no collar.</summary>
public sealed class KhurmiMachineDesign : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } = [new("khurmi-17.1", PowerScrew)];

    private static double? PowerScrew(PublishedRow row, string output)
    {
        ScrewThread thread = ScrewThread.Square(Length.FromMillimeters(row["d_mm"]), Length.FromMillimeters(row["P_mm"]));
        double torque = TorquePreloadModel
            .FromFriction(
                thread, BearingSurface.Annulus(Length.FromMillimeters(50), Length.FromMillimeters(40)), new FrictionCoefficients(row["mu"], 0))
            .WithConvention(TorqueConvention.PowerScrew)
            .TorqueFor(Force.FromNewtons(row["W_N"])).NewtonMeters;
        return output switch
        {
            "T_Nm" => torque,
            "P_tangential_N" => torque / (thread.PitchDiameter.Meters / 2),
            _ => null,
        };
    }
}
