namespace Fastening.Equations;

/// <summary>The symbols of the trade, each defined once.</summary>
/// <remarks>Names follow VDI 2230-1:2015 and ISO 16047:2005 where they agree, with <c>lambda</c> and <c>kappa</c> for torque per unit preload.</remarks>
public static class Symbols
{
    private const double Degree = Math.PI / 180;

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

    /// <summary>Lead angle at the pitch diameter.</summary>
    public static Symbol LeadAngle { get; } = new("phi", SymbolUnit.Angle, "lead angle", 0.2 * Degree, 40 * Degree);

    /// <summary>Angle of the load flank in the axial plane, measured from the normal to the axis: 30° for 60° threads.</summary>
    public static Symbol FlankAngle { get; } = new("alpha", SymbolUnit.Angle, "angle of the load flank in the axial plane", 0, 45 * Degree);

    /// <summary>Flank factor: normal force on the flank over axial force.</summary>
    public static Symbol FlankFactor { get; } = new("c", SymbolUnit.Ratio, "flank factor", 1, 1.5);

    /// <summary>Mean diameter at which thread friction acts.</summary>
    public static Symbol MeanThreadDiameter { get; } = new("d_m", SymbolUnit.Length, "mean diameter of the thread friction", 8e-4, 0.2);

    /// <summary>Coefficient of friction in the thread.</summary>
    public static Symbol ThreadFriction { get; } = new("mu_th", SymbolUnit.Ratio, "coefficient of friction in the thread", 0, 2);

    /// <summary>Coefficient of friction under the turned head or nut.</summary>
    public static Symbol BearingFriction { get; } = new("mu_b", SymbolUnit.Ratio, "coefficient of friction at the bearing surface", 0, 2);

    /// <summary>Outer diameter of the bearing surface.</summary>
    public static Symbol BearingOuterDiameter { get; } = new("D_o", SymbolUnit.Length, "outer diameter of the bearing surface", 1e-3, 0.5);

    /// <summary>Inner diameter of the bearing surface.</summary>
    public static Symbol BearingInnerDiameter { get; } = new("D_i", SymbolUnit.Length, "inner diameter of the bearing surface", 5e-4, 0.4);

    /// <summary>Effective diameter of bearing friction.</summary>
    public static Symbol BearingDiameter { get; } = new("D_b", SymbolUnit.Length, "effective diameter of the bearing friction", 1e-3, 0.5);

    /// <summary>Included angle of a conical seat; 180° is flat.</summary>
    public static Symbol SeatAngle { get; } = new("gamma", SymbolUnit.Angle, "included angle of the seat (180° is flat)", 10 * Degree, Math.PI);

    /// <summary>Pitch share of the torque per unit preload.</summary>
    public static Symbol PitchArm { get; } = new("lambda_P", SymbolUnit.Arm, "pitch torque per unit preload", 3e-5, 0.02);

    /// <summary>Thread torque per unit preload.</summary>
    public static Symbol ThreadArm { get; } = new("lambda_th", SymbolUnit.Arm, "thread torque per unit preload", 3e-5, 0.1);

    /// <summary>Loosening torque of the thread per unit preload, signed.</summary>
    public static Symbol LooseningThreadArm { get; } = new("lambda_L", SymbolUnit.Arm, "loosening torque of the thread per unit preload", -0.02, 0.1);

    /// <summary>Loosening torque of thread and bearing per unit preload, signed.</summary>
    public static Symbol LooseningArm { get; } = new("kappa_L", SymbolUnit.Arm, "loosening torque per unit preload", -0.02, 0.3);

    /// <summary>Bearing torque per unit preload.</summary>
    public static Symbol BearingArm { get; } = new("lambda_b", SymbolUnit.Arm, "bearing torque per unit preload", 0, 0.2);

    /// <summary>Tightening torque per unit preload.</summary>
    public static Symbol TorqueArm { get; } = new("kappa", SymbolUnit.Arm, "tightening torque per unit preload", 3e-5, 0.3);

    /// <summary>Nut factor (torque coefficient) K.</summary>
    public static Symbol NutFactor { get; } = new("K", SymbolUnit.Ratio, "nut factor", 0.02, 2);

    /// <summary>Preload in the bolt.</summary>
    public static Symbol Preload { get; } = new("F", SymbolUnit.Force, "preload", 1, 1e6);

    /// <summary>Tightening torque.</summary>
    public static Symbol TighteningTorque { get; } = new("M", SymbolUnit.Torque, "tightening torque", 1e-3, 1e5);

