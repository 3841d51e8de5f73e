namespace Fastening.Equations;

/// <summary>The torques of EN 1090-2 for preloaded structural bolts.</summary>
/// <remarks>SI doubles in and out, no checks.</remarks>
internal static class StructuralTighteningEquations
{
    /// <summary>Reference torque M_r,2 from the mean k-value that the maker declares (class K2).</summary>
    public static double ReferenceTorque(double K_m, double d, double F) => K_m * d * F;

    /// <summary>M_r = K_m d F.</summary>
    public static Equation<Func<double, double, double, double>> ReferenceTorqueEquation { get; } = Equation.Define(
        ReferenceTorque, "structural.reference-torque", Symbols.ReferenceTorque, "K_m*d*F", "EN 1090-2:2018 §8.5, M_r,2 (from memory)",
        Symbols.MeanNutFactor, Symbols.NominalDiameter, Symbols.Preload);

    /// <summary>Reference torque M_r,1 of an assembly of class K1, whose k-value lies between 0.10 and 0.16.</summary>
    public static double SimplifiedReferenceTorque(double d, double F) => 0.13 * d * F;

    /// <summary>M_r = 0.13 d F.</summary>
    public static Equation<Func<double, double, double>> SimplifiedReferenceTorqueEquation { get; } = Equation.Define(
        SimplifiedReferenceTorque, "structural.simplified-reference-torque", Symbols.ReferenceTorque, "0.13*d*F",
        "EN 1090-2:2008+A1:2011 §8.5, M_r,1 (from memory); the factor of 2018 was not read", Symbols.NominalDiameter, Symbols.Preload);

    /// <summary>Torque of the first step, of the torque method and of the combined method.</summary>
    public static double FirstTorque(double M_r) => 0.75 * M_r;

    /// <summary>M_1 = 0.75 M_r.</summary>
    public static Equation<Func<double, double>> FirstTorqueEquation { get; } = Equation.Define(
        FirstTorque, "structural.first-torque", Symbols.FirstTorque, "0.75*M_r", "EN 1090-2:2018 §8.5 (from memory)", Symbols.ReferenceTorque);

    /// <summary>Torque of the second step of the torque method.</summary>
    public static double FinalTorque(double M_r) => 1.1 * M_r;

    /// <summary>M_2 = 1.10 M_r.</summary>
    public static Equation<Func<double, double>> FinalTorqueEquation { get; } = Equation.Define(
        FinalTorque, "structural.final-torque", Symbols.FinalTorque, "1.1*M_r", "EN 1090-2:2018 §8.5 (from memory)", Symbols.ReferenceTorque);
}
