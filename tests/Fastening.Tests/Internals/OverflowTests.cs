using System.Reflection;
using Fastening.Internals;
using UnitsNet;

namespace Fastening.Tests.Internals;

/// <summary>
/// A quantity can hold any finite number of any of its units, and the conversion to SI of the largest ones overflows. The refusal must still be
/// ours: which argument, its value as entered, what is permitted. Every quantity that has a domain, every unit of it, both signs.
/// </summary>
public class OverflowTests
{
    private static readonly double[] Extremes = [double.MaxValue, -double.MaxValue, 1e300, -1e300, 1e251];

    public static TheoryData<Type> Checked => [.. QuantitiesWithADomain()];

    public static TheoryData<Type> Readers => [.. ReadersOfQuantities().Select(reader => reader.GetParameters()[0].ParameterType)];

    [Theory]
    [MemberData(nameof(Checked))]
    public void A_refusal_speaks_our_words_in_every_unit(Type quantity)
    {
        Type domain = typeof(Domain<>).MakeGenericType(quantity);
        object fromZeroToOne = Activator.CreateInstance(domain, 0.0, 1.0, false, false)!;
        MethodInfo check = domain.GetMethod(nameof(Domain<Torque>.Check))!;
        foreach (IQuantity hostile in Hostile(quantity))
        {
            Exception? thrown = Record.Exception(() => check.Invoke(fromZeroToOne, [hostile, "lever"]));
            ArgumentOutOfRangeException refusal = Assert.IsType<ArgumentOutOfRangeException>(Assert.IsType<TargetInvocationException>(thrown).InnerException);
            Assert.Equal("lever", refusal.ParamName);
            Assert.Matches(@"^lever is -?\d(\.\d+)?E\+\d+.*; it must be at least .+ and at most .+\.", refusal.Message);
        }
    }

    [Theory]
    [MemberData(nameof(Readers))]
    public void Every_unit_of_a_quantity_is_read_without_overflow_and_on_its_own_side(Type quantity)
    {
        MethodInfo reader = ReadersOfQuantities().Single(method => method.GetParameters()[0].ParameterType == quantity);
        foreach (IQuantity hostile in Hostile(quantity))
        {
            double read = (double)reader.Invoke(null, [hostile])!;
            Assert.True(double.IsFinite(read) && Math.Abs(read) > 1e200, $"{hostile.Value} {hostile.Unit}: {read}");
            Assert.Equal(Math.Sign((double)hostile.Value), Math.Sign(read));
        }
    }

    [Fact]
    public void What_is_large_and_can_be_converted_is_converted()
    {
        Assert.Equal(1e200, Si.Of(Torque.FromNewtonMeters(1e200)));
        Close.To(1e206, Si.Of(Pressure.FromMegapascals(1e200)));
        Close.To(-1e-300, Si.Of(Length.FromMillimeters(-1e-297)));
    }

    [Fact]
    public void A_caller_sees_the_refusal_and_a_reading_its_verdict()
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() => new TorqueWrench(Length.FromKilometers(1.7e308)));
        Assert.Equal("leverLength", refusal.ParamName);
        Assert.StartsWith("leverLength is 1.7E+308 km; it must be ", refusal.Message, StringComparison.Ordinal);
        ToleranceWindow<Torque> window = ToleranceWindow.FromLimits(Torque.FromNewtonMeters(48), Torque.FromNewtonMeters(52));
        Assert.Equal(Conformity.Above, window.Classify(Torque.FromKilonewtonMeters(1.7e308)));
        Assert.Equal(Conformity.Below, window.Classify(Torque.FromKilonewtonMeters(-1.7e308)));
    }

    private static IEnumerable<IQuantity> Hostile(Type quantity) =>
        from unit in Quantity.Infos.Single(info => info.ValueType == quantity).UnitInfos
        from value in Extremes
        select Quantity.From(value, unit.Value);

    private static IEnumerable<Type> QuantitiesWithADomain() => typeof(Domains).GetFields().Select(field => field.FieldType)
        .Where(type => type.IsGenericType).Select(type => type.GenericTypeArguments[0]).Distinct();

    private static IEnumerable<MethodInfo> ReadersOfQuantities() => typeof(Si).GetMethods().Where(method =>
        method is { Name: nameof(Si.Of), IsGenericMethodDefinition: false } && typeof(IQuantity).IsAssignableFrom(method.GetParameters()[0].ParameterType));
}
