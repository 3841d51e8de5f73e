using UnitsNet;

namespace Fastening;

public sealed partial class ScrewThread
{
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
    public static ScrewThread IsoTrapezoidal(Length diameter, Length pitch, int starts = 1) => ThreadStandard.Trapezoidal.Thread(diameter, pitch, starts);

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
    public static ScrewThread Acme(Length diameter, double threadsPerInch, int starts = 1) => ThreadStandard.Acme.Thread(diameter, threadsPerInch, starts);

    /// <summary>A square thread of the textbooks: load flank 0°, d₂ = d − P/2, d₃ = d − P; no standard has it.</summary>
    /// <param name="diameter">Nominal diameter, 0.1 mm to 2 m.</param>
    /// <param name="pitch">Pitch; the root diameter must exceed a tenth of the nominal diameter.</param>
    /// <param name="starts">Number of starts, 1 to 100; the lead is starts × pitch.</param>
    /// <returns>The thread, called <c>square 32x4 mm, 2 starts</c>; source: Shigley 9th ed. (2011) §8-2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the pitch is too coarse for the diameter.</exception>
    /// <example><code>// Shigley 9th ed. (2011), Example 8-1
    /// ScrewThread.Square(Length.FromMillimeters(32), Length.FromMillimeters(4), starts: 2).Lead.Millimeters   // 8</code></example>
    public static ScrewThread Square(Length diameter, Length pitch, int starts = 1) => ThreadStandard.Square.Thread(diameter, pitch, starts);
}
