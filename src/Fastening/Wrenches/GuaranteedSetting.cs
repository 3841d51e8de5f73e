using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The settings of a wrench at which the fastener gets a torque within a required window while the tool keeps its accuracy and stated uncertainty; or none, with the reason and the remedy.</summary>
/// <remarks>
/// The whole chain: from S_lo = M_lo (1 + a + W)/ρ to S_hi = M_hi (1 − a − W)/ρ (equations guarantee.lowest-setting and guarantee.highest-setting), then
/// the range, then whole steps of the display. The accuracy a is that of what the display shows, so the rounding of the display is inside it; where
/// yours is not, add half a step to it. Not in the chain: the hand off its place, adapters off their angle, a pull out of square.
/// </remarks>
/// <example><code>GuaranteedSetting guaranteed = wrench.GuaranteedSettingFor(window, MeasurementUncertainty.Expanded(Ratio.FromPercent(1), coverageFactor: 2));
/// if (guaranteed.Window is null) Console.WriteLine(guaranteed.Reason);</code></example>
public sealed class GuaranteedSetting
{
    private readonly WrenchChain _chain;

    private GuaranteedSetting(WrenchChain chain, ToleranceWindow<Torque> required)
    {
        _chain = chain;
        Required = required;
        WindowLimits? exact = chain.Exact;
        WindowLimits? inRange = chain.WithinRange(exact);
        WindowLimits? shown = chain.OnDisplay(inRange);
        BeforeRounding = Wrap(exact);
        Window = Wrap(shown);
        Obstacle = exact is null ? SettingObstacle.Accuracy
            : inRange is null ? SettingObstacle.Range
            : shown is null ? SettingObstacle.Resolution : SettingObstacle.None;
        RequiredAccuracy = chain.LargestAccuracy is double accuracy ? Si.Ratio(accuracy) : null;
        RequiredResolution = inRange is WindowLimits { IsOneSided: false } limits && limits.Upper > limits.Lower ? Si.Torque(limits.Upper - limits.Lower) : null;
        Delivered = shown is WindowLimits settings ? Wrap(chain.DeliveredOver(settings)) : null;
        RequiredWindow = chain.MostTolerantStep is double step ? TouchingRequired(chain.DeliveredOver(step)) : null;
        Reason = GuaranteeReason.For(this, chain);
    }

    /// <summary>The window that the true torque at the fastener must keep.</summary>
    public ToleranceWindow<Torque> Required { get; }

    /// <summary>The settings, whole steps of the display within the range; its target is the setting for the target of the required window, moved inside. Null: none.</summary>
    public ToleranceWindow<Torque>? Window { get; }

    /// <summary>The settings before range and display are looked at; null when the wrench scatters over more than the required window.</summary>
    public ToleranceWindow<Torque>? BeforeRounding { get; }

    /// <summary>The least and greatest torque that the fastener can get over all settings of <see cref="Window"/>; null when there is none.</summary>
    public ToleranceWindow<Torque>? Delivered { get; }

    /// <summary>Why there is no setting; None when there is one.</summary>
    public SettingObstacle Obstacle { get; }

    /// <summary>The result in words: one sentence, and when nothing fits what would make it fit.</summary>
    public string Reason { get; }

    /// <summary>Unusual values in the geometry of the wrench; the calculation uses them as stated.</summary>
    /// <example><code>foreach (PlausibilityRemark remark in guaranteed.Remarks) Console.WriteLine(remark);</code></example>
    public IReadOnlyList<PlausibilityRemark> Remarks => _chain.Wrench.Remarks;

    /// <summary>The largest accuracy a with which at least one setting fits, range, display and calibration as they are; null when not even a perfect wrench does.</summary>
    public Ratio? RequiredAccuracy { get; }

    /// <summary>A display with steps up to this certainly has one that fits, whatever its zero; null when that alone does not help, or when any display has one.</summary>
    public Torque? RequiredResolution { get; }

    /// <summary>The narrowest window, relative to its limits, that this wrench could guarantee here: what the fastener can get at the step
    /// within the range with the most scatter allowed; null when the range holds no step, or when neither window nor range has an
    /// upper end, or when that window lies entirely outside the required one.</summary>
    public ToleranceWindow<Torque>? RequiredWindow { get; }

    /// <summary>The lower limit of <see cref="BeforeRounding"/>; it stands above <see cref="HighestSetting"/> when the wrench scatters over more than the required window.</summary>
    /// <example><code>Console.WriteLine(Derivation.Of(() => guaranteed.LowestSetting));</code></example>
    public Torque LowestSetting => Si.Torque(_chain.LowestSetting);

    /// <summary>The upper limit of <see cref="BeforeRounding"/>; null when the required window has no upper limit.</summary>
    public Torque? HighestSetting => Required.Limits.HasUpper ? Si.Torque(_chain.HighestSetting) : null;

    /// <inheritdoc />
    public override string ToString() => Reason;

    internal static GuaranteedSetting Find(TorqueWrench wrench, ToleranceWindow<Torque> atFastener, MeasurementUncertainty<Ratio> calibrationUncertainty)
    {
        WindowLimits required = Guard.NotNull(atFastener).Limits;
        Domains.Torque.Check(Si.Torque(required.HasUpper ? required.Upper : required.Lower), nameof(atFastener));
        Stated<Ratio> uncertainty = WrenchChain.CalibrationDomain.Stated(
            Si.Ratio(calibrationUncertainty.Limit(nameof(calibrationUncertainty))), nameof(calibrationUncertainty));
        return new(new WrenchChain(wrench, required, uncertainty), atFastener);
    }

    private ToleranceWindow<Torque>? TouchingRequired(in WindowLimits delivered) => delivered.Intersect(Required.Limits) is null ? null : new(delivered);

    private static ToleranceWindow<Torque>? Wrap(WindowLimits? limits) => limits is WindowLimits some ? new(some) : null;
}
