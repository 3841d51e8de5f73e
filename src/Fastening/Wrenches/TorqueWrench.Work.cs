using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

public sealed partial class TorqueWrench
{
    /// <summary>The work behind <see cref="SettingFor"/>; its last step is that setting, bit for bit.</summary>
    /// <param name="atFastener">The torque wanted at the fastener.</param>
    /// <returns>The steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="atFastener"/> is negative or beyond its domain.</exception>
    /// <example><code>Console.WriteLine(wrench.DeriveSettingFor(Torque.FromNewtonMeters(150)));</code></example>
    public Derivation DeriveSettingFor(Torque atFastener)
    {
        double torque = Domains.Torque.Check(atFastener);
        var work = new Derivation("Wrench setting");
        WrenchEquations.SettingEquation.Step(work, torque, TorqueRatioOf(work));
        return work.KeepWhatCounts();
    }

    /// <summary>The work behind <see cref="FastenerTorqueAt"/>; its last step is that torque, bit for bit.</summary>
    /// <param name="setting">Torque at the drive.</param>
    /// <returns>The steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="setting"/> is negative or beyond its domain.</exception>
    /// <example><code>Console.WriteLine(wrench.DeriveFastenerTorqueAt(Torque.FromNewtonMeters(120)));</code></example>
    public Derivation DeriveFastenerTorqueAt(Torque setting)
    {
        double torque = Domains.Torque.Check(setting);
        var work = new Derivation("Torque at the fastener");
        WrenchEquations.FastenerTorqueEquation.Step(work, torque, TorqueRatioOf(work));
        return work.KeepWhatCounts();
    }

    /// <summary>The work behind <see cref="WindUpAt"/>.</summary>
    /// <param name="torque">The torque that the bars carry.</param>
    /// <returns>The steps.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="torque"/> is negative or beyond its domain.</exception>
    /// <example><code>Console.WriteLine(wrench.WithCoaxialExtension(bar).DeriveWindUpAt(Torque.FromNewtonMeters(120)));</code></example>
    public Derivation DeriveWindUpAt(Torque torque)
    {
        double moment = Domains.Torque.Check(torque);
        var work = new Derivation("Wind-up of the coaxial bars");
        WrenchEquations.WindUpEquation.Step(work, moment, Compliance(work));
        return work.KeepWhatCounts();
    }
}
