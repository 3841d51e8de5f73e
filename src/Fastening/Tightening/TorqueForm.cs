namespace Fastening;

/// <summary>How thread torque depends on friction.</summary>
public enum TorqueForm
{
    /// <summary>P_h/(2π) + c µ d_m/2: ISO 16047, JIS.</summary>
    Linear = 0,

    /// <summary>The inclined plane without approximation: (d_m/2)(tan φ + cµ)/(1 − cµ tan φ).</summary>
    Exact = 1,

    /// <summary>0.16 P + 0.58 d₂ µ, as VDI 2230 prints it for the tightening torque: 60° threads with one start only. Its stress takes <see cref="Linear"/>.</summary>
    Printed = 2,

    /// <summary>P/(2π) + 0.577 d₂ µ, as ISO 16047 prints it: 60° threads with one start only; 0.06 % below the linear form in the friction of the thread.</summary>
    PrintedIso16047 = 3,
}
