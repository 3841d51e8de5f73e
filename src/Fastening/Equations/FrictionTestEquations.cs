namespace Fastening.Equations;

/// <summary>The friction test the other way round: from clamp force and torques to coefficients of friction.</summary>
/// <remarks>
/// Each inverse belongs to one form of the thread torque in <see cref="TorqueEquations"/> and gives back, to rounding, the coefficient
/// that went in. A reading below the pitch torque gives a negative coefficient: nothing is clamped.
/// </remarks>
internal static class FrictionTestEquations
{
    /// <summary>Thread torque per unit clamp force, as measured.</summary>
    public static double MeasuredThreadArm(double M_th, double F) => M_th / F;

    /// <summary>λ_th = M_th/F.</summary>
    public static Equation<Func<double, double, double>> MeasuredThreadArmEquation { get; } = Equation.Define(
        MeasuredThreadArm, "friction.measured-thread-arm", Symbols.ThreadArm, "M_th/F", "ISO 16047:2005 (from memory)",
        Symbols.MeasuredThreadTorque, Symbols.Preload);

    /// <summary>Bearing torque per unit clamp force: what the thread does not take.</summary>
    public static double MeasuredBearingArm(double M, double M_th, double F) => (M - M_th) / F;

    /// <summary>λ_b = (M − M_th)/F.</summary>
    public static Equation<Func<double, double, double, double>> MeasuredBearingArmEquation { get; } = Equation.Define(
        MeasuredBearingArm, "friction.measured-bearing-arm", Symbols.BearingArm, "(M - M_th)/F", "ISO 16047:2005 (from memory)",
        Symbols.TighteningTorque, Symbols.MeasuredThreadTorque, Symbols.Preload);

    /// <summary>Total torque per unit clamp force, as measured.</summary>
    public static double MeasuredTorqueArm(double M, double F) => M / F;

    /// <summary>κ = M/F.</summary>
    public static Equation<Func<double, double, double>> MeasuredTorqueArmEquation { get; } = Equation.Define(
        MeasuredTorqueArm, "friction.measured-torque-arm", Symbols.TorqueArm, "M/F", "ISO 16047:2005 (from memory)",
        Symbols.TighteningTorque, Symbols.Preload);

    /// <summary>Thread torque per unit preload and unit friction, linear form.</summary>
    public static double ThreadRadius(double c, double d_m) => c * d_m / 2;

    /// <summary>r_th = c d_m/2.</summary>
    public static Equation<Func<double, double, double>> ThreadRadiusEquation { get; } = Equation.Define(
        ThreadRadius, "friction.thread-radius", Symbols.ThreadFrictionRadius, "c*d_m/2", "ISO 16047:2005 (from memory); derived",
        Symbols.FlankFactor, Symbols.MeanThreadDiameter);

    /// <summary>Thread torque per unit preload and unit friction as ISO 16047 prints it: 60° profile, one start.</summary>
    public static double IsoPrintedThreadRadius(double d_2) => 0.577 * d_2;

    /// <summary>r_th = 0.577 d_2.</summary>
    public static Equation<Func<double, double>> IsoPrintedThreadRadiusEquation { get; } = Equation.Define(
        IsoPrintedThreadRadius, "friction.iso-printed-thread-radius", Symbols.ThreadFrictionRadius, "0.577*d_2", "ISO 16047:2005, printed form (from memory)",
        Symbols.PitchDiameter);

    /// <summary>Thread torque per unit preload and unit friction as VDI 2230 prints it: 60° profile, one start.</summary>
    public static double PrintedThreadRadius(double d_2) => 0.58 * d_2;

    /// <summary>r_th = 0.58 d_2.</summary>
    public static Equation<Func<double, double>> PrintedThreadRadiusEquation { get; } = Equation.Define(
        PrintedThreadRadius, "friction.printed-thread-radius", Symbols.ThreadFrictionRadius, "0.58*d_2", "VDI 2230-1:2015 §5.4.3 (from memory), printed form",
        Symbols.PitchDiameter);

    /// <summary>Pitch torque per unit preload as VDI 2230 prints it: one start.</summary>
    public static double PrintedPitchArm(double P) => 0.16 * P;

    /// <summary>λ_P = 0.16 P.</summary>
    public static Equation<Func<double, double>> PrintedPitchArmEquation { get; } = Equation.Define(
        PrintedPitchArm, "friction.printed-pitch-arm", Symbols.PitchArm, "0.16*P", "VDI 2230-1:2015 §5.4.3 (from memory), printed form", Symbols.Pitch);

    /// <summary>Bearing torque per unit preload and unit friction; a conical seat divides by the sine of half its included angle.</summary>
    public static double BearingRadius(double D_b, double gamma) => D_b / (2 * Math.Sin(gamma / 2));

