namespace Fastening.Equations;

/// <summary>Transverse load carried by friction in the interface.</summary>
/// <remarks>SI doubles in and out, no checks. µ_T is the lowest coefficient of static friction of the interface.</remarks>
internal static class SlipEquations
{
    /// <summary>Clamp force that holds a transverse load.</summary>
    public static double ClampForTransverseLoad(double F_Q, double q_F, double mu_T) => F_Q / (q_F * mu_T);

    /// <summary>F_KF = F_Q/(q_F µ_T).</summary>
    public static Equation<Func<double, double, double, double>> ClampForTransverseLoadEquation { get; } = Equation.Define(
        ClampForTransverseLoad, "slip.clamp-for-transverse-load", Symbols.ClampForTransverseLoad, "F_Q/(q_F*mu_T)",
        "VDI 2230-1:2015 §5.4.1 (R2, from memory)", Symbols.TransverseLoad, Symbols.SlipFaces, Symbols.InterfaceFriction);

    /// <summary>Clamp force that holds a torque about the axis of the bolt.</summary>
    public static double ClampForTorque(double M_Y, double q_M, double r_a, double mu_T) => M_Y / (q_M * r_a * mu_T);

    /// <summary>F_KM = M_Y/(q_M r_a µ_T).</summary>
    public static Equation<Func<double, double, double, double, double>> ClampForTorqueEquation { get; } = Equation.Define(
        ClampForTorque, "slip.clamp-for-torque", Symbols.ClampForTorque, "M_Y/(q_M*r_a*mu_T)",
        "VDI 2230-1:2015 §5.4.1 (R2, from memory)", Symbols.InterfaceTorque, Symbols.TorqueFaces, Symbols.FrictionRadius, Symbols.InterfaceFriction);

    /// <summary>Clamp force that holds both.</summary>
    public static double ClampAgainstSlip(double F_KF, double F_KM) => F_KF + F_KM;

    /// <summary>F_KQ = F_KF + F_KM.</summary>
    public static Equation<Func<double, double, double>> ClampAgainstSlipEquation { get; } = Equation.Define(
        ClampAgainstSlip, "slip.clamp", Symbols.ClampAgainstSlip, "F_KF + F_KM", "VDI 2230-1:2015 §5.4.1 (R2, from memory)",
        Symbols.ClampForTransverseLoad, Symbols.ClampForTorque);

    /// <summary>Clamp force required: for sealing or function, and against slip, whichever is more.</summary>
    public static double RequiredClamp(double F_KP, double F_KQ) => Math.Max(F_KP, F_KQ);

    /// <summary>F_Kreq = max(F_KP, F_KQ).</summary>
    public static Equation<Func<double, double, double>> RequiredClampEquation { get; } = Equation.Define(
        RequiredClamp, "slip.required-clamp", Symbols.RequiredClamp, "max(F_KP, F_KQ)", "VDI 2230-1:2015 §5.4.1 (R2, from memory)",
        Symbols.StatedClamp, Symbols.ClampAgainstSlip);

    /// <summary>Pretension that is left for friction when tension acts too.</summary>
    public static double PretensionLeft(double F_pC, double F_t) => Math.Max(F_pC - 0.8 * F_t, 0);

    /// <summary>F_c = max(F_pC − 0.8 F_t, 0).</summary>
    public static Equation<Func<double, double, double>> PretensionLeftEquation { get; } = Equation.Define(
        PretensionLeft, "slip.pretension-left", Symbols.PretensionLeft, "max(F_pC - 0.8*F_t, 0)", "EN 1993-1-8:2005 §3.9.2 (from memory)",
        Symbols.DesignPretension, Symbols.AppliedTension);

    /// <summary>Design slip resistance of one preloaded bolt.</summary>
    public static double DesignSlipResistance(double k_s, double n_f, double mu_T, double F_c, double gamma_M) => k_s * n_f * mu_T * F_c / gamma_M;

    /// <summary>F_sRd = k_s n_f µ_T F_c/γ_M.</summary>
    public static Equation<Func<double, double, double, double, double, double>> DesignSlipResistanceEquation { get; } = Equation.Define(
        DesignSlipResistance, "slip.resistance", Symbols.SlipResistance, "k_s*n_f*mu_T*F_c/gamma_M", "EN 1993-1-8:2005 §3.9.1 eqs. (3.6), (3.7) (from memory)",
        Symbols.HoleFactor, Symbols.FrictionPlanes, Symbols.InterfaceFriction, Symbols.PretensionLeft, Symbols.PartialFactor);
}
