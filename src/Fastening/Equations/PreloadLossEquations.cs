namespace Fastening.Equations;

/// <summary>What a joint loses of its preload by embedding and by heat, and the assembly preload that makes up for it.</summary>
/// <remarks>SI doubles in and out, no checks. A loss is positive: the preload falls. A negative thermal loss is a gain.</remarks>
internal static class PreloadLossEquations
{
    /// <summary>Flattening of the threads and of the faces under head and nut.</summary>
    public static double FaceEmbedding(double N_th, double f_th, double N_f, double f_f) => N_th * f_th + N_f * f_f;

    /// <summary>f_b = N_th f_th + N_f f_f.</summary>
    public static Equation<Func<double, double, double, double, double>> FaceEmbeddingEquation { get; } = Equation.Define(
        FaceEmbedding, "joint.face-embedding", Symbols.FaceEmbedding, "N_th*f_th + N_f*f_f", "VDI 2230-1:2015 Table 5 (from memory)",
        Symbols.EngagedThreads, Symbols.ThreadEmbedding, Symbols.BearingFaces, Symbols.BearingFaceEmbedding);

    /// <summary>Flattening of all surfaces together.</summary>
    public static double TotalEmbedding(double f_b, double N_i, double f_i) => f_b + N_i * f_i;

    /// <summary>f_Z = f_b + N_i f_i.</summary>
    public static Equation<Func<double, double, double, double>> TotalEmbeddingEquation { get; } = Equation.Define(
        TotalEmbedding, "joint.embedding", Symbols.Embedding, "f_b + N_i*f_i", "VDI 2230-1:2015 Table 5 (from memory)",
        Symbols.FaceEmbedding, Symbols.InnerInterfaces, Symbols.InterfaceEmbedding);

    /// <summary>Preload lost by embedding.</summary>
    public static double EmbeddingLoss(double f_Z, double delta) => f_Z / delta;

    /// <summary>F_Z = f_Z/δ.</summary>
    public static Equation<Func<double, double, double>> EmbeddingLossEquation { get; } = Equation.Define(
        EmbeddingLoss, "joint.embedding-loss", Symbols.EmbeddingLoss, "f_Z/delta", "VDI 2230-1:2015 §5.4.2 (from memory)", Symbols.Embedding, Symbols.JointResilience);

    /// <summary>Resilience of the joint at temperature: each side softens with its own modulus.</summary>
    public static double HotResilience(double delta_S, double e_S, double delta_P, double e_P) => delta_S / e_S + delta_P / e_P;

    /// <summary>δ_T = δ_S/e_S + δ_P/e_P.</summary>
    public static Equation<Func<double, double, double, double, double>> HotResilienceEquation { get; } = Equation.Define(
        HotResilience, "joint.hot-resilience", Symbols.HotResilience, "delta_S/e_S + delta_P/e_P", "VDI 2230-1:2015 §5.4.2.3 (from memory); derived",
        Symbols.BoltResilience, Symbols.BoltModulusRatio, Symbols.PartsResilience, Symbols.PartsModulusRatio);

    /// <summary>Free growth of the sections of the bolt, or of the layers: one added to those before it.</summary>
    public static double FreeGrowth(double u_e0, double l_i, double alpha_i, double dT_i) => u_e0 + l_i * alpha_i * dT_i;

    /// <summary>u = u_e0 + l_i α_i dT_i.</summary>
    public static Equation<Func<double, double, double, double, double>> FreeGrowthEquation { get; } = Equation.Define(
        FreeGrowth, "joint.free-growth", Symbols.FreeGrowth, "u_e0 + l_i*alpha_i*dT_i", "VDI 2230-1:2015 §5.4.2.3 (from memory); derived",
        Symbols.EarlierGrowth, Symbols.SectionLength, Symbols.PieceExpansion, Symbols.PieceWarming);

    /// <summary>Preload lost by a change of temperature: the bolt that grows more than the parts loses, and the softer joint holds less.</summary>
    public static double ThermalLoss(double F_V, double delta, double delta_T, double u_S, double u_P) =>
        (F_V * (delta_T - delta) + (u_S - u_P)) / delta_T;

