using Fastening.Internals;
using UnitsNet;

namespace Fastening;

public sealed partial class ScrewThread
{
    private const string FineEnough = "fine enough that the root diameter exceeds a tenth of the nominal diameter";

    /// <summary>An ISO metric trapezoidal thread: load flank 15°, d₂ = d − P/2, d₃ = d − P − 2 a_c, nut D₁ = d − P.</summary>
    /// <remarks>
    /// Basic dimensions after ISO 2901:1993, ISO 2902:1977 and ISO 2904:1977, from memory: a_c is 0.15 mm at a pitch of 1.5 mm, 0.25 mm at 2 to 5 mm,
    /// 0.5 mm at 6 to 12 mm and 1 mm at 14 to 44 mm. Any diameter is computed, whether ISO 2904 lists it or not. The stress area is that of the mean
    /// of d₂ and d₃; the standards give none.
    /// </remarks>
    /// <param name="diameter">Nominal diameter, 0.1 mm to 2 m.</param>
    /// <param name="pitch">A pitch of ISO 2902, 1.5 mm to 44 mm; the root diameter must exceed a tenth of the nominal diameter.</param>
    /// <param name="starts">Number of starts, 1 to 100; the lead is starts × pitch.</param>
    /// <returns>The thread, called <c>Tr40x7</c>, or <c>Tr40x14 (P7)</c> with two starts.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, the pitch is none of ISO 2902, or too coarse for the diameter.</exception>
    /// <example><code>ScrewThread.IsoTrapezoidal(Length.FromMillimeters(40), Length.FromMillimeters(7), starts: 2)   // Tr40x14 (P7)</code></example>
    public static ScrewThread IsoTrapezoidal(Length diameter, Length pitch, int starts = 1)
    {
        DiameterDomain.Check(diameter);
        double p = PitchDomain.Check(pitch);
        StartsDomain.Check((double)starts, name: nameof(starts));
        if (!PowerScrewProfile.IsIsoPitch(p)) Guard.RefuseAgainst(nameof(pitch), pitch, $"a pitch of ISO 2902, {PowerScrewProfile.IsoPitches} mm");
        ScrewThread? thread = Trapezoidal(diameter, pitch, starts);
        if (thread is null) Guard.RefuseAgainst(nameof(pitch), pitch, FineEnough);
        return thread;
    }

    /// <summary>A general purpose Acme thread: load flank 14.5°, d₂ = d − P/2, d₃ = d − P − 2 a_c, nut D₁ = d − P.</summary>
    /// <remarks>
    /// Basic dimensions after ASME B1.5-1997, from memory: 2 a_c is 0.020 in to 10 threads per inch and 0.010 in on finer pitches. Any diameter is
    /// computed, whether the standard lists it or not. Centralizing and stub Acme threads have other diameters. The stress area is that of the mean
    /// of d₂ and d₃ at basic size.
    /// </remarks>
    /// <param name="diameter">Nominal diameter, 0.1 mm to 2 m.</param>
    /// <param name="threadsPerInch">Threads per inch, 1 over the pitch; the root diameter must exceed a tenth of the nominal diameter.</param>
    /// <param name="starts">Number of starts, 1 to 100; the lead is starts × pitch.</param>
    /// <returns>The thread, called <c>1 1/2-4 ACME</c>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the pitch is too coarse for the diameter.</exception>
    /// <example><code>ScrewThread.Acme(Length.FromInches(1.5), 4).PitchDiameter.Inches   // 1.375</code></example>
    public static ScrewThread Acme(Length diameter, double threadsPerInch, int starts = 1)
    {
        DiameterDomain.Check(diameter);
        ThreadsPerInchDomain.Check(threadsPerInch);
        StartsDomain.Check((double)starts, name: nameof(starts));
        ScrewThread? thread = AcmeOf(diameter, threadsPerInch, starts);
        if (thread is null) Guard.RefuseAgainst(nameof(threadsPerInch), threadsPerInch, FineEnough);
        return thread;
    }

