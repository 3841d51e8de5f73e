using Fastening.Internals;

namespace Fastening.Equations;

/// <summary>Stripping of engaged 60° threads: shear areas, forces, least engaged length.</summary>
/// <remarks>
/// SI doubles in and out, no checks. Each thread shears on the cylinder to which the other reaches: the external thread at the minor diameter of
/// the internal one, the internal thread at the major diameter of the external one. Diameters are the limits that leave the least metal.
/// C_1, C_2 and C_3 are fits: outside their published range they are refused, here too, and never extrapolated.
/// </remarks>
internal static class EngagementEquations
{
    private const string ShearAreas = "FED-STD-H28/2B (1991) and ASME B1.1-2019 App. B (from memory); derived";
    private const double NarrowestNut = 1.4;
    private const string Reductions = "VDI 2230-1:2015 §5.5.5 after Alexander (1977) (from memory)";

    private static readonly Interval PublishedRatios = new(0.4, 2.2);

    /// <summary>Axial thickness of the external thread at the minor diameter of the internal thread.</summary>
    public static double ExternalThickness(double P, double E_s, double K_n) => P / 2 + (E_s - K_n) / Math.Sqrt(3);

    /// <summary>t_s = P/2 + (E_s − K_n)/√3.</summary>
    public static Equation<Func<double, double, double, double>> ExternalThicknessEquation { get; } = Equation.Define(
        ExternalThickness, "engagement.external-thickness", Symbols.ExternalThickness, "P/2 + (E_s - K_n)/sqrt(3)", ShearAreas,
        Symbols.Pitch, Symbols.LeastExternalPitchDiameter, Symbols.GreatestInternalMinorDiameter, "P/2 + (E_s - K_n)/sqrt(3)");

    /// <summary>Axial thickness of the internal thread at the major diameter of the external thread.</summary>
    public static double InternalThickness(double P, double D_s, double E_n) => P / 2 + (D_s - E_n) / Math.Sqrt(3);

    /// <summary>t_n = P/2 + (D_s − E_n)/√3.</summary>
    public static Equation<Func<double, double, double, double>> InternalThicknessEquation { get; } = Equation.Define(
        InternalThickness, "engagement.internal-thickness", Symbols.InternalThickness, "P/2 + (D_s - E_n)/sqrt(3)", ShearAreas,
        Symbols.Pitch, Symbols.LeastExternalMajorDiameter, Symbols.GreatestInternalPitchDiameter, "P/2 + (D_s - E_n)/sqrt(3)");

    /// <summary>Shear area of the external thread.</summary>
    public static double ExternalShearArea(double K_n, double L_e, double P, double t_s) => Math.PI * K_n * (L_e / P) * t_s;

    /// <summary>AS_s = π K_n (L_e/P) t_s.</summary>
    public static Equation<Func<double, double, double, double, double>> ExternalShearAreaEquation { get; } = Equation.Define(
        ExternalShearArea, "engagement.external-shear-area", Symbols.ExternalShearArea, "pi*K_n*(L_e/P)*t_s", ShearAreas,
        Symbols.GreatestInternalMinorDiameter, Symbols.EngagedLength, Symbols.Pitch, Symbols.ExternalThickness);

    /// <summary>Shear area of the internal thread.</summary>
    public static double InternalShearArea(double D_s, double L_e, double P, double t_n) => Math.PI * D_s * (L_e / P) * t_n;

    /// <summary>AS_n = π D_s (L_e/P) t_n.</summary>
    public static Equation<Func<double, double, double, double, double>> InternalShearAreaEquation { get; } = Equation.Define(
        InternalShearArea, "engagement.internal-shear-area", Symbols.InternalShearArea, "pi*D_s*(L_e/P)*t_n", ShearAreas,
        Symbols.LeastExternalMajorDiameter, Symbols.EngagedLength, Symbols.Pitch, Symbols.InternalThickness);

    /// <summary>Force that breaks the bolt in its stress cross-section.</summary>
    public static double BoltBreakingForce(double R_m, double A_s) => R_m * A_s;

    /// <summary>F_mS = R_m A_s.</summary>
    public static Equation<Func<double, double, double>> BoltBreakingForceEquation { get; } = Equation.Define(
        BoltBreakingForce, "engagement.bolt-breaking-force", Symbols.BoltBreakingForce, "R_m*A_s", "ISO 898-1:2013 §9.1 (clause from memory); VDI 2230-1:2015 §5.5.5 (from memory)",
        Symbols.TensileStrength, Symbols.StressArea);

    /// <summary>Force that breaks a bolt of the greatest tensile strength.</summary>
    public static double GreatestBoltBreakingForce(double R_mmax, double A_s) => R_mmax * A_s;

    /// <summary>F_mSmax = R_mmax A_s.</summary>
    public static Equation<Func<double, double, double>> GreatestBoltBreakingForceEquation { get; } = Equation.Define(
        GreatestBoltBreakingForce, "engagement.greatest-bolt-breaking-force", Symbols.GreatestBoltBreakingForce, "R_mmax*A_s",
        "VDI 2230-1:2015 §5.5.5, R11 (from memory)", Symbols.GreatestTensileStrength, Symbols.StressArea);

