namespace Fastening;

/// <summary>Why a wrench has no setting that guarantees a window.</summary>
public enum SettingObstacle
{
    /// <summary>Nothing: there is a setting.</summary>
    None = 0,

    /// <summary>The wrench scatters over more than the window.</summary>
    Accuracy = 1,

    /// <summary>The settings that would do lie outside the range of the wrench.</summary>
    Range = 2,

    /// <summary>No step of the display falls on a setting that would do.</summary>
    Resolution = 3,
}
