namespace Fastening.Equations;

/// <summary>Torque and preload: thread and bearing torque per unit preload ("arms"), their sum, and both directions.</summary>
/// <remarks>SI doubles in and out, no checks: IEEE in, IEEE out. Rival forms stand side by side under their own names; a model picks one by name.</remarks>
internal static class TorqueEquations
{
    /// <summary>Torque per unit preload that goes into the pitch: the part that stretches the bolt.</summary>
    public static double PitchArm(double P_h) => P_h / (2 * Math.PI);

    /// <summary>λ_P = P_h/(2π).</summary>
    public static Equation<Func<double, double>> PitchArmEquation { get; } = Equation.Define(
        PitchArm, "torque.pitch-arm", Symbols.PitchArm, "P_h/(2*pi)", "ISO 16047:2005 (from memory); derived", Symbols.Lead);

    /// <summary>Flank factor in the axial section.</summary>
    public static double AxialFlankFactor(double alpha) => 1 / Math.Cos(alpha);

    /// <summary>c = 1/cos α.</summary>
    public static Equation<Func<double, double>> AxialFlankFactorEquation { get; } = Equation.Define(
        AxialFlankFactor, "torque.axial-flank-factor", Symbols.FlankFactor, "1/cos(alpha)", "VDI 2230-1:2015 §5.4.3 (from memory); Shigley 9th ed. §8-2",
        Symbols.FlankAngle);

    /// <summary>Flank factor in the section normal to the helix: 1/cos α_n with tan α_n = tan α·cos φ.</summary>
    public static double NormalFlankFactor(double alpha, double phi)
    {
        double tangent = Math.Tan(alpha) * Math.Cos(phi);
        return Math.Sqrt(1 + tangent * tangent);
    }

    /// <summary>c = √(1 + (tan α·cos φ)²).</summary>
    public static Equation<Func<double, double, double>> NormalFlankFactorEquation { get; } = Equation.Define(
        NormalFlankFactor, "torque.normal-flank-factor", Symbols.FlankFactor, "sqrt(1 + (tan(alpha)*cos(phi))^2)",
        "Machinery's Handbook 31st ed. (2020), p. 1665; derived", Symbols.FlankAngle, Symbols.LeadAngle);

    /// <summary>Thread torque per unit preload, linear in friction.</summary>
    public static double LinearThreadArm(double lambda_P, double c, double mu_th, double d_m) => lambda_P + c * mu_th * d_m / 2;

    /// <summary>λ_th = λ_P + c µ_th d_m/2.</summary>
    public static Equation<Func<double, double, double, double, double>> LinearThreadArmEquation { get; } = Equation.Define(
        LinearThreadArm, "torque.linear-thread-arm", Symbols.ThreadArm, "lambda_P + c*mu_th*d_m/2",
        "ISO 16047:2005 (from memory); VDI 2230-1:2015 §5.5.1, in the stress, 1.155 printed for c (from memory); derived",
        Symbols.PitchArm, Symbols.FlankFactor, Symbols.ThreadFriction, Symbols.MeanThreadDiameter);

    /// <summary>Thread torque per unit preload, exact for the inclined plane.</summary>
    public static double ExactThreadArm(double c, double mu_th, double d_m, double phi)
    {
        double tangent = Math.Tan(phi);
        return d_m / 2 * (tangent + c * mu_th) / (1 - c * mu_th * tangent);
    }

    /// <summary>λ_th = (d_m/2)(tan φ + c µ_th)/(1 − c µ_th tan φ).</summary>
    public static Equation<Func<double, double, double, double, double>> ExactThreadArmEquation { get; } = Equation.Define(
        ExactThreadArm, "torque.exact-thread-arm", Symbols.ThreadArm, "d_m/2*(tan(phi) + c*mu_th)/(1 - c*mu_th*tan(phi))",
        "Shigley 9th ed. (2011) eq. (8-5); derived", Symbols.FlankFactor, Symbols.ThreadFriction, Symbols.MeanThreadDiameter, Symbols.LeadAngle,
        "0.99 - c*mu_th*tan(phi)");

