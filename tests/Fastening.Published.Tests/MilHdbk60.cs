using Fastening.Equations;

namespace Fastening.Published.Tests;

/// <summary>MIL-HDBK-60 (1990) para 6.2.4, from memory: the rotation that stretches the bolt alone, θ = 360 f_t L_B/(E lead), as a rule.</summary>
public sealed class MilHdbk60 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } = [new("milhdbk60-turn", (_, _) => GreatestDeviation())];

    /// <summary>Over bolts whose stress, length, modulus and lead differ: relative deviation of the library from the rule.</summary>
    private static double GreatestDeviation() =>
    (
        from stress in new[] { 180e6, 620e6 }
        from length in new[] { 0.031, 0.26 }
        from modulus in new[] { 114e9, 205e9 }
        from lead in new[] { 0.00125, 0.004 }
        let rule = 360 * stress * length / (modulus * lead)
        let area = 7e-5
        let perPreload = RotationTighteningEquations.RotationPerPreload(length / (modulus * area), lead)
        let computed = RotationTighteningEquations.RotationForGain(stress * area, perPreload) * 180 / Math.PI
        select Math.Abs(computed / rule - 1)).Max();
}
