namespace Fastening.Equations;

internal static partial class Symbols
{
    /// <summary>Torque in the thread, as a friction test reads it.</summary>
    public static Symbol MeasuredThreadTorque { get; } = new("M_th", SymbolUnit.Torque, "thread torque", 1e-3, 1e5);

    /// <summary>Thread torque per unit preload and unit friction.</summary>
    public static Symbol ThreadFrictionRadius { get; } = new("r_th", SymbolUnit.Length, "thread torque per unit preload and unit friction", 4e-4, 0.15);

    /// <summary>Bearing torque per unit preload and unit friction.</summary>
    public static Symbol BearingFrictionRadius { get; } = new("r_b", SymbolUnit.Length, "bearing torque per unit preload and unit friction", 5e-4, 3);

    /// <summary>Coefficient of friction taken alike in thread and bearing.</summary>
    public static Symbol TotalFriction { get; } = new("mu_tot", SymbolUnit.Ratio, "coefficient of friction, thread and bearing alike", 0, 2);

    /// <summary>Thread friction at which the thread just holds.</summary>
    public static Symbol HoldingFriction { get; } = new("mu_h", SymbolUnit.Ratio, "thread friction at which the thread just holds", 0, 2);

    /// <summary>Share of the torque that lifts the load or stretches the bolt.</summary>
    public static Symbol Efficiency { get; } = new("e", SymbolUnit.Ratio, "efficiency of the screw", 0, 1);
}
