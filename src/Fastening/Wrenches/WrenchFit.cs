using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>What is to be said of a setting on a wrench; data for the caller to show or to stop on.</summary>
/// <example><code>WrenchFit fit = wrench.FitOf(setting);
/// if (fit.Has(WrenchWarning.AboveRange)) { /* take a larger wrench */ }</code></example>
public sealed class WrenchFit
{
    internal WrenchFit(TorqueWrench wrench, Torque setting)
    {
        Setting = setting;
        Warnings = RangeWarning(wrench, Si.Of(setting)) | StepWarning(wrench, Si.Of(setting)) | HandWarning(wrench) | UnusualWarning(wrench);
        Messages = Array.AsReadOnly([.. Describe(wrench)]);
    }

    /// <summary>The setting that was looked at.</summary>
    public Torque Setting { get; }

    /// <summary>The warnings, as flags.</summary>
    public WrenchWarning Warnings { get; }

    /// <summary>The warnings in words, one sentence each.</summary>
    public IReadOnlyList<string> Messages { get; }

    /// <summary>Whether the setting is inside the declared range; false when the range was not stated.</summary>
    public bool IsInRange => (Warnings & (WrenchWarning.BelowRange | WrenchWarning.AboveRange | WrenchWarning.RangeNotStated)) == 0;

    /// <summary>Whether a warning was given.</summary>
    /// <param name="warning">The warning.</param>
    /// <returns>True when it was.</returns>
    /// <example><code>if (wrench.FitOf(setting).Has(WrenchWarning.AboveRange)) Console.WriteLine("take a larger wrench");</code></example>
    public bool Has(WrenchWarning warning) => (Warnings & warning) != 0;

    /// <inheritdoc />
    public override string ToString() => Messages.Count == 0 ? "fits" : string.Join(" ", Messages);

    private static WrenchWarning RangeWarning(TorqueWrench wrench, double setting)
    {
        if (wrench.LowTorque is not Torque minimum || wrench.HighTorque is not Torque maximum) return WrenchWarning.RangeNotStated;
        if (Tolerance.FallsShort(setting, Si.Of(minimum))) return WrenchWarning.BelowRange;
        return Tolerance.Exceeds(setting, Si.Of(maximum)) ? WrenchWarning.AboveRange : WrenchWarning.None;
    }

    private static WrenchWarning StepWarning(TorqueWrench wrench, double setting)
    {
        if (wrench.Resolution is not Torque resolution) return WrenchWarning.None;
        double steps = Tolerance.SnapToWhole(setting / Si.Of(resolution));
        return steps == Math.Floor(steps) ? WrenchWarning.None : WrenchWarning.BetweenSteps;
    }

    /// <summary>Even at a torque ratio of 1, with an adapter at 90°, a pull out of square changes the fastener's torque.</summary>
    private static WrenchWarning HandWarning(TorqueWrench wrench) =>
        wrench.Adapters.Any(adapter => adapter.LengthSi > 0) ? WrenchWarning.HandPositionMatters : WrenchWarning.None;

    private static WrenchWarning UnusualWarning(TorqueWrench wrench) => wrench.Remarks.Count > 0 ? WrenchWarning.Unusual : WrenchWarning.None;

    private IEnumerable<string> Describe(TorqueWrench wrench)
    {
        if (Has(WrenchWarning.BelowRange))
        {
            yield return $"{Show(wrench, Setting)} is below the range of the wrench, which begins at {Show(wrench, wrench.LowTorque)}.";
        }

        if (Has(WrenchWarning.AboveRange))
        {
            yield return $"{Show(wrench, Setting)} is above the range of the wrench, which ends at {Show(wrench, wrench.HighTorque)}: do not use it.";
        }

        if (Has(WrenchWarning.RangeNotStated)) yield return "The range of the wrench was not stated, so it was not checked.";
        if (Has(WrenchWarning.BetweenSteps))
        {
            yield return $"{Show(wrench, Setting)} lies between two steps of the display ({Show(wrench, wrench.Resolution)}).";
        }

        if (Has(WrenchWarning.HandPositionMatters))
        {
            yield return Print.Text(
                $"With these adapters (torque ratio {wrench.TorqueRatio:0.####}) the hand must be {wrench.LeverLength:0.#} from the centre of the drive and pull {Pull(wrench.PullOffSquare)}.");
        }

        foreach (PlausibilityRemark remark in wrench.Remarks) yield return $"{remark}.";
    }

    private static string Pull(Angle offSquare) => Si.Of(offSquare) == 0
        ? "square to the handle"
        : Print.Text($"{Math.Abs(offSquare.Degrees):0.###}° off square, leaning {(offSquare.Degrees > 0 ? "towards" : "away from")} the head");

    /// <summary>In the unit in which the wrench was stated: a person compares with its display.</summary>
    private static string Show(TorqueWrench wrench, Torque? torque) =>
        torque is Torque some ? Guard.Show(some.ToUnit((wrench.Resolution ?? wrench.LowTorque ?? some).Unit)) : "";
}
