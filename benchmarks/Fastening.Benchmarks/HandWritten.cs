using System.Globalization;
using UnitsNet;

namespace Fastening.Benchmarks;

/// <summary>The baseline: what a developer would write in place of a model, with the same domain and the same refusal.</summary>
internal sealed class HandWritten(double arm, double prevailing, double ratio, double lower, double upper)
{
    public Torque TorqueFor(Force preload)
    {
        double newtons = preload.Newtons;
        if (!(newtons >= 0 && newtons <= 1e9)) Refuse(nameof(preload), preload.ToString("G6", CultureInfo.InvariantCulture), "at least 0 kN and at most 1000000 kN");
        return Torque.FromNewtonMeters(arm * newtons + prevailing);
    }

    public Force PreloadAt(Torque torque)
    {
        double newtonMeters = torque.NewtonMeters;
        if (!(newtonMeters >= 0 && newtonMeters <= 1e7)) Refuse(nameof(torque), torque.ToString("G6", CultureInfo.InvariantCulture), "at least 0 N·m and at most 10000000 N·m");
        double preload = (newtonMeters - prevailing) / arm;
        return Force.FromNewtons(preload <= 0 ? 0 : preload);
    }

    public Torque SettingFor(Torque atFastener)
    {
        double newtonMeters = atFastener.NewtonMeters;
        if (!(newtonMeters >= 0 && newtonMeters <= 1e7)) Refuse(nameof(atFastener), atFastener.ToString("G6", CultureInfo.InvariantCulture), "at least 0 N·m and at most 10000000 N·m");
        return Torque.FromNewtonMeters(newtonMeters / ratio);
    }

    public Conformity Classify(Torque reading)
    {
        double newtonMeters = reading.NewtonMeters;
        if (newtonMeters - newtonMeters != 0) return Conformity.Undefined;
        return newtonMeters < lower ? Conformity.Below : newtonMeters > upper ? Conformity.Above : Conformity.Within;
    }

    private static void Refuse(string name, string value, string permitted) =>
        throw new ArgumentOutOfRangeException(name, $"{name} is {value}; it must be {permitted}.");
}
