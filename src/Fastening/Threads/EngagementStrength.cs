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
public sealed class EngagementStrength
{
    private const double NarrowestNut = 1.4, WidestNut = 10;
    private static readonly Interval PublishedRatios = new(0.4, 2.2);

    private readonly double _tensile, _greatestTensile, _externalShear, _internalShear;
    private readonly StripReduction _reduction;
    private readonly double _bolt, _strongBolt, _external, _internal;

    internal EngagementStrength(
        ThreadEngagement engagement, double tensile, double greatestTensile, double externalShear, double internalShear, StripReduction reduction)
    {
        Engagement = engagement;
        _tensile = tensile;
        _greatestTensile = greatestTensile;
        _externalShear = externalShear;
        _internalShear = internalShear;
        _reduction = reduction;
        Shear shear = ShearOf(null);
        StrippingRatio = shear.Ratio;
        _bolt = BoltForce(null);
        _strongBolt = StrongBoltForce(null);
        _external = ExternalForce(null, shear);
        _internal = InternalForce(null, shear);
    }

    /// <summary>The engaged thread.</summary>
    public ThreadEngagement Engagement { get; }

    /// <summary>Length of thread of the nut or tapped hole; null where the strength is that of the shear areas alone.</summary>
    public Length? ThreadLength => _reduction.ThreadLength is double length ? Si.Length(length) : null;

    /// <summary>Least tensile strength of the bolt times the exact stress area.</summary>
    public Force BoltBreakingForce => Si.Force(_bolt);

    /// <summary>Greatest tensile strength of the bolt times the exact stress area.</summary>
    public Force GreatestBoltBreakingForce => Si.Force(_strongBolt);

    /// <summary>Force that strips the external thread.</summary>
    public Force ExternalStripForce => Si.Force(_external);

    /// <summary>Force that strips the internal thread.</summary>
    public Force InternalStripForce => Si.Force(_internal);

    /// <summary>The least of the three forces, with the least tensile strength of the bolt.</summary>
    public Force FailureForce => Si.Force(EngagementEquations.FailureForce(_bolt, _external, _internal));

    /// <summary>What fails first under a growing force, whatever the tensile strength of the bolt; where the forces are equal, the bolt before the threads.</summary>
    public EngagementFailure FailsFirst =>
        Tolerance.IsAtMost(_strongBolt, Math.Min(_external, _internal)) ? EngagementFailure.BoltBreaks
        : Tolerance.IsAtMost(_bolt, Math.Min(_external, _internal)) ? EngagementFailure.DependsOnBolt
        : _external < _internal ? EngagementFailure.ExternalThreadStrips
        : EngagementFailure.InternalThreadStrips;

    /// <summary>
    /// Least engaged length of full thread for the bolt to break before either thread strips, at its greatest tensile strength; m_eff of VDI 2230. The
    /// incomplete threads come on top: <see cref="LeastTotalLength"/>.
    /// </summary>
    public Length LeastLength => Si.Length(LeastLengthOf(null));

    /// <summary>The same with the incomplete threads of nut, hole and bolt that do not carry; m_ges of VDI 2230 (equation <c>engagement.total-length</c>).</summary>
    /// <param name="edition">How many pitches are added.</param>
    /// <returns>The least height of the nut, or the least length of bolt in the tapped hole.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="edition"/> is not a value of the enumeration.</exception>
    /// <example><code>bool longEnough = engaged.LeastTotalLength(IncompleteThreads.Vdi2230Of2015) &lt;= Length.FromMillimeters(24);</code></example>
    public Length LeastTotalLength(IncompleteThreads edition) => Si.Length(TotalLengthOf(null, edition));