    /// <summary>Prevailing torque.</summary>
    public static Symbol PrevailingTorque { get; } = new("M_p", SymbolUnit.Torque, "prevailing torque", 0, 1e3);

    /// <summary>Loosening torque, signed: negative must be held.</summary>
    public static Symbol LooseningTorque { get; } = new("M_L", SymbolUnit.Torque, "loosening torque (negative: must be held)", -1e5, 1e5);

    /// <summary>Part of the tightening torque that stretches the bolt.</summary>
    public static Symbol PitchTorque { get; } = new("M_GSt", SymbolUnit.Torque, "pitch torque: the part that stretches the bolt", 0, 1e5);

    /// <summary>Part of the tightening torque lost to friction in the thread.</summary>
    public static Symbol ThreadFrictionTorque { get; } = new("M_GR", SymbolUnit.Torque, "thread friction torque", 0, 1e5);

    /// <summary>Part of the tightening torque lost to friction under the head or nut.</summary>
    public static Symbol BearingFrictionTorque { get; } = new("M_K", SymbolUnit.Torque, "bearing friction torque", 0, 1e5);

    /// <summary>Torque in the thread, which twists the shank.</summary>
    public static Symbol ShankTorque { get; } = new("M_T", SymbolUnit.Torque, "torque that twists the shank", 1e-3, 1e5);

    /// <summary>Least diameter of the waisted shank.</summary>
    public static Symbol WaistDiameter { get; } = new("d_T", SymbolUnit.Length, "waist diameter of the shank", 7e-4, 0.2);

    /// <summary>Diameter of the governing cross-section.</summary>
    public static Symbol SectionDiameter { get; } = new("d_0", SymbolUnit.Length, "diameter of the governing cross-section", 7e-4, 0.2);

    /// <summary>Area of the governing cross-section.</summary>
    public static Symbol SectionArea { get; } = new("A_0", SymbolUnit.Area, "area of the governing cross-section", 3e-7, 0.03);

    /// <summary>Torsional section modulus.</summary>
    public static Symbol SectionModulus { get; } = new("W_p", SymbolUnit.SectionModulus, "torsional section modulus", 5e-11, 2e-3);

    /// <summary>Tensile stress.</summary>
    public static Symbol TensileStress { get; } = new("sigma", SymbolUnit.Stress, "tensile stress", 1e5, 2e9);

    /// <summary>Torsional stress.</summary>
    public static Symbol TorsionalStress { get; } = new("tau", SymbolUnit.Stress, "torsional stress", 0, 2e9);

    /// <summary>Equivalent stress (von Mises).</summary>
    public static Symbol EquivalentStress { get; } = new("sigma_red", SymbolUnit.Stress, "equivalent stress (von Mises)", 1e5, 4e9);

    /// <summary>Tensile stress per unit preload.</summary>
    public static Symbol TensionPerPreload { get; } = new("s_sigma", SymbolUnit.StressPerForce, "tensile stress per unit preload", 30, 3e6);

    /// <summary>Torsional stress per unit preload, times √3.</summary>
    public static Symbol TorsionPerPreload { get; } = new("s_tau", SymbolUnit.StressPerForce, "torsional stress per unit preload, times √3", 3, 1e8);

    /// <summary>Stress of the prevailing torque, times √3.</summary>
    public static Symbol PrevailingStress { get; } = new("tau_p", SymbolUnit.Stress, "torsional stress of the prevailing torque, times √3", 0, 1e9);

    /// <summary>Yield strength.</summary>
    public static Symbol YieldStrength { get; } = new("R_p", SymbolUnit.Stress, "minimum yield strength", 1e8, 2e9);

    /// <summary>Utilisation of the yield strength.</summary>
    public static Symbol Utilisation { get; } = new("nu", SymbolUnit.Ratio, "utilisation of the yield strength", 0.05, 1);

    /// <summary>Equivalent stress that may be used.</summary>
    public static Symbol PermittedStress { get; } = new("sigma_lim", SymbolUnit.Stress, "permitted equivalent stress", 1e7, 2e9);

    /// <summary>Lever length of the wrench, centre of drive to hand.</summary>
    public static Symbol LeverLength { get; } = new("L", SymbolUnit.Length, "lever length, centre of drive to the hand", 0.05, 3);

    /// <summary>Length of an adapter, drive centre to fastener centre.</summary>
    public static Symbol AdapterLength { get; } = new("E", SymbolUnit.Length, "adapter length, centre to centre", 0, 1);

