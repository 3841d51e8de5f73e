using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Strength of an engaged thread: the forces that break the bolt and strip either thread, which is the least, and the length that is needed.</summary>
/// <remarks>
/// By the shear areas alone (FED-STD-H28/2B, ASME B1.1 Appendix B), or corrected after VDI 2230-1:2015 §5.5.5 with <see cref="InTappedHole"/> or
/// <see cref="InNut"/>: threads bend and a nut widens, so that threads of like strength strip at less. Static tension; no bending of the bolt, no
/// fatigue. What the engagement carries is judged by the least tensile strength of the bolt, whether the bolt breaks first by the greatest.
/// </remarks>
/// <example><code>EngagementStrength strength = engagement.StrengthFor(tensile, 1.2 * tensile, 0.6 * tensile, Pressure.FromMegapascals(150))
///     .InTappedHole(threadDepth: Length.FromMillimeters(40));
/// EngagementFailure first = strength.FailsFirst;
/// Length needed = strength.LeastLength;     // so that even the strongest bolt breaks before either thread strips
/// Length total = strength.LeastTotalLength(IncompleteThreads.Vdi2230Of2015);     // with the threads that do not carry</code></example>
public sealed class EngagementStrength : IDerives<EngagementForces>
{
    private const double NarrowestNut = 1.4, WidestNut = 10;
    private static readonly Interval PublishedRatios = new(0.4, 2.2);

    private readonly Stated<Pressure> _tensile, _greatestTensile, _externalShear, _internalShear;
    private readonly StripReduction _reduction;
    private EngagementForces? _forces;

    internal EngagementStrength(
        ThreadEngagement engagement, Stated<Pressure> tensile, Stated<Pressure> greatestTensile, Stated<Pressure> externalShear,
        Stated<Pressure> internalShear, StripReduction reduction)
    {
        Engagement = engagement;
        _tensile = tensile;
        _greatestTensile = greatestTensile;
        _externalShear = externalShear;
        _internalShear = internalShear;
        _reduction = reduction;
    }

    /// <summary>The engaged thread.</summary>
    public ThreadEngagement Engagement { get; }

    /// <summary>Length of thread of the nut or tapped hole; null where the strength is that of the shear areas alone.</summary>
    public Length? ThreadLength => _reduction.ThreadLength is Stated<Length> length ? Si.Length(length.Term) : null;

    /// <summary>Least tensile strength of the bolt times the exact stress area.</summary>
    public Force BoltBreakingForce => Si.Force(Forces.Bolt);

    /// <summary>Greatest tensile strength of the bolt times the exact stress area.</summary>
    public Force GreatestBoltBreakingForce => Si.Force(Forces.StrongBolt);

    /// <summary>Force that strips the external thread.</summary>
    public Force ExternalStripForce => Si.Force(Forces.External);

    /// <summary>Force that strips the internal thread.</summary>
    public Force InternalStripForce => Si.Force(Forces.Internal);

    /// <summary>The least of the three forces, with the least tensile strength of the bolt.</summary>
    public Force FailureForce => Si.Force(FailureForceTerm);

    /// <summary>What fails first under a growing force, whatever the tensile strength of the bolt; where the forces are equal, the bolt before the threads.</summary>
    public EngagementFailure FailsFirst
    {
        get
        {
            EngagementForces forces = Forces;
            double strip = Math.Min(forces.External.Value, forces.Internal.Value);
            return Tolerance.IsAtMost(forces.StrongBolt.Value, strip) ? EngagementFailure.BoltBreaks
                : Tolerance.IsAtMost(forces.Bolt.Value, strip) ? EngagementFailure.DependsOnBolt
                : forces.External.Value < forces.Internal.Value ? EngagementFailure.ExternalThreadStrips
                : EngagementFailure.InternalThreadStrips;
        }
    }

    /// <summary>
    /// Least engaged length of full thread for the bolt to break before either thread strips, at its greatest tensile strength; m_eff of VDI 2230. The
    /// incomplete threads come on top: <see cref="LeastTotalLength"/>.
    /// </summary>
    public Length LeastLength => Si.Length(LeastLengthTerm);

