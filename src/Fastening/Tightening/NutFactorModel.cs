using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Torque and preload from a nut factor alone: M = K d F + M_p.</summary>
/// <remarks>
/// What cannot be calculated from K alone is not offered: the split of the torque into pitch, thread and bearing, the loosening torque, and whether
/// the thread holds. Equation torque.nut-factor-arm (Shigley 9th ed., eq. (8-27)).
/// </remarks>
/// <example><code>NutFactorModel model = TorquePreloadModel.FromNutFactor(0.18, Length.FromMillimeters(16));</code></example>
public sealed class NutFactorModel : TorquePreloadModel
{
    private readonly double _nutFactor;

    internal NutFactorModel(double nutFactor, double diameter, double prevailing)
        : base(TorqueEquations.NutFactorArm(nutFactor, diameter), prevailing, diameter) => _nutFactor = nutFactor;

    internal double DiameterSi => Diameter;

    private protected override IReadOnlyList<PlausibilityRemark> StatedRemarks => PlausibilityRemark.Of(PlausibleRange.NutFactor, _nutFactor);

    /// <summary>The same model with a prevailing torque.</summary>
    /// <param name="prevailingTorque">Prevailing torque, measured in the tightening sense.</param>
    /// <returns>A new model.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="prevailingTorque"/> is negative or beyond its domain.</exception>
    /// <example><code>model.WithPrevailing(Torque.FromNewtonMeters(9))</code></example>
    public NutFactorModel WithPrevailing(Torque prevailingTorque) => new(_nutFactor, Diameter, Domains.Torque.Check(prevailingTorque));

    /// <summary>The preloads that one torque gives over a range of nut factors; the model's own K is not used.</summary>
    /// <param name="torque">Torque at the fastener.</param>
    /// <param name="lowNutFactor">Lowest K: the highest preload.</param>
    /// <param name="highNutFactor">Highest K: the lowest preload; at least <paramref name="lowNutFactor"/>.</param>
    /// <returns>Lowest and highest preload.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the factors are the wrong way round.</exception>
    /// <example><code>model.PreloadRangeAt(Torque.FromNewtonMeters(150), 0.14, 0.22)</code></example>
    public PreloadRange PreloadRangeAt(Torque torque, double lowNutFactor, double highNutFactor) =>
        Range(lowNutFactor, highNutFactor).PreloadRangeAt(torque);

    /// <summary>The preloads that a window of torque gives over a range of nut factors; the model's own K is not used.</summary>
    /// <param name="torque">The torque that arrives at the fastener, limits from 0; the accuracy of the tool is not added.</param>
    /// <param name="lowNutFactor">Lowest K: the highest preload.</param>
    /// <param name="highNutFactor">Highest K: the lowest preload; at least <paramref name="lowNutFactor"/>.</param>
    /// <returns>Lowest and highest preload.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="torque"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the factors are the wrong way round.</exception>
    public PreloadRange PreloadRangeAt(ToleranceWindow<Torque> torque, double lowNutFactor, double highNutFactor) =>
        Range(lowNutFactor, highNutFactor).PreloadRangeAt(torque);

    /// <inheritdoc />
    public override string ToString() => Print.Text($"K {_nutFactor:0.####}, d {Si.Length(Diameter):0.###}{PlausibilityRemark.Mention(Remarks)}");

    internal override double DeriveArm(Derivation work) => TorqueEquations.NutFactorArmEquation.Step(work, _nutFactor, Diameter);

    private TorquePreloadRange Range(double lowNutFactor, double highNutFactor) => TorquePreloadRange
        .OfNutFactor(lowNutFactor, highNutFactor, Si.Length(Diameter)).WithPrevailing(PrevailingTorque, PrevailingTorque);
}
