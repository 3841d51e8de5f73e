using Fastening.Equations;
using UnitsNet;

namespace Fastening.Internals;

/// <summary>The arithmetic of a guaranteed setting, in SI.</summary>
internal sealed class WrenchChain(TorqueWrench wrench, WindowLimits required, Stated<Ratio> uncertainty)
{
    /// <summary>With the largest accuracy, 50 %, the wrench still delivers a finite torque.</summary>
    public static readonly Domain<Ratio> CalibrationDomain = new(0, 0.4);

    private readonly double _ratio = wrench.RatioSi;
    private readonly double _least = Math.Max(required.Lower, 0);
    private readonly double _greatest = required.Upper;

    public TorqueWrench Wrench { get; } = wrench;

    public double Accuracy { get; } = wrench.StatedAccuracy.Value;

    public double Uncertainty { get; } = uncertainty.Value;

    /// <summary>Settings between the two limits; null when they have crossed.</summary>
    public WindowLimits? Exact =>
        WindowLimits.Between(LowestSetting.Value, WrenchEquations.Setting(Math.Max(required.Target, 0), _ratio), double.IsInfinity(_greatest) ? _greatest : HighestSetting.Value);

    /// <summary>Neither the window nor the range ends upwards: a setting high enough allows any scatter.</summary>
    public bool IsUnlimited => double.IsInfinity(_greatest) && Wrench.HighTorque is null;

    /// <summary>Of the steps within the range, the one at which the widest scatter would still fit; null when the range holds no step, or has no end.</summary>
    public double? MostTolerantStep
    {
        get
        {
            if (IsUnlimited) return null;
            double best = _greatest == 0 ? 0 : double.IsInfinity(_greatest) ? double.MaxValue : GuaranteeEquations.MostTolerantSetting(_least, _greatest, _ratio);
            double low = Wrench.LowTorque is Torque minimum ? Si.Of(minimum) : 0;
            double high = Wrench.HighTorque is Torque maximum ? Si.Of(maximum) : double.MaxValue;
            if (Wrench.Resolution is not Torque resolution) return Math.Min(Math.Max(best, low), high);
            double step = Si.Of(resolution);
            double first = Math.Ceiling(Tolerance.SnapToWhole(low / step)), last = Math.Floor(Tolerance.SnapToWhole(high / step));
            if (first > last) return null;
            double below = Math.Min(Math.Max(Math.Floor(Tolerance.SnapToWhole(best / step)), first), last) * step;
            double above = Math.Min(Math.Max(Math.Ceiling(Tolerance.SnapToWhole(best / step)), first), last) * step;
            return LargestDeviationAt(above) > LargestDeviationAt(below) ? above : below;
        }
    }

    /// <summary>What the accuracy may be, at most what a wrench can be given, when the best step is set; null when nothing is left for it.</summary>
    public double? LargestAccuracy
    {
        get
        {
            if (IsUnlimited) return Domains.Accuracy.High;
            if (MostTolerantStep is not double step) return null;
            double accuracy = LargestDeviationAt(step) - Uncertainty;
            return accuracy >= 0 ? Math.Min(accuracy, Domains.Accuracy.High) : null;
        }
    }

    /// <summary>Before range and display are looked at.</summary>
    public Term LowestSetting => GuaranteeEquations.LowestSettingEquation.Of(
        Stated<Torque>.Of(_least, "least torque of the required window").Term, Wrench.StatedAccuracy.Term, uncertainty.Term, Wrench.RatioTerm);

    /// <summary>Only of a window with an upper limit.</summary>
    public Term HighestSetting => GuaranteeEquations.HighestSettingEquation.Of(
        Stated<Torque>.Of(_greatest, "greatest torque of the required window").Term, Wrench.StatedAccuracy.Term, uncertainty.Term, Wrench.RatioTerm);

    public WindowLimits? WithinRange(WindowLimits? settings)
    {
        if (settings is not WindowLimits some || Wrench.LowTorque is not Torque minimum || Wrench.HighTorque is not Torque maximum) return settings;
        return some.Intersect(new WindowLimits(Si.Of(minimum), double.NaN, Si.Of(maximum)));
    }

    public WindowLimits? OnDisplay(WindowLimits? settings) =>
        settings is WindowLimits some && Wrench.Resolution is Torque resolution ? some.RoundInward(Si.Of(resolution)) : settings;

    public WindowLimits DeliveredOver(in WindowLimits settings) => new(
        GuaranteeEquations.LeastTorque(settings.Lower, Accuracy, Uncertainty, _ratio),
        WrenchEquations.FastenerTorque(settings.Target, _ratio),
        GuaranteeEquations.GreatestTorque(settings.Upper, Accuracy, Uncertainty, _ratio));

    public WindowLimits DeliveredOver(double setting) => DeliveredOver(new WindowLimits(setting, setting, setting));

    /// <summary>A limit of 0 is kept by every setting, and 0 is all that an upper limit of 0 permits.</summary>
    private double LargestDeviationAt(double setting)
    {
        if (setting == 0) return _least == 0 ? 1 : -1;
        if (_greatest == 0) return -1;
        if (double.IsInfinity(_greatest)) return setting * _ratio / _least - 1;
        return _least == 0
            ? 1 - setting * _ratio / _greatest
            : GuaranteeEquations.LargestDeviation(setting, _least, _greatest, _ratio);
    }
}