    /// <summary>Thread torque per unit preload with the rounded coefficients printed by VDI 2230: 60° profile, one start.</summary>
    public static double PrintedThreadArm(double P, double mu_th, double d_2) => 0.16 * P + 0.58 * d_2 * mu_th;

    /// <summary>λ_th = 0.16 P + 0.58 d_2 µ_th.</summary>
    public static Equation<Func<double, double, double, double>> PrintedThreadArmEquation { get; } = Equation.Define(
        PrintedThreadArm, "torque.printed-thread-arm", Symbols.ThreadArm, "0.16*P + 0.58*d_2*mu_th", "VDI 2230-1:2015 §5.4.3 (from memory), printed form",
        Symbols.Pitch, Symbols.ThreadFriction, Symbols.PitchDiameter);

    /// <summary>Thread torque per unit preload with the rounded coefficient printed by ISO 16047: 60° profile, one start.</summary>
    public static double IsoPrintedThreadArm(double lambda_P, double mu_th, double d_2) => lambda_P + 0.577 * d_2 * mu_th;

    /// <summary>λ_th = λ_P + 0.577 d_2 µ_th.</summary>
    public static Equation<Func<double, double, double, double>> IsoPrintedThreadArmEquation { get; } = Equation.Define(
        IsoPrintedThreadArm, "torque.iso-printed-thread-arm", Symbols.ThreadArm, "lambda_P + 0.577*d_2*mu_th", "ISO 16047:2005, printed form (from memory)",
        Symbols.PitchArm, Symbols.ThreadFriction, Symbols.PitchDiameter);

    /// <summary>Effective bearing diameter: the mean of outer and inner (uniform wear).</summary>
    public static double MeanBearingDiameter(double D_o, double D_i) => (D_o + D_i) / 2;

    /// <summary>D_b = (D_o + D_i)/2.</summary>
    public static Equation<Func<double, double, double>> MeanBearingDiameterEquation { get; } = Equation.Define(
        MeanBearingDiameter, "torque.mean-bearing-diameter", Symbols.BearingDiameter, "(D_o + D_i)/2",
        "ISO 16047:2005 (from memory); VDI 2230-1:2015 (from memory), D_Km", Symbols.BearingOuterDiameter, Symbols.BearingInnerDiameter);

    /// <summary>
    /// Effective bearing diameter under uniform pressure: (2/3)(D_o³ − D_i³)/(D_o² − D_i²) with the common factor D_o − D_i taken out,
    /// so that a narrow ring costs no digits.
    /// </summary>
    public static double UniformPressureBearingDiameter(double D_o, double D_i) =>
        2 * (D_o * D_o + D_o * D_i + D_i * D_i) / (3 * (D_o + D_i));

    /// <summary>D_b = 2(D_o² + D_o D_i + D_i²)/(3(D_o + D_i)).</summary>
    public static Equation<Func<double, double, double>> UniformPressureBearingDiameterEquation { get; } = Equation.Define(
        UniformPressureBearingDiameter, "torque.uniform-pressure-bearing-diameter", Symbols.BearingDiameter,
        "2*(D_o^2 + D_o*D_i + D_i^2)/(3*(D_o + D_i))", "Machinery's Handbook 31st ed. (2020), p. 1665, common factor taken out; derived",
        Symbols.BearingOuterDiameter, Symbols.BearingInnerDiameter);

    /// <summary>Effective bearing diameter that textbooks take for every bolt: midway between a washer face of 1.5 d and d.</summary>
    public static double TextbookBearingDiameter(double d) => 1.25 * d;

    /// <summary>D_b = 1.25 d.</summary>
    public static Equation<Func<double, double>> TextbookBearingDiameterEquation { get; } = Equation.Define(
        TextbookBearingDiameter, "torque.textbook-bearing-diameter", Symbols.BearingDiameter, "1.25*d", "Shigley 9th ed. (2011) eq. (8-26)",
        Symbols.NominalDiameter);

