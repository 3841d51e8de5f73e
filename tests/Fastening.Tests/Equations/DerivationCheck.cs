using Fastening.Equations;

namespace Fastening.Tests.Equations;

/// <summary>A derivation ends on its answer bit for bit, each step follows from its inputs, and every step is used.</summary>
internal static class DerivationCheck
{
    public static void EndsOn(double answer, Derivation work)
    {
        Assert.Equal(answer, work.Result);
        for (int i = 0; i < work.Steps.Count; i++)
        {
            DerivationStep step = work.Steps[i];
            Assert.Equal(step.Equation.Invoke([.. step.Inputs]), step.Result);
            if (i < work.Steps.Count - 1) Assert.Contains(work.Steps.Skip(i + 1), later => later.Inputs.Contains(step.Result));
        }

        Assert.Equal(work.Steps.Count, work.Steps.Select(s => s.Equation.Id).Distinct().Count());
    }
}
