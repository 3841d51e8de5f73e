using FsCheck;
using FsCheck.Fluent;

namespace Fastening.Tests.Joints;

/// <summary>Generator of joints whose springs can be solved by hand.</summary>
public static class SleeveDomain
{
    public static Arbitrary<AnySleeveJoint> Joints() => Arb.From(
        from sections in Gen.Choose(1, 3)
        from layers in Gen.Choose(1, 4)
        from grip in Domain.LogUniform(15, 300)
        from sectionShares in Gen.ListOf(Domain.LogUniform(0.1, 1), sections)
        from diameters in Gen.ListOf(Domain.Uniform(8, 12), sections)
        from layerShares in Gen.ListOf(Domain.LogUniform(0.1, 1), layers)
        from moduli in Gen.ListOf(Domain.LogUniform(40, 250), layers)
        from expansions in Gen.ListOf(Domain.Uniform(5, 25), layers)
        from boltModulus in Domain.LogUniform(70, 220)
        from boltExpansion in Domain.Uniform(5, 25)
        from outside in Domain.LogUniform(15, 60)
        from preload in Domain.LogUniform(200, 60_000)
        from introduction in Domain.Uniform(0, 1)
        select new AnySleeveJoint(
            [.. sectionShares.Zip(diameters, (share, d) => (share / sectionShares.Sum() * grip, d))],
            [.. layerShares.Select((share, i) => (share / layerShares.Sum() * grip, moduli[i], expansions[i]))],
            boltModulus, boltExpansion, 13.5, outside, preload, introduction));
}
