using System.Globalization;
using UnitsNet;
using UnitsNet.Units;

namespace Fastening.Internals;

/// <summary>A guaranteed setting in words, in the unit of the display. What would make it fit is rounded to the safe side.</summary>
internal static class GuaranteeReason
{
    private const int Digits = 6;

    public static string For(GuaranteedSetting found, WrenchChain chain) =>
        Outcome(found, chain) + NotCounted(chain.Wrench) + PlausibilityRemark.Mention(found.Remarks);

    private static string Outcome(GuaranteedSetting found, WrenchChain chain) => found.Obstacle switch
    {
        SettingObstacle.None => Fits(found, chain.Wrench),
        SettingObstacle.Accuracy => $"No setting fits: {Scatter(chain)} the wrench scatters over more than {Limits(found.Required, chain.Wrench)}. {Remedies(found, chain)}",
        SettingObstacle.Range => $"No setting fits: it would have to lie in {Limits(found.BeforeRounding!, chain.Wrench)}, outside the range of the wrench, "
            + $"{Show(chain.Wrench.Minimum!.Value, chain.Wrench)} to {Show(chain.Wrench.Maximum!.Value, chain.Wrench)}. {Remedies(found, chain)}",
        _ => $"No setting fits: no step of the display ({Show(chain.Wrench.Resolution!.Value, chain.Wrench)}) lies in {Limits(chain.WithinRange(found.BeforeRounding!.Limits)!.Value, chain.Wrench)}. {Remedies(found, chain)}",
    };

    private static string Fits(GuaranteedSetting found, TorqueWrench wrench) =>
        $"Every setting {(found.Window!.Limits.IsOneSided ? "of" : "in")} {Limits(found.Window!, wrench)} gives the fastener {Within(found, wrench)}, within the required {Limits(found.Required, wrench)}."
        + (wrench.Maximum is null ? " The range of the wrench was not stated, so it was not checked." : "")
        + (wrench.Resolution is null ? " The step of the display was not stated: round inward." : "");

    private static string NotCounted(TorqueWrench wrench) =>
        wrench.Adapters.Count == 0 ? "" : " Not counted: the hand off its place, an adapter off its angle.";

    private static string Scatter(WrenchChain chain) => FormattableString.Invariant(
        $"with an accuracy of ±{chain.Accuracy * 100:0.###} % and a calibration uncertainty of ±{chain.Uncertainty * 100:0.###} %");

    private static string Remedies(GuaranteedSetting found, WrenchChain chain)
    {
        var remedies = new List<string>();
        if (found.RequiredAccuracy is Ratio accuracy && Si.Of(accuracy) is double better && better < chain.Accuracy)
        {
            remedies.Add(FormattableString.Invariant($"an accuracy of ±{Safe(better * 100, Math.Floor):0.#######} % or better"));
        }

        if (found.Obstacle == SettingObstacle.Range) remedies.Add("a wrench or an adapter that brings these settings into the range");
        if (found.Obstacle == SettingObstacle.Resolution && found.RequiredResolution is Torque step)
        {
            remedies.Add($"a display with steps of {Safe(step, chain.Wrench, Math.Floor)} or finer");
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
        Words(window.Limits, torque => Safe(torque, wrench, Math.Floor), torque => Safe(torque, wrench, Math.Ceiling));

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
        string Shown(Torque torque, double value) => Print.Number(value, Torque.GetAbbreviation(UnitOf(torque, wrench), CultureInfo.InvariantCulture));
        double Limit(double torque) => Rounded(Si.Torque(torque), wrench, Math.Round);
        return Words(
            found.Delivered!.Limits,
            low => Shown(low, required.HasLower ? Math.Max(Rounded(low, wrench, Math.Floor), Limit(required.Lower)) : Rounded(low, wrench, Math.Floor)),
            high => Shown(high, required.HasUpper ? Math.Min(Rounded(high, wrench, Math.Ceiling), Limit(required.Upper)) : Rounded(high, wrench, Math.Ceiling)));
    }

    private static string Show(Torque torque, TorqueWrench wrench) => Safe(torque, wrench, Math.Round);

    /// <summary>In the unit in which the wrench was stated: a person compares with its display.</summary>
    private static string Safe(Torque torque, TorqueWrench wrench, Func<double, double> round) => Print.Number(
        Rounded(torque, wrench, round), Torque.GetAbbreviation(UnitOf(torque, wrench), CultureInfo.InvariantCulture));

    private static double Rounded(Torque torque, TorqueWrench wrench, Func<double, double> round) => Safe(torque.As(UnitOf(torque, wrench)), round);

    private static TorqueUnit UnitOf(Torque torque, TorqueWrench wrench) => (wrench.Resolution ?? wrench.Minimum ?? torque).Unit;

    /// <summary>To a few digits, rounded down or up.</summary>
    private static double Safe(double value, Func<double, double> round)
    {
        if (value == 0) return 0;
        double scale = Math.Pow(10, Digits - 1 - Math.Floor(Math.Log10(Math.Abs(value))));
        return round(Tolerance.SnapToWhole(value * scale)) / scale;
    }
}
