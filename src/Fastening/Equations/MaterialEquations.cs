namespace Fastening.Equations;

/// <summary>Loads of a bolt from its strength, and elastic constants.</summary>
/// <remarks>SI doubles in and out, no checks.</remarks>
internal static class MaterialEquations
{
    /// <summary>Minimum ultimate tensile load: the least load at which the threaded part may break.</summary>
    public static double UltimateLoad(double R_m, double A_s) => R_m * A_s;

    /// <summary>F_m = R_m A_s.</summary>
    public static Equation<Func<double, double, double>> UltimateLoadEquation { get; } = Equation.Define(
        UltimateLoad, "material.ultimate-load", Symbols.UltimateLoad, "R_m*A_s", "ISO 898-1:2013, minimum ultimate tensile loads",
        Symbols.TensileStrength, Symbols.StressArea);

    /// <summary>Proof load: the load that the bolt carries without permanent set.</summary>
    public static double ProofLoad(double S_p, double A_s) => S_p * A_s;

    /// <summary>F_p = S_p A_s.</summary>
    public static Equation<Func<double, double, double>> ProofLoadEquation { get; } = Equation.Define(
        ProofLoad, "material.proof-load", Symbols.ProofLoad, "S_p*A_s", "ISO 898-1:2013, proof loads; Shigley 9th ed. (2011) eq. (8-32)",
        Symbols.ProofStress, Symbols.StressArea);

    /// <summary>Yield strength at a temperature between two that are tabulated: the straight line between them.</summary>
    public static double HotYieldStrength(double R_p1, double R_p2, double T_1, double T_2, double T_S) => (R_p1 * (T_2 - T_S) + R_p2 * (T_S - T_1)) / (T_2 - T_1);

    /// <summary>R_pT = (R_p1 (T_2 − T_S) + R_p2 (T_S − T_1))/(T_2 − T_1), T_1 ≤ T_S ≤ T_2.</summary>
    public static Equation<Func<double, double, double, double, double, double>> HotYieldStrengthEquation { get; } = Equation.Define(
        HotYieldStrength, "material.hot-yield-strength", Symbols.HotYieldStrength, "(R_p1*(T_2 - T_S) + R_p2*(T_S - T_1))/(T_2 - T_1)",
        "ISO 898-1 (1988 and 1999), informative annex, read in a table that reproduces it; the straight line is a choice",
        Symbols.YieldStrengthBelow, Symbols.YieldStrengthAbove, Symbols.TemperatureBelow, Symbols.TemperatureAbove, Symbols.BoltTemperature,
        "min(min(T_S - T_1, T_2 - T_S) + 0.001, T_2 - T_1 - 1)");

    /// <summary>Shear modulus of an isotropic material.</summary>
    public static double ShearModulus(double E_Y, double nu_P) => E_Y / (2 * (1 + nu_P));

    /// <summary>G = E/(2(1 + ν)).</summary>
    public static Equation<Func<double, double, double>> ShearModulusEquation { get; } = Equation.Define(
        ShearModulus, "material.shear-modulus", Symbols.ShearModulus, "E_Y/(2*(1 + nu_P))", "isotropic elasticity, any textbook of strength of materials",
        Symbols.YoungsModulus, Symbols.PoissonRatio);
}
