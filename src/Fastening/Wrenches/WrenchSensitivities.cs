using Fastening.Equations;
using UnitsNet;

namespace Fastening;

/// <summary>How much the fastener torque changes with every length and angle of wrench and adapters, at one setting.</summary>
/// <remarks>
/// Analytic first derivatives of M_f = M_w ρ (equations wrench.ratio-per-…). At 90° and a square pull the lever length does not matter;
/// at 0° the angles do not, to first order.
/// </remarks>
/// <example><code>WrenchSensitivities s = wrench.SensitivitiesAt(setting);
/// Torque perDegree = Torque.FromNewtonMeters(s.PerAdapterAngle[0].NewtonMetersPerRadian * Math.PI / 180);</code></example>
public sealed class WrenchSensitivities
{
    internal WrenchSensitivities(double setting, double ratio, double lever, double pull, WrenchAdapter[] adapters)
    {
        PerSetting = ratio;
        PerLeverLength = PerLength(setting * WrenchEquations.RatioPerLeverLength(ratio, lever));
        PerAdapterLength = Array.AsReadOnly(Array.ConvertAll(
            adapters, a => PerLength(setting * WrenchEquations.RatioPerAdapterLength(a.AngleSi, lever, pull))));
        PerAdapterAngle = Array.AsReadOnly(Array.ConvertAll(
            adapters, a => PerAngle(setting * WrenchEquations.RatioPerAdapterAngle(a.LengthSi, a.AngleSi, lever, pull))));
        double perPull = 0;
        foreach (WrenchAdapter adapter in adapters)
        {
            perPull = WrenchEquations.RatioPerPullAngle(perPull, adapter.LengthSi, adapter.AngleSi, lever, pull);
        }

        PerPullAngle = PerAngle(setting * perPull);
    }

    /// <summary>Change of the fastener torque per unit of the setting: the torque ratio.</summary>
    public double PerSetting { get; }

    /// <summary>Change of the fastener torque per metre of lever length.</summary>
    public TorquePerLength PerLeverLength { get; }

    /// <summary>Change of the fastener torque per metre of each adapter, in their order.</summary>
    public IReadOnlyList<TorquePerLength> PerAdapterLength { get; }

    /// <summary>Change of the fastener torque per radian of the angle of each adapter, in their order.</summary>
    public IReadOnlyList<RotationalStiffness> PerAdapterAngle { get; }

    /// <summary>Change of the fastener torque per radian of the lean of the pull.</summary>
    public RotationalStiffness PerPullAngle { get; }

    private static TorquePerLength PerLength(double value) => TorquePerLength.FromNewtonMetersPerMeter(value);

    private static RotationalStiffness PerAngle(double value) => RotationalStiffness.FromNewtonMetersPerRadian(value);
}
