namespace Fastening.Equations;

/// <summary>Geometry of screw threads: ISO 68-1 and ASME B1.1 profiles, power screw profiles, stress diameter and lead.</summary>
/// <remarks>
/// SI doubles in and out, no checks: IEEE in, IEEE out. <see cref="Equation.Evaluate"/> checks the domain, in which a thread has a core of a tenth of
/// its diameter, as <see cref="ScrewThread.IsoMetric"/> requires it: closer to zero a core is rounding error.
/// </remarks>
internal static class ThreadEquations
{
    /// <summary>Height of the fundamental triangle of a 60° profile.</summary>
    public static double TriangleHeight(double P) => Math.Sqrt(3) / 2 * P;

    /// <summary>H = (√3/2) P.</summary>
    public static Equation<Func<double, double>> TriangleHeightEquation { get; } = Equation.Define(
        TriangleHeight, "thread.triangle-height", Symbols.TriangleHeight, "sqrt(3)/2*P", "ISO 68-1:1998", Symbols.Pitch);

    /// <summary>Pitch diameter of a 60° profile.</summary>
    public static double PitchDiameter(double d, double H) => d - 3.0 / 4 * H;

    /// <summary>d_2 = d − ¾ H.</summary>
    public static Equation<Func<double, double, double>> PitchDiameterEquation { get; } = Equation.Define(
        PitchDiameter, "thread.pitch-diameter", Symbols.PitchDiameter, "d - 3/4*H", "ISO 724:1993; ASME B1.1-2019",
        Symbols.NominalDiameter, Symbols.TriangleHeight, "0.9*d - 17/12*H");

    /// <summary>Minor diameter of the internal thread, 60° profile.</summary>
    public static double InternalMinorDiameter(double d, double H) => d - 5.0 / 4 * H;

    /// <summary>D_1 = d − 5/4 H.</summary>
    public static Equation<Func<double, double, double>> InternalMinorDiameterEquation { get; } = Equation.Define(
        InternalMinorDiameter, "thread.internal-minor-diameter", Symbols.InternalMinorDiameter, "d - 5/4*H", "ISO 724:1993; ASME B1.1-2019",
        Symbols.NominalDiameter, Symbols.TriangleHeight, "0.9*d - 17/12*H");

    /// <summary>Root diameter of the external ISO metric thread.</summary>
    public static double IsoRootDiameter(double d, double H) => d - 17.0 / 12 * H;

    /// <summary>d_3 = d − 17/12 H.</summary>
    public static Equation<Func<double, double, double>> IsoRootDiameterEquation { get; } = Equation.Define(
        IsoRootDiameter, "thread.iso-root-diameter", Symbols.RootDiameter, "d - 17/12*H", "ISO 898-1:2013 §9.1.6.1 (clause from memory)",
        Symbols.NominalDiameter, Symbols.TriangleHeight, "0.9*d - 17/12*H");

    /// <summary>Reference root diameter of the external unified thread (UNR).</summary>
    public static double UnifiedRootDiameter(double d, double H) => d - 11.0 / 8 * H;

    /// <summary>d_3 = d − 11/8 H.</summary>
    public static Equation<Func<double, double, double>> UnifiedRootDiameterEquation { get; } = Equation.Define(
        UnifiedRootDiameter, "thread.unified-root-diameter", Symbols.RootDiameter, "d - 11/8*H", "ASME B1.1-2019, UNR reference",
        Symbols.NominalDiameter, Symbols.TriangleHeight, "0.9*d - 11/8*H");

    /// <summary>Stress diameter as the mean of pitch and root diameter (ISO metric and custom profiles).</summary>
    public static double MeanStressDiameter(double d_2, double d_3) => (d_2 + d_3) / 2;

    /// <summary>d_s = (d_2 + d_3)/2.</summary>
    public static Equation<Func<double, double, double>> MeanStressDiameterEquation { get; } = Equation.Define(
        MeanStressDiameter, "thread.mean-stress-diameter", Symbols.StressDiameter, "(d_2 + d_3)/2", "ISO 898-1:2013 §9.1.6.1 (clause from memory)",
        Symbols.PitchDiameter, Symbols.RootDiameter);

    /// <summary>Stress diameter of a unified thread; 9√3/16 is the 0.9743 of the printed form.</summary>
    public static double UnifiedStressDiameter(double d, double P) => d - 9 * Math.Sqrt(3) / 16 * P;

