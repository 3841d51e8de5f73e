using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

/// <summary>One tool of the store: its name, its class, its range.</summary>
/// <example><code>TorqueTool wrench = TorqueTool.WithRange("W-17", TorqueToolClass.Parse("II A"), Torque.FromNewtonMeters(40), Torque.FromNewtonMeters(200));</code></example>
public sealed class TorqueTool
{
    private TorqueTool(string name, TorqueToolClass toolClass, double low, double high, double permitted)
    {
        Permitted = permitted;
        Name = name;
        Class = toolClass;
        SiLow = low;
        SiHigh = high;
    }

    /// <summary>What the store calls it.</summary>
    public string Name { get; }

    /// <summary>Its class.</summary>
    public TorqueToolClass Class { get; }

    /// <summary>Lowest torque of its range.</summary>
    public Torque LowTorque => Si.Torque(SiLow);

    /// <summary>Greatest torque of its range.</summary>
    public Torque HighTorque => Si.Torque(SiHigh);

    /// <summary>Maximum permissible deviation of its class and size, either way.</summary>
    public Ratio PermittedDeviation => Si.Ratio(Permitted);

    internal double SiLow { get; }

    internal double SiHigh { get; }

    internal double Permitted { get; }

    /// <summary>A tool that is used over a range of torques.</summary>
    /// <param name="name">What the store calls it.</param>
    /// <param name="toolClass">A class with points over the range.</param>
    /// <param name="low">Lowest torque of the declared range.</param>
    /// <param name="high">Greatest torque.</param>
    /// <returns>The tool.</returns>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty, or the class is calibrated at one set value.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A torque is outside its domain, or the low one is not below the high one.</exception>
    /// <example><code>TorqueTool.WithRange("W-17", TorqueToolClass.Parse("I C"), Torque.FromNewtonMeters(20), Torque.FromNewtonMeters(100))</code></example>
    public static TorqueTool WithRange(string name, TorqueToolClass toolClass, Torque low, Torque high)
    {
        Naming.Check(name);
        Guard.NotNull(toolClass);
        double begins = Domains.PositiveTorque.Check(low), ends = Domains.PositiveTorque.Check(high);
        if (begins >= ends) Guard.RefuseAgainst(nameof(low), low, $"less than high, {Guard.ShowToCompare(high)}");
        return toolClass.IsSetToOneValue
            ? throw new ArgumentException($"a tool of class {toolClass.Designation} is calibrated at the value it is set to; use TorqueTool.SetTo.", nameof(toolClass))
            : new TorqueTool(name, toolClass, begins, ends, toolClass.Permitted(ends));
    }

    /// <summary>A tool set to one value, of which the greatest torque is not stated: of the deviations of its class the smaller one is permitted.</summary>
    /// <param name="name">What the store calls it.</param>
    /// <param name="setClass">A class calibrated at the set value.</param>
    /// <param name="setting">The torque it is set to.</param>
    /// <returns>The tool.</returns>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty, or the class is calibrated over a range.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The torque is outside its domain.</exception>
    /// <example><code>TorqueTool.SetTo("W-3", TorqueToolClass.Parse("II B"), Torque.FromNewtonMeters(24))</code></example>
    public static TorqueTool SetTo(string name, TorqueToolClass setClass, Torque setting)
    {
        double value = Domains.PositiveTorque.Check(setting);
        return Set(name, setClass, value, Math.Min(Guard.NotNull(setClass).Permitted(value), setClass.Permitted(Domains.PositiveTorque.High)));
    }

    /// <summary>A tool set to one value, fixed or adjustable without a scale; what is permitted goes by its greatest torque, not by the setting.</summary>
    /// <param name="name">What the store calls it.</param>
    /// <param name="setClass">A class calibrated at the set value.</param>
    /// <param name="setting">The torque it is set to.</param>
    /// <param name="maximum">The greatest torque that it can be set to; of a fixed tool its setting.</param>
    /// <returns>The tool.</returns>
    /// <exception cref="ArgumentNullException">A reference is null.</exception>
    /// <exception cref="ArgumentException"><paramref name="name"/> is empty, or the class is calibrated over a range.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A torque is outside its domain, or the setting is above the maximum.</exception>
    /// <example><code>TorqueTool.SetTo("W-4", TorqueToolClass.Parse("II C"), setting: Torque.FromNewtonMeters(7), maximum: Torque.FromNewtonMeters(10))</code></example>
    public static TorqueTool SetTo(string name, TorqueToolClass setClass, Torque setting, Torque maximum)
    {
        double value = Domains.PositiveTorque.Check(setting);
        double greatest = Domains.PositiveTorque.Check(maximum);
        if (value > greatest) Guard.RefuseAgainst(nameof(setting), setting, $"at most maximum, {Guard.ShowToCompare(maximum)}");
        return Set(name, setClass, value, Guard.NotNull(setClass).Permitted(greatest));
    }

    /// <inheritdoc />
    public override string ToString() => $"{Name} ({Class})";

    private static TorqueTool Set(string name, TorqueToolClass setClass, double setting, double permitted) => setClass.IsSetToOneValue
        ? new TorqueTool(Naming.Check(name), setClass, setting, setting, permitted)
        : throw new ArgumentException($"a tool of class {setClass.Designation} is calibrated over its range; use TorqueTool.WithRange.", nameof(setClass));
}
