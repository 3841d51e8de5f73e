namespace Fastening.Equations;

/// <summary>Calibration of hand torque tools after ISO 6789.</summary>
/// <remarks>SI doubles in and out, no checks. The clauses of ISO 6789-2 are from memory; only their titles were read.</remarks>
internal static class CalibrationEquations
{
    private const string Part2 = "ISO 6789-2:2017 clause 7 (from memory)";

    /// <summary>Relative deviation of a tool: positive when it delivers less than it says.</summary>
    public static double Deviation(double X_a, double X_r) => (X_a - X_r) / X_r;

    /// <summary>a_s = (X_a − X_r)/X_r.</summary>
    public static Equation<Func<double, double, double>> DeviationEquation { get; } = Equation.Define(
        Deviation, "calibration.deviation", Symbols.ToolDeviation, "(X_a - X_r)/X_r", "ISO 6789-1:2017 (from memory)",
        Symbols.SetOrIndicatedTorque, Symbols.CalibrationReference);

    /// <summary>Torque that a tool of known deviation delivers.</summary>
    public static double Delivered(double X_a, double a_s) => X_a / (1 + a_s);

    /// <summary>M = X_a/(1 + a_s).</summary>
    public static Equation<Func<double, double, double>> DeliveredEquation { get; } = Equation.Define(
        Delivered, "calibration.delivered", Symbols.DeliveredTorque, "X_a/(1 + a_s)", "derived", Symbols.SetOrIndicatedTorque, Symbols.ToolDeviation);

    /// <summary>Relative standard uncertainty of the reference device.</summary>
    public static double ReferenceComponent(double W_md) => W_md / 2;

    /// <summary>w_md = W_md/2.</summary>
    public static Equation<Func<double, double>> ReferenceComponentEquation { get; } = Equation.Define(
        ReferenceComponent, "calibration.reference-component", Symbols.CalibrationComponent, "W_md/2", Part2, Symbols.ReferenceExpandedUncertainty);

    /// <summary>Relative standard uncertainty of a value that lies anywhere in a range.</summary>
    public static double RangeComponent(double b_x, double X_r) => b_x / (2 * Math.Sqrt(3) * X_r);

    /// <summary>w = b/(2√3 X_r): resolution, reproducibility, output drive, interface, force loading point.</summary>
    public static Equation<Func<double, double, double>> RangeComponentEquation { get; } = Equation.Define(
        RangeComponent, "calibration.range-component", Symbols.CalibrationComponent, "b_x/(2*sqrt(3)*X_r)", Part2,
        Symbols.CalibrationRange, Symbols.CalibrationReference);

    /// <summary>Relative standard uncertainty of the mean of the readings at one point.</summary>
    public static double RepeatabilityComponent(double s_x, double n_x, double X_r) => s_x / (Math.Sqrt(n_x) * X_r);

    /// <summary>w_re = s/(√n X_r).</summary>
    public static Equation<Func<double, double, double, double>> RepeatabilityComponentEquation { get; } = Equation.Define(
        RepeatabilityComponent, "calibration.repeatability-component", Symbols.CalibrationComponent, "s_x/(sqrt(n_x)*X_r)", Part2,
        Symbols.CalibrationReadingDeviation, Symbols.CalibrationReadingCount, Symbols.CalibrationReference);

    /// <summary>One more component combined with those before.</summary>
    public static double Combine(double w_c, double w_x) => Math.Sqrt(w_c * w_c + w_x * w_x);

    /// <summary>w = √(w_1² + w_2²), folded over the components.</summary>
    public static Equation<Func<double, double, double>> CombineEquation { get; } = Equation.Define(
        Combine, "calibration.combine", Symbols.CalibrationCombined, "sqrt(w_c^2 + w_x^2)", Part2, Symbols.CalibrationCombined, Symbols.CalibrationComponent);

    /// <summary>Expanded relative uncertainty with coverage factor 2.</summary>
    public static double Expand(double w_c) => 2 * w_c;

    /// <summary>W = 2w.</summary>
    public static Equation<Func<double, double>> ExpandEquation { get; } = Equation.Define(
        Expand, "calibration.expand", Symbols.CalibrationExpanded, "2*w_c", Part2, Symbols.CalibrationCombined);

    /// <summary>Relative uncertainty interval of the tool in use.</summary>
    public static double IntervalOf(double a_s, double b_ep, double W_x) => Math.Abs(a_s) + Math.Abs(b_ep) + W_x;

    /// <summary>W' = |a_s| + |b_ep| + W.</summary>
    public static Equation<Func<double, double, double, double>> IntervalOfEquation { get; } = Equation.Define(
        IntervalOf, "calibration.interval", Symbols.UncertaintyInterval, "sqrt(a_s^2) + sqrt(b_ep^2) + W_x", Part2,
        Symbols.ToolDeviation, Symbols.ReferenceSystematic, Symbols.CalibrationExpanded);
}
