namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Share of the torsion of tightening that stays.</summary>
    public static Symbol TorsionShare { get; } = new("k_tau", SymbolUnit.Ratio, "share of the torsion of tightening that stays", 0, 1);

    /// <summary>Torsional stress left in service.</summary>
    public static Symbol ResidualTorsion { get; } = new("tau_B", SymbolUnit.Stress, "torsional stress left in service", 0, 2e9);

    /// <summary>Greatest force in the bolt.</summary>
    public static Symbol UpperBoltForce { get; } = new("F_So", SymbolUnit.Force, "greatest force in the bolt", 0, 1e6);

    /// <summary>Least force in the bolt.</summary>
    public static Symbol LowerBoltForce { get; } = new("F_Su", SymbolUnit.Force, "least force in the bolt", 0, 1e6);

    /// <summary>Amplitude of the tensile stress.</summary>
    public static Symbol StressAmplitude { get; } = new("sigma_a", SymbolUnit.Stress, "amplitude of the tensile stress", -2e9, 2e9);

    /// <summary>Area of the bearing surface.</summary>
    public static Symbol BearingArea { get; } = new("A_b", SymbolUnit.Area, "area of the bearing surface", 1e-6, 0.2);

    /// <summary>Greatest force in the bolt, at assembly or in service.</summary>
    public static Symbol GreatestBoltForce { get; } = new("F_Smax", SymbolUnit.Force, "greatest force in the bolt, at assembly or in service", 0, 1e6);

    /// <summary>Pressure on the bearing surface.</summary>
    public static Symbol BearingPressure { get; } = new("p", SymbolUnit.Stress, "pressure on the bearing surface", 0, 1e12);

    /// <summary>Force that can be borne, or is there.</summary>
    public static Symbol ForceCapacity { get; } = new("F_cap", SymbolUnit.Force, "force that can be borne, or is there", 0, 1e8);

    /// <summary>Required force.</summary>
    public static Symbol ForceDemand { get; } = new("F_dem", SymbolUnit.Force, "required force", 1e-3, 1e8);

    /// <summary>Safety factor: available over required force.</summary>
    public static Symbol ForceSafety { get; } = new("S_F", SymbolUnit.Ratio, "safety factor: available over required force", 0, 1e12);

    /// <summary>Permitted stress.</summary>
    public static Symbol StressCapacity { get; } = new("sigma_cap", SymbolUnit.Stress, "permitted stress", 1e3, 1e11);

    /// <summary>Stress in service.</summary>
    public static Symbol StressDemand { get; } = new("sigma_dem", SymbolUnit.Stress, "stress in service", 1, 1e11);

    /// <summary>Safety: permitted stress over stress.</summary>
    public static Symbol StressSafety { get; } = new("S_sigma", SymbolUnit.Ratio, "safety: permitted stress over stress", 0, 1e12);
}
