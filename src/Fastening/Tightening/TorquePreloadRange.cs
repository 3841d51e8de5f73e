using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Torque and preload over a range of friction and a range of prevailing torque: the corners between which a bolt will be.</summary>
/// <remarks>
/// At a torque the preload is most where friction and prevailing torque are both lowest, least where both are highest. The shank is stressed
/// most at the lowest bearing friction; of thread friction and prevailing torque it can be either end (<see cref="BoltStress.HighestAt"/>).
/// A nut that was to lock and does not is the lowest prevailing torque: where it can happen, state zero. Nothing outside the two ranges is
/// in the corners: neither the accuracy of the tool nor embedding, bending or the tightening of adjacent bolts.
/// </remarks>
/// <example><code>TorquePreloadRange nut = TorquePreloadRange.OfFriction(model, friction)
///     .WithPrevailing(low: Torque.Zero, high: Torque.FromNewtonMeters(30));
/// Range&lt;Force&gt; preload = nut.PreloadRangeAt(Torque.FromNewtonMeters(160));</code></example>
public sealed class TorquePreloadRange
{
    private readonly FrictionTorqueModel? _model;
    private readonly FrictionRange? _friction;
    private readonly (StatedNumber Low, StatedNumber High, Stated<Length> Diameter) _nutFactor;
    private readonly (Stated<Torque> Low, Stated<Torque> High) _prevailing;

    private TorquePreloadRange(FrictionTorqueModel model, FrictionRange friction, (Stated<Torque> Low, Stated<Torque> High) prevailing)
    {
        FrictionTorqueModel.RefuseUnlessItTurns(model.Arms.Law, model.Thread, friction.High);
        _model = model;
        _friction = friction;
        _prevailing = prevailing;
    }

    private TorquePreloadRange((StatedNumber Low, StatedNumber High, Stated<Length> Diameter) nutFactor, (Stated<Torque> Low, Stated<Torque> High) prevailing)
    {
        _nutFactor = nutFactor;
        _prevailing = prevailing;
    }

    /// <summary>Lowest prevailing torque.</summary>
    public Torque LowPrevailingTorque => Si.Torque(_prevailing.Low.Term);

    /// <summary>Highest prevailing torque.</summary>
    public Torque HighPrevailingTorque => Si.Torque(_prevailing.High.Term);

    /// <summary>What is unusual in the range of friction, or of nut factors; the range is used as stated.</summary>
    /// <example><code>TorquePreloadRange.OfNutFactor(0.012, 0.2, Length.FromMillimeters(16)).Remarks.Count   // 1</code></example>
    public IReadOnlyList<PlausibilityRemark> Remarks => _friction?.Remarks ?? NutFactorRemarks(_nutFactor.Low.Value, _nutFactor.High.Value);

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
        new(Guard.NotNull(model), Guard.NotNull(friction), (model.StatedPrevailing, model.StatedPrevailing));

    /// <summary>A range of nut factors.</summary>
    /// <param name="lowNutFactor">Lowest K: the highest preload at a torque.</param>
    /// <param name="highNutFactor">Highest K, at least <paramref name="lowNutFactor"/>.</param>
    /// <param name="diameter">Nominal diameter d.</param>
    /// <returns>The range, without prevailing torque.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the factors are the wrong way round.</exception>
    /// <example><code>TorquePreloadRange.OfNutFactor(0.14, 0.22, Length.FromMillimeters(16)).PreloadRangeAt(Torque.FromNewtonMeters(150))</code></example>
    public static TorquePreloadRange OfNutFactor(double lowNutFactor, double highNutFactor, Length diameter)
    {
        StatedNumber low = Domains.NutFactor.Stated(lowNutFactor), high = Domains.NutFactor.Stated(highNutFactor);
        if (highNutFactor < lowNutFactor)
        {
            Guard.RefuseAgainst(nameof(highNutFactor), highNutFactor, $"at least the low nut factor, {Guard.Show(lowNutFactor)}");
        }

        return new((low, high, Domains.Length.Stated(diameter)), (TorquePreloadModel.NoPrevailing, TorquePreloadModel.NoPrevailing));
    }

    /// <summary>The same with a range of the prevailing torque.</summary>
    /// <param name="low">Lowest prevailing torque: zero where a nut may have lost it.</param>
    /// <param name="high">Highest, at least <paramref name="low"/>.</param>
    /// <returns>A new range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A torque is outside its domain, or the two are the wrong way round.</exception>
    /// <example><code>TorquePreloadRange.OfFriction(model, friction).WithPrevailing(low: Torque.FromNewtonMeters(8), high: Torque.FromNewtonMeters(17))</code></example>
    public TorquePreloadRange WithPrevailing(Torque low, Torque high)
    {
        double least = Domains.Torque.Check(low), most = Domains.Torque.Check(high);
        (Stated<Torque> Low, Stated<Torque> High) prevailing = (new(low, least, "lowest prevailing torque"), new(high, most, "highest prevailing torque"));
        if (most < least) Guard.RefuseAgainst(nameof(high), high, $"at least the lowest prevailing torque, {Guard.Show(low)}");
        return _model is null ? new(_nutFactor, prevailing) : new(_model, _friction!, prevailing);
    }