    /// <summary>Strength of the internal thread over that of the external thread by their shear areas alone, R_S.</summary>
    public double StrippingRatio { get; }

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
        double depth = Domains.Length.Check(threadDepth);
        RefuseShorter(depth, threadDepth, nameof(threadDepth));
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
        double width = new Domain<Length>(NarrowestNut * diameter, WidestNut * diameter).Check(widthAcrossFlats);
        double height = Domains.Length.Check(nutHeight);
        RefuseShorter(height, nutHeight, nameof(nutHeight));
        return Reduced(StripReduction.Nut(width, height));
    }

    /// <summary>The work behind the force that breaks the bolt.</summary>
    /// <returns>The steps; the last is the force.</returns>
    /// <example><code>Console.WriteLine(engaged.DeriveBoltBreakingForce());</code></example>
    public Derivation DeriveBoltBreakingForce() => Work("Force that breaks the bolt", work => BoltForce(work));

    /// <summary>The work behind the force that strips the external thread.</summary>
    /// <returns>The steps; the last is the force.</returns>
    /// <example><code>Console.WriteLine(engaged.DeriveExternalStripForce());</code></example>
    public Derivation DeriveExternalStripForce() => Work("Force that strips the external thread", work => ExternalForce(work, ShearOf(work)));

    /// <summary>The work behind the force that strips the internal thread.</summary>
    /// <returns>The steps; the last is the force.</returns>
    /// <example><code>Console.WriteLine(engaged.DeriveInternalStripForce());</code></example>
    public Derivation DeriveInternalStripForce() => Work("Force that strips the internal thread", work => InternalForce(work, ShearOf(work)));

    /// <summary>The work behind the force at which the engagement fails.</summary>
    /// <returns>The steps; the last is the force.</returns>
    /// <example><code>Console.WriteLine(engaged.DeriveFailureForce());</code></example>
    public Derivation DeriveFailureForce() => Work("Force at which the engagement fails", work => FailureForceOf(work));

    /// <summary>The work behind the least engaged length.</summary>
    /// <returns>The steps; the last is the length.</returns>
    /// <example><code>Console.WriteLine(engaged.DeriveLeastLength());</code></example>
    public Derivation DeriveLeastLength() => Work("Least engaged length for the bolt to break first", work => LeastLengthOf(work));

    /// <summary>The work behind <see cref="LeastTotalLength"/>.</summary>
    /// <param name="edition">How many pitches are added.</param>
    /// <returns>The steps; the last is the length.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="edition"/> is not a value of the enumeration.</exception>
    /// <example><code>Console.WriteLine(engaged.DeriveLeastTotalLength(IncompleteThreads.Vdi2230Of2015));</code></example>
    public Derivation DeriveLeastTotalLength(IncompleteThreads edition) =>
        Work("Least length of thread for the bolt to break first, incomplete threads included", work => TotalLengthOf(work, edition));

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"{Engagement}: bolt {Print.Range(Si.Force(_bolt), Si.Force(_strongBolt), "0.###")}, external thread {Si.Force(_external):0.###}, internal thread {Si.Force(_internal):0.###}");

    /// <summary>The failure force again, with the work written down.</summary>
    internal double FailureForceOf(Derivation? work)
    {
        if (work is null) return EngagementEquations.FailureForce(_bolt, _external, _internal);
        Shear shear = ShearOf(work);
        return EngagementEquations.FailureForceEquation.Step(work, BoltForce(work), ExternalForce(work, shear), InternalForce(work, shear));
    }

    private static Derivation Work(string title, Action<Derivation> steps)
    {
        var work = new Derivation(title);
        steps(work);
        return work.KeepWhatCounts();
    }

    private EngagementStrength Reduced(StripReduction reduction)
    {
        if (!PublishedRatios.Contains(StrippingRatio))
        {
            throw new InvalidOperationException(Print.Text(
                $"The stripping ratio is {StrippingRatio:0.###}; the factors for bending threads are published from 0.4 to 2.2. The strength by the shear areas alone stands."));
        }

        return new EngagementStrength(Engagement, _tensile, _greatestTensile, _externalShear, _internalShear, reduction);
    }

    private void RefuseShorter(double threadLength, Length shown, string name)
    {
        if (Tolerance.IsAtLeast(threadLength, Engagement.LengthSi)) return;
        Guard.RefuseAgainst(name, shown, $"at least the engaged length, {Guard.ShowToCompare(Engagement.EngagedLength.ToUnit(shown.Unit))}");
    }

    private double BoltForce(Derivation? work) =>
        EngagementEquations.BoltBreakingForceEquation.Step(work, _tensile, Engagement.Thread.Geometry.StressArea.Value);

    private double StrongBoltForce(Derivation? work) =>
        EngagementEquations.GreatestBoltBreakingForceEquation.Step(work, _greatestTensile, Engagement.Thread.Geometry.StressArea.Value);

    private Shear ShearOf(Derivation? work)
    {
        double external = Engagement.ExternalArea(work), inner = Engagement.InternalArea(work);
        double ratio = EngagementEquations.StrippingRatioEquation.Step(work, _internalShear, inner, _externalShear, external);
        return new Shear(external, inner, ratio, _reduction.Dilation(work, Engagement.Thread.Diameter));
    }

    private double ExternalForce(Derivation? work, in Shear shear)
    {
        if (_reduction == StripReduction.None) return EngagementEquations.ExternalStripForceEquation.Step(work, _externalShear, shear.ExternalArea);
        double bending = EngagementEquations.ExternalBendingFactorEquation.Step(work, shear.Ratio);
        return EngagementEquations.ReducedExternalStripForceEquation.Step(work, shear.Dilation, bending, _externalShear, shear.ExternalArea);
    }

    private double InternalForce(Derivation? work, in Shear shear)
    {
        if (_reduction == StripReduction.None) return EngagementEquations.InternalStripForceEquation.Step(work, _internalShear, shear.InternalArea);
        double bending = EngagementEquations.InternalBendingFactorEquation.Step(work, shear.Ratio);
        return EngagementEquations.ReducedInternalStripForceEquation.Step(work, shear.Dilation, bending, _internalShear, shear.InternalArea);
    }

    private double LeastLengthOf(Derivation? work)
    {
        Shear shear = ShearOf(work);
        double length = Engagement.LengthSi, bolt = StrongBoltForce(work);
        return EngagementEquations.LeastEngagedLengthEquation.Step(
            work,
            EngagementEquations.ExternalLeastLengthEquation.Step(work, length, bolt, ExternalForce(work, shear)),
            EngagementEquations.InternalLeastLengthEquation.Step(work, length, bolt, InternalForce(work, shear)));
    }

    private double TotalLengthOf(Derivation? work, IncompleteThreads edition)
    {
        if (edition is < IncompleteThreads.Vdi2230Of2015 or > IncompleteThreads.Vdi2230Of2003)
        {
            Guard.RefuseAgainst(nameof(edition), (int)edition, "Vdi2230Of2015 or Vdi2230Of2003");
        }

        double pitches = edition == IncompleteThreads.Vdi2230Of2015 ? 2 : 0.8;
        return EngagementEquations.TotalLengthEquation.Step(work, LeastLengthOf(work), pitches, Engagement.Thread.PitchSi);
    }

    /// <summary>What both strip forces rest on.</summary>
    private readonly record struct Shear(double ExternalArea, double InternalArea, double Ratio, double Dilation);
}
