using Fastening.Equations;
using Fastening.Internals;

namespace Fastening;

/// <summary>One check of a joint: its words, what it compares, and what it needs. A new check is a row here and a value of <see cref="JointCheckKind"/>.</summary>
/// <param name="Kind">Which check.</param>
/// <param name="Name">Its name.</param>
/// <param name="Criterion">What must hold.</param>
/// <param name="Compare">What is asked and what is there, at one load introduction factor.</param>
internal sealed record JointCheckRow(
    JointCheckKind Kind, string Name, string Criterion, Func<JointChecks, Term, (Term Demand, Term Capacity)> Compare)
{
    private static readonly Func<JointChecks, JointCheckLack?> LacksNothing = _ => null;

    private static readonly Func<JointChecks, bool> Always = _ => true;

    private static readonly Func<JointChecks, string> WithoutNote = _ => "";

    private static readonly Func<JointCheck, string> AskedAndThere = check => check.AskedAndThere;

    /// <summary>The rows, in the order of the enumeration, which is that of an assessment.</summary>
    public static JointCheckRow[] All { get; } =
    [
        new(JointCheckKind.RequiredPreload, "required preload", "F_Mmin ≤ lowest assembly preload (VDI 2230 R5)",
            (checks, n) => (checks.LeastAssemblyPreload(n), checks.Low)),
        new(JointCheckKind.PermittedPreload, "permitted preload", "highest assembly preload ≤ permitted preload (VDI 2230 R7)",
            (checks, _) => (checks.High, checks.Capacity.PermittedPreloadTerm!.Value))
        {
            DependsOnIntroduction = _ => false,
            Lack = checks => checks.Capacity.PermittedPreloadTerm is null ? JointCheckLack.PermittedPreload : null,
        },
        new(JointCheckKind.Separation, "separation", "greatest axial load ≤ separation load",
            (checks, n) => (checks.PullingLoad, checks.SeparationLoad(n))),
        new(JointCheckKind.ResidualClamp, "residual clamp", "required clamp force ≤ clamp force left (VDI 2230 R2)",
            (checks, n) => (checks.Duty.StatedClamp!.Value, checks.ClampLeft(n)))
        {
            Lack = checks => checks.Duty.StatedClamp is null ? JointCheckLack.RequiredClamp : null,
        },
        new(JointCheckKind.Slip, "slip", "clamp force required against slip ≤ clamp force left (VDI 2230 R12)",
            (checks, n) => (checks.Duty.ClampAgainstSlip!.Value, checks.ClampLeft(n)))
        {
            Lack = checks => checks.Duty.AsksForFriction ? null : JointCheckLack.SlipLoad,
        },
        new(JointCheckKind.BoltStaysTight, "bolt stays tight", "tension taken by the pressing load ≤ preload left",
            (checks, n) => (checks.Relief(n), checks.LowestPreload))
        {
            DependsOnIntroduction = checks => checks.Duty.AxialLow.Value < 0,
            Reading = check => check.TensionLeft,
        },
        new(JointCheckKind.WorkingStress, "working stress", "equivalent stress in service ≤ yield strength (VDI 2230 R8)", (checks, n) => checks.Stress(n))
        {
            IsStress = true,
            IsOfBoltStrength = true,
            Lack = checks => checks.LackOfBoltStrength,
            Note = checks => checks.HotBolt is HotStrength hot ? Print.Text($"; yield strength at {hot.Celsius:0.#} °C, relaxation not included") : "",
        },
        new(JointCheckKind.AlternatingStress, "alternating stress", "stress amplitude ≤ permitted amplitude (VDI 2230 R9)",
            (checks, n) => (checks.Amplitude(n), checks.Capacity.PermittedAmplitudeTerm!.Value))
        {
            IsStress = true,
            Lack = checks => checks.LackOfAmplitude ?? checks.LackOfStrengthWhenHot,
        },
        new(JointCheckKind.HeadPressure, "pressure under head", "bearing pressure ≤ permitted pressure (VDI 2230 R10)",
            (checks, n) => checks.Bearing(n, checks.Capacity.Head!))
        {
            IsStress = true,
            Place = "head",
            Lack = checks => JointChecks.LackOf(checks.Capacity.Head) ?? checks.LackOfStrengthWhenHot,
        },
        new(JointCheckKind.NutPressure, "pressure under nut", "bearing pressure ≤ permitted pressure (VDI 2230 R10)",
            (checks, n) => checks.Bearing(n, checks.Capacity.Nut!))
        {
            IsStress = true,
            NeedsNut = true,
            Place = "nut",
            Lack = checks => JointChecks.LackOf(checks.Capacity.Nut) ?? checks.LackOfStrengthWhenHot,
        },
        new(JointCheckKind.ThreadStripping, "thread stripping", "greatest bolt force ≤ force at which the engagement fails (VDI 2230 R11)",
            (checks, n) => (checks.GreatestBoltForce(n), checks.Capacity.Engagement!.FailureForceTerm))
        {
            Lack = checks => checks.Capacity.Engagement is null ? JointCheckLack.EngagedThread : checks.LackOfStrengthWhenHot,
            Note = checks => checks.Capacity.Engagement is { ThreadLength: null } ? "; by the shear areas alone, without bending threads and widening nut" : "",
        },
    ];

    /// <summary>The rows of a joint whose bolt sits in a tapped part.</summary>
    public static JointCheckRow[] WithoutNut { get; } = Array.FindAll(All, row => !row.NeedsNut);

    /// <summary>Whether stresses are compared; forces otherwise.</summary>
    public bool IsStress { get; init; }

    /// <summary>Whether the strength of the bolt is what it bears, and so that of the hot bolt where it counts.</summary>
    public bool IsOfBoltStrength { get; init; }

    /// <summary>Whether a joint without a nut is without this check.</summary>
    public bool NeedsNut { get; init; }

    /// <summary>What the face lies under, for the words of a lack.</summary>
    public string Place { get; init; } = "";

    /// <summary>What was not stated, so that the check stays open.</summary>
    public Func<JointChecks, JointCheckLack?> Lack { get; init; } = LacksNothing;

    /// <summary>Whether both ends of the load introduction must be looked at.</summary>
    public Func<JointChecks, bool> DependsOnIntroduction { get; init; } = Always;

    /// <summary>How the two sides are told.</summary>
    public Func<JointCheck, string> Reading { get; init; } = AskedAndThere;

    /// <summary>What is to be said beside a check that was made.</summary>
    public Func<JointChecks, string> Note { get; init; } = WithoutNote;
}
