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
    private readonly StatedNumber _nutFactor;
    private readonly Stated<Length> _diameter;

    internal NutFactorModel(StatedNumber nutFactor, Stated<Length> diameter, Stated<Torque> prevailing)
        : base(TorqueEquations.NutFactorArm(nutFactor.Value, diameter.Value), prevailing, diameter.Value)
    {
        _nutFactor = nutFactor;
        _diameter = diameter;
    }

    internal override Term ArmTerm => TorqueEquations.NutFactorArmEquation.Of(_nutFactor.Term, _diameter.Term);

    private protected override Term DiameterTerm => _diameter.Term;

    internal double DiameterSi => Diameter;

    private protected override IReadOnlyList<PlausibilityRemark> StatedRemarks => PlausibilityRemark.Of(PlausibleRange.NutFactor, _nutFactor.Value);

    /// <summary>The same model with a prevailing torque.</summary>
    /// <param name="prevailingTorque">Prevailing torque, measured in the tightening sense.</param>
    /// <returns>A new model.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="prevailingTorque"/> is negative or beyond its domain.</exception>
    /// <example><code>model.WithPrevailing(Torque.FromNewtonMeters(9))</code></example>
    public NutFactorModel WithPrevailing(Torque prevailingTorque) => new(_nutFactor, _diameter, Domains.Torque.Stated(prevailingTorque));

    /// <summary>The preloads that one torque gives over a range of nut factors; the model's own K is not used.</summary>
    /// <param name="torque">Torque at the fastener.</param>
    /// <param name="lowNutFactor">Lowest K: the highest preload.</param>
    /// <param name="highNutFactor">Highest K: the lowest preload; at least <paramref name="lowNutFactor"/>.</param>
    /// <returns>Lowest and highest preload.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the factors are the wrong way round.</exception>
    /// <example><code>model.PreloadRangeAt(Torque.FromNewtonMeters(150), 0.14, 0.22)</code></example>
    public Range<Force> PreloadRangeAt(Torque torque, double lowNutFactor, double highNutFactor) =>
        Range(lowNutFactor, highNutFactor).PreloadRangeAt(torque);

    /// <summary>The preloads that a window of torque gives over a range of nut factors; the model's own K is not used.</summary>
    /// <param name="torque">The torque that arrives at the fastener, limits from 0; the accuracy of the tool is not added.</param>
    /// <param name="lowNutFactor">Lowest K: the highest preload.</param>
    /// <param name="highNutFactor">Highest K: the lowest preload; at least <paramref name="lowNutFactor"/>.</param>
    /// <returns>Lowest and highest preload.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="torque"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the factors are the wrong way round.</exception>
    public Range<Force> PreloadRangeAt(ToleranceWindow<Torque> torque, double lowNutFactor, double highNutFactor) =>
        Range(lowNutFactor, highNutFactor).PreloadRangeAt(torque);

    /// <inheritdoc />
    public override string ToString() => Print.Text($"K {_nutFactor.Value:0.####}, d {Si.Length(Diameter):0.###}{PlausibilityRemark.Mention(Remarks)}");

    private TorquePreloadRange Range(double lowNutFactor, double highNutFactor) => TorquePreloadRange
        .OfNutFactor(lowNutFactor, highNutFactor, _diameter.AsStated).WithPrevailing(PrevailingTorque, PrevailingTorque);
}
