namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Torque in the thread, which twists the shank.</summary>
    public static Symbol ShankTorque { get; } = new("M_T", SymbolUnit.Torque, "torque that twists the shank", 1e-3, 1e5);

    /// <summary>Least diameter of the waisted shank.</summary>
    public static Symbol WaistDiameter { get; } = new("d_T", SymbolUnit.Length, "waist diameter of the shank", 7e-4, 0.2);

    /// <summary>Diameter of the governing cross-section.</summary>
    public static Symbol SectionDiameter { get; } = new("d_0", SymbolUnit.Length, "diameter of the governing cross-section", 7e-4, 0.2);

    /// <summary>Area of the governing cross-section.</summary>
    public static Symbol SectionArea { get; } = new("A_0", SymbolUnit.Area, "area of the governing cross-section", 3e-7, 0.03);

    /// <summary>Torsional section modulus.</summary>
    public static Symbol SectionModulus { get; } = new("W_p", SymbolUnit.SectionModulus, "torsional section modulus", 5e-11, 2e-3);

    /// <summary>Tensile stress.</summary>
    public static Symbol TensileStress { get; } = new("sigma", SymbolUnit.Stress, "tensile stress", 1e5, 2e9);

    /// <summary>Torsional stress.</summary>
    public static Symbol TorsionalStress { get; } = new("tau", SymbolUnit.Stress, "torsional stress", 0, 2e9);

    /// <summary>Equivalent stress (von Mises).</summary>
    public static Symbol EquivalentStress { get; } = new("sigma_red", SymbolUnit.Stress, "equivalent stress (von Mises)", 1e5, 4e9);

    /// <summary>Tensile stress per unit preload.</summary>
    public static Symbol TensionPerPreload { get; } = new("s_sigma", SymbolUnit.StressPerForce, "tensile stress per unit preload", 30, 3e6);

    /// <summary>Torsional stress per unit preload, times √3.</summary>
    public static Symbol TorsionPerPreload { get; } = new("s_tau", SymbolUnit.StressPerForce, "torsional stress per unit preload, times √3", 3, 1e8);

    /// <summary>Stress of the prevailing torque, times √3.</summary>
    public static Symbol PrevailingStress { get; } = new("tau_p", SymbolUnit.Stress, "torsional stress of the prevailing torque, times √3", 0, 1e9);

    /// <summary>Yield strength.</summary>
    public static Symbol YieldStrength { get; } = new("R_p", SymbolUnit.Stress, "minimum yield strength", 1e8, 2e9);

    /// <summary>Utilisation of the yield strength.</summary>
    public static Symbol Utilisation { get; } = new("nu", SymbolUnit.Ratio, "utilisation of the yield strength", 0.05, 1);

    /// <summary>Equivalent stress that may be used.</summary>
    public static Symbol PermittedStress { get; } = new("sigma_lim", SymbolUnit.Stress, "permitted equivalent stress", 1e7, 2e9);
}
