using System.Reflection;
using UnitsNet;

namespace Fastening.Tests.ShopUnits;

/// <summary>A unit of any quantity behind one face, so that one test covers them all; found by reflection, so that none is left out.</summary>
public sealed class NamedUnit
{
    private readonly object _unit;

    private NamedUnit(object unit) => _unit = unit;

    public static IReadOnlyList<NamedUnit> All { get; } =
        [.. typeof(ShopUnit).GetProperties(BindingFlags.Public | BindingFlags.Static).Select(property => new NamedUnit(property.GetValue(null)!))];

    public string Symbol => _unit.ToString()!;

    public double Multiplier => Match(torque => torque.Multiplier, angle => angle.Multiplier, force => force.Multiplier, length => length.Multiplier);

    public double Divisor => Match(torque => torque.Divisor, angle => angle.Divisor, force => force.Divisor, length => length.Divisor);

    public static NamedUnit Of(string symbol) => All.Single(unit => unit.Symbol == symbol);

    /// <summary>In N·m, °, N or m.</summary>
    public double From(double value) => Match(
        torque => torque.From(value).NewtonMeters,
        angle => angle.From(value).Degrees,
        force => force.From(value).Newtons,
        length => length.From(value).Meters);

    /// <summary>From N·m, °, N or m.</summary>
    public double ValueOfBase(double value) => Match(
        torque => torque.ValueOf(Torque.FromNewtonMeters(value)),
        angle => angle.ValueOf(Angle.FromDegrees(value)),
        force => force.ValueOf(Force.FromNewtons(value)),
        length => length.ValueOf(Length.FromMeters(value)));

    public string Write(double value) => Match(
        torque => new Entered<Torque>(value, torque).ToString(),
        angle => new Entered<Angle>(value, angle).ToString(),
        force => new Entered<Force>(value, force).ToString(),
        length => new Entered<Length>(value, length).ToString());

    /// <summary>The value and the symbol of the unit, as read.</summary>
    public (double Value, string Symbol) Read(string text) => Match(
        _ => Show(Entered.Parse<Torque>(text)),
        _ => Show(Entered.Parse<Angle>(text)),
        _ => Show(Entered.Parse<Force>(text)),
        _ => Show(Entered.Parse<Length>(text)));

    public (double Value, string Symbol) Read(string number, string unit) => Match(
        _ => Show(Entered.Parse<Torque>(number, unit)),
        _ => Show(Entered.Parse<Angle>(number, unit)),
        _ => Show(Entered.Parse<Force>(number, unit)),
        _ => Show(Entered.Parse<Length>(number, unit)));

    /// <summary>Every quantity tried as text; null where it is not read.</summary>
    public (double Value, string Symbol)? TryRead(string text) => Match<(double, string)?>(
        _ => Entered.TryParse(text, out Entered<Torque>? entered) ? Show(entered) : null,
        _ => Entered.TryParse(text, out Entered<Angle>? entered) ? Show(entered) : null,
        _ => Entered.TryParse(text, out Entered<Force>? entered) ? Show(entered) : null,
        _ => Entered.TryParse(text, out Entered<Length>? entered) ? Show(entered) : null);

    private static (double Value, string Symbol) Show<TQuantity>(Entered<TQuantity> entered)
        where TQuantity : struct, IQuantity =>
        (entered.Value, entered.Unit.Symbol);

    private TResult Match<TResult>(
        Func<ShopUnit<Torque>, TResult> torque,
        Func<ShopUnit<Angle>, TResult> angle,
        Func<ShopUnit<Force>, TResult> force,
        Func<ShopUnit<Length>, TResult> length) => _unit switch
        {
            ShopUnit<Torque> unit => torque(unit),
            ShopUnit<Angle> unit => angle(unit),
            ShopUnit<Force> unit => force(unit),
            _ => length((ShopUnit<Length>)_unit),
        };
}
