using UnitsNet;

namespace Fastening;

public sealed partial class ScrewThread
{
    /// <summary>An ISO metric thread of any diameter and pitch, in the catalogue or not.</summary>
    /// <param name="diameter">Nominal diameter, 0.1 mm to 2 m.</param>
    /// <param name="pitch">Pitch; the root diameter d − 17/12 H must exceed a tenth of the nominal diameter.</param>
    /// <returns>The thread, named as in the catalogue if ISO 261 has it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is outside its domain, or the pitch is too coarse for the diameter.</exception>
    /// <example><code>ScrewThread.IsoMetric(Length.FromMillimeters(19), Length.FromMillimeters(1.5))   // M19x1.5, not in ISO 261</code></example>
    public static ScrewThread IsoMetric(Length diameter, Length pitch) => ThreadStandard.IsoMetric.Thread(diameter, pitch);

    /// <summary>A unified thread of any diameter and threads per inch, in a series or not.</summary>
    /// <param name="diameter">Nominal diameter, 0.1 mm to 2 m.</param>
    /// <param name="threadsPerInch">Threads per inch, 0.1 to 400; the root diameter d − 11/8 H must exceed a tenth of the nominal diameter.</param>
    /// <returns>The thread, named as in the catalogue if ASME B1.1 has it there, otherwise as a special thread, UNS.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A dimension is outside its domain, or the pitch is too coarse for the diameter.</exception>
    /// <example><code>ScrewThread.Unified(Length.FromInches(0.5), 14)   // 0.5-14 UNS</code></example>
    public static ScrewThread Unified(Length diameter, double threadsPerInch) => ThreadStandard.Unified.Thread(diameter, threadsPerInch);

    /// <summary>A thread of any profile, from its diameters and the angle of its load flank. Its stress diameter is (d₂ + d₃)/2.</summary>
    /// <param name="diameter">Nominal (major) diameter d.</param>
    /// <param name="pitch">Pitch, less than the nominal diameter; the lead is pitch times starts.</param>
    /// <param name="loadFlankAngle">Angle of the load flank in the axial plane, 0° (square) to below 90°.</param>
    /// <param name="starts">Number of starts, 1 to 100.</param>
    /// <param name="pitchDiameter">Pitch diameter, between root and nominal diameter.</param>
    /// <param name="rootDiameter">Root diameter of the external thread.</param>
    /// <returns>The thread.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or not root &lt; pitch &lt; nominal diameter.</exception>
    /// <example><code>// A square thread, 32 mm by 4 mm, two starts
    /// ScrewThread.FromProfile(Length.FromMillimeters(32), Length.FromMillimeters(4), Angle.Zero, 2,
    ///     pitchDiameter: Length.FromMillimeters(30), rootDiameter: Length.FromMillimeters(28))</code></example>
    public static ScrewThread FromProfile(Length diameter, Length pitch, Angle loadFlankAngle, int starts, Length pitchDiameter, Length rootDiameter) =>
        CustomThreads.Thread(diameter, pitch, loadFlankAngle, starts, pitchDiameter, rootDiameter);
}
