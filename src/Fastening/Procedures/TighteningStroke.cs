using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>One pull of a pattern: pass, fastener, torque.</summary>
public sealed class TighteningStroke
{
    internal TighteningStroke(int pass, int position, string fastener, double torque)
    {
        Pass = pass;
        Position = position;
        Fastener = fastener;
        Torque = Si.Torque(torque);
    }

    /// <summary>The pass, from 1.</summary>
    public int Pass { get; }

    /// <summary>The place of the fastener on the joint, from 1, as the pattern numbers it.</summary>
    public int Position { get; }

    /// <summary>The name of the fastener.</summary>
    public string Fastener { get; }

    /// <summary>The torque of this pass.</summary>
    public Torque Torque { get; }

    /// <inheritdoc />
    public override string ToString() => $"pass {Pass}: {Fastener}, {Guard.Show(Torque)}";
}
