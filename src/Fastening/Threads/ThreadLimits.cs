using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The limits of size of an external thread and its internal thread that leave the least metal in engagement.</summary>
/// <remarks>For 60° threads. Stripping is judged at these limits: the smallest bolt in the largest hole that the tolerance classes allow.</remarks>
/// <example><code>ThreadLimits limits = ThreadLimits.ForMediumFit(ScrewThread.Parse("M16"));   // M16 6g/6H
/// limits.InternalMinorMaximum.Millimeters                                   // 14.21</code></example>
public sealed class ThreadLimits
{
    private static readonly double HeightPerPitch = ThreadEquations.TriangleHeight(1);

    private readonly StatedLimits? _stated;

    /// <summary>Without stated limits they are the basic sizes of the thread.</summary>
    private ThreadLimits(ScrewThread thread, string fit, StatedLimits? stated)
    {
        Thread = thread;
        Fit = fit;
        _stated = stated;
    }

    /// <summary>The thread.</summary>
    public ScrewThread Thread { get; }

    /// <summary>The tolerance classes: <c>6g/6H</c>, <c>2A/2B</c>, <c>basic size</c> or <c>given</c>.</summary>
    public string Fit { get; }

    /// <summary>Least major diameter of the external thread, D_s.</summary>
    public Length ExternalMajorMinimum => Si.Length(ExternalMajor);

    /// <summary>Least pitch diameter of the external thread, E_s.</summary>
    public Length ExternalPitchMinimum => Si.Length(ExternalPitch);

    /// <summary>Greatest minor diameter of the internal thread, K_n.</summary>
    public Length InternalMinorMaximum => Si.Length(InternalMinor);

    /// <summary>Greatest pitch diameter of the internal thread, E_n.</summary>
    public Length InternalPitchMaximum => Si.Length(InternalPitch);

    /// <summary>Stress area of a unified bolt of more than 100 ksi tensile strength, at its least pitch diameter; null for a metric thread.</summary>
    /// <remarks>π (E_s/2 − 0.16238 P)², printed with 1/n for P: ASME B1.1 and Machinery's Handbook, from memory. Smaller than the basic stress area.</remarks>
    public Area? HighStrengthStressArea => Thread.Standard.HighStrengthStressArea(ExternalPitch, Thread.PitchTerm) is Term area ? Si.Area(area) : null;

    internal Term ExternalMajor => _stated?.ExternalMajor.Term ?? Thread.DiameterTerm;

    internal Term ExternalPitch => _stated?.ExternalPitch.Term ?? Thread.Geometry.PitchDiameter;

    internal Term InternalMinor => _stated?.InternalMinor.Term ?? Thread.Geometry.InternalMinorDiameter!.Value;

    internal Term InternalPitch => _stated?.InternalPitch.Term ?? Thread.Geometry.PitchDiameter;

    /// <summary>The limits of the medium fit, from the data of the package: 6g/6H for a metric thread, 2A/2B for a unified one.</summary>
    /// <remarks>
    /// ISO 965-1:2013, coarse M1.6 to M64 and the fine threads of ISO 262, to 0.001 mm; ASME B1.1, UNC and UNF to 3 in, to 0.0001 in. Computed from
    /// the tolerance formulas and compared with published tables, not read in the standards; the data files say row by row what agrees.
    /// </remarks>
    /// <param name="thread">A thread of the tables.</param>
    /// <returns>The limits.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentException">The tables have no such thread.</exception>
    /// <example><code>ThreadLimits.ForMediumFit(ScrewThread.Parse("M12")).InternalMinorMaximum.Millimeters   // 10.441</code></example>
    public static ThreadLimits ForMediumFit(ScrewThread thread)
    {
        Guard.NotNull(thread);
        MediumFit? fit = thread.Standard.Fit;
        return fit?.Find(thread) is StatedLimits limits
            ? new ThreadLimits(thread, fit.Name, limits)
            : throw new ArgumentException(WithoutLimits(thread), nameof(thread));
    }

    /// <summary>The basic sizes in place of limits: no allowance, no tolerance. The areas are then the greatest there can be, not what may be built.</summary>
    /// <param name="thread">A 60° thread of ISO metric or unified profile.</param>
    /// <returns>The basic diameters.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentException">The thread has another profile.</exception>
    /// <example><code>ThreadLimits.AtBasicSize(ScrewThread.Parse("M12")).InternalMinorMaximum.Millimeters   // 10.106</code></example>
    public static ThreadLimits AtBasicSize(ScrewThread thread)
    {
        RequireSixtyDegrees(thread);
        return new ThreadLimits(thread, "basic size", stated: null);
    }