    /// <summary>r_b = D_b/(2 sin(γ/2)).</summary>
    public static Equation<Func<double, double, double>> BearingRadiusEquation { get; } = Equation.Define(
        BearingRadius, "friction.bearing-radius", Symbols.BearingFrictionRadius, "D_b/(2*sin(gamma/2))",
        "ISO 16047:2005 for 180° (from memory); derived for a cone", Symbols.BearingDiameter, Symbols.SeatAngle);

    /// <summary>Thread friction from the thread torque, where that is linear in friction.</summary>
    public static double LinearThreadFriction(double lambda_th, double lambda_P, double r_th) => (lambda_th - lambda_P) / r_th;

    /// <summary>µ_th = (λ_th − λ_P)/r_th.</summary>
    public static Equation<Func<double, double, double, double>> LinearThreadFrictionEquation { get; } = Equation.Define(
        LinearThreadFriction, "friction.linear-thread", Symbols.ThreadFriction, "(lambda_th - lambda_P)/r_th", "ISO 16047:2005 (from memory); derived",
        Symbols.ThreadArm, Symbols.PitchArm, Symbols.ThreadFrictionRadius);

    /// <summary>Thread friction from the thread torque, exact for the inclined plane.</summary>
    public static double ExactThreadFriction(double lambda_th, double c, double d_m, double phi)
    {
        double slope = 2 * lambda_th / d_m;
        double tangent = Math.Tan(phi);
        return (slope - tangent) / (c * (1 + slope * tangent));
    }

    /// <summary>µ_th = (2λ_th/d_m − tan φ)/(c(1 + 2λ_th/d_m tan φ)).</summary>
    public static Equation<Func<double, double, double, double, double>> ExactThreadFrictionEquation { get; } = Equation.Define(
        ExactThreadFriction, "friction.exact-thread", Symbols.ThreadFriction,
        "(2*lambda_th/d_m - tan(phi))/(c*(1 + 2*lambda_th/d_m*tan(phi)))", "Shigley 9th ed. (2011) eq. (8-5), solved for friction; derived",
        Symbols.ThreadArm, Symbols.FlankFactor, Symbols.MeanThreadDiameter, Symbols.LeadAngle);

    /// <summary>Bearing friction from the bearing torque.</summary>
    public static double BearingFriction(double lambda_b, double r_b) => lambda_b / r_b;

    /// <summary>µ_b = λ_b/r_b.</summary>
    public static Equation<Func<double, double, double>> BearingFrictionEquation { get; } = Equation.Define(
        BearingFriction, "friction.bearing", Symbols.BearingFriction, "lambda_b/r_b", "ISO 16047:2005 (from memory); derived",
        Symbols.BearingArm, Symbols.BearingFrictionRadius);

    /// <summary>One coefficient for thread and bearing from the total torque, where that is linear in friction.</summary>
    public static double LinearTotalFriction(double kappa, double lambda_P, double r_th, double r_b) => (kappa - lambda_P) / (r_th + r_b);

    /// <summary>µ_tot = (κ − λ_P)/(r_th + r_b).</summary>
    public static Equation<Func<double, double, double, double, double>> LinearTotalFrictionEquation { get; } = Equation.Define(
        LinearTotalFriction, "friction.linear-total", Symbols.TotalFriction, "(kappa - lambda_P)/(r_th + r_b)", "ISO 16047:2005 (from memory); derived",
        Symbols.TorqueArm, Symbols.PitchArm, Symbols.ThreadFrictionRadius, Symbols.BearingFrictionRadius);

    /// <summary>
    /// One coefficient for thread and bearing from the total torque, exact for the inclined plane: the root of
    /// (d_m/2)(tan φ + cµ)/(1 − cµ tan φ) + r_b µ = κ below the pole, written so that nothing cancels at a small lead angle.
    /// </summary>
    public static double ExactTotalFriction(double kappa, double c, double d_m, double phi, double r_b)
    {
        double tangent = Math.Tan(phi);
        double half = kappa * c * tangent + r_b + c * d_m / 2;
        double excess = kappa - d_m / 2 * tangent;
        return 2 * excess / (half + Math.Sqrt(half * half - 4 * c * tangent * r_b * excess));
    }

    /// <summary>µ_tot = 2E/(B + √(B² − 4c tan φ r_b E)), B = κ c tan φ + r_b + c d_m/2, E = κ − (d_m/2) tan φ.</summary>
    public static Equation<Func<double, double, double, double, double, double>> ExactTotalFrictionEquation { get; } = Equation.Define(
        ExactTotalFriction, "friction.exact-total", Symbols.TotalFriction,
        "2*(kappa - d_m/2*tan(phi))/(kappa*c*tan(phi) + r_b + c*d_m/2 + sqrt((kappa*c*tan(phi) + r_b + c*d_m/2)^2 - 4*c*tan(phi)*r_b*(kappa - d_m/2*tan(phi))))",
        "derived", Symbols.TorqueArm, Symbols.FlankFactor, Symbols.MeanThreadDiameter, Symbols.LeadAngle, Symbols.BearingFrictionRadius);
}