    /// <summary>Included angle of the cone that touches a sphere along a circle: cos(γ/2) = D_b/(2R_s).</summary>
    public static double SphereSeatAngle(double R_s, double D_b) => 2 * Math.Atan(Math.Sqrt((2 * R_s - D_b) * (2 * R_s + D_b)) / D_b);

    /// <summary>γ = 2 atan(√((2R_s − D_b)(2R_s + D_b))/D_b).</summary>
    public static Equation<Func<double, double, double>> SphereSeatAngleEquation { get; } = Equation.Define(
        SphereSeatAngle, "torque.sphere-seat-angle", Symbols.SeatAngle, "2*atan(sqrt((2*R_s - D_b)*(2*R_s + D_b))/D_b)", "derived",
        Symbols.SphereRadius, Symbols.BearingDiameter, "R_s - 0.51*D_b");

    /// <summary>Bearing torque per unit preload; a conical seat divides by the sine of half its included angle.</summary>
    public static double BearingArm(double mu_b, double D_b, double gamma) => mu_b * D_b / (2 * Math.Sin(gamma / 2));

    /// <summary>λ_b = µ_b D_b/(2 sin(γ/2)).</summary>
    public static Equation<Func<double, double, double, double>> BearingArmEquation { get; } = Equation.Define(
        BearingArm, "torque.bearing-arm", Symbols.BearingArm, "mu_b*D_b/(2*sin(gamma/2))", "ISO 16047:2005 for 180° (from memory); derived for a cone",
        Symbols.BearingFriction, Symbols.BearingDiameter, Symbols.SeatAngle);

    /// <summary>Tightening torque per unit preload.</summary>
    public static double TorqueArm(double lambda_th, double lambda_b) => lambda_th + lambda_b;

    /// <summary>κ = λ_th + λ_b.</summary>
    public static Equation<Func<double, double, double>> TorqueArmEquation { get; } = Equation.Define(
        TorqueArm, "torque.arm", Symbols.TorqueArm, "lambda_th + lambda_b", "ISO 16047:2005 (from memory)", Symbols.ThreadArm, Symbols.BearingArm);

    /// <summary>Tightening torque per unit preload from a nut factor.</summary>
    public static double NutFactorArm(double K, double d) => K * d;

    /// <summary>κ = K d.</summary>
    public static Equation<Func<double, double, double>> NutFactorArmEquation { get; } = Equation.Define(
        NutFactorArm, "torque.nut-factor-arm", Symbols.TorqueArm, "K*d", "Shigley 9th ed. (2011) eq. (8-27)", Symbols.NutFactor, Symbols.NominalDiameter);

    /// <summary>Nut factor that belongs to a torque per unit preload.</summary>
    public static double NutFactor(double kappa, double d) => kappa / d;

    /// <summary>K = κ/d.</summary>
    public static Equation<Func<double, double, double>> NutFactorEquation { get; } = Equation.Define(
        NutFactor, "torque.nut-factor", Symbols.NutFactor, "kappa/d", "Shigley 9th ed. (2011) eq. (8-27)", Symbols.TorqueArm, Symbols.NominalDiameter);

    /// <summary>Tightening torque for a preload.</summary>
    public static double TighteningTorque(double kappa, double F, double M_p) => kappa * F + M_p;

    /// <summary>M = κ F + M_p.</summary>
    public static Equation<Func<double, double, double, double>> TighteningTorqueEquation { get; } = Equation.Define(
        TighteningTorque, "torque.tightening-torque", Symbols.TighteningTorque, "kappa*F + M_p", "ISO 16047:2005 (from memory); VDI 2230-1:2015 §5.4.3 (from memory)",
        Symbols.TorqueArm, Symbols.Preload, Symbols.PrevailingTorque);

    /// <summary>Preload at a tightening torque; a torque below the prevailing torque gives none.</summary>
    public static double Preload(double M, double M_p, double kappa)
    {
        double preload = (M - M_p) / kappa;
        return preload <= 0 ? 0 : preload;
    }

