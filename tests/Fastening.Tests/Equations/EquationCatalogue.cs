using System.Reflection;
using Fastening.Equations;

namespace Fastening.Tests.Equations;

/// <summary>Every equation of the library, found by reflection: none can be forgotten.</summary>
public static class EquationCatalogue
{
    public static IReadOnlyList<Equation> All { get; } =
    [
        .. typeof(Equation).Assembly.GetTypes()
            .Where(t => t.Namespace == "Fastening.Equations")
            .SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Static))
            .Where(p => typeof(Equation).IsAssignableFrom(p.PropertyType))
            .Select(p => (Equation)p.GetValue(null)!)
            .OrderBy(e => e.Id, StringComparer.Ordinal),
    ];

    public static TheoryData<string> Ids => [.. All.Select(e => e.Id)];

    public static Equation Find(string id) => All.Single(e => e.Id == id);

    /// <summary>Random values of the inputs inside the domain of the equation: log-uniform where the range allows it.</summary>
    public static double[] Sample(Equation equation, Random random)
    {
        for (int attempt = 0; attempt < 10_000; attempt++)
        {
            double[] values = [.. equation.Inputs.Select(s => Draw(s, random))];
            if (equation.IsInDomain(values)) return values;
        }

        throw new InvalidOperationException($"{equation.Id}: no sample satisfies {equation.Where} > 0.");
    }

    /// <summary>The size against which a difference is judged: the result and every input's share of it (its condition).</summary>
    public static double ScaleOf(Equation equation, double[] values)
    {
        double result = equation.Invoke(values);
        double scale = Math.Abs(result);
        for (int i = 0; i < values.Length; i++)
        {
            double[] moved = [.. values];
            moved[i] *= 1 + 1e-6;
            scale += Math.Abs(equation.Invoke(moved) - result) / 1e-6;
        }

        return scale;
    }

    private static double Draw(Symbol symbol, Random random)
    {
        double u = random.NextDouble();
        if (symbol.Unit == SymbolUnit.Count) return Math.Floor(symbol.Low + u * (symbol.High - symbol.Low + 1));
        return symbol.Low > 0
            ? symbol.Low * Math.Pow(symbol.High / symbol.Low, u)
            : symbol.Low + u * (symbol.High - symbol.Low);
    }
}
