using Fastening.Equations;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>EN 1090-2: the preloading force F_p,C, and the factor k_m of the torque method, from the printed torque of step 2.</summary>
public sealed class En1090Part2 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("en1090-torque-km-", (row, _) => TorqueEquations.NutFactor(
            row["T_1.10Mr_Nm"] / row["factor"] / Force.FromKilonewtons(row["FpC_kN"]).Newtons, Length.FromMillimeters(row["d_mm"]).Meters)),
        new("en1090-2-FpC-", (row, output) => PublishedPreload
            .StructuralEurope(PropertyClass.Parse(output.Split('_')[1]), ScrewThread.Parse(row.Text("thread"))).Tabulated?.Kilonewtons),
    ];
}
