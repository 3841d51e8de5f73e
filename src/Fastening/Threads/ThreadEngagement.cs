using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A length of 60° thread in engagement: the areas over which the external and the internal thread shear when they strip.</summary>
/// <remarks>
/// Each thread shears on the cylinder to which the other reaches, at the limits of size that leave the least metal: FED-STD-H28/2B (1991) and
/// ASME B1.1-2019 Appendix B, from memory; the geometry is derived. The engaged length is that of full thread: the countersinks of a nut and the
/// incomplete threads at the end of a bolt or hole do not count. A shear area times a shear strength is the force that strips the thread; both
/// threads, the bolt and their order of failure are in <see cref="EngagementStrength"/>.
/// </remarks>
/// <example><code>ThreadEngagement engagement = ThreadEngagement.For(ScrewThread.Parse("M16"), Length.FromMillimeters(20));
/// Force toStripTheHole = engagement.InternalShearArea * Pressure.FromMegapascals(150);</code></example>
public sealed class ThreadEngagement : IDerives<EngagementAreas>
{
    private readonly Stated<Length> _length;
    private EngagementAreas? _areas;

    private ThreadEngagement(ThreadLimits limits, Stated<Length> length)
    {
        Limits = limits;
        _length = length;
    }

    /// <summary>The thread.</summary>
    public ScrewThread Thread => Limits.Thread;

    /// <summary>The limits of size at which the areas are taken.</summary>
    public ThreadLimits Limits { get; }

    /// <summary>Engaged length of full thread, L_e.</summary>
    public Length EngagedLength => Si.Length(LengthTerm);

    /// <summary>Shear area of the external thread, AS_s: on the cylinder of the greatest minor diameter of the internal thread.</summary>
    public Area ExternalShearArea => Si.Area(Areas.External);

    /// <summary>Shear area of the internal thread, AS_n: on the cylinder of the least major diameter of the external thread.</summary>
    public Area InternalShearArea => Si.Area(Areas.Internal);

    internal Term LengthTerm => _length.Term;

    internal double LengthSi => _length.Value;

    internal EngagementAreas Areas => Derived.Of(ref _areas, this);

    /// <summary>A length of thread at the limits of the medium fit, 6g/6H or 2A/2B (<see cref="ThreadLimits.ForMediumFit"/>).</summary>
    /// <param name="thread">An ISO metric or unified thread of the tables of limits.</param>
    /// <param name="engagedLength">Engaged length of full thread, 1 µm to 1 km.</param>
    /// <returns>The engagement.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentException">The tables have no limits for the thread; give them with the other overload.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its domain.</exception>
    /// <example><code>ThreadEngagement.For(ScrewThread.Parse("M16"), engagedLength: Length.FromMillimeters(20)).ExternalShearArea.SquareMillimeters   // 521.9</code></example>
    public static ThreadEngagement For(ScrewThread thread, Length engagedLength) => For(ThreadLimits.ForMediumFit(thread), engagedLength);

    /// <summary>A length of thread at limits of your own choice.</summary>
    /// <param name="limits">The limits, which name the thread.</param>
    /// <param name="engagedLength">Engaged length of full thread, 1 µm to 1 km.</param>
    /// <returns>The engagement.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="limits"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its domain.</exception>
    public static ThreadEngagement For(ThreadLimits limits, Length engagedLength) => new(Guard.NotNull(limits), Domains.Length.Stated(engagedLength));

    /// <summary>The same threads over another length.</summary>
    /// <param name="engagedLength">Engaged length of full thread, 1 µm to 1 km.</param>
    /// <returns>The engagement.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its domain.</exception>
    /// <example><code>engagement.WithLength(Length.FromMillimeters(24)).InternalShearArea</code></example>
    public ThreadEngagement WithLength(Length engagedLength) => new(Limits, Domains.Length.Stated(engagedLength));

    /// <summary>The forces that break the bolt and strip either thread, which is the least, and the length at which the bolt breaks first.</summary>
    /// <remarks>
    /// Nothing is assumed: shear strengths are given, or written as a share of a tensile strength, <c>0.6 * tensileStrength</c>. For steel about 0.6
    /// is usual: 0.577 by distortion energy; VDI 2230-1:2015 §5.5.5 gives bolts 0.60 (12.9) to 0.70 (4.6), from memory. FED-STD-H28/2B takes 0.5.
    /// A bolt may be stronger than its class requires: that it breaks before a thread strips is judged by the greatest tensile strength, what the
    /// engagement carries by the least (VDI 2230-1:2015 §5.5.5, R11, from memory). About 1.2 times the minimum is remembered there for the greatest; it
    /// is not assumed here.
    /// </remarks>
    /// <param name="leastTensileStrength">Least tensile strength of the bolt, R_m.</param>
    /// <param name="greatestTensileStrength">Greatest tensile strength that the bolt may have, R_m,max; at least the least.</param>
    /// <param name="externalShearStrength">Least shear strength of the bolt, at most its least tensile strength.</param>
    /// <param name="internalShearStrength">Least shear strength of the nut or of the part with the tapped hole.</param>
    /// <returns>The forces and lengths, by the shear areas alone.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// A strength is outside 1 kPa to 100 GPa, the greatest tensile strength is below the least, or the bolt is stronger in shear than in tension.
    /// </exception>
    /// <example><code>EngagementStrength strength = engagement.StrengthFor(
    ///     leastTensileStrength: Pressure.FromMegapascals(830),
    ///     greatestTensileStrength: 1.2 * Pressure.FromMegapascals(830),
    ///     externalShearStrength: 0.65 * Pressure.FromMegapascals(830),
    ///     internalShearStrength: Pressure.FromMegapascals(150));
    /// Length needed = strength.LeastLength;</code></example>
    public EngagementStrength StrengthFor(
        Pressure leastTensileStrength, Pressure greatestTensileStrength, Pressure externalShearStrength, Pressure internalShearStrength)
    {
        Stated<Pressure> tensile = Domains.Stress.Stated(leastTensileStrength), greatest = Domains.Stress.Stated(greatestTensileStrength);
        if (greatest.Value < tensile.Value)
        {
            Guard.RefuseAgainst(
                nameof(greatestTensileStrength), greatestTensileStrength, $"at least leastTensileStrength, {Guard.ShowToCompare(leastTensileStrength)}");
        }

        Stated<Pressure> external = Domains.Stress.Stated(externalShearStrength);
        if (external.Value > tensile.Value)
        {
            Guard.RefuseAgainst(nameof(externalShearStrength), externalShearStrength, $"at most the least tensile strength of the bolt, {Guard.ShowToCompare(leastTensileStrength)}");
        }

        return new EngagementStrength(this, tensile, greatest, external, Domains.Stress.Stated(internalShearStrength), StripReduction.None);
    }

    /// <inheritdoc />
    public override string ToString() => $"{Limits} over {Guard.Show(EngagedLength.ToUnit(UnitsNet.Units.LengthUnit.Millimeter))}";

    EngagementAreas IDerives<EngagementAreas>.Derive() => EngagementAreas.Of(Limits, LengthTerm);
}
