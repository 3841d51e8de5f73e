namespace Fastening.Equations;

/// <summary>Wrench, adapters at any angle, pull out of square, and the wind-up of coaxial bars.</summary>
/// <remarks>
/// Frame: drive at the origin, x straight ahead of the handle, hand at (−L, 0), y the side to which the hand moves. Adapter angles are
/// absolute, from +x, positive towards y. A pull that leans towards +x has a positive angle. Chains are folds of one equation.
/// </remarks>
internal static class WrenchEquations
{
    /// <summary>Torque ratio with one adapter more; start from 1.</summary>
    public static double TorqueRatio(double rho_0, double E, double theta, double L, double beta) =>
        rho_0 + E * Math.Cos(theta + beta) / (L * Math.Cos(beta));

    /// <summary>ρ = ρ_0 + E cos(θ + β)/(L cos β).</summary>
    public static Equation<Func<double, double, double, double, double, double>> TorqueRatioEquation { get; } = Equation.Define(
        TorqueRatio, "wrench.torque-ratio", Symbols.TorqueRatio, "rho_0 + E*cos(theta + beta)/(L*cos(beta))",
        "US Army TM 9-254 para 4-1 for a square pull; derived for any pull",
        Symbols.TorqueRatioBefore, Symbols.AdapterLength, Symbols.AdapterAngle, Symbols.LeverLength, Symbols.PullAngle);

    /// <summary>Torque at the fastener for what the wrench shows.</summary>
    public static double FastenerTorque(double M_w, double rho) => M_w * rho;

    /// <summary>M_f = M_w ρ.</summary>
    public static Equation<Func<double, double, double>> FastenerTorqueEquation { get; } = Equation.Define(
        FastenerTorque, "wrench.fastener-torque", Symbols.FastenerTorque, "M_w*rho", "US Army TM 9-254 para 4-1",
        Symbols.WrenchTorque, Symbols.TorqueRatio);

    /// <summary>Wrench setting for a torque at the fastener.</summary>
    public static double Setting(double M_f, double rho) => M_f / rho;

    /// <summary>M_w = M_f/ρ.</summary>
    public static Equation<Func<double, double, double>> SettingEquation { get; } = Equation.Define(
        Setting, "wrench.setting", Symbols.WrenchTorque, "M_f/rho", "US Army TM 9-254 para 4-1", Symbols.FastenerTorque, Symbols.TorqueRatio);

    /// <summary>Change of the torque ratio with the lever length.</summary>
    public static double RatioPerLeverLength(double rho, double L) => (1 - rho) / L;

    /// <summary>∂ρ/∂L = (1 − ρ)/L.</summary>
    public static Equation<Func<double, double, double>> RatioPerLeverLengthEquation { get; } = Equation.Define(
        RatioPerLeverLength, "wrench.ratio-per-lever-length", Symbols.RatioPerLength, "(1 - rho)/L", "derived", Symbols.TorqueRatio, Symbols.LeverLength);

    /// <summary>Change of the torque ratio with the length of one adapter.</summary>
    public static double RatioPerAdapterLength(double theta, double L, double beta) => Math.Cos(theta + beta) / (L * Math.Cos(beta));

    /// <summary>∂ρ/∂E = cos(θ + β)/(L cos β).</summary>
    public static Equation<Func<double, double, double, double>> RatioPerAdapterLengthEquation { get; } = Equation.Define(
        RatioPerAdapterLength, "wrench.ratio-per-adapter-length", Symbols.RatioPerLength, "cos(theta + beta)/(L*cos(beta))", "derived",
        Symbols.AdapterAngle, Symbols.LeverLength, Symbols.PullAngle);

    /// <summary>Change of the torque ratio with the angle of one adapter, per radian.</summary>
    public static double RatioPerAdapterAngle(double E, double theta, double L, double beta) => -E * Math.Sin(theta + beta) / (L * Math.Cos(beta));

    /// <summary>∂ρ/∂θ = −E sin(θ + β)/(L cos β).</summary>
    public static Equation<Func<double, double, double, double, double>> RatioPerAdapterAngleEquation { get; } = Equation.Define(
        RatioPerAdapterAngle, "wrench.ratio-per-adapter-angle", Symbols.RatioPerAngle, "-E*sin(theta + beta)/(L*cos(beta))", "derived",
        Symbols.AdapterLength, Symbols.AdapterAngle, Symbols.LeverLength, Symbols.PullAngle);

    /// <summary>Change of the torque ratio with the lean of the pull, per radian, with one adapter more; start from 0.</summary>
    public static double RatioPerPullAngle(double s_0, double E, double theta, double L, double beta)
    {
        double cosine = Math.Cos(beta);
        return s_0 - E * Math.Sin(theta) / (L * (cosine * cosine));
    }

    /// <summary>∂ρ/∂β = s_0 − E sin θ/(L cos² β).</summary>
    public static Equation<Func<double, double, double, double, double, double>> RatioPerPullAngleEquation { get; } = Equation.Define(
        RatioPerPullAngle, "wrench.ratio-per-pull-angle", Symbols.RatioPerAngle, "s_0 - E*sin(theta)/(L*cos(beta)^2)", "derived",
        Symbols.RatioPerAngleBefore, Symbols.AdapterLength, Symbols.AdapterAngle, Symbols.LeverLength, Symbols.PullAngle);

