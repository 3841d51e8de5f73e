namespace Fastening.Equations;

/// <summary>How an axial load is shared between the bolt and the clamped parts, up to separation and beyond.</summary>
/// <remarks>
/// SI doubles in and out, no checks. Concentric clamping and concentric load: an eccentric joint opens earlier. Forces are in the bolt and in
/// the interface; a negative axial load presses the parts together. Neither bolt nor interface carries less than nothing.
/// </remarks>
internal static class LoadShareEquations
{
    /// <summary>Load factor: the share of the axial load that the bolt feels while the joint is closed.</summary>
    public static double WorkingLoadFactor(double n, double Phi_K) => n * Phi_K;

    /// <summary>Φ = n Φ_K.</summary>
    public static Equation<Func<double, double, double>> WorkingLoadFactorEquation { get; } = Equation.Define(
        WorkingLoadFactor, "joint.working-load-factor", Symbols.WorkingLoadFactor, "n*Phi_K", "VDI 2230-1:2015 §5.3 (from memory)", Symbols.LoadIntroductionFactor, Symbols.LoadFactor);

    /// <summary>Force in the bolt: preload and its share of the load, the whole load once the parts have separated, none once a pressing load has made it slack.</summary>
    public static double BoltForce(double F_V, double Phi, double F_A) => Math.Max(F_V + Phi * F_A, Math.Max(F_A, 0));

    /// <summary>F_S = max(F_V + Φ F_A, max(F_A, 0)).</summary>
    public static Equation<Func<double, double, double, double>> BoltForceEquation { get; } = Equation.Define(
        BoltForce, "joint.bolt-force", Symbols.BoltForce, "max(F_V + Phi*F_A, max(F_A, 0))", "VDI 2230-1:2015 §5.3 (from memory) up to separation and slackness; beyond: equilibrium, derived",
        Symbols.WorkingPreload, Symbols.WorkingLoadFactor, Symbols.AxialLoad);

    /// <summary>Clamp force in the interface; none once the parts have separated, the whole load once it presses so hard that the bolt is slack.</summary>
    public static double ClampForce(double F_V, double Phi, double F_A) => Math.Max(F_V - (1 - Phi) * F_A, Math.Max(-F_A, 0));

    /// <summary>F_K = max(F_V − (1 − Φ) F_A, max(−F_A, 0)).</summary>
    public static Equation<Func<double, double, double, double>> ClampForceEquation { get; } = Equation.Define(
        ClampForce, "joint.clamp-force", Symbols.ClampForce, "max(F_V - (1 - Phi)*F_A, max(-F_A, 0))", "VDI 2230-1:2015 §5.3 (from memory) up to separation and slackness; beyond: derived",
        Symbols.WorkingPreload, Symbols.WorkingLoadFactor, Symbols.AxialLoad);

    /// <summary>Axial load at which the clamp force is used up.</summary>
    public static double SeparationLoad(double F_V, double Phi) => F_V / (1 - Phi);

    /// <summary>F_sep = F_V/(1 − Φ).</summary>
    public static Equation<Func<double, double, double>> SeparationLoadEquation { get; } = Equation.Define(
        SeparationLoad, "joint.separation-load", Symbols.SeparationLoad, "F_V/(1 - Phi)", "VDI 2230-1:2015 §5.3 (from memory); Shigley 9th ed. (2011) §8-9",
        Symbols.WorkingPreload, Symbols.WorkingLoadFactor);

    /// <summary>Resilience of all that stretches with the bolt: the bolt, and the parts outside the points where the load enters.</summary>
    public static double LoadedResilience(double delta_S, double n, double delta_P) => delta_S + (1 - n) * delta_P;