    /// <summary>Force that strips the external thread.</summary>
    public static double ExternalStripForce(double tau_s, double AS_s) => tau_s * AS_s;

    /// <summary>F_mGS = τ_s AS_s.</summary>
    public static Equation<Func<double, double, double>> ExternalStripForceEquation { get; } = Equation.Define(
        ExternalStripForce, "engagement.external-strip-force", Symbols.ExternalStripForce, "tau_s*AS_s", ShearAreas,
        Symbols.ExternalShearStrength, Symbols.ExternalShearArea);

    /// <summary>Force that strips the internal thread.</summary>
    public static double InternalStripForce(double tau_n, double AS_n) => tau_n * AS_n;

    /// <summary>F_mGM = τ_n AS_n.</summary>
    public static Equation<Func<double, double, double>> InternalStripForceEquation { get; } = Equation.Define(
        InternalStripForce, "engagement.internal-strip-force", Symbols.InternalStripForce, "tau_n*AS_n", ShearAreas,
        Symbols.InternalShearStrength, Symbols.InternalShearArea);

    /// <summary>Strength of the internal thread over that of the external thread, before any reduction.</summary>
    public static double StrippingRatio(double tau_n, double AS_n, double tau_s, double AS_s) => tau_n * AS_n / (tau_s * AS_s);

    /// <summary>R_S = τ_n AS_n/(τ_s AS_s).</summary>
    public static Equation<Func<double, double, double, double, double>> StrippingRatioEquation { get; } = Equation.Define(
        StrippingRatio, "engagement.stripping-ratio", Symbols.StrippingRatio, "tau_n*AS_n/(tau_s*AS_s)", Reductions,
        Symbols.InternalShearStrength, Symbols.InternalShearArea, Symbols.ExternalShearStrength, Symbols.ExternalShearArea);

    /// <summary>Factor for the widening of a nut under load; a nut of 1.9 d and more does not widen.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The nut is narrower than 1.4 d: nothing is published.</exception>
    public static double NutDilationFactor(double s_w, double d)
    {
        if (!Tolerance.IsAtLeast(s_w / d, NarrowestNut)) Guard.RefuseAgainst(nameof(s_w), s_w / d, "at least 1.4 diameters");
        double width = Math.Min(s_w / d, 1.9);
        return 3.8 * width - width * width - 2.61;
    }

    /// <summary>C_1 = 3.8 s_w/d − (s_w/d)² − 2.61, s_w/d from 1.4 to 1.9.</summary>
    public static Equation<Func<double, double, double>> NutDilationFactorEquation { get; } = Equation.Define(
        NutDilationFactor, "engagement.nut-dilation-factor", Symbols.NutDilationFactor, "3.8*min(s_w/d, 1.9) - min(s_w/d, 1.9)^2 - 2.61", Reductions,
        Symbols.NutWidth, Symbols.NominalDiameter, "s_w - 1.4*d");

    /// <summary>Factor for the bending of the external thread; 0.897 (rounded) as long as the internal thread is the weaker one.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="R_S"/> is outside 0.4 to 2.2: nothing is published.</exception>
    public static double ExternalBendingFactor(double R_S)
    {
        PublishedRatios.Check(R_S);
        double x = Math.Max(R_S - 1, 0);
        return 0.8973 + x * (0.1022 + x * (1.5478 - x * (2.3158 - x * 0.9353)));
    }

    /// <summary>C_2 = 0.8973 + 0.1022 x + 1.5478 x² − 2.3158 x³ + 0.9353 x⁴ with x = R_S − 1: 5.594 − 13.682 R_S + 14.107 R_S² − 6.057 R_S³ + 0.9353 R_S⁴ about 1, where it does not cancel; R_S from 1 to 2.2.</summary>
    public static Equation<Func<double, double>> ExternalBendingFactorEquation { get; } = Equation.Define(
        ExternalBendingFactor, "engagement.external-bending-factor", Symbols.ExternalBendingFactor,
        "0.8973 + 0.1022*max(R_S - 1, 0) + 1.5478*max(R_S - 1, 0)^2 - 2.3158*max(R_S - 1, 0)^3 + 0.9353*max(R_S - 1, 0)^4", Reductions, Symbols.StrippingRatio);

    /// <summary>Factor for the bending of the internal thread; 0.897 as long as the external thread is the weaker one.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="R_S"/> is outside 0.4 to 2.2: nothing is published.</exception>
    public static double InternalBendingFactor(double R_S)
    {
        PublishedRatios.Check(R_S);
        double x = Math.Min(R_S, 1);
        return 0.728 + 1.769 * x - 2.896 * (x * x) + 1.296 * (x * x * x);
    }

    /// <summary>C_3 = 0.728 + 1.769 R_S − 2.896 R_S² + 1.296 R_S³, R_S from 0.4 to 1.</summary>
    public static Equation<Func<double, double>> InternalBendingFactorEquation { get; } = Equation.Define(
        InternalBendingFactor, "engagement.internal-bending-factor", Symbols.InternalBendingFactor,
        "0.728 + 1.769*min(R_S, 1) - 2.896*min(R_S, 1)^2 + 1.296*min(R_S, 1)^3", Reductions, Symbols.StrippingRatio);

