using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

/// <summary>One tightening that was done with a tool, as its log has it.</summary>
/// <example><code>var reading = new ToolReading("A-12", at, Torque.FromNewtonMeters(148), window);</code></example>
public sealed class ToolReading
{
    /// <summary>A tightening from a log.</summary>
    /// <param name="fastener">Which fastener.</param>
    /// <param name="at">When.</param>
    /// <param name="indicated">Torque that the tool was set to or indicated; behind an adapter this is not the torque at the fastener.</param>
    /// <param name="window">What was required, as a torque at the tool (<see cref="TorqueWrench.SettingWindowFor"/>).</param>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="fastener"/> is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The torque is outside its domain.</exception>
    /// <example><code>var reading = new ToolReading("A-12", at, indicated: Torque.FromNewtonMeters(148), window);</code></example>
    public ToolReading(string fastener, DateTimeOffset at, Torque indicated, ToleranceWindow<Torque> window)
    {
        Fastener = Naming.Check(fastener);
        At = at;
        SiIndicated = Domains.PositiveTorque.Check(indicated);
        Window = Guard.NotNull(window);
    }

    /// <summary>Which fastener.</summary>
    public string Fastener { get; }

    /// <summary>When.</summary>
    public DateTimeOffset At { get; }

    /// <summary>Torque that the tool was set to or indicated.</summary>
    public Torque Indicated => Si.Torque(SiIndicated);

    /// <summary>What was required, as a torque at the tool.</summary>
    public ToleranceWindow<Torque> Window { get; }

    internal double SiIndicated { get; }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Fastener}, {At:yyyy-MM-dd HH:mm zzz}: {SiIndicated:0.##} N·m");
}
