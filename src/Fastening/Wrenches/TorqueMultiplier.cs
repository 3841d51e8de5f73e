using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A torque multiplier: a planetary gearbox between wrench and fastener, held by a reaction arm.</summary>
/// <remarks>
/// M_out = i η M_in, equation wrench.multiplier-output, and nothing more: the ratio is counted from the teeth, the efficiency η must come from the
/// calibration of this gearbox at about this torque. It changes with torque, wear and lubricant, and it is not guessed here. The wrench measures
/// at the input, so an error of η goes in full into the torque at the fastener. Before the output turns, the input turns i times as far and
/// also winds up: count rotation at the fastener, not at the wrench.
/// </remarks>
/// <example><code>var multiplier = new TorqueMultiplier(gearRatio: 5, efficiency: 0.92);
/// Torque setting = wrench.SettingFor(multiplier.InputFor(Torque.FromNewtonMeters(1200)));
/// Torque onReactionArm = multiplier.ReactionAt(multiplier.InputFor(Torque.FromNewtonMeters(1200)));   // keep hands clear</code></example>
public sealed class TorqueMultiplier
{
    private static readonly Interval GearRatioDomain = new(1, 1000);
    private static readonly Interval EfficiencyDomain = new(0.05, 1);

    private readonly StatedNumber _gearRatio, _efficiency;

    /// <summary>A multiplier by its gear ratio and its efficiency.</summary>
    /// <param name="gearRatio">Turns of the input per turn of the output, 1 to 1000.</param>
    /// <param name="efficiency">Efficiency, 0.05 to 1, from the calibration of the multiplier; never defaulted.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>var multiplier = new TorqueMultiplier(gearRatio: 5, efficiency: 0.92);</code></example>
    public TorqueMultiplier(double gearRatio, double efficiency)
    {
        _gearRatio = GearRatioDomain.Stated(gearRatio);
        _efficiency = EfficiencyDomain.Stated(efficiency);
    }

    /// <summary>Gear ratio i: turns of the input per turn of the output.</summary>
    public double GearRatio => Si.Number(_gearRatio.Term);

    /// <summary>Efficiency η.</summary>
    public double Efficiency => Si.Number(_efficiency.Term);

    /// <summary>Torque at the output over torque at the input, i η: what a calibration certificate states.</summary>
    public double TorqueRatio => _gearRatio.Value * _efficiency.Value;

    /// <summary>Values outside the ranges in which such values are published; empty when there are none.</summary>
    public IReadOnlyList<PlausibilityRemark> Remarks => PlausibilityRemark.Of(PlausibleRange.GearRatio, _gearRatio.Value, PlausibleRange.Efficiency, _efficiency.Value);

    /// <summary>The torque at the output for a torque at the input.</summary>
    /// <param name="input">Torque at the input, as a wrench without adapter shows it.</param>
    /// <returns>Torque at the fastener.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="input"/> is negative or beyond its domain.</exception>
    /// <example><code>new TorqueMultiplier(5, 0.92).OutputAt(Torque.FromNewtonMeters(260)).NewtonMeters   // 1196</code></example>
    public Torque OutputAt(Torque input) => Si.Torque(Output(Domains.Torque.Argument(input)));

    /// <summary>The torque to put in for a torque at the output.</summary>
    /// <param name="output">Torque wanted at the fastener.</param>
    /// <returns>Torque at the input.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="output"/> is negative or beyond its domain.</exception>
    /// <example><code>new TorqueMultiplier(5, 0.92).InputFor(Torque.FromNewtonMeters(1150)).NewtonMeters   // 250</code></example>
    public Torque InputFor(Torque output) => Si.Torque(WrenchEquations.MultiplierInputEquation.Of(Domains.Torque.Argument(output), _gearRatio.Term, _efficiency.Term));

    /// <summary>The window at the input that belongs to a window at the output.</summary>
    /// <param name="output">The window wanted at the fastener.</param>
    /// <returns>Limits and target over i η; the uncertainty of η is not in it.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="output"/> is null.</exception>
    /// <example><code>multiplier.InputWindowFor(ToleranceWindow.FromDeviations(
    ///     Torque.FromNewtonMeters(1150), minus: Ratio.FromPercent(4), plus: Ratio.FromPercent(6)))</code></example>
    public ToleranceWindow<Torque> InputWindowFor(ToleranceWindow<Torque> output) => Guard.NotNull(output).Scale(1 / TorqueRatio);

    /// <summary>The torque with which the reaction arm presses against its support, opposite to the output: output less input.</summary>
    /// <param name="input">Torque at the input.</param>
    /// <returns>Reaction torque; divided by the length of the arm it is the force on the support, and on a hand between them.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="input"/> is negative or beyond its domain.</exception>
    /// <example><code>new TorqueMultiplier(5, 0.92).ReactionAt(Torque.FromNewtonMeters(260)).NewtonMeters   // 936</code></example>
    public Torque ReactionAt(Torque input)
    {
        Term torque = Domains.Torque.Argument(input);
        return Si.Torque(WrenchEquations.MultiplierReactionEquation.Of(Output(torque), torque));
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"torque multiplier {_gearRatio.Value:0.###} : 1, efficiency {_efficiency.Value:0.###}{PlausibilityRemark.Mention(Remarks)}");

    private Term Output(Term input) => WrenchEquations.MultiplierOutputEquation.Of(input, _gearRatio.Term, _efficiency.Term);
}
