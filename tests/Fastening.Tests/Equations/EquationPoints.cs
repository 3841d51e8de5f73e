using Fastening.Equations;

namespace Fastening.Tests.Equations;

/// <summary>
/// Points in the domain of an equation: random ones, ones at and close to the ends of the ranges, ones where two inputs of one unit are nearly equal,
/// ones close to the limit of its condition. Forms lose their digits at the ends and where inputs meet.
/// </summary>
internal static class EquationPoints
{
    private const int Inside = 60;
    private const int Ends = 60;
    private const int Pairs = 40;
    private const int Close = 40;

    public static IEnumerable<double[]> Of(Equation equation)
    {
        var random = new Random(20261128);
        for (int n = 0; n < Inside; n++) yield return EquationCatalogue.Sample(equation, random);
        for (int n = 0; n < Ends; n++)
        {
            if (AtEnds(equation, EquationCatalogue.Sample(equation, random), random) is double[] end) yield return end;
        }

        for (int n = 0; n < Pairs; n++)
        {
            if (WithPair(equation, EquationCatalogue.Sample(equation, random), random) is double[] pair) yield return pair;
        }

        if (equation.Where is null) yield break;
        for (int n = 0; n < Close; n++)
        {
            if (AtCondition(equation, random, halvings: 3 + n) is double[] close) yield return close;
        }
    }

    private static double[]? AtEnds(Equation equation, double[] values, Random random)
    {
        double[] moved = [.. values.Select((value, i) => random.Next(6) switch
        {
            0 => equation.Inputs[i].Low,
            1 => equation.Inputs[i].High,
            2 => Near(equation.Inputs[i], equation.Inputs[i].Low, 1, value, random),
            3 => Near(equation.Inputs[i], equation.Inputs[i].High, -1, value, random),
            _ => value,
        })];
        return equation.IsInDomain(moved) ? moved : null;
    }

    /// <summary>A millionth to a ten-trillionth of the end away from it.</summary>
    private static double Near(Symbol symbol, double end, int inwards, double value, Random random) => symbol.Unit == SymbolUnit.Count
        ? value
        : end + inwards * Math.Max(Math.Abs(end), (symbol.High - symbol.Low) * 1e-3) * Math.Pow(10, -3 - random.Next(11));

    private static double[]? WithPair(Equation equation, double[] values, Random random)
    {
        (int I, int J)[] pairs =
        [
            .. from i in Enumerable.Range(0, values.Length) from j in Enumerable.Range(0, values.Length)
               where i != j && equation.Inputs[i].Unit == equation.Inputs[j].Unit && equation.Inputs[i].Unit != SymbolUnit.Count select (i, j),
        ];
        if (pairs.Length == 0) return null;
        (int from, int to) = pairs[random.Next(pairs.Length)];
        values[to] = values[from] * (1 + (random.Next(2) * 2 - 1) * Math.Pow(10, -2 - random.Next(13)));
        Symbol moved = equation.Inputs[to];
        return values[to] >= moved.Low && values[to] <= moved.High && equation.IsInDomain(values) ? values : null;
    }

    /// <summary>Between a point inside and one outside, halved towards the limit.</summary>
    private static double[]? AtCondition(Equation equation, Random random, int halvings)
    {
        double[] inside = EquationCatalogue.Sample(equation, random);
        for (int attempt = 0; attempt < 200; attempt++)
        {
            double[] outside = [.. equation.Inputs.Select((s, i) => s.Unit == SymbolUnit.Count ? inside[i] : s.Low + random.NextDouble() * (s.High - s.Low))];
            if (equation.IsInDomain(outside)) continue;
            for (int n = 0; n < halvings; n++)
            {
                double[] middle = [.. inside.Select((value, i) => value + (outside[i] - value) / 2)];
                if (equation.IsInDomain(middle)) inside = middle;
                else outside = middle;
            }

            return inside;
        }

        return null;
    }
}
