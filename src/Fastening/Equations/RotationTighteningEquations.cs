namespace Fastening.Equations;

/// <summary>Preload from rotation: what a turned fastener stretches, clamps and twists, in the elastic range.</summary>
/// <remarks>
/// SI doubles in and out, no checks. One number carries the joint: rotation per unit preload r, to which every elastic twist in series adds.
/// Valid from full contact of all faces up to the yield of bolt, thread or bearing surface.
/// </remarks>
internal static class RotationTighteningEquations
{
    /// <summary>Rotation per unit preload that goes into the stretch of the bolt and the compression of the clamped parts.</summary>
    public static double RotationPerPreload(double delta, double P_h) => 2 * Math.PI * delta / P_h;

    /// <summary>r = 2π δ/P_h.</summary>
    public static Equation<Func<double, double, double>> RotationPerPreloadEquation { get; } = Equation.Define(
        RotationPerPreload, "rotation.per-preload", Symbols.RotationPerPreload, "2*pi*delta/P_h",
        "derived from the helix; of the bolt alone MIL-HDBK-60 (1990) para 6.2.4 (from memory)",
        Symbols.JointResilience, Symbols.Lead);

    /// <summary>Rotation per unit preload with the twist of the bolt between head and first engaged thread.</summary>
    public static double WithBoltTwist(double r_0, double lambda_th, double c_t) => r_0 + lambda_th * c_t;

    /// <summary>r = r_0 + λ_th c_t.</summary>
    public static Equation<Func<double, double, double, double>> WithBoltTwistEquation { get; } = Equation.Define(
        WithBoltTwist, "rotation.with-bolt-twist", Symbols.RotationPerPreload, "r_0 + lambda_th*c_t", "derived",
        Symbols.RotationPerPreloadBefore, Symbols.ThreadArm, Symbols.Compliance);

    /// <summary>Rotation per unit preload as it is read at the tool, which winds up by the whole tightening torque.</summary>
    public static double WithToolWindUp(double r_0, double kappa, double c_t) => r_0 + kappa * c_t;

    /// <summary>r = r_0 + κ c_t.</summary>
    public static Equation<Func<double, double, double, double>> WithToolWindUpEquation { get; } = Equation.Define(
        WithToolWindUp, "rotation.with-tool-wind-up", Symbols.RotationPerPreload, "r_0 + kappa*c_t", "derived",
        Symbols.RotationPerPreloadBefore, Symbols.TorqueArm, Symbols.Compliance);

    /// <summary>Preload gained by a rotation.</summary>
    public static double PreloadGain(double theta_r, double r) => theta_r / r;

    /// <summary>F_g = θ_r/r.</summary>
    public static Equation<Func<double, double, double>> PreloadGainEquation { get; } = Equation.Define(
        PreloadGain, "rotation.preload-gain", Symbols.PreloadGain, "theta_r/r", "derived", Symbols.Rotation, Symbols.RotationPerPreload);

    /// <summary>Rotation that gains a preload.</summary>
    public static double RotationForGain(double F_g, double r) => F_g * r;

    /// <summary>θ_r = F_g r.</summary>
    public static Equation<Func<double, double, double>> RotationForGainEquation { get; } = Equation.Define(
        RotationForGain, "rotation.rotation-for-gain", Symbols.Rotation, "F_g*r", "derived", Symbols.PreloadGain, Symbols.RotationPerPreload);

    /// <summary>Preload after snugging and a further rotation.</summary>
    public static double TurnedPreload(double F_snug, double F_g) => F_snug + F_g;

    /// <summary>F = F_snug + F_g.</summary>
    public static Equation<Func<double, double, double>> TurnedPreloadEquation { get; } = Equation.Define(
        TurnedPreload, "rotation.turned-preload", Symbols.Preload, "F_snug + F_g", "derived",
        Symbols.SnugPreload, Symbols.PreloadGain);

    /// <summary>What the rotation still has to gain.</summary>
    public static double GainBeyondSnug(double F, double F_snug) => F - F_snug;

    /// <summary>F_g = F − F_snug.</summary>
    public static Equation<Func<double, double, double>> GainBeyondSnugEquation { get; } = Equation.Define(
        GainBeyondSnug, "rotation.gain-beyond-snug", Symbols.PreloadGain, "F - F_snug", "derived", Symbols.Preload, Symbols.SnugPreload);

    /// <summary>Rotation of the fastener while the tool turns and the torque rises: the tool turns further.</summary>
    public static double FastenerRotation(double theta_t, double M_end, double M_start, double c_t) => theta_t - (M_end - M_start) * c_t;

    /// <summary>θ_r = θ_t − (M_end − M_start) c_t.</summary>
    public static Equation<Func<double, double, double, double, double>> FastenerRotationEquation { get; } = Equation.Define(
        FastenerRotation, "rotation.fastener-rotation", Symbols.Rotation, "theta_t - (M_end - M_start)*c_t", "derived",
        Symbols.ToolRotation, Symbols.EndTorque, Symbols.StartTorque, Symbols.Compliance);

    /// <summary>Torsional compliance of a tool whose wind-up was measured against a fixed socket, in series with what was counted before.</summary>
    public static double MeasuredCompliance(double c_0, double theta_w, double M_w) => c_0 + theta_w / M_w;

