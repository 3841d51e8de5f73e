namespace Fastening.Equations;

/// <summary>Stress in the bolt and under its head while the joint is in service, and the safety that is left.</summary>
/// <remarks>SI doubles in and out, no checks. Tension and equivalent stress are those of <see cref="StressEquations"/>, at the force in service.</remarks>
internal static class WorkingStressEquations
{
    /// <summary>Torsion that tightening has left in the bolt.</summary>
    public static double ResidualTorsion(double k_tau, double tau) => k_tau * tau;

    /// <summary>τ_B = k_τ τ.</summary>
    public static Equation<Func<double, double, double>> ResidualTorsionEquation { get; } = Equation.Define(
        ResidualTorsion, "stress.residual-torsion", Symbols.ResidualTorsion, "k_tau*tau", "VDI 2230-1:2015 §5.5.2 (from memory)",
        Symbols.TorsionShare, Symbols.TorsionalStress);

    /// <summary>Amplitude of the tensile stress between two bolt forces.</summary>
    public static double StressAmplitude(double F_So, double F_Su, double A_s) => (F_So - F_Su) / (2 * A_s);

    /// <summary>σ_a = (F_So − F_Su)/(2 A_s).</summary>
    public static Equation<Func<double, double, double, double>> StressAmplitudeEquation { get; } = Equation.Define(
        StressAmplitude, "stress.amplitude", Symbols.StressAmplitude, "(F_So - F_Su)/(2*A_s)", "VDI 2230-1:2015 §5.5.3 (R9, from memory)",
        Symbols.UpperBoltForce, Symbols.LowerBoltForce, Symbols.StressArea);

    /// <summary>Area of a flat ring, or of a conical seat projected on the plane square to the axis.</summary>
    public static double BearingArea(double D_o, double D_i) => Math.PI / 4 * ((D_o - D_i) * (D_o + D_i));

    /// <summary>A_b = π/4 (D_o − D_i)(D_o + D_i).</summary>
    public static Equation<Func<double, double, double>> BearingAreaEquation { get; } = Equation.Define(
        BearingArea, "stress.bearing-area", Symbols.BearingArea, "pi/4*((D_o - D_i)*(D_o + D_i))", "VDI 2230-1:2015 §5.5.4 (from memory); derived",
        Symbols.BearingOuterDiameter, Symbols.BearingInnerDiameter, "D_o - 1.001*D_i");

    /// <summary>Pressure under a head or nut.</summary>
    public static double BearingPressure(double F_Smax, double A_b) => F_Smax / A_b;

    /// <summary>p = F_Smax/A_b.</summary>
    public static Equation<Func<double, double, double>> BearingPressureEquation { get; } = Equation.Define(
        BearingPressure, "stress.bearing-pressure", Symbols.BearingPressure, "F_Smax/A_b", "VDI 2230-1:2015 §5.5.4 (R10, from memory)",
        Symbols.GreatestBoltForce, Symbols.BearingArea);

    /// <summary>The greater of the force while tightening and the force in service.</summary>
    public static double GreatestBoltForce(double F_M, double F_S) => Math.Max(F_M, F_S);

    /// <summary>F_Smax = max(F_M, F_S).</summary>
    public static Equation<Func<double, double, double>> GreatestBoltForceEquation { get; } = Equation.Define(
        GreatestBoltForce, "joint.greatest-bolt-force", Symbols.GreatestBoltForce, "max(F_M, F_S)", "VDI 2230-1:2015 §5.5.4 (R10, from memory)",
        Symbols.AssemblyPreload, Symbols.BoltForce);

    /// <summary>Safety factor: available over required force.</summary>
    public static double ForceSafety(double F_cap, double F_dem) => F_cap / F_dem;

    /// <summary>S_F = F_cap/F_dem.</summary>
    public static Equation<Func<double, double, double>> ForceSafetyEquation { get; } = Equation.Define(
        ForceSafety, "check.force-safety", Symbols.ForceSafety, "F_cap/F_dem", "definition", Symbols.ForceCapacity, Symbols.ForceDemand);

    /// <summary>Safety of a stress against the permitted one.</summary>
    public static double StressSafety(double sigma_cap, double sigma_dem) => sigma_cap / sigma_dem;

    /// <summary>S_σ = σ_cap/σ_dem.</summary>
    public static Equation<Func<double, double, double>> StressSafetyEquation { get; } = Equation.Define(
        StressSafety, "check.stress-safety", Symbols.StressSafety, "sigma_cap/sigma_dem", "definition", Symbols.StressCapacity, Symbols.StressDemand);
}
