using System.Runtime.CompilerServices;
using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;
using UnitsNet.Units;

namespace Fastening;

public sealed partial class TorqueWrench
{
    internal Term RatioTerm
    {
        get
        {
            Term ratio = Term.Given(1, "torque ratio of the wrench without adapters"), lever = _lever.Term, pull = _pull.Term;
            for (int i = 0; i < _adapters.Length; i++) ratio = _adapters[i].AddRatio(ratio, Numbered("adapter", i), lever, pull);
            return ratio;
        }
    }

    private Term ComplianceTerm
    {
        get
        {
            Term compliance = CoaxialExtension.NothingBefore;
            for (int i = 0; i < _extensions.Length; i++) compliance = _extensions[i].AddCompliance(compliance, Numbered("bar", i));
            return compliance;
        }
    }

    private static double RatioOf(WrenchAdapter[] adapters, double lever, double pull)
    {
        double ratio = 1;
        foreach (WrenchAdapter adapter in adapters) ratio = WrenchEquations.TorqueRatio(ratio, adapter.LengthSi, adapter.AngleSi, lever, pull);
        return ratio;
    }

    /// <summary>Put together only while a derivation listens.</summary>
    private static string Numbered(string part, int index) => Recording.IsOn ? Print.Text($"{part} {index + 1}") : part;

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void WriteRatio()
    {
        if (Recording.IsOn) Si.Number(Recording.Agree(_ratio, RatioTerm));
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void WriteSetting(double setting, double value, TorqueUnit unit)
    {
        if (!Recording.IsOn) return;
        Term atFastener = Domains.Torque.Argument(new Torque(value, unit), "torque at the fastener");
        Si.Torque(Recording.Agree(setting, WrenchEquations.SettingEquation.Of(atFastener, RatioTerm)));
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void WriteFastenerTorque(double torque, double value, TorqueUnit unit)
    {
        if (!Recording.IsOn) return;
        Term setting = Domains.Torque.Argument(new Torque(value, unit), "setting of the wrench");
        Si.Torque(Recording.Agree(torque, WrenchEquations.FastenerTorqueEquation.Of(setting, RatioTerm)));
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void WriteWindUp(double windUp, double value, TorqueUnit unit)
    {
        if (!Recording.IsOn) return;
        Term torque = Domains.Torque.Argument(new Torque(value, unit), "torque in the bars");
        Si.AngleFromRadians(Recording.Agree(windUp, WrenchEquations.WindUpEquation.Of(torque, ComplianceTerm)));
    }
}