    /// <summary>The preloads that one torque gives.</summary>
    /// <param name="torque">Torque at the fastener.</param>
    /// <returns>Lowest and highest preload.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="torque"/> is negative or beyond its domain.</exception>
    /// <example><code>corners.PreloadRangeAt(Torque.FromNewtonMeters(150)).Low</code></example>
    public Range<Force> PreloadRangeAt(Torque torque)
    {
        Term moment = Domains.Torque.Argument(torque);
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
    public Range<Force> PreloadRangeAt(ToleranceWindow<Torque> torque)
    {
        WindowLimits limits = Guard.NotNull(torque).BothLimits(nameof(torque));
        return Between(
            Domains.Torque.Argument(Si.Torque(limits.Lower), nameof(torque)), Domains.Torque.Argument(Si.Torque(limits.Upper), nameof(torque)));
    }

    /// <summary>The highest torque at which no friction and no prevailing torque in the range brings the equivalent stress above a share of the yield strength.</summary>
    /// <remarks>
    /// The least over the corners of <see cref="FrictionTorqueModel.PermittedPreload"/> turned into torque. It is the torque that may arrive at the
    /// fastener: the accuracy of the tool comes off it. Bending, fatigue and what happens after tightening are not in it.
    /// </remarks>
    /// <param name="strength">Strength of the bolt.</param>
    /// <param name="utilisation">Share ν of the yield strength, 5 to 100 %; 90 % is usual and never assumed.</param>
    /// <param name="torsion">Distribution of the torsion; plastic (VDI 2230 since 2001) by default.</param>
    /// <param name="waistDiameter">Least shank diameter, when it may be below the stress diameter.</param>
    /// <returns>The torque.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="strength"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <exception cref="ArgumentException">The highest prevailing torque alone uses up the permitted stress, or the strength was looked up for another size.</exception>
    /// <exception cref="InvalidOperationException">The range is one of nut factors.</exception>
    /// <example><code>TorquePreloadRange.OfFriction(model, friction).PermittedTorque(strength, utilisation: Ratio.FromPercent(90))</code></example>
    public Torque PermittedTorque(
        BoltStrength strength, Ratio utilisation, TorsionDistribution torsion = TorsionDistribution.Plastic, Length? waistDiameter = null)
    {
        Term? least = null;
        foreach (FrictionTorqueModel corner in StressCorners())
        {
            Term preload = StressedSection.Of(corner.Thread, torsion, waistDiameter).PermittedPreload(corner, strength, utilisation);
            Term torque = TorqueEquations.TighteningTorqueEquation.Of(corner.ArmTerm, preload, corner.PrevailingTerm);
            if (least is null || torque.Value < least.Value.Value) least = torque;
        }

        return Si.Torque(least!.Value);
    }

    /// <inheritdoc />
    public override string ToString()
    {
        string prevailing = _prevailing.High.Value > 0 ? Print.Text($", prevailing {_prevailing.Low.Value:0.###}…{_prevailing.High.Value:0.###} N·m") : "";
        return _model is null
            ? Print.Text($"K {_nutFactor.Low.Value:0.####}…{_nutFactor.High.Value:0.####}, d {Si.Length(_nutFactor.Diameter.Value):0.###}") + prevailing + PlausibilityRemark.Mention(Remarks)
            : $"{_model.Thread}, {_model.Bearing}, {_friction}, {_model.Convention.Name}{prevailing}";
    }

    /// <summary>The corners of thread friction and prevailing torque at the lowest bearing friction, where the stress can be highest.</summary>
    internal FrictionTorqueModel[] StressCorners() =>
    [
        StressCorner(highThread: false, highPrevailing: false), StressCorner(highThread: true, highPrevailing: false),
        StressCorner(highThread: false, highPrevailing: true), StressCorner(highThread: true, highPrevailing: true),
    ];

    internal static IReadOnlyList<PlausibilityRemark> NutFactorRemarks(double low, double high) => PlausibilityRemark.Join(
        PlausibilityRemark.Of(PlausibleRange.NutFactor, low), PlausibilityRemark.Of(PlausibleRange.NutFactor, high));

    private FrictionTorqueModel StressCorner(bool highThread, bool highPrevailing)
    {
        if (_model is null) throw new InvalidOperationException("A nut factor does not say how much of the torque twists the shank; state thread, bearing surface and friction.");
        return _model
            .WithFriction(_friction!.Low.WithThreadOf(highThread ? _friction.High : _friction.Low))
            .WithPrevailing(highPrevailing ? _prevailing.High : _prevailing.Low);
    }

    private Range<Force> Between(Term low, Term high) => new((
        Si.Force(TorqueEquations.PreloadEquation.Of(low, _prevailing.High.Term, Arm(high: true))),
        Si.Force(TorqueEquations.PreloadEquation.Of(high, _prevailing.Low.Term, Arm(high: false)))));

    private Term Arm(bool high)
    {
        if (_model is null) return TorqueEquations.NutFactorArmEquation.Of((high ? _nutFactor.High : _nutFactor.Low).Term, _nutFactor.Diameter.Term);
        FrictionCoefficients friction = high ? _friction!.High : _friction!.Low;
        return TorqueEquations.TorqueArmEquation.Of(_model.Arms.Law.Arm(friction.ThreadTerm), _model.Bearing.Arm(friction.BearingTerm));
    }

    private TorquePreloadModel Corner(bool high)
    {
        Stated<Torque> prevailing = high ? _prevailing.High : _prevailing.Low;
        return _model is null
            ? new NutFactorModel(high ? _nutFactor.High : _nutFactor.Low, _nutFactor.Diameter, prevailing)
            : _model.WithFriction(high ? _friction!.High : _friction!.Low).WithPrevailing(prevailing);
    }
}
