using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Torque and preload over a range of friction and a range of prevailing torque: the corners between which a bolt will be.</summary>
/// <remarks>
/// At a torque the preload is most where friction and prevailing torque are both lowest, least where both are highest. The shank is stressed
/// most at the lowest bearing friction; of thread friction and prevailing torque it can be either end (<see cref="AssemblyStress.HighestAt"/>).
/// A nut that was to lock and does not is the lowest prevailing torque: where it can happen, state zero. Nothing outside the two ranges is
/// in the corners: neither the accuracy of the tool nor embedding, bending or the tightening of adjacent bolts.
/// </remarks>
/// <example><code>TorquePreloadRange nut = TorquePreloadRange.OfFriction(model, friction)
///     .WithPrevailing(low: Torque.Zero, high: Torque.FromNewtonMeters(30));
/// PreloadRange preload = nut.PreloadRangeAt(Torque.FromNewtonMeters(160));</code></example>
public sealed class TorquePreloadRange
{
    private readonly FrictionTorqueModel? _model;
    private readonly FrictionRange? _friction;
    private readonly (double Low, double High, double Diameter) _nutFactor;
    private readonly (double Low, double High) _arm;
    private readonly (double Low, double High) _prevailing;

    private TorquePreloadRange(FrictionTorqueModel model, FrictionRange friction, (double Low, double High) prevailing)
    {
        FrictionTorqueModel.RefuseUnlessItTurns(model.Thread, friction.High, model.Convention);
        _model = model;
        _friction = friction;
        _arm = (ArmAt(model, friction.Low), ArmAt(model, friction.High));
        _prevailing = prevailing;
    }

    private TorquePreloadRange((double Low, double High, double Diameter) nutFactor, (double Low, double High) prevailing)
    {
        _nutFactor = nutFactor;
        _arm = (TorqueEquations.NutFactorArm(nutFactor.Low, nutFactor.Diameter), TorqueEquations.NutFactorArm(nutFactor.High, nutFactor.Diameter));
        _prevailing = prevailing;
    }

    /// <summary>Lowest prevailing torque.</summary>
    public Torque LowestPrevailingTorque => Si.Torque(_prevailing.Low);

    /// <summary>Highest prevailing torque.</summary>
    public Torque HighestPrevailingTorque => Si.Torque(_prevailing.High);

    /// <summary>What is unusual in the range of friction, or of nut factors; the range is used as stated.</summary>
    /// <example><code>TorquePreloadRange.OfNutFactor(0.012, 0.2, Length.FromMillimeters(16)).Remarks.Count   // 1</code></example>
    public IReadOnlyList<PlausibilityRemark> Remarks => _friction?.Remarks ?? NutFactorRemarks(_nutFactor.Low, _nutFactor.High);

    /// <summary>The corner with the most preload at a torque: friction and prevailing torque lowest.</summary>
    public TorquePreloadModel MostPreload => Corner(high: false);

    /// <summary>The corner with the least preload at a torque: friction and prevailing torque highest.</summary>
    public TorquePreloadModel LeastPreload => Corner(high: true);

    /// <summary>The corner with the most twist in the shank: thread friction and prevailing torque highest, bearing friction lowest; null for a nut factor.</summary>
    public FrictionTorqueModel? MostTwist => _model is null ? null : StressCorner(highThread: true, highPrevailing: true);

    /// <summary>A range of friction; the model's own friction is not used.</summary>
    /// <param name="model">Thread, bearing surface, convention, and the prevailing torque until <see cref="WithPrevailing"/> states a range.</param>
    /// <param name="friction">Lowest and highest coefficients.</param>
    /// <returns>The range.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">At the highest friction no torque turns the thread (exact form).</exception>
    /// <example><code>TorquePreloadRange.OfFriction(model, friction).MostPreload.TorqueFor(Force.FromKilonewtons(70))</code></example>
    public static TorquePreloadRange OfFriction(FrictionTorqueModel model, FrictionRange friction) =>
        new(Guard.NotNull(model), Guard.NotNull(friction), (model.PrevailingSi, model.PrevailingSi));

    /// <summary>A range of nut factors.</summary>
    /// <param name="lowNutFactor">Lowest K: the highest preload at a torque.</param>
    /// <param name="highNutFactor">Highest K, at least <paramref name="lowNutFactor"/>.</param>
    /// <param name="diameter">Nominal diameter d.</param>
    /// <returns>The range, without prevailing torque.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the factors are the wrong way round.</exception>
    /// <example><code>TorquePreloadRange.OfNutFactor(0.14, 0.22, Length.FromMillimeters(16)).PreloadRangeAt(Torque.FromNewtonMeters(150))</code></example>
    public static TorquePreloadRange OfNutFactor(double lowNutFactor, double highNutFactor, Length diameter)
    {
        Domains.NutFactor.Check(lowNutFactor);
        Domains.NutFactor.Check(highNutFactor);
        if (highNutFactor < lowNutFactor)
        {
            Guard.RefuseAgainst(nameof(highNutFactor), highNutFactor, $"at least the low nut factor, {Guard.Show(lowNutFactor)}");
        }

        return new((lowNutFactor, highNutFactor, Domains.Length.Check(diameter)), (0, 0));
    }

