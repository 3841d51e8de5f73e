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
        Warnings = RangeWarning(wrench, Si.Of(setting)) | StepWarning(wrench, Si.Of(setting)) | HandWarning(wrench);
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
    public bool Has(WrenchWarning warning) => (Warnings & warning) != 0;

    /// <inheritdoc />
    public override string ToString() => Messages.Count == 0 ? "fits" : string.Join(" ", Messages);

    private static WrenchWarning RangeWarning(TorqueWrench wrench, double setting)
    {
        if (wrench.Minimum is not Torque minimum || wrench.Maximum is not Torque maximum) return WrenchWarning.RangeNotStated;
        if (setting < Si.Of(minimum) * (1 - Tolerance.Widening)) return WrenchWarning.BelowRange;
        return setting > Si.Of(maximum) * (1 + Tolerance.Widening) ? WrenchWarning.AboveRange : WrenchWarning.None;
    }

    private static WrenchWarning StepWarning(TorqueWrench wrench, double setting)
    {
        if (wrench.Resolution is not Torque resolution) return WrenchWarning.None;
        double steps = Tolerance.SnapToWhole(setting / Si.Of(resolution));
        return steps == Math.Floor(steps) ? WrenchWarning.None : WrenchWarning.BetweenSteps;
    }

    private static WrenchWarning HandWarning(TorqueWrench wrench) =>
        Math.Abs(wrench.TorqueRatio - 1) > 1e-9 ? WrenchWarning.HandPositionMatters : WrenchWarning.None;

    private IEnumerable<string> Describe(TorqueWrench wrench)
    {
        if (Has(WrenchWarning.BelowRange))
        {
            yield return $"{Show(Setting)} is below the range of the wrench, which begins at {Show(wrench.Minimum)}.";
        }

        if (Has(WrenchWarning.AboveRange))
        {
            yield return $"{Show(Setting)} is above the range of the wrench, which ends at {Show(wrench.Maximum)}: do not use it.";
        }

        if (Has(WrenchWarning.RangeNotStated)) yield return "The range of the wrench was not stated, so it was not checked.";
        if (Has(WrenchWarning.BetweenSteps))
        {
            yield return $"{Show(Setting)} lies between two steps of the display ({Show(wrench.Resolution)}).";
        }

        if (Has(WrenchWarning.HandPositionMatters))
        {
            yield return FormattableString.Invariant(
                $"With these adapters (torque ratio {wrench.TorqueRatio:0.####}) the hand must be {wrench.LeverLength.Millimeters:0.#} mm from the centre of the drive and pull as stated.");
        }
    }

    private static string Show(Torque? torque) => FormattableString.Invariant($"{torque?.NewtonMeters:0.###} N·m");
}
