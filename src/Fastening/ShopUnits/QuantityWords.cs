using UnitsNet;

namespace Fastening;

/// <summary>What the four quantities are called in messages.</summary>
internal static class QuantityWords
{
    /// <summary>Refuses a quantity that has no shop units: a slip of the programmer, so also where text is only tried.</summary>
    public static void RequireSupported<TQuantity>()
        where TQuantity : struct, IQuantity
    {
        if (typeof(TQuantity) == typeof(Torque) || typeof(TQuantity) == typeof(Angle)
            || typeof(TQuantity) == typeof(Force) || typeof(TQuantity) == typeof(Length))
        {
            return;
        }

        throw new NotSupportedException($"{typeof(TQuantity).Name} has no shop units: use Torque, Angle, Force or Length.");
    }

    /// <summary>The quantity of a unit, with its article.</summary>
    public static string Of(object unit) => unit switch
    {
        ShopUnit<Torque> => "a torque",
        ShopUnit<Angle> => "an angle",
        ShopUnit<Force> => "a force",
        _ => "a length",
    };
}
