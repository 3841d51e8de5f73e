namespace Fastening;

/// <summary>Which proportion of the clamped parts lies outside the range that a method was made for.</summary>
public enum RangeNoteKind
{
    /// <summary>Grip per bearing diameter, β_L: the angle of the cone of VDI 2230 is known for 0.5 to 10 (from memory).</summary>
    GripPerBearing = 0,

    /// <summary>Outside diameter per bearing diameter, y: the angle of the cone of VDI 2230 is known for up to 10 (from memory).</summary>
    OutsidePerBearing = 1,

    /// <summary>
    /// Outside diameter that gives the angle, per bearing diameter and grip together: above 1 the cone of VDI 2230 is too wide and the parts
    /// too stiff. <see cref="ClampedStack.WithInterfaceDiameter"/> states the diameter of the angle separately.
    /// </summary>
    OutsideBeyondGrip = 2,

    /// <summary>Nominal diameter per grip, d/l: the fit by Wileman was made for 0.1 to 2.</summary>
    DiameterPerGrip = 3,
}
