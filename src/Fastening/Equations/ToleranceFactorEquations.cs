namespace Fastening.Equations;

/// <summary>Tolerance factors in closed form: approximations, each by its author's name. The exact ones are procedures.</summary>
internal static class ToleranceFactorEquations
{
    private const string Natrella = "NIST/SEMATECH e-Handbook of Statistical Methods 7.2.6.3 (Natrella 1963)";

    /// <summary>Howe's two-sided tolerance factor; the normal quantile is that of (1 + p)/2, χ² the lower quantile of 1 − γ with n − 1 degrees of freedom.</summary>
    public static double HoweFactor(double z_P, double n_q, double Q_chi) => z_P * Math.Sqrt((n_q - 1) * (1 + 1 / n_q) / Q_chi);

    /// <summary>k = z √((n − 1)(1 + 1/n)/χ²).</summary>
    public static Equation<Func<double, double, double, double>> HoweFactorEquation { get; } = Equation.Define(
        HoweFactor, "tolerance-factor.howe", Symbols.ToleranceFactor, "z_P*sqrt((n_q - 1)*(1 + 1/n_q)/Q_chi)",
        "NIST/SEMATECH e-Handbook of Statistical Methods 7.2.6.3 (Howe 1969)", Symbols.ShareQuantile, Symbols.ReadingCount, Symbols.ChiSquaredQuantile);

    /// <summary>First number of Natrella's one-sided tolerance factor.</summary>
    public static double NatrellaA(double z_g, double n_q) => 1 - z_g * z_g / (2 * (n_q - 1));

    /// <summary>a = 1 − z_γ²/(2(n − 1)).</summary>
    public static Equation<Func<double, double, double>> NatrellaAEquation { get; } = Equation.Define(
        NatrellaA, "tolerance-factor.natrella-a", Symbols.NatrellaA, "1 - z_g*z_g/(2*(n_q - 1))", Natrella,
        Symbols.ConfidenceQuantile, Symbols.ReadingCount);

    /// <summary>Second number of Natrella's one-sided tolerance factor.</summary>
    public static double NatrellaB(double z_P, double z_g, double n_q) => z_P * z_P - z_g * z_g / n_q;

    /// <summary>b = z_p² − z_γ²/n.</summary>
    public static Equation<Func<double, double, double, double>> NatrellaBEquation { get; } = Equation.Define(
        NatrellaB, "tolerance-factor.natrella-b", Symbols.NatrellaB, "z_P*z_P - z_g*z_g/n_q", Natrella,
        Symbols.ShareQuantile, Symbols.ConfidenceQuantile, Symbols.ReadingCount);

    /// <summary>Natrella's one-sided tolerance factor.</summary>
    public static double NatrellaFactor(double z_P, double a_N, double b_N) => (z_P + Math.Sqrt(z_P * z_P - a_N * b_N)) / a_N;

    /// <summary>k = (z_p + √(z_p² − a b))/a.</summary>
    public static Equation<Func<double, double, double, double>> NatrellaFactorEquation { get; } = Equation.Define(
        NatrellaFactor, "tolerance-factor.natrella", Symbols.ToleranceFactor, "(z_P + sqrt(z_P*z_P - a_N*b_N))/a_N", Natrella,
        Symbols.ShareQuantile, Symbols.NatrellaA, Symbols.NatrellaB, where: "z_P*z_P - a_N*b_N");
}