    /// <summary>Force that strips the external thread, reduced for the widening of the nut and the bending of the threads.</summary>
    public static double ReducedExternalStripForce(double C_1, double C_2, double tau_s, double AS_s) => C_1 * C_2 * tau_s * AS_s;

    /// <summary>F_mGS = C_1 C_2 τ_s AS_s.</summary>
    public static Equation<Func<double, double, double, double, double>> ReducedExternalStripForceEquation { get; } = Equation.Define(
        ReducedExternalStripForce, "engagement.reduced-external-strip-force", Symbols.ExternalStripForce, "C_1*C_2*tau_s*AS_s", Reductions,
        Symbols.NutDilationFactor, Symbols.ExternalBendingFactor, Symbols.ExternalShearStrength, Symbols.ExternalShearArea);

    /// <summary>Force that strips the internal thread, reduced for the widening of the nut and the bending of the threads.</summary>
    public static double ReducedInternalStripForce(double C_1, double C_3, double tau_n, double AS_n) => C_1 * C_3 * tau_n * AS_n;

    /// <summary>F_mGM = C_1 C_3 τ_n AS_n.</summary>
    public static Equation<Func<double, double, double, double, double>> ReducedInternalStripForceEquation { get; } = Equation.Define(
        ReducedInternalStripForce, "engagement.reduced-internal-strip-force", Symbols.InternalStripForce, "C_1*C_3*tau_n*AS_n", Reductions,
        Symbols.NutDilationFactor, Symbols.InternalBendingFactor, Symbols.InternalShearStrength, Symbols.InternalShearArea);

    /// <summary>Force at which the engagement fails: the least of the three.</summary>
    public static double FailureForce(double F_mS, double F_mGS, double F_mGM) => Math.Min(F_mS, Math.Min(F_mGS, F_mGM));

    /// <summary>F_e = min(F_mS, F_mGS, F_mGM).</summary>
    public static Equation<Func<double, double, double, double>> FailureForceEquation { get; } = Equation.Define(
        FailureForce, "engagement.failure-force", Symbols.EngagementFailureForce, "min(F_mS, min(F_mGS, F_mGM))", "VDI 2230-1:2015 §5.5.5 (from memory)",
        Symbols.BoltBreakingForce, Symbols.ExternalStripForce, Symbols.InternalStripForce);

    /// <summary>Engaged length at which the external thread strips as the bolt breaks: the force to strip grows with the length.</summary>
    public static double ExternalLeastLength(double L_e, double F_mSmax, double F_mGS) => L_e * F_mSmax / F_mGS;

    /// <summary>L_GS = L_e F_mSmax/F_mGS.</summary>
    public static Equation<Func<double, double, double, double>> ExternalLeastLengthEquation { get; } = Equation.Define(
        ExternalLeastLength, "engagement.external-least-length", Symbols.ExternalLeastLength, "L_e*F_mSmax/F_mGS", "derived",
        Symbols.EngagedLength, Symbols.GreatestBoltBreakingForce, Symbols.ExternalStripForce);

    /// <summary>Engaged length at which the internal thread strips as the bolt breaks.</summary>
    public static double InternalLeastLength(double L_e, double F_mSmax, double F_mGM) => L_e * F_mSmax / F_mGM;

    /// <summary>L_GM = L_e F_mSmax/F_mGM.</summary>
    public static Equation<Func<double, double, double, double>> InternalLeastLengthEquation { get; } = Equation.Define(
        InternalLeastLength, "engagement.internal-least-length", Symbols.InternalLeastLength, "L_e*F_mSmax/F_mGM", "derived",
        Symbols.EngagedLength, Symbols.GreatestBoltBreakingForce, Symbols.InternalStripForce);

    /// <summary>Least engaged length for the bolt to break before either thread strips.</summary>
    public static double LeastEngagedLength(double L_GS, double L_GM) => Math.Max(L_GS, L_GM);

    /// <summary>L_min = max(L_GS, L_GM).</summary>
    public static Equation<Func<double, double, double>> LeastEngagedLengthEquation { get; } = Equation.Define(
        LeastEngagedLength, "engagement.least-engaged-length", Symbols.LeastEngagedLength, "max(L_GS, L_GM)", "VDI 2230-1:2015 §5.5.5 (from memory)",
        Symbols.ExternalLeastLength, Symbols.InternalLeastLength);

    /// <summary>Length of thread with the incomplete threads that do not carry.</summary>
    public static double TotalLength(double L_min, double n_i, double P) => L_min + n_i * P;

    /// <summary>m_ges = L_min + n_i P.</summary>
    public static Equation<Func<double, double, double, double>> TotalLengthEquation { get; } = Equation.Define(
        TotalLength, "engagement.total-length", Symbols.TotalThreadLength, "L_min + n_i*P",
        "VDI 2230-1 §5.5.5, R11: 2 pitches in 2015, 0.8 in 2003 (from memory)",
        Symbols.LeastEngagedLength, Symbols.IncompletePitches, Symbols.Pitch);
}
