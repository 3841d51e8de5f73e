namespace Fastening.Equations;

/// <summary>From the torque that the fastener must get to the setting that guarantees it, and back.</summary>
/// <remarks>
/// A wrench shows M_w and its deviation is (M_w − true)/true (ISO 6789-1, from memory), at most a_w by its accuracy, known to within W_k by its calibration. The true torque at the
/// drive then lies between M_w/(1 + a_w + W_k) and M_w/(1 − a_w − W_k); the adapters multiply it by ρ.
/// </remarks>
internal static class GuaranteeEquations
{
    /// <summary>Lowest setting whose least torque still reaches the lower limit.</summary>
    public static double LowestSetting(double M_lo, double a_w, double W_k, double rho) => M_lo * (1 + a_w + W_k) / rho;

    /// <summary>S_lo = M_lo (1 + a_w + W_k)/ρ.</summary>
    public static Equation<Func<double, double, double, double, double>> LowestSettingEquation { get; } = Equation.Define(
        LowestSetting, "guarantee.lowest-setting", Symbols.LowestSetting, "M_lo*(1 + a_w + W_k)/rho", "derived",
        Symbols.LeastFastenerTorque, Symbols.WrenchAccuracy, Symbols.CalibrationUncertainty, Symbols.TorqueRatio);

    /// <summary>Highest setting whose greatest torque still stays below the upper limit.</summary>
    public static double HighestSetting(double M_hi, double a_w, double W_k, double rho) => M_hi * (1 - a_w - W_k) / rho;

    /// <summary>S_hi = M_hi (1 − a_w − W_k)/ρ.</summary>
    public static Equation<Func<double, double, double, double, double>> HighestSettingEquation { get; } = Equation.Define(
        HighestSetting, "guarantee.highest-setting", Symbols.HighestSetting, "M_hi*(1 - a_w - W_k)/rho", "derived",
        Symbols.GreatestFastenerTorque, Symbols.WrenchAccuracy, Symbols.CalibrationUncertainty, Symbols.TorqueRatio);

    /// <summary>Least torque that the fastener can get at a setting.</summary>
    public static double LeastTorque(double M_w, double a_w, double W_k, double rho) => M_w * rho / (1 + a_w + W_k);

    /// <summary>M_lo = M_w ρ/(1 + a_w + W_k).</summary>
    public static Equation<Func<double, double, double, double, double>> LeastTorqueEquation { get; } = Equation.Define(
        LeastTorque, "guarantee.least-torque", Symbols.LeastFastenerTorque, "M_w*rho/(1 + a_w + W_k)", "derived",
        Symbols.WrenchTorque, Symbols.WrenchAccuracy, Symbols.CalibrationUncertainty, Symbols.TorqueRatio);

    /// <summary>Greatest torque that the fastener can get at a setting.</summary>
    public static double GreatestTorque(double M_w, double a_w, double W_k, double rho) => M_w * rho / (1 - a_w - W_k);

    /// <summary>M_hi = M_w ρ/(1 − a_w − W_k).</summary>
    public static Equation<Func<double, double, double, double, double>> GreatestTorqueEquation { get; } = Equation.Define(
        GreatestTorque, "guarantee.greatest-torque", Symbols.GreatestFastenerTorque, "M_w*rho/(1 - a_w - W_k)", "derived",
        Symbols.WrenchTorque, Symbols.WrenchAccuracy, Symbols.CalibrationUncertainty, Symbols.TorqueRatio);

    /// <summary>Largest deviation at which one setting keeps both limits; negative when none does.</summary>
    public static double LargestDeviation(double M_w, double M_lo, double M_hi, double rho) => Math.Min(M_w * rho / M_lo - 1, 1 - M_w * rho / M_hi);

    /// <summary>a_max = min(M_w ρ/M_lo − 1, 1 − M_w ρ/M_hi).</summary>
    public static Equation<Func<double, double, double, double, double>> LargestDeviationEquation { get; } = Equation.Define(
        LargestDeviation, "guarantee.largest-deviation", Symbols.LargestDeviation, "min(M_w*rho/M_lo - 1, 1 - M_w*rho/M_hi)", "derived",
        Symbols.WrenchTorque, Symbols.LeastFastenerTorque, Symbols.GreatestFastenerTorque, Symbols.TorqueRatio);

    /// <summary>The setting with the largest permitted deviation.</summary>
    public static double MostTolerantSetting(double M_lo, double M_hi, double rho) => 2 * M_lo * M_hi / ((M_lo + M_hi) * rho);

    /// <summary>M_w = 2 M_lo M_hi/((M_lo + M_hi) ρ): the harmonic mean.</summary>
    public static Equation<Func<double, double, double, double>> MostTolerantSettingEquation { get; } = Equation.Define(
        MostTolerantSetting, "guarantee.most-tolerant-setting", Symbols.WrenchTorque, "2*M_lo*M_hi/((M_lo + M_hi)*rho)", "derived",
        Symbols.LeastFastenerTorque, Symbols.GreatestFastenerTorque, Symbols.TorqueRatio);
}