    /// <summary>The same with a range of the prevailing torque.</summary>
    /// <param name="low">Lowest prevailing torque: zero where a nut may have lost it.</param>
    /// <param name="high">Highest, at least <paramref name="low"/>.</param>
    /// <returns>A new range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A torque is outside its domain, or the two are the wrong way round.</exception>
    /// <example><code>TorquePreloadRange.OfFriction(model, friction).WithPrevailing(low: Torque.FromNewtonMeters(8), high: Torque.FromNewtonMeters(17))</code></example>
    public TorquePreloadRange WithPrevailing(Torque low, Torque high)
    {
        (double Low, double High) prevailing = (Domains.Torque.Check(low), Domains.Torque.Check(high));
        if (prevailing.High < prevailing.Low) Guard.RefuseAgainst(nameof(high), high, $"at least the lowest prevailing torque, {Guard.Show(low)}");
        return _model is null ? new(_nutFactor, prevailing) : new(_model, _friction!, prevailing);
    }

    /// <summary>The preloads that one torque gives.</summary>
    /// <param name="torque">Torque at the fastener.</param>
    /// <returns>Lowest and highest preload.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="torque"/> is negative or beyond its domain.</exception>
    /// <example><code>corners.PreloadRangeAt(Torque.FromNewtonMeters(150)).Minimum</code></example>
    public PreloadRange PreloadRangeAt(Torque torque)
    {
        double moment = Domains.Torque.Check(torque);
        return Between(moment, moment);
    }

    /// <summary>The preloads that a window of torque gives: the lower limit at the least, the upper limit at the most.</summary>
    /// <param name="torque">
    /// The torque that arrives at the fastener, lower and upper limit from 0. A window of readings becomes one of torque by the accuracy of the
    /// tool: see <see cref="GuaranteedSetting"/>.
    /// </param>
    /// <returns>Lowest and highest preload.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="torque"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A limit is negative or beyond its domain.</exception>
    /// <exception cref="ArgumentException">The window has one limit only.</exception>
    /// <example><code>corners.PreloadRangeAt(ToleranceWindow.FromDeviations(Torque.FromNewtonMeters(150), minus: Ratio.FromPercent(4), plus: Ratio.FromPercent(4)))</code></example>
    public PreloadRange PreloadRangeAt(ToleranceWindow<Torque> torque)
    {
        WindowLimits limits = Guard.NotNull(torque).BothLimits(nameof(torque));
        return Between(
            Domains.Torque.Check(Si.Torque(limits.Lower), nameof(torque)), Domains.Torque.Check(Si.Torque(limits.Upper), nameof(torque)));
    }

    /// <inheritdoc />
    public override string ToString()
    {
        string prevailing = _prevailing.High > 0 ? Print.Text($", prevailing {_prevailing.Low:0.###}…{_prevailing.High:0.###} N·m") : "";
        return _model is null
            ? Print.Text($"K {_nutFactor.Low:0.####}…{_nutFactor.High:0.####}, d {Si.Length(_nutFactor.Diameter):0.###}") + prevailing + PlausibilityRemark.Mention(Remarks)
            : $"{_model.Thread}, {_model.Bearing}, {_friction}, {_model.Convention.Name}{prevailing}";
    }

    /// <summary>A corner of the stress in the shank, at the lowest bearing friction.</summary>
    internal FrictionTorqueModel StressCorner(bool highThread, bool highPrevailing)
    {
        if (_model is null) throw new InvalidOperationException("A nut factor does not say how much of the torque twists the shank; state thread, bearing surface and friction.");
        return _model
            .WithFriction(new FrictionCoefficients((highThread ? _friction!.High : _friction!.Low).Thread, _friction.Low.Bearing))
            .WithPrevailing(highPrevailing ? HighestPrevailingTorque : LowestPrevailingTorque);
    }

    internal static IReadOnlyList<PlausibilityRemark> NutFactorRemarks(double low, double high) => PlausibilityRemark.Join(
        PlausibilityRemark.Of(PlausibleRange.NutFactor, low), PlausibilityRemark.Of(PlausibleRange.NutFactor, high));

    private static double ArmAt(FrictionTorqueModel model, FrictionCoefficients friction) =>
        TorqueArms.Tightening(null, model.Thread, model.Bearing, friction, model.Convention).Total;

    private PreloadRange Between(double low, double high) =>
        new(TorqueEquations.Preload(low, _prevailing.High, _arm.High), TorqueEquations.Preload(high, _prevailing.Low, _arm.Low));

    private TorquePreloadModel Corner(bool high)
    {
        Torque prevailing = high ? HighestPrevailingTorque : LowestPrevailingTorque;
        return _model is null
            ? TorquePreloadModel.FromNutFactor(high ? _nutFactor.High : _nutFactor.Low, Si.Length(_nutFactor.Diameter)).WithPrevailing(prevailing)
            : _model.WithFriction(high ? _friction!.High : _friction!.Low).WithPrevailing(prevailing);
    }
}
