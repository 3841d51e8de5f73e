using Fastening.Internals;

namespace Fastening;

/// <summary>Why a check was not made, in words.</summary>
internal static class JointCheckLackWords
{
    /// <summary>One lack in words.</summary>
    /// <param name="lack">Which.</param>
    /// <param name="place">What the face of the check lies under.</param>
    /// <param name="celsius">The temperature that is reached, in degrees Celsius.</param>
    /// <param name="statedFor">The temperature that the strength is stated for.</param>
    public static string Of(JointCheckLack lack, string place, double celsius, string statedFor) => lack switch
    {
        JointCheckLack.PermittedPreload => "no permitted preload is stated",
        JointCheckLack.RequiredClamp => "no required clamp force is stated",
        JointCheckLack.SlipLoad => "neither a transverse load nor a torque is stated",
        JointCheckLack.BoltStrength => "neither tightening nor strength of the bolt is stated",
        JointCheckLack.PermittedAmplitude => "no permitted amplitude is stated",
        JointCheckLack.TensionInBolt => "the pressing load takes all tension from the bolt",
        JointCheckLack.BearingSurface => $"no face and permitted pressure under the {place} are stated",
        JointCheckLack.BearingRing => $"of the face under the {place} only the effective diameter or a circle is known",
        JointCheckLack.EngagedThread => "no engaged thread is stated",
        JointCheckLack.HotStrengthOfBolt =>
            Print.Text($"the bolt may reach {celsius:0.#} °C and its strength is stated for {statedFor}: state it with WithHotBolt"),
        JointCheckLack.StrengthAtTemperature =>
            Print.Text($"bolt or parts may reach {celsius:0.#} °C and the strengths are stated for up to {statedFor}: state them with WithStrengthsUpTo"),
        _ => throw new InvalidOperationException($"The lack {lack} has no words."),
    };
}
