using System.Reflection;
using System.Text.RegularExpressions;
using Fastening.Quality;
using UnitsNet;

namespace Fastening.Tests.House;

/// <summary>One kind for a share: a <see cref="Ratio"/>, which says whether 0.25 is a quarter or a quarter of a percent.</summary>
public class ShareRuleTests
{
    private static readonly Regex Share = new("[Ss]hare|[Pp]ercent|[Uu]tilisation|^residualTorsion$|[Ff]raction$");

    [Fact]
    public void No_share_in_the_public_api_is_a_bare_number()
    {
        foreach (Type type in typeof(ScrewThread).Assembly.GetExportedTypes().Where(type => type.Namespace is "Fastening" or "Fastening.Quality"))
        {
            foreach (PropertyInfo property in type.GetProperties().Where(property => Share.IsMatch(property.Name)))
            {
                Assert.True(!IsNumber(property.PropertyType), $"{type.Name}.{property.Name} is a bare number");
            }

            foreach (ParameterInfo parameter in type.GetMethods().Cast<MethodBase>().Concat(type.GetConstructors())
                .SelectMany(method => method.GetParameters()).Where(parameter => Share.IsMatch(parameter.Name!)))
            {
                Assert.True(!IsNumber(parameter.ParameterType), $"{type.Name}.{parameter.Member.Name}: {parameter.Name} is a bare number");
            }
        }
    }

    [Fact]
    public void A_share_that_cannot_be_meant_is_refused_in_percent()
    {
        FrictionTorqueModel model = TorquePreloadModel.ForHexagonBolt(ScrewThread.Parse("M16"), new FrictionCoefficients(0.12, 0.10));
        BoltStrength strength = PropertyClass.Parse("8.8").StrengthFor(model.Thread);
        Torque torque = Torque.FromNewtonMeters(50);

        AssertRefused("utilisation is 9000 %; it must be at least 5 % and at most 100 %.", () => model.PermittedPreload(strength, Ratio.FromDecimalFractions(90)));
        AssertRefused("utilisation is 0.9 %; it must be at least 5 % and at most 100 %.", () => model.PermittedPreload(strength, Ratio.FromPercent(0.9)));
        AssertRefused("minus is 400 %; it must be at least 0 % and at most 100 %.", () => ToleranceWindow.FromDeviations(torque, Ratio.FromDecimalFractions(4), Ratio.Zero));
        AssertRefused("plus is 400 %; it must be at least 0 % and at most 100 %.", () => ToleranceWindow.FromDeviations(torque, Ratio.Zero, Ratio.FromDecimalFractions(4)));
        AssertRefused("minus is -4 %; it must be at least 0 % and at most 100 %.", () => ToleranceWindow.FromDeviations(torque, Ratio.FromPercent(-4), Ratio.Zero));
        AssertRefused("plusMinus is 2500 %; it must be at least 0 % and at most 99.9 %.", () => PreloadScatter.FromPlusMinus(Ratio.FromDecimalFractions(25)));
        AssertRefused("residualTorsion is 5000 %; it must be at least 0 % and at most 100 %.", () => BoltStress.InService(model, Force.FromKilonewtons(50), Force.FromKilonewtons(52), Ratio.FromDecimalFractions(50)));
        AssertRefused("populationShare is 0.9 %; it must be at least 50 % and at most 99.99 %.", () => StatisticalToleranceInterval.TwoSidedFactor(10, Ratio.FromPercent(0.9), 0.95));
        AssertRefused("flatShare is 4000 %; it must be at least 0 % and at most 100 %.", () => UncertaintyContribution.Trapezoidal("x", 1, 1, Ratio.FromDecimalFractions(40)));
        AssertRefused("relativeDoubt is 2500 %; it must be at least 0.01 % and at most 70 %.", () => UncertaintyContribution.Rectangular("x", 1, 1).WithDoubt(Ratio.FromDecimalFractions(25)));
    }

    private static bool IsNumber(Type type) => type == typeof(double) || type == typeof(double?) || typeof(IEnumerable<double>).IsAssignableFrom(type);

    private static void AssertRefused(string message, Func<object?> call) =>
        Assert.StartsWith(message, Assert.Throws<ArgumentOutOfRangeException>(() => call()).Message, StringComparison.Ordinal);
}
