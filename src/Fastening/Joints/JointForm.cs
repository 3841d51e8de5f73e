namespace Fastening;

/// <summary>Whether the cone in the clamped parts opens from both ends or from the head alone.</summary>
public enum JointForm
{
    /// <summary>Bolt and nut: a cone from each bearing face, meeting in the middle of the grip (VDI 2230: w = 1).</summary>
    ThroughBolt = 0,

    /// <summary>Bolt screwed into the last part: one cone from the head to the tapped part (VDI 2230: w = 2).</summary>
    TappedThread = 1,
}