    /// <summary>A square thread of the textbooks: load flank 0°, d₂ = d − P/2, d₃ = d − P; no standard has it.</summary>
    /// <param name="diameter">Nominal diameter, 0.1 mm to 2 m.</param>
    /// <param name="pitch">Pitch; the root diameter must exceed a tenth of the nominal diameter.</param>
    /// <param name="starts">Number of starts, 1 to 100; the lead is starts × pitch.</param>
    /// <returns>The thread, called <c>square 32x4 mm, 2 starts</c>; source: Shigley 9th ed. (2011) §8-2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the pitch is too coarse for the diameter.</exception>
    /// <example><code>// Shigley 9th ed. (2011), Example 8-1
    /// ScrewThread.Square(Length.FromMillimeters(32), Length.FromMillimeters(4), starts: 2).Lead.Millimeters   // 8</code></example>
    public static ScrewThread Square(Length diameter, Length pitch, int starts = 1)
    {
        DiameterDomain.Check(diameter);
        PitchDomain.Check(pitch);
        StartsDomain.Check((double)starts, name: nameof(starts));
        string designation = $"square {Millimeters(diameter)}x{Millimeters(pitch)} mm, {Count(starts)}";
        ScrewThread? thread = PowerScrew(ThreadProfile.Square, designation, Si.Of(diameter), Si.Of(pitch), starts);
        if (thread is null) Guard.RefuseAgainst(nameof(pitch), pitch, FineEnough);
        return thread;
    }

    /// <summary>The thread a designation names; null when the catalogue has none, or when its numbers give no thread.</summary>
    internal static ScrewThread? Of(in ThreadDesignation wanted) => wanted.Profile switch
    {
        ThreadProfile.IsoTrapezoidal => Trapezoidal(
            Length.FromMillimeters(FromMillionths(wanted.Diameter)), Length.FromMillimeters(FromMillionths(wanted.Pitch)), wanted.Starts),
        ThreadProfile.Acme => AcmeOf(Length.FromInches(FromMillionths(wanted.Diameter)), FromMillionths(wanted.Pitch), wanted.Starts),
        _ => ThreadCatalogue.Default.Find(wanted),
    };

    private static ScrewThread? Trapezoidal(Length diameter, Length pitch, int starts)
    {
        double p = Si.Of(pitch);
        if (!PowerScrewProfile.IsIsoPitch(p) || !StartsDomain.Contains(starts)) return null;
        string designation = starts == 1
            ? $"Tr{Millimeters(diameter)}x{Millimeters(pitch)}"
            : $"Tr{Millimeters(diameter)}x{Millimeters(starts * pitch)} (P{Millimeters(pitch)})";
        return PowerScrew(ThreadProfile.IsoTrapezoidal, designation, Si.Of(diameter), p, starts);
    }

    private static ScrewThread? AcmeOf(Length diameter, double threadsPerInch, int starts)
    {
        if (!ThreadsPerInchDomain.Contains(threadsPerInch)) return null;
        string designation = $"{UnifiedSize.Name(diameter.Inches)}-{Print.Number(threadsPerInch)} ACME{(starts == 1 ? "" : ", " + Count(starts))}";
        return PowerScrew(ThreadProfile.Acme, designation, Si.Of(diameter), PitchOf(threadsPerInch), starts);
    }

    private static ScrewThread? PowerScrew(ThreadProfile profile, string designation, double diameter, double pitch, int starts)
    {
        double root = diameter - pitch - 2 * PowerScrewProfile.CrestClearance(profile, pitch);
        if (!DiameterDomain.Contains(diameter) || root <= LeastCore * diameter) return null;
        ThreadGeometry geometry = ThreadGeometry.OfPowerScrew(null, profile, diameter, pitch, starts);
        return new ScrewThread(profile, designation, diameter, pitch, PowerScrewProfile.LoadFlankDegrees(profile), starts, geometry);
    }

    private static double FromMillionths(long millionths) => millionths / (double)TextCursor.Million;
}
