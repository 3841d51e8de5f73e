using Fastening.Equations;

namespace Fastening.Tests.Equations;

/// <summary>The equations of joints at every corner of their domains: finite, and on the side of zero that physics permits.</summary>
public class JointEquationBoundsTests
{
    private static readonly string[] Families = ["bolt.", "parts.", "joint.", "slip.", "structural."];

    /// <summary>What may be negative: growth and loss by temperature, and a factor of overload when the preload alone is above the proof load.</summary>
    private static readonly string[] Signed = ["joint.free-growth", "joint.thermal-loss", "joint.thermal-loss-behind", "joint.overload-factor"];

    public static TheoryData<string> Ids => [.. EquationCatalogue.All.Select(e => e.Id).Where(id => Families.Any(family => id.StartsWith(family, StringComparison.Ordinal)))];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_corner_of_the_domain_gives_a_value_that_can_be(string id)
    {
        Equation equation = EquationCatalogue.Find(id);
        int accepted = 0;
        for (int corner = 0; corner < 1 << equation.Inputs.Count; corner++)
        {
            double[] values = [.. equation.Inputs.Select((symbol, i) => (corner >> i & 1) == 0 ? symbol.Low : symbol.High)];
            if (!equation.IsInDomain(values)) continue;
            accepted++;
            double result = equation.Evaluate(values);
            Assert.True(double.IsFinite(result), $"{equation} at {string.Join(", ", values)}: {result}");
            Assert.True(result >= 0 || Signed.Contains(id), $"{equation} at {string.Join(", ", values)}: {result}");
        }

        Assert.True(accepted > 0, $"{id}: no corner lies in its domain");
    }

    /// <summary>Equilibrium of the interface, F_S = F_K + F_A, closed, open and with a bolt that a pressing load has made slack.</summary>
    [Theory]
    [InlineData(100e3, 0.3, 50e3, 115e3, 65e3)]
    [InlineData(100e3, 0.3, 900e3, 900e3, 0)]
    [InlineData(100e3, 0.3, -200e3, 40e3, 240e3)]
    [InlineData(100e3, 0.3, -900e3, 0, 900e3)]
    [InlineData(0, 0, -900e3, 0, 900e3)]
    public void A_bolt_does_not_push(double preload, double share, double load, double bolt, double clamp)
    {
        Close.To(bolt, LoadShareEquations.BoltForce(preload, share, load), 1e-12, 1e6);
        Close.To(clamp, LoadShareEquations.ClampForce(preload, share, load), 1e-12, 1e6);
    }
}
