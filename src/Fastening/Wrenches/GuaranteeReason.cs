using UnitsNet;

namespace Fastening.Internals;

/// <summary>A guaranteed setting in words, in the unit of the display. Stated values have six digits, calculated ones four, rounded to the safe side.</summary>
internal static class GuaranteeReason
{
    private const int Stated = 6, Calculated = 4;

    public static string For(GuaranteedSetting found, WrenchChain chain) =>
        Outcome(found, chain) + NotCounted(chain.Wrench) + PlausibilityRemark.Mention(found.Remarks);

    private static string Outcome(GuaranteedSetting found, WrenchChain chain) => found.Obstacle switch
    {
        SettingObstacle.None => Fits(found, chain.Wrench),
        SettingObstacle.Accuracy => $"No setting fits: {Scatter(chain)} the wrench scatters over more than {Limits(found.Required, chain.Wrench)}. {Remedies(found, chain)}",
        SettingObstacle.Range => $"No setting fits: it would have to lie in {Limits(found.BeforeRounding!, chain.Wrench)}, outside the range of the wrench, "
            + $"{Show(chain.Wrench.LowTorque!.Value, chain.Wrench)} to {Show(chain.Wrench.HighTorque!.Value, chain.Wrench)}. {Remedies(found, chain)}",
        _ => $"No setting fits: no step of the display ({Show(chain.Wrench.Resolution!.Value, chain.Wrench)}) lies in {Limits(chain.WithinRange(found.BeforeRounding!.Limits)!.Value, chain.Wrench)}. {Remedies(found, chain)}",
    };

    private static string Fits(GuaranteedSetting found, TorqueWrench wrench) =>
        $"Every setting {(found.Window!.Limits.IsOneSided ? "of" : "in")} {Inward(found.Window!, wrench)} gives the fastener {Within(found, wrench)}, within the required {Limits(found.Required, wrench)}."
        + (wrench.HighTorque is null ? " The range of the wrench was not stated, so it was not checked." : "")
        + (wrench.Resolution is null ? " The step of the display was not stated: round inward." : "");

    private static string NotCounted(TorqueWrench wrench) =>
        wrench.Adapters.Count == 0 ? "" : " Not counted: the hand off its place, an adapter off its angle.";

    private static string Scatter(WrenchChain chain) => Print.Text(
        $"with an accuracy of ±{Si.Ratio(chain.Accuracy):0.###} and a calibration uncertainty of ±{Si.Ratio(chain.Uncertainty):0.###}");

    private static string Remedies(GuaranteedSetting found, WrenchChain chain)
    {
        var remedies = new List<string>();
        if (found.RequiredAccuracy is Ratio accuracy && Si.Of(accuracy) is double better && better < chain.Accuracy)
        {
            remedies.Add(Print.Text($"an accuracy of ±{Si.Ratio(Safe(better, Math.Floor, Calculated))} or better"));
        }

        if (found.Obstacle == SettingObstacle.Range) remedies.Add("a wrench or an adapter that brings these settings into the range");
        if (found.Obstacle == SettingObstacle.Resolution && found.RequiredResolution is Torque step)
        {
            remedies.Add($"a display with steps of {Safe(step, chain.Wrench, Math.Floor, Calculated)} or finer");
        }

        if (found.RequiredWindow is ToleranceWindow<Torque> window)
        {
            remedies.Add($"a required window that holds {Outward(window, chain.Wrench)}");
        }

        if (remedies.Count == 0)
        {
            return chain.MostTolerantStep is null
                ? "The range holds no step of the display."
                : "No setting of this wrench comes near the required window: take another wrench.";
        }

        return $"It would fit with {string.Join(", or with ", remedies)}.";
    }

    private static string Limits(ToleranceWindow<Torque> window, TorqueWrench wrench) => Limits(window.Limits, wrench);

    private static string Limits(in WindowLimits window, TorqueWrench wrench) =>
        Words(window, torque => Show(torque, wrench), torque => Show(torque, wrench));

    private static string Outward(ToleranceWindow<Torque> window, TorqueWrench wrench) =>
        Words(window.Limits, torque => Safe(torque, wrench, Math.Floor, Calculated), torque => Safe(torque, wrench, Math.Ceiling, Calculated));

    /// <summary>Settings without a stated step of the display, rounded inward; whole steps, and windows too narrow for fewer digits, as they are.</summary>
    private static string Inward(ToleranceWindow<Torque> window, TorqueWrench wrench)
    {
        WindowLimits limits = window.Limits;
        bool isEmpty = !limits.IsOneSided
            && Rounded(Si.Torque(limits.Lower), wrench, Math.Ceiling, Calculated) > Rounded(Si.Torque(limits.Upper), wrench, Math.Floor, Calculated);
        return isEmpty || wrench.Resolution is not null
            ? Limits(limits, wrench)
            : Words(limits, torque => Safe(torque, wrench, Math.Ceiling, Calculated), torque => Safe(torque, wrench, Math.Floor, Calculated));
    }

    private static string Words(in WindowLimits window, Func<Torque, string> low, Func<Torque, string> high)
    {
        if (!window.HasUpper) return $"at least {low(Si.Torque(window.Lower))}";
        if (!window.HasLower) return $"at most {high(Si.Torque(window.Upper))}";
        return $"{low(Si.Torque(window.Lower))} to {high(Si.Torque(window.Upper))}";
    }

    /// <summary>Rounded outward, but not beyond the required limits as they are shown: what the fastener gets lies within them.</summary>
    private static string Within(GuaranteedSetting found, TorqueWrench wrench)
    {
        WindowLimits required = found.Required.Limits;
        string Text(Torque torque, double value) => Print.Number(value, Print.UnitOf(Shown(torque, wrench)));
        double Limit(double torque) => Rounded(Si.Torque(torque), wrench, Math.Round, Stated);
        return Words(
            found.Delivered!.Limits,
            low => Text(low, required.HasLower ? Math.Max(Rounded(low, wrench, Math.Floor, Calculated), Limit(required.Lower)) : Rounded(low, wrench, Math.Floor, Calculated)),
            high => Text(high, required.HasUpper ? Math.Min(Rounded(high, wrench, Math.Ceiling, Calculated), Limit(required.Upper)) : Rounded(high, wrench, Math.Ceiling, Calculated)));
    }

    private static string Show(Torque torque, TorqueWrench wrench) => Safe(torque, wrench, Math.Round, Stated);

    /// <summary>In the unit in which the wrench was stated: a person compares with its display.</summary>
    private static string Safe(Torque torque, TorqueWrench wrench, Func<double, double> round, int digits) =>
        Print.Number(Rounded(torque, wrench, round, digits), Print.UnitOf(Shown(torque, wrench)));

    private static double Rounded(Torque torque, TorqueWrench wrench, Func<double, double> round, int digits) =>
        Safe(torque.As(Shown(torque, wrench).Unit), round, digits);

    /// <summary>A torque in the unit that the reader sees.</summary>
    private static Torque Shown(Torque torque, TorqueWrench wrench) => wrench.Resolution ?? wrench.LowTorque ?? torque;

    /// <summary>To a few digits, rounded down or up.</summary>
    private static double Safe(double value, Func<double, double> round, int digits)
    {
        if (value == 0) return 0;
        double scale = Math.Pow(10, digits - 1 - Math.Floor(Math.Log10(Math.Abs(value))));
        return round(Tolerance.SnapToWhole(value * scale)) / scale;
    }
}