    /// <summary>F_T = (F_V (δ_T − δ) + (u_S − u_P))/δ_T.</summary>
    public static Equation<Func<double, double, double, double, double, double>> ThermalLossEquation { get; } = Equation.Define(
        ThermalLoss, "joint.thermal-loss", Symbols.ThermalLoss, "(F_V*(delta_T - delta) + (u_S - u_P))/delta_T",
        "VDI 2230-1:2015 §5.4.2.3 (from memory); derived: free expansion, then compatibility",
        Symbols.WorkingPreload, Symbols.JointResilience, Symbols.HotResilience, Symbols.BoltGrowth, Symbols.PartsGrowth);

    /// <summary>Thermal loss counted back from the force that must be left at temperature.</summary>
    public static double ThermalLossBehind(double F_R, double delta, double delta_T, double u_S, double u_P) =>
        (F_R * (delta_T - delta) + u_S - u_P) / delta;

    /// <summary>F_T = (F_R (δ_T − δ) + u_S − u_P)/δ.</summary>
    public static Equation<Func<double, double, double, double, double, double>> ThermalLossBehindEquation { get; } = Equation.Define(
        ThermalLossBehind, "joint.thermal-loss-behind", Symbols.ThermalLoss, "(F_R*(delta_T - delta) + u_S - u_P)/delta",
        "derived: the inverse of joint.thermal-loss, F_V - F_T = F_R",
        Symbols.ForceToKeep, Symbols.JointResilience, Symbols.HotResilience, Symbols.BoltGrowth, Symbols.PartsGrowth);

    /// <summary>Preload that is left after embedding and at temperature; none once the losses have used it up.</summary>
    public static double PreloadLeft(double F_M, double F_Z, double F_T) => Math.Max(F_M - F_Z - F_T, 0);

    /// <summary>F_V = max(F_M − F_Z − F_T, 0).</summary>
    public static Equation<Func<double, double, double, double>> PreloadLeftEquation { get; } = Equation.Define(
        PreloadLeft, "joint.preload-left", Symbols.WorkingPreload, "max(F_M - F_Z - F_T, 0)", "VDI 2230-1:2015 §5.4.2 (from memory); derived",
        Symbols.AssemblyPreload, Symbols.EmbeddingLoss, Symbols.ThermalLoss);

    /// <summary>Preload that must be left in service: the clamp force required and what the axial load takes from the interface.</summary>
    public static double PreloadToKeep(double F_Kreq, double Phi, double F_A) => Math.Max(F_Kreq + (1 - Phi) * F_A, 0);

    /// <summary>F_R = max(F_Kreq + (1 − Φ) F_A, 0).</summary>
    public static Equation<Func<double, double, double, double>> PreloadToKeepEquation { get; } = Equation.Define(
        PreloadToKeep, "joint.preload-to-keep", Symbols.ForceToKeep, "max(F_Kreq + (1 - Phi)*F_A, 0)", "VDI 2230-1:2015 §5.4.2 (R5, from memory)",
        Symbols.RequiredClamp, Symbols.WorkingLoadFactor, Symbols.AxialLoad);

    /// <summary>Least assembly preload; a thermal gain does not reduce it, because the joint must also hold cold.</summary>
    public static double LeastAssemblyPreload(double F_R, double F_Z, double F_T) => F_R + F_Z + Math.Max(F_T, 0);

    /// <summary>F_Mmin = F_R + F_Z + max(F_T, 0).</summary>
    public static Equation<Func<double, double, double, double>> LeastAssemblyPreloadEquation { get; } = Equation.Define(
        LeastAssemblyPreload, "joint.least-assembly-preload", Symbols.LeastAssemblyPreload, "F_R + F_Z + max(F_T, 0)", "VDI 2230-1:2015 §5.4.2 (R5, from memory)",
        Symbols.ForceToKeep, Symbols.EmbeddingLoss, Symbols.ThermalLoss);

    /// <summary>Greatest assembly preload that the scatter of the tightening makes of the least.</summary>
    public static double GreatestAssemblyPreload(double alpha_A, double F_Mmin) => alpha_A * F_Mmin;

    /// <summary>F_Mmax = α_A F_Mmin.</summary>
    public static Equation<Func<double, double, double>> GreatestAssemblyPreloadEquation { get; } = Equation.Define(
        GreatestAssemblyPreload, "joint.greatest-assembly-preload", Symbols.GreatestAssemblyPreload, "alpha_A*F_Mmin", "VDI 2230-1:2015 §5.4.3 (R6, from memory)",
        Symbols.TighteningFactor, Symbols.LeastAssemblyPreload);
}
