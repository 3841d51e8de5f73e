namespace Fastening;

/// <summary>The checks of a joint, in the order in which an assessment lists them.</summary>
/// <remarks>The numbers of the steps of VDI 2230-1:2015 are from memory, not checked in the text.</remarks>
public enum JointCheckKind
{
    /// <summary>The lowest assembly preload reaches what service and losses require (VDI 2230 R5).</summary>
    RequiredPreload,

    /// <summary>The highest assembly preload stays within the permitted one (VDI 2230 R7).</summary>
    PermittedPreload,

    /// <summary>The greatest axial load does not open the joint.</summary>
    Separation,

    /// <summary>The clamp force left is what sealing or function requires (VDI 2230 R2).</summary>
    ResidualClamp,

    /// <summary>The clamp force left holds transverse load and torque by friction (VDI 2230 R12).</summary>
    Slip,

    /// <summary>A pressing load leaves the bolt in tension.</summary>
    BoltStaysTight,

    /// <summary>The equivalent stress in service stays below yield (VDI 2230 R8).</summary>
    WorkingStress,

    /// <summary>The amplitude of the stress stays within the permitted one (VDI 2230 R9).</summary>
    AlternatingStress,

    /// <summary>The pressure under the head stays within the permitted one (VDI 2230 R10).</summary>
    HeadPressure,

    /// <summary>The pressure under the nut stays within the permitted one (VDI 2230 R10).</summary>
    NutPressure,

    /// <summary>The engaged thread bears the greatest force in the bolt (VDI 2230 R11).</summary>
    ThreadStripping,
}