    /// <summary>c_t = c_0 + θ_w/M_w.</summary>
    public static Equation<Func<double, double, double, double>> MeasuredComplianceEquation { get; } = Equation.Define(
        MeasuredCompliance, "rotation.measured-compliance", Symbols.Compliance, "c_0 + theta_w/M_w", "derived",
        Symbols.ComplianceBefore, Symbols.WindUp, Symbols.WrenchTorque);

    /// <summary>Slope of torque over rotation in the elastic range: the torque rate of the joint.</summary>
    public static double ElasticSlope(double kappa, double r) => kappa / r;

    /// <summary>s_M = κ/r.</summary>
    public static Equation<Func<double, double, double>> ElasticSlopeEquation { get; } = Equation.Define(
        ElasticSlope, "rotation.elastic-slope", Symbols.ElasticSlope, "kappa/r", "derived", Symbols.TorqueArm, Symbols.RotationPerPreload);

    /// <summary>Rotation over which the torque rises elastically from one value to another.</summary>
    public static double RotationOverTorque(double M_end, double M_start, double s_M) => (M_end - M_start) / s_M;

    /// <summary>θ_r = (M_end − M_start)/s_M.</summary>
    public static Equation<Func<double, double, double, double>> RotationOverTorqueEquation { get; } = Equation.Define(
        RotationOverTorque, "rotation.rotation-over-torque", Symbols.Rotation, "(M_end - M_start)/s_M", "derived",
        Symbols.EndTorque, Symbols.StartTorque, Symbols.ElasticSlope);

    /// <summary>Relative standard uncertainty of the rotation per unit preload: only stretch and compression carry that of the compliances.</summary>
    public static double RelativeUncertainty(double r_0, double r, double w_delta) => r_0 / r * w_delta;

    /// <summary>w_r = r_0/r w_δ.</summary>
    public static Equation<Func<double, double, double, double>> RelativeUncertaintyEquation { get; } = Equation.Define(
        RelativeUncertainty, "rotation.relative-uncertainty", Symbols.RotationPerPreloadUncertainty, "r_0/r*w_delta",
        "JCGM 100:2008 §5.1.2; derived", Symbols.RotationPerPreloadBefore, Symbols.RotationPerPreload, Symbols.ComplianceUncertainty);

    /// <summary>Standard uncertainty of the preload after snugging and a further rotation, inputs independent.</summary>
    public static double PreloadUncertainty(double u_snug, double u_theta, double r, double F_g, double w_r)
    {
        double ofRotation = u_theta / r, ofJoint = F_g * w_r;
        return Math.Sqrt(u_snug * u_snug + ofRotation * ofRotation + ofJoint * ofJoint);
    }

    /// <summary>u_F = √(u_snug² + (u_θ/r)² + (F_g w_r)²).</summary>
    public static Equation<Func<double, double, double, double, double, double>> PreloadUncertaintyEquation { get; } = Equation.Define(
        PreloadUncertainty, "rotation.preload-uncertainty", Symbols.PreloadUncertainty, "sqrt(u_snug^2 + (u_theta/r)^2 + (F_g*w_r)^2)",
        "JCGM 100:2008 §5.1.2; derived", Symbols.SnugPreloadUncertainty, Symbols.RotationUncertainty, Symbols.RotationPerPreload,
        Symbols.PreloadGain, Symbols.RotationPerPreloadUncertainty);

    /// <summary>Torque at a share of the torque at the end.</summary>
    public static double TorqueAtShare(double x_M, double M_end) => x_M * M_end;

    /// <summary>Torque at a share of the torque at the end (<c>rotation.torque-at-share</c>): x_M M_end.</summary>
    public static Equation<Func<double, double, double>> TorqueAtShareEquation { get; } = Equation.Define(
        TorqueAtShare, "rotation.torque-at-share", Symbols.StartTorque, "x_M*M_end", "definition", Symbols.TorqueShare, Symbols.EndTorque);

    /// <summary>Greatest resilience within the error of the stiffness: the springs are softer by it.</summary>
    public static double SoftestResilience(double delta_c, double e_k) => delta_c * (1 / (1 - e_k));

    /// <summary>Greatest resilience within the error of the stiffness (<c>rotation.softest-resilience</c>): δ_c/(1 − e_k).</summary>
    public static Equation<Func<double, double, double>> SoftestResilienceEquation { get; } = Equation.Define(
        SoftestResilience, "rotation.softest-resilience", Symbols.JointResilience, "delta_c*(1/(1 - e_k))", "derived",
        Symbols.CalculatedJointResilience, Symbols.StiffnessError);

    /// <summary>Least resilience within the error of the stiffness: the resilience itself is smaller by it.</summary>
    public static double StiffestResilience(double delta_c, double e_k) => delta_c * (1 - e_k);

    /// <summary>Least resilience within the error of the stiffness (<c>rotation.stiffest-resilience</c>): δ_c (1 − e_k).</summary>
    public static Equation<Func<double, double, double>> StiffestResilienceEquation { get; } = Equation.Define(
        StiffestResilience, "rotation.stiffest-resilience", Symbols.JointResilience, "delta_c*(1 - e_k)", "derived",
        Symbols.CalculatedJointResilience, Symbols.StiffnessError);
}
