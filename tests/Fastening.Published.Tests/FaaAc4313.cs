using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>FAA AC 43.13-1B, chapter 7, section 3: an adapter that lengthens or shortens the wrench.</summary>
public sealed class FaaAc4313 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("adp-ac4313", (row, output) => new TorqueWrench(Length.FromInches(row["L_in"]))
            .WithAdapter(Length.FromInches(row["E_in"]), Angle.FromDegrees(output == "Y_extended_inlb" ? 0 : 180))
            .SettingFor(Torque.FromPoundForceInches(row["T_inlb"])).PoundForceInches),
    ];
}
