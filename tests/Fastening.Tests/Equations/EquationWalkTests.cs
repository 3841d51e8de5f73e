using System.Text.RegularExpressions;
using Fastening.Equations;
using NCalc;

namespace Fastening.Tests.Equations;

/// <summary>Over every equation: the printed text against the method, by an evaluator that is not ours; dimensions; printing.</summary>
public class EquationWalkTests
{
    private const int Samples = 200;

    public static TheoryData<string> Ids => EquationCatalogue.Ids;

    [Fact]
    public void The_library_lists_every_equation_and_finds_it_by_name()
    {
        Assert.Equal(EquationCatalogue.All.Select(equation => equation.Id), Equation.All.Select(equation => equation.Id));
        Assert.All(EquationCatalogue.All, equation => Assert.Same(equation, Equation.Find(equation.Id)));
        Assert.Equal(100, Equation.Find("torque.tightening-torque").Evaluate(0.002, 50_000, 0));
        Assert.StartsWith("There is no equation 'torque.typo'; Equation.All", Assert.Throws<ArgumentException>(() => Equation.Find("torque.typo")).Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Printed_text_evaluated_independently_equals_the_method(string id)
    {
        Equation equation = EquationCatalogue.Find(id);
        var random = new Random(20260101);
        for (int n = 0; n < Samples; n++)
        {
            double[] values = EquationCatalogue.Sample(equation, random);
            double expected = EvaluateText(equation, values);
            double actual = equation.Invoke(values);
            Assert.True(
                Math.Abs(actual - expected) <= 1e-12 * EquationCatalogue.ScaleOf(equation, values),
                $"{equation} at {string.Join(", ", values)}: text {expected:R}, method {actual:R}");
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Our_own_reading_of_the_text_agrees_with_the_independent_one(string id)
    {
        Equation equation = EquationCatalogue.Find(id);
        var random = new Random(7);
        for (int n = 0; n < Samples; n++)
        {
            double[] values = EquationCatalogue.Sample(equation, random);
            double own = equation.Expression.Evaluate(name => values[IndexOf(equation, name)]);
            Assert.True(Math.Abs(own - EvaluateText(equation, values)) <= 1e-12 * EquationCatalogue.ScaleOf(equation, values));
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Result_scales_as_its_unit_says(string id)
    {
        Equation equation = EquationCatalogue.Find(id);
        var random = new Random(11);
        for (int n = 0; n < Samples; n++)
        {
            double[] values = EquationCatalogue.Sample(equation, random);
            double m = 0.5 + random.NextDouble(), kg = 0.5 + random.NextDouble(), s = 0.5 + random.NextDouble();
            double[] scaled = [.. values.Select((v, i) => v * FactorOf(equation.Inputs[i].Unit, m, kg, s))];
            double expected = equation.Invoke(values) * FactorOf(equation.Result.Unit, m, kg, s);
            Assert.True(
                Math.Abs(equation.Invoke(scaled) - expected) <= 1e-11 * EquationCatalogue.ScaleOf(equation, scaled),
                $"{equation}: not the dimension of {equation.Result.Unit.Si}");
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Evaluate_gives_the_method_inside_the_domain_and_refuses_outside(string id)
    {
        Equation equation = EquationCatalogue.Find(id);
        double[] values = EquationCatalogue.Sample(equation, new Random(3));
        Assert.Equal(equation.Invoke(values), equation.Evaluate(values));
        for (int i = 0; i < values.Length; i++)
        {
            foreach (double hostile in new[] { double.NaN, double.PositiveInfinity, double.NegativeInfinity, equation.Inputs[i].High * 1.01 + 1e-9 })
            {
                double[] bad = [.. values];
                bad[i] = hostile;
                ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() => equation.Evaluate(bad));
                Assert.Equal(equation.Inputs[i].Name, refusal.ParamName);
            }
        }

        Assert.Throws<ArgumentException>(() => equation.Evaluate([.. values, 1]));
    }

    /// <summary>Two and a half readings, threads or bolts are no domain of any equation.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void A_count_that_is_not_whole_is_refused_by_name(string id)
    {
        Equation equation = EquationCatalogue.Find(id);
        double[] values = EquationCatalogue.Sample(equation, new Random(13));
        for (int i = 0; i < values.Length; i++)
        {
            if (equation.Inputs[i].Unit != SymbolUnit.Count) continue;
            double[] bad = [.. values];
            bad[i] = equation.Inputs[i].Low + 0.5;
            ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() => equation.Evaluate(bad));
            Assert.Equal(equation.Inputs[i].Name, refusal.ParamName);
            Assert.Contains("it must be a whole number", refusal.Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Names_its_source_and_prints_in_both_notations(string id)
    {
        Equation equation = EquationCatalogue.Find(id);
        Assert.False(string.IsNullOrWhiteSpace(equation.Source));
        Assert.StartsWith(equation.Result.Pretty + " = ", equation.Pretty, StringComparison.Ordinal);
        Assert.DoesNotContain("*", equation.Latex, StringComparison.Ordinal);
        Assert.Equal(equation.Latex.Count(c => c == '{'), equation.Latex.Count(c => c == '}'));
        Assert.Equal(Regex.Count(equation.Latex, @"\\left\("), Regex.Count(equation.Latex, @"\\right\)"));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Condition_bites_where_there_is_one(string id)
    {
        Equation equation = EquationCatalogue.Find(id);
        if (equation.Where is null) return;
        var random = new Random(5);
        bool bitten = false;
        for (int n = 0; n < 20_000 && !bitten; n++)
        {
            double[] values = [.. equation.Inputs.Select(s => s.Low + random.NextDouble() * (s.High - s.Low))];
            if (equation.IsInDomain(values)) continue;
            Assert.Throws<ArgumentOutOfRangeException>(() => equation.Evaluate(values));
            bitten = true;
        }

        Assert.True(bitten, $"{id}: {equation.Where} > 0 holds everywhere, so it says nothing");
    }

    [Fact]
    public void Ids_are_unique_and_there_are_equations() =>
        Assert.True(EquationCatalogue.All.Count >= 40 && EquationCatalogue.All.Select(e => e.Id).Distinct().Count() == EquationCatalogue.All.Count);

    [Fact]
    public void Symbols_are_defined_once()
    {
        var symbols = typeof(Symbols).GetProperties().Select(p => (Symbol)p.GetValue(null)!).ToList();
        Assert.Equal(symbols.Count, symbols.Select(s => s.Name).Distinct().Count());
        Assert.All(symbols, s => Assert.True(s.Low < s.High && s.Meaning.Length > 0));
        var used = EquationCatalogue.All.SelectMany(e => e.Inputs.Append(e.Result)).Distinct().ToList();
        Assert.Empty(symbols.Except(used).Select(s => s.Name));
    }

    private static double EvaluateText(Equation equation, double[] values)
    {
        // The evaluator writes power as ** and reads bare whole numbers as integers.
        string text = Regex.Replace(equation.Text.Replace("^", "**"), @"(?<![\w.])(\d+)(?![\w.])", "$1.0");
        var expression = new NCalc.Expression(text, ExpressionOptions.IgnoreCaseAtBuiltInFunctions);
        expression.Parameters["pi"] = Math.PI;
        for (int i = 0; i < values.Length; i++) expression.Parameters[equation.Inputs[i].Name] = values[i];
        return Convert.ToDouble(expression.Evaluate(), System.Globalization.CultureInfo.InvariantCulture);
    }

    private static int IndexOf(Equation equation, string name) => equation.Inputs.ToList().FindIndex(s => s.Name == name);

    private static double FactorOf(SymbolUnit unit, double m, double kg, double s) =>
        Math.Pow(m, unit.LengthExponent) * Math.Pow(kg, unit.MassExponent) * Math.Pow(s, unit.TimeExponent);
}
