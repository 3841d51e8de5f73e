using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>US Navy NAVEDTRA 14008, chapter 2: an adapter square to the wrench needs no correction.</summary>
public sealed class NavyNavedtra14008 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("adp-90deg", (row, _) => new TorqueWrench(Length.FromInches(12))
            .WithAdapter(Length.FromInches(4), Angle.FromDegrees(row["angle_deg"]))
            .SettingFor(Torque.FromPoundForceInches(100)).PoundForceInches / 100),
    ];
}