    /// <summary>Limits of any other tolerance class, or measured diameters; each within one pitch of its basic size.</summary>
    /// <param name="thread">A 60° thread of ISO metric or unified profile.</param>
    /// <param name="externalMajorMinimum">Least major diameter of the external thread, D_s.</param>
    /// <param name="externalPitchMinimum">Least pitch diameter of the external thread, E_s.</param>
    /// <param name="internalMinorMaximum">Greatest minor diameter of the internal thread, K_n; less than D_s, or the threads do not meet.</param>
    /// <param name="internalPitchMaximum">Greatest pitch diameter of the internal thread, E_n.</param>
    /// <returns>The limits.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentException">The thread has another profile.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A diameter is more than a pitch off, or the diameters leave no thread where it shears.</exception>
    /// <example><code>ThreadLimits.FromDiameters(ScrewThread.Parse("M12"),
    ///     externalMajorMinimum: Length.FromMillimeters(11.72), externalPitchMinimum: Length.FromMillimeters(10.71),
    ///     internalMinorMaximum: Length.FromMillimeters(10.39), internalPitchMaximum: Length.FromMillimeters(11.03))</code></example>
    public static ThreadLimits FromDiameters(
        ScrewThread thread, Length externalMajorMinimum, Length externalPitchMinimum, Length internalMinorMaximum, Length internalPitchMaximum)
    {
        RequireSixtyDegrees(thread);
        ThreadGeometry basic = thread.Geometry;
        var stated = new StatedLimits(
            Around(thread.Diameter).Stated(externalMajorMinimum),
            Around(basic.PitchDiameter.Value).Stated(externalPitchMinimum),
            Around(basic.InternalMinorDiameter!.Value.Value).Stated(internalMinorMaximum),
            Around(basic.PitchDiameter.Value).Stated(internalPitchMaximum));
        double externalMajor = stated.ExternalMajor.Value, externalPitch = stated.ExternalPitch.Value;
        double internalMinor = stated.InternalMinor.Value, internalPitch = stated.InternalPitch.Value;
        double height = HeightPerPitch * thread.PitchSi;
        if (internalMinor >= externalMajor)
        {
            Guard.RefuseAgainst(nameof(internalMinorMaximum), internalMinorMaximum, $"less than externalMajorMinimum, {Guard.ShowToCompare(externalMajorMinimum)}");
        }

        // Swapped limits would promise more metal than there is.
        if (externalPitch > internalPitch)
        {
            Guard.RefuseAgainst(nameof(externalPitchMinimum), externalPitchMinimum, $"at most internalPitchMaximum, {Guard.ShowToCompare(internalPitchMaximum)}");
        }

        if (externalPitch >= externalMajor)
        {
            Guard.RefuseAgainst(nameof(externalPitchMinimum), externalPitchMinimum, $"less than externalMajorMinimum, {Guard.ShowToCompare(externalMajorMinimum)}");
        }

        if (Math.Abs(externalPitch - internalMinor) >= height) RefuseTip(nameof(externalPitchMinimum), externalPitchMinimum, internalMinor, height);
        if (Math.Abs(externalMajor - internalPitch) >= height) RefuseTip(nameof(internalPitchMaximum), internalPitchMaximum, externalMajor, height);
        return new ThreadLimits(thread, "given", stated);

        Domain<Length> Around(double basicSize) => new(Math.Max(0, basicSize - thread.PitchSi), basicSize + thread.PitchSi);
    }

    /// <inheritdoc />
    public override string ToString() => $"{Thread} {Fit}";

    /// <summary>A thread has metal and space on a cylinder only within H/2 of its pitch line.</summary>
    private static void RefuseTip(string name, Length value, double cylinder, double height) => Guard.RefuseAgainst(
        name, value, $"within H, {Guard.Show(Si.Length(height))}, of the diameter where the thread shears, {Guard.Show(Si.Length(cylinder))}");

    private static void RequireSixtyDegrees(ScrewThread thread)
    {
        Guard.NotNull(thread);
        if (thread.Standard.IsSixtyDegrees) return;
        IEnumerable<string> names = ThreadStandard.All.Where(standard => standard.IsSixtyDegrees).OrderBy(standard => standard.Profile).Select(standard => standard.Name);
        throw new ArgumentException($"Limits for stripping are those of {string.Join(" and ", names)} threads, 60°, not of {thread}.", nameof(thread));
    }

    private static string WithoutLimits(ScrewThread thread)
    {
        List<MediumFit> fits = [.. ThreadStandard.All.OrderBy(standard => standard.Profile).Select(standard => standard.Fit).OfType<MediumFit>()];
        return $"The limits of {thread} for {string.Join(" or ", fits.Select(fit => fit.Name))} are not in the tables "
            + $"({string.Join(", ", fits.Select(fit => fit.Covers))}); give them with ThreadLimits.FromDiameters.";
    }
}
