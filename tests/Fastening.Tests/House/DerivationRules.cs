using System.Text.RegularExpressions;
using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;
using UnitsNet.Units;

namespace Fastening.Tests.House;

/// <summary>What every derivation keeps, told from what it shows: the first rule that it breaks, in words.</summary>
internal static class DerivationRules
{
    public static IEnumerable<string> BrokenBy(Derivation work, object answer, object?[] arguments) =>
    [
        .. EndsOn(work, answer), .. Givens(work), .. AsEntered(work, arguments), .. Steps(work), .. Used(work), .. Bridges(work), .. Texts(work),
    ];

    private static IEnumerable<string> EndsOn(Derivation work, object answer)
    {
        double plain = answer switch
        {
            double number => number,
            IQuantity quantity => Si.ValueOf(quantity),
            IDerived result => result.Answer.Value,
            _ => double.NaN,
        };
        double derived = answer switch
        {
            Angle => Si.ValueOf(Si.AngleFromRadians(work.Result)),
            RotationalSpeed => work.Result / Si.RadiansPerDegree,
            _ => work.Result,
        };

        // Per cent are a hundred times the fraction; a hundredth of them need not be the same bits again.
        if (answer is Ratio { Unit: RatioUnit.Percent } share && Same(share.Percent, Ratio.FromDecimalFractions(work.Result).Percent)) derived = plain;
        if (!Same(plain, derived)) yield return $"ends on {derived:R}, the answer is {plain:R}";
        if (work.Steps.Count > 0 && !Same(work.Steps[^1].Result, work.Result)) yield return "its last step is not its result";
    }

    private static IEnumerable<string> Givens(Derivation work)
    {
        foreach (DerivationInput given in work.Given)
        {
            if (string.IsNullOrWhiteSpace(given.Name)) yield return $"a given value without a name: {given}";
            if (given.Symbol is not Symbol symbol) continue;
            if (given.Quantity is not IQuantity quantity)
            {
                // A number of a table or of a source stands in the unit of its symbol.
                if (!given.ValueText.EndsWith(symbol.Unit.Shop, StringComparison.Ordinal)) yield return $"{given.Name} is given without its unit";
                continue;
            }

            BaseDimensions has = quantity.QuantityInfo.BaseDimensions;
            if ((has.Length, has.Mass, has.Time) != (symbol.Unit.LengthExponent, symbol.Unit.MassExponent, symbol.Unit.TimeExponent)) yield return $"{given.Name} is {quantity}, {symbol.Name} is in {symbol.Unit.Si}";
            double si = quantity is Angle or RotationalSpeed ? Si.ValueOf(quantity) * Si.RadiansPerDegree : Si.ValueOf(quantity);
            if (Math.Abs(si - given.Value) > 1e-12 * Math.Abs(given.Value)) yield return $"{given.Name} prints {quantity} and counts {given.Value:R}";
        }

        foreach (var twice in work.Given.GroupBy(given => (given.Symbol?.Name, given.Name)).Where(group => group.Count() > 1))
        {
            if (work.Steps.Count > 0) yield return $"{twice.Key.Item1}, {twice.Key.Item2} is given {twice.Count()} times under one name";
        }
    }

    /// <summary>An argument is shown in the unit in which it came.</summary>
    private static IEnumerable<string> AsEntered(Derivation work, object?[] arguments) =>
        from argument in arguments.OfType<IQuantity>()
        let value = Si.ValueOf(argument)
        from given in work.Given
        where value != 0 && given.Quantity is IQuantity shown && shown.GetType() == argument.GetType() && Si.ValueOf(shown) == value && !shown.Unit.Equals(argument.Unit)
        select $"{given.Name} was entered as {argument} and shows {given.Quantity}";

    private static IEnumerable<string> Steps(Derivation work)
    {
        var before = new HashSet<long>(work.Given.Select(given => Bits(given.Value)));
        foreach (DerivationStep step in work.Steps)
        {
            for (int i = 0; i < step.Inputs.Count; i++)
            {
                if (!before.Contains(Bits(step.Inputs[i]))) yield return $"{step.Equation.Inputs[i].Name} of {step.Equation.Id} comes from nowhere";
            }

            if (!Same(step.Equation.Invoke([.. step.Inputs]), step.Result)) yield return $"{step.Equation.Id} does not compute its result";
            before.Add(Bits(step.Result));
        }

        foreach (var twice in work.Steps.GroupBy(step => (step.Equation.Id, string.Join(' ', step.Inputs.Select(Bits)), string.Join(';', step.Notes))).Where(group => group.Count() > 1))
        {
            yield return $"{twice.Key.Id} stands {twice.Count()} times with the same numbers and words";
        }
    }

    private static IEnumerable<string> Used(Derivation work)
    {
        for (int i = 0; i < work.Steps.Count - 1; i++)
        {
            if (!work.Steps.Skip(i + 1).Any(later => later.Inputs.Any(input => Same(input, work.Steps[i].Result)))) yield return $"{work.Steps[i].Equation.Id} is used by no later step";
        }

        foreach (DerivationInput given in work.Given)
        {
            if (work.Steps.Count > 0 && !work.Steps.Any(step => step.Inputs.Any(input => Same(input, given.Value)))) yield return $"{given.Name} is given and not used";
        }
    }

    /// <summary>A value that goes in under another symbol, and one of several under one symbol, is named in words; dimensions agree.</summary>
    private static IEnumerable<string> Bridges(Derivation work)
    {
        var sources = new List<(Symbol? Symbol, double Value)>(work.Given.Select(given => (given.Symbol, given.Value)));
        foreach (DerivationStep step in work.Steps)
        {
            for (int i = 0; i < step.Inputs.Count; i++)
            {
                Symbol symbol = step.Equation.Inputs[i];
                Symbol?[] equal = [.. sources.Where(source => Same(source.Value, step.Inputs[i])).Select(source => source.Symbol)];
                bool isSaid = step.Notes.Any(note => note.StartsWith($"{symbol.Pretty} = ", StringComparison.Ordinal));
                if (equal.All(source => source?.Name != symbol.Name) && !isSaid) yield return $"{symbol.Name} of {step.Equation.Id} is the value of {string.Join(", ", equal.Select(source => source?.Name))}, without a word";
                if (!equal.Any(source => source is null || SameDimension(source.Unit, symbol.Unit))) yield return $"{symbol.Name} of {step.Equation.Id} takes a value in {equal[0]?.Unit.Si}";
                bool isOneOfSeveral = work.Given.Count(given => given.Symbol?.Name == symbol.Name) + work.Steps.Count(other => other.Equation.Result.Name == symbol.Name) > 1;
                if (isOneOfSeveral && !isSaid) yield return $"{symbol.Name} of {step.Equation.Id} is one of several, and it is not said which";
            }

            sources.Add((step.Equation.Result, step.Result));
        }
    }

    private static IEnumerable<string> Texts(Derivation work)
    {
        string latex = work.ToLatex();
        Match raw = Regex.Match(latex, "[µμ·²³⁴°√]");
        if (raw.Success) yield return $"LaTeX holds a raw {raw.Value}";
        if (Regex.IsMatch(work.ToString() + latex + work.ToMarkdown(), @"\bNaN\b|Infinity|∞")) yield return "prints what is not a number";
    }

    private static bool SameDimension(SymbolUnit one, SymbolUnit other) =>
        (one.LengthExponent, one.MassExponent, one.TimeExponent) == (other.LengthExponent, other.MassExponent, other.TimeExponent);

    private static bool Same(double one, double other) => Bits(one) == Bits(other);

    private static long Bits(double value) => BitConverter.DoubleToInt64Bits(value);
}