    /// <summary>d_s = d − (9√3/16) P.</summary>
    public static Equation<Func<double, double, double>> UnifiedStressDiameterEquation { get; } = Equation.Define(
        UnifiedStressDiameter, "thread.unified-stress-diameter", Symbols.StressDiameter, "d - 9*sqrt(3)/16*P", "ASME B1.1-2019, tensile stress area",
        Symbols.NominalDiameter, Symbols.Pitch, "d - 1.2*P");

    /// <summary>Area of the stress cross-section.</summary>
    public static double StressArea(double d_s) => Math.PI / 4 * (d_s * d_s);

    /// <summary>A_s = (π/4) d_s².</summary>
    public static Equation<Func<double, double>> StressAreaEquation { get; } = Equation.Define(
        StressArea, "thread.stress-area", Symbols.StressArea, "pi/4*d_s^2", "ISO 898-1:2013 §9.1.6.1 (clause from memory); ASME B1.1-2019", Symbols.StressDiameter);

    /// <summary>Stress diameter of a unified thread of high strength, at the least pitch diameter; 3√3/16 is twice the 0.16238 of the printed form.</summary>
    public static double HighStrengthStressDiameter(double E_s, double P) => E_s - 3 * Math.Sqrt(3) / 16 * P;

    /// <summary>d_s = E_s − (3√3/16) P.</summary>
    public static Equation<Func<double, double, double>> HighStrengthStressDiameterEquation { get; } = Equation.Define(
        HighStrengthStressDiameter, "thread.high-strength-stress-diameter", Symbols.StressDiameter, "E_s - 3*sqrt(3)/16*P",
        "ASME B1.1-2019, tensile stress area above 100 ksi (from memory)", Symbols.LeastExternalPitchDiameter, Symbols.Pitch, "0.9*E_s - 3*sqrt(3)/16*P");

    /// <summary>Diameter of the minor area of a unified thread, where the handbooks tabulate it; not the root diameter.</summary>
    public static double UnifiedMinorAreaDiameter(double d, double H) => d - 3.0 / 2 * H;

    /// <summary>d_r = d − 3/2 H.</summary>
    public static Equation<Func<double, double, double>> UnifiedMinorAreaDiameterEquation { get; } = Equation.Define(
        UnifiedMinorAreaDiameter, "thread.unified-minor-area-diameter", Symbols.MinorAreaDiameter, "d - 3/2*H",
        "ASME B1.1-2019; Machinery's Handbook 31st ed. (2020), section at minor diameter", Symbols.NominalDiameter, Symbols.TriangleHeight, "0.9*d - 3/2*H");

    /// <summary>Minor area of a unified thread.</summary>
    public static double UnifiedMinorArea(double d_r) => Math.PI / 4 * (d_r * d_r);

    /// <summary>A_3 = (π/4) d_r².</summary>
    public static Equation<Func<double, double>> UnifiedMinorAreaEquation { get; } = Equation.Define(
        UnifiedMinorArea, "thread.unified-minor-area", Symbols.MinorArea, "pi/4*d_r^2",
        "ASME B1.1-2019; Machinery's Handbook 31st ed. (2020), section at minor diameter", Symbols.MinorAreaDiameter);

    /// <summary>Minor area: the cross-section at the root diameter.</summary>
    public static double MinorArea(double d_3) => Math.PI / 4 * (d_3 * d_3);

    /// <summary>A_3 = (π/4) d_3².</summary>
    public static Equation<Func<double, double>> MinorAreaEquation { get; } = Equation.Define(
        MinorArea, "thread.minor-area", Symbols.MinorArea, "pi/4*d_3^2", "VDI 2230-1:2015, A_d3 (from memory)", Symbols.RootDiameter);

    /// <summary>Pitch diameter of a power screw: trapezoidal, Acme or square.</summary>
    public static double PowerPitchDiameter(double d, double P) => d - P / 2;

    /// <summary>d_2 = d − P/2.</summary>
    public static Equation<Func<double, double, double>> PowerPitchDiameterEquation { get; } = Equation.Define(
        PowerPitchDiameter, "thread.power-pitch-diameter", Symbols.PitchDiameter, "d - P/2",
        "ISO 2904:1977 and ASME B1.5-1997 (from memory); Shigley 9th ed. (2011) §8-2", Symbols.NominalDiameter, Symbols.Pitch, "d - 1.1*P");

    /// <summary>Root diameter of a trapezoidal or Acme thread: half the pitch deep, and the crest clearance.</summary>
    public static double TrapezoidalRootDiameter(double d, double P, double a_c) => d - P - 2 * a_c;

