namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Minimum tensile strength.</summary>
    public static Symbol TensileStrength { get; } = new("R_m", SymbolUnit.Stress, "minimum tensile strength", 1e8, 2e9);

    /// <summary>Stress under proof load.</summary>
    public static Symbol ProofStress { get; } = new("S_p", SymbolUnit.Stress, "stress under proof load", 1e8, 2e9);

    /// <summary>Minimum ultimate tensile load.</summary>
    public static Symbol UltimateLoad { get; } = new("F_m", SymbolUnit.Force, "minimum ultimate tensile load", 1, 6e7);

    /// <summary>Proof load.</summary>
    public static Symbol ProofLoad { get; } = new("F_p", SymbolUnit.Force, "proof load", 1, 1e6);

    /// <summary>Nominal tensile strength, as the designation of the property class says it.</summary>
    public static Symbol NominalTensileStrength { get; } = new("f_ub", SymbolUnit.Stress, "nominal tensile strength of the bolt", 1e8, 2e9);

    /// <summary>Nominal yield strength, as the designation of the property class says it.</summary>
    public static Symbol NominalYieldStrength { get; } = new("f_yb", SymbolUnit.Stress, "nominal yield strength of the bolt", 1e8, 2e9);

    /// <summary>Minimum pretension of a structural bolt.</summary>
    public static Symbol MinimumPretension { get; } = new("T_m", SymbolUnit.Force, "minimum pretension", 1, 6e7);

    /// <summary>Yield strength at temperature.</summary>
    public static Symbol HotYieldStrength { get; } = new("R_pT", SymbolUnit.Stress, "yield strength at temperature", 1e7, 2e9);

    /// <summary>Yield strength at the tabulated temperature below.</summary>
    public static Symbol YieldStrengthBelow { get; } = new("R_p1", SymbolUnit.Stress, "yield strength at the tabulated temperature below", 1e7, 2e9);

    /// <summary>Yield strength at the tabulated temperature above.</summary>
    public static Symbol YieldStrengthAbove { get; } = new("R_p2", SymbolUnit.Stress, "yield strength at the tabulated temperature above", 1e7, 2e9);

    /// <summary>Tabulated temperature below.</summary>
    public static Symbol TemperatureBelow { get; } = new("T_1", SymbolUnit.Celsius, "tabulated temperature below", 20, 1000);

    /// <summary>Tabulated temperature above.</summary>
    public static Symbol TemperatureAbove { get; } = new("T_2", SymbolUnit.Celsius, "tabulated temperature above", 20, 1000);

    /// <summary>Temperature of the bolt.</summary>
    public static Symbol BoltTemperature { get; } = new("T_S", SymbolUnit.Celsius, "temperature of the bolt", 20, 1000);

    /// <summary>Young's modulus.</summary>
    public static Symbol YoungsModulus { get; } = new("E_Y", SymbolUnit.Stress, "Young's modulus", 1e9, 1e12);

    /// <summary>Poisson's ratio.</summary>
    public static Symbol PoissonRatio { get; } = new("nu_P", SymbolUnit.Ratio, "Poisson's ratio", 0, 0.5);
}