    /// <summary>F = max(0, (M − M_p)/κ).</summary>
    public static Equation<Func<double, double, double, double>> PreloadEquation { get; } = Equation.Define(
        Preload, "torque.preload", Symbols.Preload, "max(0, (M - M_p)/kappa)", "ISO 16047:2005 (from memory), solved for F",
        Symbols.TighteningTorque, Symbols.PrevailingTorque, Symbols.TorqueArm);

    /// <summary>The part of the tightening torque that stretches the bolt.</summary>
    public static double PitchTorque(double lambda_P, double F) => lambda_P * F;

    /// <summary>M_GSt = λ_P F.</summary>
    public static Equation<Func<double, double, double>> PitchTorqueEquation { get; } = Equation.Define(
        PitchTorque, "torque.pitch-torque", Symbols.PitchTorque, "lambda_P*F", "ISO 16047:2005 (from memory); derived", Symbols.PitchArm, Symbols.Preload);

    /// <summary>The part of the tightening torque lost to friction in the thread.</summary>
    public static double ThreadFrictionTorque(double lambda_th, double lambda_P, double F) => (lambda_th - lambda_P) * F;

    /// <summary>M_GR = (λ_th − λ_P) F.</summary>
    public static Equation<Func<double, double, double, double>> ThreadFrictionTorqueEquation { get; } = Equation.Define(
        ThreadFrictionTorque, "torque.thread-friction-torque", Symbols.ThreadFrictionTorque, "(lambda_th - lambda_P)*F",
        "ISO 16047:2005 (from memory); derived", Symbols.ThreadArm, Symbols.PitchArm, Symbols.Preload, "lambda_th - 1.01*lambda_P");

    /// <summary>The part of the tightening torque lost to friction under the head or nut.</summary>
    public static double BearingFrictionTorque(double lambda_b, double F) => lambda_b * F;

    /// <summary>M_K = λ_b F.</summary>
    public static Equation<Func<double, double, double>> BearingFrictionTorqueEquation { get; } = Equation.Define(
        BearingFrictionTorque, "torque.bearing-friction-torque", Symbols.BearingFrictionTorque, "lambda_b*F",
        "ISO 16047:2005 (from memory); derived", Symbols.BearingArm, Symbols.Preload);

    /// <summary>The tightening torque as the sum of its parts.</summary>
    public static double TotalTorque(double M_GSt, double M_GR, double M_K, double M_p) => M_GSt + M_GR + M_K + M_p;

    /// <summary>M = M_GSt + M_GR + M_K + M_p.</summary>
    public static Equation<Func<double, double, double, double, double>> TotalTorqueEquation { get; } = Equation.Define(
        TotalTorque, "torque.total-torque", Symbols.TighteningTorque, "M_GSt + M_GR + M_K + M_p", "ISO 16047:2005 (from memory)",
        Symbols.PitchTorque, Symbols.ThreadFrictionTorque, Symbols.BearingFrictionTorque, Symbols.PrevailingTorque);

    /// <summary>The share of the torque that stretches the bolt.</summary>
    public static double PitchShare(double M_GSt, double M) => M_GSt / M;

    /// <summary>e_M = M_GSt/M.</summary>
    public static Equation<Func<double, double, double>> PitchShareEquation { get; } = Equation.Define(
        PitchShare, "torque.pitch-share", Symbols.PitchShare, "M_GSt/M", "derived", Symbols.PitchTorque, Symbols.TighteningTorque);

    /// <summary>Loosening torque of the thread per unit preload, linear form; negative when the preload alone would unscrew the thread.</summary>
    public static double LinearLooseningThreadArm(double lambda_P, double c, double mu_th, double d_m) => c * mu_th * d_m / 2 - lambda_P;

    /// <summary>λ_L = c µ_th d_m/2 − λ_P.</summary>
    public static Equation<Func<double, double, double, double, double>> LinearLooseningThreadArmEquation { get; } = Equation.Define(
        LinearLooseningThreadArm, "torque.linear-loosening-thread-arm", Symbols.LooseningThreadArm, "c*mu_th*d_m/2 - lambda_P", "derived",
        Symbols.PitchArm, Symbols.FlankFactor, Symbols.ThreadFriction, Symbols.MeanThreadDiameter);