    /// <summary>The same with the incomplete threads of nut, hole and bolt that do not carry; m_ges of VDI 2230 (equation <c>engagement.total-length</c>).</summary>
    /// <param name="edition">How many pitches are added.</param>
    /// <returns>The least height of the nut, or the least length of bolt in the tapped hole.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="edition"/> is not a value of the enumeration.</exception>
    /// <example><code>bool longEnough = engaged.LeastTotalLength(IncompleteThreads.Vdi2230Of2015) &lt;= Length.FromMillimeters(24);</code></example>
    public Length LeastTotalLength(IncompleteThreads edition)
    {
        if (edition is < IncompleteThreads.Vdi2230Of2015 or > IncompleteThreads.Vdi2230Of2003)
        {
            Guard.RefuseAgainst(nameof(edition), (int)edition, "Vdi2230Of2015 or Vdi2230Of2003");
        }

        Term pitches = edition == IncompleteThreads.Vdi2230Of2015
            ? Term.Given(2, "pitches of incomplete thread, VDI 2230-1:2015")
            : Term.Given(0.8, "pitches of incomplete thread, VDI 2230-1:2003");
        return Si.Length(EngagementEquations.TotalLengthEquation.Of(LeastLengthTerm, pitches, Engagement.Thread.PitchTerm));
    }

    /// <summary>Strength of the internal thread over that of the external thread by their shear areas alone, R_S.</summary>
    public double StrippingRatio => Si.Number(StrippingRatioTerm);

    /// <summary>The same in a tapped hole: corrected for the bending of the threads, C_2 and C_3.</summary>
    /// <remarks>
    /// VDI 2230-1:2015 §5.5.5 after Alexander (1977), from memory; published for a stripping ratio of 0.4 to 2.2. Threads of like strength lose a tenth.
    /// A thread much weaker than its partner, which then bends little, gains: the internal one up to 6 % below a ratio of 0.68, the external one up
    /// to 19 % above 1.3. C_1 is 1: the part around the hole must be at least 1.9 d across; a narrower boss widens like a nut, take <see cref="InNut"/>.
    /// </remarks>
    /// <param name="threadDepth">Depth of full thread in the hole, at least the engaged length.</param>
    /// <returns>The reduced strength.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The depth is outside its domain, or the engaged length exceeds it.</exception>
    /// <exception cref="InvalidOperationException">The stripping ratio is outside 0.4 to 2.2.</exception>
    /// <example><code>engagement.StrengthFor(tensile, 1.2 * tensile, 0.6 * tensile, Pressure.FromMegapascals(150)).InTappedHole(threadDepth: Length.FromMillimeters(40)).LeastLength</code></example>
    public EngagementStrength InTappedHole(Length threadDepth)
    {
        Stated<Length> depth = Domains.Length.Stated(threadDepth);
        RefuseShorter(depth.Value, threadDepth, nameof(threadDepth));
        return Reduced(StripReduction.TappedHole(depth));
    }

    /// <summary>The same in a nut: reduced for the bending of the threads, C_2 and C_3, and for the widening of the nut, C_1.</summary>
    /// <remarks>
    /// VDI 2230-1:2015 §5.5.5 after Alexander (1977), from memory; published for a stripping ratio of 0.4 to 2.2 and a width of 1.4 d and more.
    /// From 1.9 d on the nut does not widen.
    /// </remarks>
    /// <param name="widthAcrossFlats">Width across flats of the nut, 1.4 to 10 times the nominal diameter.</param>
    /// <param name="nutHeight">Height of the nut, at least the engaged length.</param>
    /// <returns>The reduced strength.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The nut is narrower or wider, or the engaged length exceeds its height.</exception>
    /// <exception cref="InvalidOperationException">The stripping ratio is outside 0.4 to 2.2.</exception>
    /// <example><code>engagement.StrengthFor(tensile, 1.2 * tensile, 0.6 * tensile, 0.55 * tensile)
    ///     .InNut(widthAcrossFlats: Length.FromMillimeters(24), nutHeight: Length.FromMillimeters(14.8)).FailsFirst</code></example>
    public EngagementStrength InNut(Length widthAcrossFlats, Length nutHeight)
    {
        double diameter = Engagement.Thread.Diameter;
        Stated<Length> width = new Domain<Length>(NarrowestNut * diameter, WidestNut * diameter).Stated(widthAcrossFlats);
        Stated<Length> height = Domains.Length.Stated(nutHeight);
        RefuseShorter(height.Value, nutHeight, nameof(nutHeight));
        return Reduced(StripReduction.Nut(width, height));
    }

