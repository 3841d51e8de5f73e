namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Load introduction factor: share of the parts that the load relieves.</summary>
    public static Symbol LoadIntroductionFactor { get; } = new("n", SymbolUnit.Ratio, "load introduction factor: share of the parts that the load relieves", 0, 1);

    /// <summary>Load factor: share of the axial load that the bolt feels.</summary>
    public static Symbol WorkingLoadFactor { get; } = new("Phi", SymbolUnit.Ratio, "load factor: share of the axial load that the bolt feels", 0, 0.999);

    /// <summary>Preload in service, losses taken off.</summary>
    public static Symbol WorkingPreload { get; } = new("F_V", SymbolUnit.Force, "preload in service, losses taken off", 0, 1e6);

    /// <summary>Axial load on the bolt (negative: presses the parts together).</summary>
    public static Symbol AxialLoad { get; } = new("F_A", SymbolUnit.Force, "axial load on the bolt (negative: presses the parts together)", -1e6, 1e6);

    /// <summary>Axial load on the bolt, pulling.</summary>
    public static Symbol TensileLoad { get; } = new("F_At", SymbolUnit.Force, "axial load on the bolt, pulling", 1, 1e6);

    /// <summary>Force in the bolt.</summary>
    public static Symbol BoltForce { get; } = new("F_S", SymbolUnit.Force, "force in the bolt", 0, 1e6);

    /// <summary>Clamp force left in the interface.</summary>
    public static Symbol ClampForce { get; } = new("F_K", SymbolUnit.Force, "clamp force left in the interface", 0, 1e6);

    /// <summary>Axial load at which the parts separate.</summary>
    public static Symbol SeparationLoad { get; } = new("F_sep", SymbolUnit.Force, "axial load at which the parts separate", 0, 1e9);

    /// <summary>Tension that a pressing load takes from the bolt.</summary>
    public static Symbol BoltRelief { get; } = new("F_rel", SymbolUnit.Force, "tension that a pressing load takes from the bolt", 0, 1e6);

    /// <summary>Factor against passing the proof strength.</summary>
    public static Symbol YieldingFactor { get; } = new("n_p", SymbolUnit.Ratio, "factor against passing the proof strength", 0, 1e9);

    /// <summary>Factor by which the load may grow up to the proof strength.</summary>
    public static Symbol OverloadFactor { get; } = new("n_L", SymbolUnit.Ratio, "factor by which the load may grow up to the proof strength", -1e9, 1e9);

    /// <summary>Factor against separation.</summary>
    public static Symbol SeparationFactor { get; } = new("n_0", SymbolUnit.Ratio, "factor against separation", 0, 1e9);

    /// <summary>Resilience of all that stretches with the bolt.</summary>
    public static Symbol LoadedResilience { get; } = new("delta_So", SymbolUnit.Resilience, "resilience of bolt and parts outside the load", 1e-12, 2e-6);
}
