using System.Globalization;

namespace Fastening;

/// <summary>Why a check was not made, in words.</summary>
internal static class JointCheckLackWords
{
    /// <summary>In the order of <see cref="JointCheckLack"/>: 0 the place of the face, 1 the temperature that is reached, 2 the one that is stated.</summary>
    private static readonly string[] Words =
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

    public static string Of(JointCheckLack lack, string place, double celsius, string statedFor) => string.Format(
        CultureInfo.InvariantCulture, Words[(int)lack], place, FormattableString.Invariant($"{celsius:0.#} °C"), statedFor);
}