    internal Term FailureForceTerm => EngagementEquations.FailureForceEquation.Of(Forces.Bolt, Forces.External, Forces.Internal);

    private Term StrippingRatioTerm => EngagementEquations.StrippingRatioEquation.Of(
        _internalShear.Term, Engagement.Areas.Internal, _externalShear.Term, Engagement.Areas.External);

    private EngagementForces Forces => Derived.Of(ref _forces, this);

    private Term LeastLengthTerm => EngagementEquations.LeastEngagedLengthEquation.Of(
        EngagementEquations.ExternalLeastLengthEquation.Of(Engagement.LengthTerm, Forces.StrongBolt, Forces.External),
        EngagementEquations.InternalLeastLengthEquation.Of(Engagement.LengthTerm, Forces.StrongBolt, Forces.Internal));

    /// <inheritdoc />
    public override string ToString()
    {
        EngagementForces forces = Forces;
        string bolt = Print.Between(Si.Force(forces.Bolt.Value), Si.Force(forces.StrongBolt.Value), "0.###");
        return Print.Text(
            $"{Engagement}: bolt {bolt}, external thread {Si.Force(forces.External.Value):0.###}, internal thread {Si.Force(forces.Internal.Value):0.###}");
    }

    EngagementForces IDerives<EngagementForces>.Derive()
    {
        Term stressArea = Engagement.Thread.Geometry.StressArea, external = Engagement.Areas.External, inner = Engagement.Areas.Internal;
        Term externalShear = _externalShear.Term, internalShear = _internalShear.Term;
        bool isReduced = _reduction != StripReduction.None;
        return new EngagementForces
        {
            Bolt = EngagementEquations.BoltBreakingForceEquation.Of(_tensile.Term, stressArea),
            StrongBolt = EngagementEquations.GreatestBoltBreakingForceEquation.Of(_greatestTensile.Term, stressArea),
            External = isReduced ? ReducedExternal() : EngagementEquations.ExternalStripForceEquation.Of(externalShear, external),
            Internal = isReduced ? ReducedInternal() : EngagementEquations.InternalStripForceEquation.Of(internalShear, inner),
        };

        Term ReducedExternal() => EngagementEquations.ReducedExternalStripForceEquation.Of(
            Dilation, EngagementEquations.ExternalBendingFactorEquation.Of(StrippingRatioTerm), externalShear, external);

        Term ReducedInternal() => EngagementEquations.ReducedInternalStripForceEquation.Of(
            Dilation, EngagementEquations.InternalBendingFactorEquation.Of(StrippingRatioTerm), internalShear, inner);
    }

    private EngagementStrength Reduced(StripReduction reduction)
    {
        double ratio = StrippingRatioTerm.Value;
        if (!PublishedRatios.Contains(ratio))
        {
            throw new InvalidOperationException(Print.Text(
                $"The stripping ratio is {ratio:0.###}; the factors for bending threads are published from 0.4 to 2.2. The strength by the shear areas alone stands."));
        }

        return new EngagementStrength(Engagement, _tensile, _greatestTensile, _externalShear, _internalShear, reduction);
    }

    private void RefuseShorter(double threadLength, Length shown, string name)
    {
        if (Tolerance.IsAtLeast(threadLength, Engagement.LengthSi)) return;
        Guard.RefuseAgainst(name, shown, $"at least the engaged length, {Guard.ShowToCompare(Engagement.EngagedLength.ToUnit(shown.Unit))}");
    }

    private Term Dilation => _reduction.Dilation(Engagement.Thread.DiameterTerm);
}
