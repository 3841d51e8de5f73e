namespace Fastening.Equations;

/// <summary>Where the pieces of the body of pressure around a bolt begin and end: lengths and diameters of cones and sleeves in the layers.</summary>
/// <remarks>SI doubles in and out, no checks.</remarks>
internal static class ConeGeometryEquations
{
    /// <summary>Grip with one section or layer more.</summary>
    public static double Grip(double l_K0, double l_i) => l_K0 + l_i;

    /// <summary>l_K = l_K0 + l_i.</summary>
    public static Equation<Func<double, double, double>> GripEquation { get; } = Equation.Define(
        Grip, "parts.grip", Symbols.Grip, "l_K0 + l_i", "geometry", Symbols.GripBefore, Symbols.SectionLength);

    /// <summary>Depth below the bearing face with one layer more.</summary>
    public static double Depth(double z_0, double l_p) => z_0 + l_p;

    /// <summary>z = z_0 + l_p.</summary>
    public static Equation<Func<double, double, double>> DepthEquation { get; } = Equation.Define(
        Depth, "parts.depth", Symbols.Depth, "z_0 + l_p", "geometry", Symbols.DepthBefore, Symbols.LayerThickness);

    /// <summary>Diameter of a cone at a depth below the bearing face.</summary>
    public static double ConeDiameter(double d_W, double z, double phi_c) => d_W + 2 * z * Math.Tan(phi_c);

    /// <summary>D_c = d_W + 2 z tan φ.</summary>
    public static Equation<Func<double, double, double, double>> ConeDiameterEquation { get; } = Equation.Define(
        ConeDiameter, "parts.cone-diameter", Symbols.ConeDiameter, "d_W + 2*z*tan(phi_c)", "geometry",
        Symbols.ConeBearingDiameter, Symbols.Depth, Symbols.ConeAngle);

    /// <summary>How much wider a cone gets with depth.</summary>
    public static double ConeGrowth(double phi_c) => 2 * Math.Tan(phi_c);

    /// <summary>g_c = 2 tan φ.</summary>
    public static Equation<Func<double, double>> ConeGrowthEquation { get; } = Equation.Define(
        ConeGrowth, "parts.cone-growth", Symbols.ConeGrowth, "2*tan(phi_c)", "geometry", Symbols.ConeAngle);

    /// <summary>Length of the cone from the head in a layer where it meets the cone from below.</summary>
    public static double MeetingCone(double l_p, double D_l, double D_c, double g_c) => Math.Max(0, Math.Min(l_p, l_p / 2 + (D_l - D_c) / (2 * g_c)));

    /// <summary>l_c = max(0, min(l_p, l_p/2 + (D_l − D_c)/(2 g_c))).</summary>
    public static Equation<Func<double, double, double, double, double>> MeetingConeEquation { get; } = Equation.Define(
        MeetingCone, "parts.meeting-cone", Symbols.ConeLength, "max(0, min(l_p, l_p/2 + (D_l - D_c)/(2*g_c)))", "geometry: two cones of one angle",
        Symbols.LayerThickness, Symbols.LowerConeDiameter, Symbols.ConeDiameter, Symbols.ConeGrowth);

    /// <summary>Length of a cone until it reaches the outside of the layer.</summary>
    public static double LimitedCone(double D_A, double D_c, double g_c) => Math.Max(0, (D_A - D_c) / g_c);

    /// <summary>l_c = max(0, (D_A − D_c)/g_c).</summary>
    public static Equation<Func<double, double, double, double>> LimitedConeEquation { get; } = Equation.Define(
        LimitedCone, "parts.limited-cone", Symbols.ConeLength, "max(0, (D_A - D_c)/g_c)", "geometry", Symbols.PartsDiameter, Symbols.ConeDiameter, Symbols.ConeGrowth);

    /// <summary>What a cone leaves of a layer.</summary>
    public static double LengthLeft(double l_p, double l_c) => l_p - l_c;

    /// <summary>l_i = l_p − l_c.</summary>
    public static Equation<Func<double, double, double>> LengthLeftEquation { get; } = Equation.Define(
        LengthLeft, "parts.length-left", Symbols.SectionLength, "l_p - l_c", "geometry", Symbols.LayerThickness, Symbols.ConeLength, "l_p - 1.01*l_c");

    /// <summary>Washer face of the textbooks.</summary>
    public static double WasherFace(double d) => 1.5 * d;

    /// <summary>d_W = 1.5 d.</summary>
    public static Equation<Func<double, double>> WasherFaceEquation { get; } = Equation.Define(
        WasherFace, "parts.washer-face", Symbols.ConeBearingDiameter, "1.5*d", "Shigley 9th ed. (2011) §8-5: washer face 1.5 d", Symbols.NominalDiameter);
}