    /// <summary>Loosening torque of the thread per unit preload, exact form.</summary>
    public static double ExactLooseningThreadArm(double c, double mu_th, double d_m, double phi)
    {
        double tangent = Math.Tan(phi);
        return d_m / 2 * (c * mu_th - tangent) / (1 + c * mu_th * tangent);
    }

    /// <summary>λ_L = (d_m/2)(c µ_th − tan φ)/(1 + c µ_th tan φ).</summary>
    public static Equation<Func<double, double, double, double, double>> ExactLooseningThreadArmEquation { get; } = Equation.Define(
        ExactLooseningThreadArm, "torque.exact-loosening-thread-arm", Symbols.LooseningThreadArm,
        "d_m/2*(c*mu_th - tan(phi))/(1 + c*mu_th*tan(phi))", "Shigley 9th ed. (2011) eq. (8-2) with flank factor; derived",
        Symbols.FlankFactor, Symbols.ThreadFriction, Symbols.MeanThreadDiameter, Symbols.LeadAngle);

    /// <summary>Loosening torque of the thread per unit preload, rounded coefficients.</summary>
    public static double PrintedLooseningThreadArm(double P, double mu_th, double d_2) => 0.58 * d_2 * mu_th - 0.16 * P;

    /// <summary>λ_L = 0.58 d_2 µ_th − 0.16 P.</summary>
    public static Equation<Func<double, double, double, double>> PrintedLooseningThreadArmEquation { get; } = Equation.Define(
        PrintedLooseningThreadArm, "torque.printed-loosening-thread-arm", Symbols.LooseningThreadArm, "0.58*d_2*mu_th - 0.16*P",
        "VDI 2230-1:2015 §5.4.3 (from memory), printed form with the pitch reversed; derived", Symbols.Pitch, Symbols.ThreadFriction, Symbols.PitchDiameter);

    /// <summary>Loosening torque of the thread per unit preload, coefficient rounded as ISO 16047 prints it.</summary>
    public static double IsoPrintedLooseningThreadArm(double lambda_P, double mu_th, double d_2) => 0.577 * d_2 * mu_th - lambda_P;

    /// <summary>λ_L = 0.577 d_2 µ_th − λ_P.</summary>
    public static Equation<Func<double, double, double, double>> IsoPrintedLooseningThreadArmEquation { get; } = Equation.Define(
        IsoPrintedLooseningThreadArm, "torque.iso-printed-loosening-thread-arm", Symbols.LooseningThreadArm, "0.577*d_2*mu_th - lambda_P",
        "ISO 16047:2005, printed form (from memory) with the pitch reversed; derived", Symbols.PitchArm, Symbols.ThreadFriction, Symbols.PitchDiameter);

    /// <summary>Loosening torque of thread and bearing per unit preload.</summary>
    public static double LooseningArm(double lambda_L, double lambda_b) => lambda_L + lambda_b;

    /// <summary>κ_L = λ_L + λ_b.</summary>
    public static Equation<Func<double, double, double>> LooseningArmEquation { get; } = Equation.Define(
        LooseningArm, "torque.loosening-arm", Symbols.LooseningArm, "lambda_L + lambda_b", "derived", Symbols.LooseningThreadArm, Symbols.BearingArm);

    /// <summary>Loosening torque; negative means that the joint must be held.</summary>
    public static double LooseningTorque(double kappa_L, double F, double M_p) => kappa_L * F + M_p;

    /// <summary>M_L = κ_L F + M_p.</summary>
    public static Equation<Func<double, double, double, double>> LooseningTorqueEquation { get; } = Equation.Define(
        LooseningTorque, "torque.loosening-torque", Symbols.LooseningTorque, "kappa_L*F + M_p", "derived",
        Symbols.LooseningArm, Symbols.Preload, Symbols.PrevailingTorque);
}
