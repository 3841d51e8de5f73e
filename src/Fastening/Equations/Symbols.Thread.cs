namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Nominal (major) diameter of the thread.</summary>
    public static Symbol NominalDiameter { get; } = new("d", SymbolUnit.Length, "nominal thread diameter", 1e-3, 0.2);

    /// <summary>Pitch: axial distance between neighbouring flanks.</summary>
    public static Symbol Pitch { get; } = new("P", SymbolUnit.Length, "pitch", 2e-4, 0.02);

    /// <summary>Number of starts.</summary>
    public static Symbol Starts { get; } = new("n_s", SymbolUnit.Count, "number of starts", 1, 8);

    /// <summary>Lead: axial travel in one turn.</summary>
    public static Symbol Lead { get; } = new("P_h", SymbolUnit.Length, "lead", 2e-4, 0.1);

    /// <summary>Height of the fundamental triangle.</summary>
    public static Symbol TriangleHeight { get; } = new("H", SymbolUnit.Length, "height of the fundamental triangle", 1.5e-4, 0.02);

    /// <summary>Pitch diameter.</summary>
    public static Symbol PitchDiameter { get; } = new("d_2", SymbolUnit.Length, "pitch diameter", 8e-4, 0.2);

    /// <summary>Root diameter of the external thread.</summary>
    public static Symbol RootDiameter { get; } = new("d_3", SymbolUnit.Length, "root diameter of the external thread", 7e-4, 0.2);

    /// <summary>Minor diameter of the internal thread.</summary>
    public static Symbol InternalMinorDiameter { get; } = new("D_1", SymbolUnit.Length, "minor diameter of the internal thread", 7e-4, 0.2);

    /// <summary>Diameter of the stress cross-section.</summary>
    public static Symbol StressDiameter { get; } = new("d_s", SymbolUnit.Length, "diameter of the stress cross-section", 7e-4, 0.2);

    /// <summary>Stress area of the thread.</summary>
    public static Symbol StressArea { get; } = new("A_s", SymbolUnit.Area, "stress area of the thread", 1e-7, 0.03);

    /// <summary>Diameter at which the minor area of a unified thread is tabulated.</summary>
    public static Symbol MinorAreaDiameter { get; } = new("d_r", SymbolUnit.Length, "diameter of the tabulated minor area", 7e-4, 0.2);

    /// <summary>Minor area of the thread.</summary>
    public static Symbol MinorArea { get; } = new("A_3", SymbolUnit.Area, "minor area of the thread", 1e-7, 0.03);

    /// <summary>Crest clearance of a trapezoidal or Acme thread, on the radius.</summary>
    public static Symbol CrestClearance { get; } = new("a_c", SymbolUnit.Length, "crest clearance on the radius", 1e-4, 1e-3);

    /// <summary>Lead angle at the pitch diameter.</summary>
    public static Symbol LeadAngle { get; } = new("phi", SymbolUnit.Angle, "lead angle", 0.2 * Degree, 40 * Degree);

    /// <summary>Angle of the load flank in the axial plane, measured from the normal to the axis: 30° for 60° threads.</summary>
    public static Symbol FlankAngle { get; } = new("alpha", SymbolUnit.Angle, "angle of the load flank in the axial plane", 0, 45 * Degree);
}
