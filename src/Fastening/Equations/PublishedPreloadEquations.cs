namespace Fastening.Equations;

/// <summary>The preloads that published rules call for, each by its own name.</summary>
/// <remarks>SI doubles in and out, no checks. None is a default.</remarks>
internal static class PublishedPreloadEquations
{
    /// <summary>Recommended preload of a joint that is to be dismantled and its bolts used again.</summary>
    public static double ReusableJoint(double F_p) => 0.75 * F_p;

    /// <summary>F = 0.75 F_p.</summary>
    public static Equation<Func<double, double>> ReusableJointEquation { get; } = Equation.Define(
        ReusableJoint, "preload.reusable-joint", Symbols.Preload, "0.75*F_p", "Shigley 9th ed. (2011) eq. (8-31)", Symbols.ProofLoad);

    /// <summary>Recommended preload of a permanent joint.</summary>
    public static double PermanentJoint(double F_p) => 0.9 * F_p;

    /// <summary>F = 0.9 F_p.</summary>
    public static Equation<Func<double, double>> PermanentJointEquation { get; } = Equation.Define(
        PermanentJoint, "preload.permanent-joint", Symbols.Preload, "0.9*F_p", "Shigley 9th ed. (2011) eq. (8-31)", Symbols.ProofLoad);

    /// <summary>Minimum preloading force F_p,C of a preloaded structural bolt, with the <em>nominal</em> tensile strength.</summary>
    public static double StructuralEurope(double f_ub, double A_s) => 0.7 * f_ub * A_s;

    /// <summary>F_p,C = 0.7 f_ub A_s.</summary>
    public static Equation<Func<double, double, double>> StructuralEuropeEquation { get; } = Equation.Define(
        StructuralEurope, "preload.structural-europe", Symbols.Preload, "0.7*f_ub*A_s", "EN 1090-2:2008+A1:2011 §8.5.1, F_p,C",
        Symbols.NominalTensileStrength, Symbols.StressArea);

    /// <summary>Regular preloading force F_p,C* of the German annex, with the <em>nominal</em> yield strength.</summary>
    public static double StructuralGermany(double f_yb, double A_s) => 0.7 * f_yb * A_s;

    /// <summary>F_p,C* = 0.7 f_yb A_s.</summary>
    public static Equation<Func<double, double, double>> StructuralGermanyEquation { get; } = Equation.Define(
        StructuralGermany, "preload.structural-germany", Symbols.Preload, "0.7*f_yb*A_s", "DIN EN 1993-1-8/NA:2010, F_p,C*",
        Symbols.NominalYieldStrength, Symbols.StressArea);

    /// <summary>Minimum pretension of a structural bolt: 70 % of its minimum tensile strength.</summary>
    public static double StructuralAmerica(double R_m, double A_s) => 0.7 * R_m * A_s;

    /// <summary>T_m = 0.7 R_m A_s.</summary>
    public static Equation<Func<double, double, double>> StructuralAmericaEquation { get; } = Equation.Define(
        StructuralAmerica, "preload.structural-america", Symbols.MinimumPretension, "0.7*R_m*A_s", "AISC 360-05 Table J3.1",
        Symbols.TensileStrength, Symbols.StressArea);

    /// <summary>Pretension to be reached in the pre-installation verification test.</summary>
    public static double PreInstallationVerification(double T_m) => 1.05 * T_m;

    /// <summary>F = 1.05 T_m.</summary>
    public static Equation<Func<double, double>> PreInstallationVerificationEquation { get; } = Equation.Define(
        PreInstallationVerification, "preload.pre-installation-verification", Symbols.Preload, "1.05*T_m", "RCSC 2014 §7 (from memory)",
        Symbols.MinimumPretension);
}