    /// <summary>Angle of an adapter from the line of the handle produced beyond the drive.</summary>
    public static Symbol AdapterAngle { get; } = new("theta", SymbolUnit.Angle, "adapter angle from the line of the handle", -Math.PI, Math.PI);

    /// <summary>Lean of the pull from square to the handle.</summary>
    public static Symbol PullAngle { get; } = new("beta", SymbolUnit.Angle, "lean of the pull from square to the handle", -80 * Degree, 80 * Degree);

    /// <summary>Torque at the fastener over torque at the drive, before an adapter is added.</summary>
    public static Symbol TorqueRatioBefore { get; } = new("rho_0", SymbolUnit.Ratio, "torque ratio before this adapter", 0.01, 20);

    /// <summary>Torque at the fastener over torque at the drive.</summary>
    public static Symbol TorqueRatio { get; } = new("rho", SymbolUnit.Ratio, "torque at the fastener over torque at the drive", 0.01, 20);

    /// <summary>Torque at the fastener.</summary>
    public static Symbol FastenerTorque { get; } = new("M_f", SymbolUnit.Torque, "torque at the fastener", 1e-3, 1e5);

    /// <summary>Torque at the drive of the wrench: what the wrench shows.</summary>
    public static Symbol WrenchTorque { get; } = new("M_w", SymbolUnit.Torque, "torque at the drive, shown by the wrench", 1e-3, 1e5);

    /// <summary>Change of the torque ratio per unit of a length.</summary>
    public static Symbol RatioPerLength { get; } = new("s_l", SymbolUnit.PerLength, "change of the torque ratio per length", -1e3, 1e3);

    /// <summary>Change of the torque ratio per radian.</summary>
    public static Symbol RatioPerAngle { get; } = new("s_a", SymbolUnit.Ratio, "change of the torque ratio per radian", -1e3, 1e3);

    /// <summary>Change of the torque ratio per radian, before an adapter is added.</summary>
    public static Symbol RatioPerAngleBefore { get; } = new("s_0", SymbolUnit.Ratio, "change of the torque ratio per radian before this adapter", -1e3, 1e3);

    /// <summary>Outer diameter of a bar.</summary>
    public static Symbol BarDiameter { get; } = new("d_e", SymbolUnit.Length, "outer diameter of the bar", 2e-3, 0.2);

    /// <summary>Bore of a bar.</summary>
    public static Symbol BarBore { get; } = new("d_i", SymbolUnit.Length, "bore of the bar", 0, 0.2);

    /// <summary>Side of a square or width across flats of a hexagonal bar.</summary>
    public static Symbol AcrossFlats { get; } = new("s", SymbolUnit.Length, "side of the square or width across flats of the hexagon", 2e-3, 0.2);

    /// <summary>Torsion constant of a bar.</summary>
    public static Symbol TorsionConstant { get; } = new("J", SymbolUnit.TorsionConstant, "torsion constant of the bar", 1e-12, 1e-4);

    /// <summary>Length of a bar.</summary>
    public static Symbol BarLength { get; } = new("l", SymbolUnit.Length, "length of the bar", 0, 3);

    /// <summary>Shear modulus.</summary>
    public static Symbol ShearModulus { get; } = new("G", SymbolUnit.Stress, "shear modulus", 1e9, 2e11);

    /// <summary>Torsional compliance of the parts counted so far.</summary>
    public static Symbol ComplianceBefore { get; } = new("c_0", SymbolUnit.TorsionalCompliance, "torsional compliance before this bar", 0, 1);

    /// <summary>Torsional compliance.</summary>
    public static Symbol Compliance { get; } = new("c_t", SymbolUnit.TorsionalCompliance, "torsional compliance", 0, 1);

    /// <summary>Elastic wind-up.</summary>
    public static Symbol WindUp { get; } = new("theta_w", SymbolUnit.Angle, "elastic wind-up", 0, 10);

    /// <summary>Rotation of the fastener.</summary>
    public static Symbol Rotation { get; } = new("theta_r", SymbolUnit.Angle, "rotation of the fastener", 1e-3, 100);

    /// <summary>Time taken.</summary>
    public static Symbol Duration { get; } = new("t", SymbolUnit.Time, "time taken", 1e-3, 1e4);

    /// <summary>Rate of rotation.</summary>
    public static Symbol RotationRate { get; } = new("omega", SymbolUnit.RotationRate, "rate of rotation", 1e-4, 1e4);
}
