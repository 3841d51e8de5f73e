namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Half the width of a tolerance window.</summary>
    public static Symbol HalfWidth { get; } = new("h_T", SymbolUnit.Ratio, "half the width of the window, in the unit of the uncertainty", 1e-3, 1e6);

    /// <summary>Expanded uncertainty of a reading with coverage factor 2.</summary>
    public static Symbol ExpandedUncertainty { get; } = new("U_k", SymbolUnit.Ratio, "expanded uncertainty with coverage factor 2, in the unit of the window", 1e-3, 1e6);

    /// <summary>Guard band as a multiple of the expanded uncertainty.</summary>
    public static Symbol GuardBandFactor { get; } = new("r_g", SymbolUnit.Ratio, "guard band over expanded uncertainty", -10, 10);

    /// <summary>Width of a guard band.</summary>
    public static Symbol GuardBand { get; } = new("w_g", SymbolUnit.Ratio, "width of the guard band, in the unit of the window", -1e6, 1e6);

    /// <summary>Width of the acceptance window over that of the tolerance window.</summary>
    public static Symbol AcceptanceFactor { get; } = new("K_g", SymbolUnit.Ratio, "width of the acceptance window over that of the tolerance window", 0, 1);

    /// <summary>Test uncertainty ratio: half the width of the window over the expanded uncertainty with coverage factor 2.</summary>
    public static Symbol ToleranceUncertaintyRatio { get; } = new("TUR", SymbolUnit.Ratio, "test uncertainty ratio, half width over expanded uncertainty (k = 2)", 1, 1e3);

    /// <summary>Test uncertainty ratio of another definition: standard deviation of the process over that of the measurement.</summary>
    public static Symbol DeviationUncertaintyRatio { get; } = new("TUR_s", SymbolUnit.Ratio, "test uncertainty ratio, standard deviation of the process over that of the measurement", 1e-9, 1e9);

    /// <summary>Standard deviation of what is known before the measurement.</summary>
    public static Symbol PriorDeviation { get; } = new("u_0", SymbolUnit.Ratio, "standard deviation of the prior, in the unit of the window", 1e-3, 1e3);

    /// <summary>Standard uncertainty of the measurement.</summary>
    public static Symbol MeasuringDeviation { get; } = new("u_m", SymbolUnit.Ratio, "standard uncertainty of the measurement, in the unit of the window", 1e-3, 1e3);

    /// <summary>Mean of what is known before the measurement.</summary>
    public static Symbol PriorMean { get; } = new("y_0", SymbolUnit.Ratio, "mean of the prior, in the unit of the window", -1e3, 1e3);

    /// <summary>Measured value.</summary>
    public static Symbol MeasuredValue { get; } = new("eta_m", SymbolUnit.Ratio, "measured value, in the unit of the window", -1e3, 1e3);

    /// <summary>Mean of what is known after the measurement.</summary>
    public static Symbol PosteriorMean { get; } = new("y_p", SymbolUnit.Ratio, "mean of the posterior, in the unit of the window", -1e3, 1e3);

    /// <summary>Standard deviation of what is known after the measurement.</summary>
    public static Symbol PosteriorDeviation { get; } = new("u_p", SymbolUnit.Ratio, "standard deviation of the posterior, in the unit of the window", 1e-4, 1e3);
}