    /// <summary>d_3 = d − P − 2 a_c.</summary>
    public static Equation<Func<double, double, double, double>> TrapezoidalRootDiameterEquation { get; } = Equation.Define(
        TrapezoidalRootDiameter, "thread.trapezoidal-root-diameter", Symbols.RootDiameter, "d - P - 2*a_c",
        "ISO 2901:1993, ISO 2904:1977 and ASME B1.5-1997 (from memory)",
        Symbols.NominalDiameter, Symbols.Pitch, Symbols.CrestClearance, "d - 1.1*P - 2*a_c");

    /// <summary>Root diameter of a square thread, half the pitch deep.</summary>
    public static double SquareRootDiameter(double d, double P) => d - P;

    /// <summary>d_3 = d − P.</summary>
    public static Equation<Func<double, double, double>> SquareRootDiameterEquation { get; } = Equation.Define(
        SquareRootDiameter, "thread.square-root-diameter", Symbols.RootDiameter, "d - P", "Shigley 9th ed. (2011) §8-2",
        Symbols.NominalDiameter, Symbols.Pitch, "d - 1.1*P");

    /// <summary>Minor diameter of the nut of a power screw.</summary>
    public static double PowerInternalMinorDiameter(double d, double P) => d - P;

    /// <summary>D_1 = d − P.</summary>
    public static Equation<Func<double, double, double>> PowerInternalMinorDiameterEquation { get; } = Equation.Define(
        PowerInternalMinorDiameter, "thread.power-internal-minor-diameter", Symbols.InternalMinorDiameter, "d - P",
        "ISO 2904:1977 and ASME B1.5-1997 (from memory)", Symbols.NominalDiameter, Symbols.Pitch, "d - 1.1*P");

    /// <summary>Lead of a thread with one or more starts.</summary>
    public static double Lead(double n_s, double P) => n_s * P;

    /// <summary>P_h = n_s P.</summary>
    public static Equation<Func<double, double, double>> LeadEquation { get; } = Equation.Define(
        Lead, "thread.lead", Symbols.Lead, "n_s*P", "ISO 5408:2009", Symbols.Starts, Symbols.Pitch);

    /// <summary>Lead angle at the pitch diameter.</summary>
    public static double LeadAngle(double P_h, double d_2) => Math.Atan(P_h / (Math.PI * d_2));

    /// <summary>φ = atan(P_h/(π d_2)).</summary>
    public static Equation<Func<double, double, double>> LeadAngleEquation { get; } = Equation.Define(
        LeadAngle, "thread.lead-angle", Symbols.LeadAngle, "atan(P_h/(pi*d_2))", "ISO 5408:2009; VDI 2230-1:2015 §5.4.3 (from memory)",
        Symbols.Lead, Symbols.PitchDiameter);

    /// <summary>Textbook mean diameter: midway between major and root.</summary>
    public static double TextbookMeanDiameter(double d, double d_3) => (d + d_3) / 2;

    /// <summary>d_m = (d + d_3)/2.</summary>
    public static Equation<Func<double, double, double>> TextbookMeanDiameterEquation { get; } = Equation.Define(
        TextbookMeanDiameter, "thread.textbook-mean-diameter", Symbols.MeanThreadDiameter, "(d + d_3)/2",
        "Shigley 9th ed. (2011) §8-2; NASA TM-106943 (1995)", Symbols.NominalDiameter, Symbols.RootDiameter);

    /// <summary>Textbook mean diameter of a unified thread: midway between major diameter and the diameter of the minor area.</summary>
    public static double UnifiedTextbookMeanDiameter(double d, double d_r) => (d + d_r) / 2;

    /// <summary>d_m = (d + d_r)/2.</summary>
    public static Equation<Func<double, double, double>> UnifiedTextbookMeanDiameterEquation { get; } = Equation.Define(
        UnifiedTextbookMeanDiameter, "thread.unified-textbook-mean-diameter", Symbols.MeanThreadDiameter, "(d + d_r)/2",
        "Shigley 9th ed. (2011) Example 8-3", Symbols.NominalDiameter, Symbols.MinorAreaDiameter);

    /// <summary>Lead angle at the textbook mean diameter.</summary>
    public static double LeadAngleAtMeanDiameter(double P_h, double d_m) => Math.Atan(P_h / (Math.PI * d_m));

    /// <summary>φ = atan(P_h/(π d_m)).</summary>
    public static Equation<Func<double, double, double>> LeadAngleAtMeanDiameterEquation { get; } = Equation.Define(
        LeadAngleAtMeanDiameter, "thread.lead-angle-at-mean-diameter", Symbols.LeadAngle, "atan(P_h/(pi*d_m))",
        "Shigley 9th ed. (2011) §8-2", Symbols.Lead, Symbols.MeanThreadDiameter);
}
