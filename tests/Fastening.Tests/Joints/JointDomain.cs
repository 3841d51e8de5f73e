using FsCheck;
using FsCheck.Fluent;

namespace Fastening.Tests.Joints;

/// <summary>Generators of bolts and clamped parts: slender and stout, narrow and wide, one to five materials.</summary>
public static class JointDomain
{
    private static readonly string[] Sizes = ["M3", "M6", "M8x1", "M10", "M16", "M24x2", "M36", "M64"];

    public static Arbitrary<AnyPlates> Stacks() => Arb.From(
        from hole in Domain.LogUniform(2, 60)
        from ring in Domain.LogUniform(1.1, 2.2)
        from outside in Domain.LogUniform(1.05, 12)
        from slenderness in Domain.LogUniform(0.1, 15)
        from count in Gen.Choose(1, 5)
        from shares in Gen.ListOf(Domain.LogUniform(0.05, 1), count)
        from moduli in Gen.ListOf(Domain.LogUniform(40, 300), count)
        from angle in Domain.Uniform(10, 60)
        from tapped in Gen.Elements(false, true)
        select new AnyPlates(
            [.. shares.Select(s => s / shares.Sum() * hole * slenderness)], [.. moduli], hole, hole * ring, hole * outside, angle,
            tapped ? JointForm.TappedThread : JointForm.ThroughBolt));

    /// <summary>At least as wide outside as under the head, so that the cone of VDI 2230 has an angle; the layers may be narrower, or wider.</summary>
    public static Arbitrary<AnyLayeredPlates> LayeredStacks() => Arb.From(
        from stack in Stacks().Generator
        from own in Gen.ListOf(Domain.LogUniform(1.05, 12), stack.LayersMm.Count)
        from has in Gen.ListOf(Gen.Elements(false, true), stack.LayersMm.Count)
        select new AnyLayeredPlates(
            stack with { OuterMm = Math.Max(stack.OuterMm, stack.BearingMm) },
            [.. own.Zip(has, (ratio, given) => given ? ratio * stack.HoleMm : (double?)null)]));

    public static Arbitrary<AnyBolt> Bolts() => Arb.From(
        from size in Gen.Elements(Sizes)
        from slenderness in Domain.LogUniform(0.3, 12)
        from beyond in Domain.Uniform(0.5, 2)
        from shank in Domain.Uniform(0, 0.95)
        from modulus in Domain.LogUniform(70, 220)
        from socket in Gen.Elements(false, true)
        let thread = ScrewThread.Parse(size)
        let d = thread.NominalDiameter.Millimeters
        select new AnyBolt(thread, d * slenderness, d * beyond, shank, modulus, socket ? BoltHead.HexagonSocket : BoltHead.Hexagon));
}