    /// <summary>Torsion constant of a round bar or tube.</summary>
    public static double RoundTorsionConstant(double d_e, double d_i) =>
        Math.PI / 32 * ((d_e * d_e + d_i * d_i) * (d_e + d_i) * (d_e - d_i));

    /// <summary>J = (π/32)(d_e⁴ − d_i⁴), written as a product.</summary>
    public static Equation<Func<double, double, double>> RoundTorsionConstantEquation { get; } = Equation.Define(
        RoundTorsionConstant, "wrench.round-torsion-constant", Symbols.TorsionConstant, "pi/32*((d_e^2 + d_i^2)*(d_e + d_i)*(d_e - d_i))",
        "Roark's Formulas for Stress and Strain 7th ed. (2002), Table 10.1", Symbols.BarDiameter, Symbols.BarBore, "d_e - 1.01*d_i");

    /// <summary>Torsion constant of a square bar.</summary>
    public static double SquareTorsionConstant(double s) => 0.140577 * (s * s * s * s);

    /// <summary>J = 0.140577 s⁴.</summary>
    public static Equation<Func<double, double>> SquareTorsionConstantEquation { get; } = Equation.Define(
        SquareTorsionConstant, "wrench.square-torsion-constant", Symbols.TorsionConstant, "0.140577*s^4",
        "Saint-Venant series; Roark 7th ed. (2002) Table 10.1 prints 0.1406", Symbols.AcrossFlats);

    /// <summary>Torsion constant of a hexagonal bar.</summary>
    public static double HexagonTorsionConstant(double s) => 0.1151 * (s * s * s * s);

    /// <summary>J = 0.1151 s⁴.</summary>
    public static Equation<Func<double, double>> HexagonTorsionConstantEquation { get; } = Equation.Define(
        HexagonTorsionConstant, "wrench.hexagon-torsion-constant", Symbols.TorsionConstant, "0.1151*s^4", "derived by collocation", Symbols.AcrossFlats);

    /// <summary>Torsional compliance with one bar more in series; start from 0.</summary>
    public static double Compliance(double c_0, double l, double G, double J) => c_0 + l / (G * J);

    /// <summary>c_t = c_0 + l/(G J).</summary>
    public static Equation<Func<double, double, double, double, double>> ComplianceEquation { get; } = Equation.Define(
        Compliance, "wrench.compliance", Symbols.Compliance, "c_0 + l/(G*J)", "Roark's Formulas for Stress and Strain 7th ed. (2002) §10.1",
        Symbols.ComplianceBefore, Symbols.BarLength, Symbols.ShearModulus, Symbols.TorsionConstant);

    /// <summary>Torsional stiffness of one bar.</summary>
    public static double BarStiffness(double c_b) => 1 / c_b;

    /// <summary>Torsional stiffness of a bar (<c>wrench.bar-stiffness</c>): 1/c_b, G J/l.</summary>
    public static Equation<Func<double, double>> BarStiffnessEquation { get; } = Equation.Define(
        BarStiffness, "wrench.bar-stiffness", Symbols.BarStiffness, "1/c_b", "definition of the stiffness", Symbols.BarCompliance);

    /// <summary>Elastic wind-up at a torque.</summary>
    public static double WindUp(double M_w, double c_t) => M_w * c_t;

    /// <summary>θ_w = M_w c_t.</summary>
    public static Equation<Func<double, double, double>> WindUpEquation { get; } = Equation.Define(
        WindUp, "wrench.wind-up", Symbols.WindUp, "M_w*c_t", "Roark's Formulas for Stress and Strain 7th ed. (2002) §10.1",
        Symbols.WrenchTorque, Symbols.Compliance);

    /// <summary>Torque at the output of a torque multiplier.</summary>
    public static double MultiplierOutput(double M_in, double i, double eta) => i * eta * M_in;

    /// <summary>M_out = i η M_in.</summary>
    public static Equation<Func<double, double, double, double>> MultiplierOutputEquation { get; } = Equation.Define(
        MultiplierOutput, "wrench.multiplier-output", Symbols.OutputTorque, "i*eta*M_in", "definition of the efficiency",
        Symbols.InputTorque, Symbols.GearRatio, Symbols.GearEfficiency);

    /// <summary>Torque to put into a torque multiplier for a torque at its output.</summary>
    public static double MultiplierInput(double M_out, double i, double eta) => M_out / (i * eta);

    /// <summary>M_in = M_out/(i η).</summary>
    public static Equation<Func<double, double, double, double>> MultiplierInputEquation { get; } = Equation.Define(
        MultiplierInput, "wrench.multiplier-input", Symbols.InputTorque, "M_out/(i*eta)", "definition of the efficiency",
        Symbols.OutputTorque, Symbols.GearRatio, Symbols.GearEfficiency);

    /// <summary>Torque on the reaction arm of a coaxial torque multiplier.</summary>
    public static double MultiplierReaction(double M_out, double M_in) => M_out - M_in;

    /// <summary>M_R = M_out − M_in.</summary>
    public static Equation<Func<double, double, double>> MultiplierReactionEquation { get; } = Equation.Define(
        MultiplierReaction, "wrench.multiplier-reaction", Symbols.ReactionTorque, "M_out - M_in", "derived: equilibrium of the gearbox",
        Symbols.OutputTorque, Symbols.InputTorque);
}
