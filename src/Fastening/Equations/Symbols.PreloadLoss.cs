namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Resilience of bolt and parts at temperature.</summary>
    public static Symbol HotResilience { get; } = new("delta_T", SymbolUnit.Resilience, "resilience of bolt and parts at temperature", 1e-11, 1e-6);

    /// <summary>Modulus of the bolt at temperature over that at assembly.</summary>
    public static Symbol BoltModulusRatio { get; } = new("e_S", SymbolUnit.Ratio, "modulus of the bolt at temperature over that at assembly", 0.2, 2);

    /// <summary>Modulus of the parts at temperature over that at assembly.</summary>
    public static Symbol PartsModulusRatio { get; } = new("e_P", SymbolUnit.Ratio, "modulus of the parts at temperature over that at assembly", 0.2, 2);

    /// <summary>Number of engaged threads.</summary>
    public static Symbol EngagedThreads { get; } = new("N_th", SymbolUnit.Count, "number of engaged threads", 0, 4);

    /// <summary>Number of faces under heads and nuts.</summary>
    public static Symbol BearingFaces { get; } = new("N_f", SymbolUnit.Count, "number of faces under heads and nuts", 0, 8);

    /// <summary>Number of interfaces between the parts.</summary>
    public static Symbol InnerInterfaces { get; } = new("N_i", SymbolUnit.Count, "number of interfaces between the parts", 0, 20);

    /// <summary>Embedding of an engaged thread.</summary>
    public static Symbol ThreadEmbedding { get; } = new("f_th", SymbolUnit.Deflection, "embedding of an engaged thread", 0, 1e-4);

    /// <summary>Embedding of a face under head or nut.</summary>
    public static Symbol BearingFaceEmbedding { get; } = new("f_f", SymbolUnit.Deflection, "embedding of a face under head or nut", 0, 1e-4);

    /// <summary>Embedding of an interface between the parts.</summary>
    public static Symbol InterfaceEmbedding { get; } = new("f_i", SymbolUnit.Deflection, "embedding of an interface between the parts", 0, 1e-4);

    /// <summary>Embedding of threads, head and nut.</summary>
    public static Symbol FaceEmbedding { get; } = new("f_b", SymbolUnit.Deflection, "embedding of threads, head and nut", 0, 1e-3);

    /// <summary>Embedding of all surfaces.</summary>
    public static Symbol Embedding { get; } = new("f_Z", SymbolUnit.Deflection, "embedding of all surfaces", 0, 1e-3);

    /// <summary>Preload lost by embedding.</summary>
    public static Symbol EmbeddingLoss { get; } = new("F_Z", SymbolUnit.Force, "preload lost by embedding", 0, 1e6);

    /// <summary>Thermal expansion of the section or layer.</summary>
    public static Symbol PieceExpansion { get; } = new("alpha_i", SymbolUnit.ThermalExpansion, "thermal expansion of the section or layer", -1e-4, 1e-4);

    /// <summary>Warming of the section or layer since assembly.</summary>
    public static Symbol PieceWarming { get; } = new("dT_i", SymbolUnit.TemperatureChange, "warming of the section or layer since assembly", -300, 1500);

    /// <summary>Free growth of the bolt over the grip.</summary>
    public static Symbol BoltGrowth { get; } = new("u_S", SymbolUnit.Deflection, "free growth of the bolt over the grip", -1e-2, 1e-2);

    /// <summary>Free growth of the pieces so far.</summary>
    public static Symbol FreeGrowth { get; } = new("u", SymbolUnit.Deflection, "free growth, this piece included", -1e-2, 1e-2);

    /// <summary>Free growth of the pieces before this one.</summary>
    public static Symbol EarlierGrowth { get; } = new("u_e0", SymbolUnit.Deflection, "free growth of the pieces before this one", -1e-2, 1e-2);

    /// <summary>Free growth of the parts.</summary>
    public static Symbol PartsGrowth { get; } = new("u_P", SymbolUnit.Deflection, "free growth of the parts", -1e-2, 1e-2);

    /// <summary>Preload lost by heat (negative: gained).</summary>
    public static Symbol ThermalLoss { get; } = new("F_T", SymbolUnit.Force, "preload lost by heat (negative: gained)", -1e6, 1e6);

    /// <summary>Preload that must be left in service.</summary>
    public static Symbol ForceToKeep { get; } = new("F_R", SymbolUnit.Force, "preload that must be left in service", 0, 1e6);

    /// <summary>Clamp force required in the interface.</summary>
    public static Symbol RequiredClamp { get; } = new("F_Kreq", SymbolUnit.Force, "clamp force required in the interface", 0, 1e6);

    /// <summary>Assembly preload.</summary>
    public static Symbol AssemblyPreload { get; } = new("F_M", SymbolUnit.Force, "assembly preload", 0, 1e6);

    /// <summary>Least assembly preload required.</summary>
    public static Symbol LeastAssemblyPreload { get; } = new("F_Mmin", SymbolUnit.Force, "least assembly preload required", 0, 1e6);

    /// <summary>Greatest assembly preload that the scatter makes of the least.</summary>
    public static Symbol GreatestAssemblyPreload { get; } = new("F_Mmax", SymbolUnit.Force, "greatest assembly preload that the scatter makes of the least", 0, 1e9);
}
