using System.Globalization;

namespace Fastening;

/// <summary>Names and criteria of the checks, in the order of <see cref="JointCheckKind"/>.</summary>
internal static class JointCheckWording
{
    private static readonly (string Name, string Criterion, bool IsStress)[] Words =
    [
        ("required preload", "F_Mmin ≤ lowest assembly preload (VDI 2230 R5)", false),
        ("permitted preload", "highest assembly preload ≤ permitted preload (VDI 2230 R7)", false),
        ("separation", "greatest axial load ≤ separation load", false),
        ("residual clamp", "required clamp force ≤ clamp force left (VDI 2230 R2)", false),
        ("slip", "clamp force required against slip ≤ clamp force left (VDI 2230 R12)", false),
        ("bolt stays tight", "tension taken by the pressing load ≤ preload left", false),
        ("working stress", "equivalent stress in service ≤ yield strength (VDI 2230 R8)", true),
        ("alternating stress", "stress amplitude ≤ permitted amplitude (VDI 2230 R9)", true),
        ("pressure under head", "bearing pressure ≤ permitted pressure (VDI 2230 R10)", true),
        ("pressure under nut", "bearing pressure ≤ permitted pressure (VDI 2230 R10)", true),
        ("thread stripping", "greatest bolt force ≤ force at which the engagement fails (VDI 2230 R11)", false),
    ];

    private static readonly string[] Lacks =
    [
        "no permitted preload is stated",
        "no required clamp force is stated",
        "neither a transverse load nor a torque is stated",
        "neither tightening nor strength of the bolt is stated",
        "no permitted amplitude is stated",
        "the pressing load takes all tension from the bolt",
        "no face and permitted pressure under the {0} are stated",
        "of the face under the {0} only the effective diameter or a circle is known",
        "no engaged thread is stated",
        "the bolt may reach {1} and its strength is stated for {2}: state it with WithHotBolt",
        "bolt or parts may reach {1} and the strengths are stated for up to {2}: state them with WithStrengthsUpTo",
    ];

    public static int Count => Words.Length;

    public static string NameOf(JointCheckKind kind) => Words[(int)kind].Name;

    public static string CriterionOf(JointCheckKind kind) => Words[(int)kind].Criterion;

    /// <summary>Why a check was not made, with the temperatures where they decide.</summary>
    public static string DescribeLack(JointCheckLack lack, JointCheckKind kind, double celsius, string statedFor) => string.Format(
        CultureInfo.InvariantCulture, Lacks[(int)lack], kind == JointCheckKind.NutPressure ? "nut" : "head",
        FormattableString.Invariant($"{celsius:0.#} °C"), statedFor);

    public static bool IsStress(JointCheckKind kind) => Words[(int)kind].IsStress;
}