    /// <summary>δ_So = δ_S + (1 − n) δ_P.</summary>
    public static Equation<Func<double, double, double, double>> LoadedResilienceEquation { get; } = Equation.Define(
        LoadedResilience, "joint.loaded-resilience", Symbols.LoadedResilience, "delta_S + (1 - n)*delta_P", "VDI 2230-1:2015 §5.2.2 (from memory); derived",
        Symbols.BoltResilience, Symbols.LoadIntroductionFactor, Symbols.PartsResilience);

    /// <summary>Gap between parts that have separated.</summary>
    public static double Gap(double f_S, double f_0) => Math.Max(f_S - f_0, 0);

    /// <summary>f_g = max(f_S − f_0, 0).</summary>
    public static Equation<Func<double, double, double>> GapEquation { get; } = Equation.Define(
        Gap, "joint.gap", Symbols.Gap, "max(f_S - f_0, 0)", "geometry", Symbols.Elongation, Symbols.ElongationAtSeparation, "f_S - 1.01*f_0");

    /// <summary>Tension that a pressing load takes from the bolt.</summary>
    public static double BoltRelief(double Phi, double F_A) => Math.Max(-Phi * F_A, 0);

    /// <summary>F_rel = max(−Φ F_A, 0).</summary>
    public static Equation<Func<double, double, double>> BoltReliefEquation { get; } = Equation.Define(
        BoltRelief, "joint.bolt-relief", Symbols.BoltRelief, "max(-Phi*F_A, 0)", "VDI 2230-1:2015 §5.3 (from memory); derived", Symbols.WorkingLoadFactor, Symbols.AxialLoad);

    /// <summary>Shigley's factor against passing the proof strength.</summary>
    public static double YieldingFactor(double F_p, double F_V, double Phi_K, double F_At) => F_p / (Phi_K * F_At + F_V);

    /// <summary>n_p = F_p/(Φ_K F_At + F_V).</summary>
    public static Equation<Func<double, double, double, double, double>> YieldingFactorEquation { get; } = Equation.Define(
        YieldingFactor, "joint.yielding-factor", Symbols.YieldingFactor, "F_p/(Phi_K*F_At + F_V)", "Shigley 9th ed. (2011) eq. (8-28): n_p = S_p A_t/(C P + F_i)",
        Symbols.ProofLoad, Symbols.WorkingPreload, Symbols.LoadFactor, Symbols.TensileLoad, "100*(Phi_K*F_At + F_V) - F_p");

    /// <summary>Shigley's load factor against overloading: by how much the load, not the preload, may grow up to the proof strength.</summary>
    public static double OverloadFactor(double F_p, double F_V, double Phi_K, double F_At) => (F_p - F_V) / (Phi_K * F_At);

    /// <summary>n_L = (F_p − F_V)/(Φ_K F_At).</summary>
    public static Equation<Func<double, double, double, double, double>> OverloadFactorEquation { get; } = Equation.Define(
        OverloadFactor, "joint.overload-factor", Symbols.OverloadFactor, "(F_p - F_V)/(Phi_K*F_At)", "Shigley 9th ed. (2011) eq. (8-29): n_L = (S_p A_t - F_i)/(C P)",
        Symbols.ProofLoad, Symbols.WorkingPreload, Symbols.LoadFactor, Symbols.TensileLoad, "Phi_K - 0.001");

    /// <summary>Shigley's factor against separation.</summary>
    public static double SeparationFactor(double F_V, double Phi_K, double F_At) => F_V / ((1 - Phi_K) * F_At);

    /// <summary>n_0 = F_V/((1 − Φ_K) F_At).</summary>
    public static Equation<Func<double, double, double, double>> SeparationFactorEquation { get; } = Equation.Define(
        SeparationFactor, "joint.separation-factor", Symbols.SeparationFactor, "F_V/((1 - Phi_K)*F_At)", "Shigley 9th ed. (2011) eq. (8-30): n_0 = F_i/(P (1 - C))",
        Symbols.WorkingPreload, Symbols.LoadFactor, Symbols.TensileLoad, "0.999 - Phi_K");
}
