using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>How much warmer bolt and parts are in service than they were when the joint was tightened.</summary>
/// <remarks>
/// A rise is positive, cold is negative. Unless <see cref="WithModuli"/> is used, the moduli stay those of assembly. Give the mean coefficient of
/// expansion over these temperatures with the materials. A warm start or shutdown is a duty of its own: the bolt lags behind the parts.
/// Strengths depend on the temperature itself: rise and <see cref="AssembledAt"/>. Where that is not stated, assembly is taken at 35 °C, the upper end
/// of the room temperature of ISO 898-1 (10 to 35 °C).
/// </remarks>
/// <example><code>new JointTemperatures(bolt: TemperatureDelta.FromKelvins(60), parts: TemperatureDelta.FromKelvins(80))
/// JointTemperatures.ByLayer(bolt, steelFoot, ironBed).WithModuli(bolt: 0.95, parts: 0.97)</code></example>
public sealed class JointTemperatures
{
    /// <summary>The upper end of the room temperature at which bolts are tested (ISO 898-1:2013 clause 1, from memory), in degrees Celsius.</summary>
    internal const double WarmestRoom = 35;

    private readonly double[] _layers;

    /// <summary>One rise for the bolt and one for all layers.</summary>
    /// <param name="bolt">Rise of the bolt, −300 K to 3000 K.</param>
    /// <param name="parts">Rise of every layer, −300 K to 3000 K.</param>
    /// <exception cref="ArgumentOutOfRangeException">A rise is outside its domain.</exception>
    /// <example><code>new JointTemperatures(bolt: TemperatureDelta.FromKelvins(60), parts: TemperatureDelta.FromKelvins(80))</code></example>
    public JointTemperatures(TemperatureDelta bolt, TemperatureDelta parts)
        : this(Domains.TemperatureChange.Check(bolt), [Domains.TemperatureChange.Check(parts)], 1, 1)
    {
    }

    private JointTemperatures(double bolt, double[] layers, double boltModulus, double partsModulus, double? assembly = null)
    {
        AssemblySi = assembly;
        BoltSi = bolt;
        _layers = layers;
        BoltModulusRatio = boltModulus;
        PartsModulusRatio = partsModulus;
    }

    /// <summary>Rise of the bolt since assembly.</summary>
    public TemperatureDelta Bolt => Si.TemperatureDelta(BoltSi);

    /// <summary>Rise of each layer, in the order of the stack; one value when all are alike.</summary>
    public IReadOnlyList<TemperatureDelta> Layers => Array.AsReadOnly(Array.ConvertAll(_layers, Si.TemperatureDelta));

    /// <summary>Modulus of the bolt at temperature over that at assembly.</summary>
    public double BoltModulusRatio { get; }

    /// <summary>Modulus of the parts at temperature over that at assembly.</summary>
    public double PartsModulusRatio { get; }

    /// <summary>Temperature of the joint when it was tightened; null when not stated.</summary>
    public Temperature? Assembly => AssemblySi is double celsius ? Si.Temperature(celsius) : null;

    internal double BoltSi { get; }

    internal double? AssemblySi { get; }

    /// <summary>The highest temperature of the bolt, in degrees Celsius, at assembly or in service.</summary>
    internal double HottestBolt => (AssemblySi ?? WarmestRoom) + Math.Max(BoltSi, 0);

    /// <summary>The highest temperature of bolt and parts.</summary>
    internal double Hottest => Math.Max(HottestBolt, (AssemblySi ?? WarmestRoom) + _layers.Max());

    /// <summary>Number of layers that have a rise of their own; 1 when all are alike.</summary>
    internal int LayerCount => _layers.Length;

    /// <summary>A rise for each layer.</summary>
    /// <param name="bolt">Rise of the bolt, −300 K to 3000 K.</param>
    /// <param name="layers">Rise of each layer in the order of the stack, at least one.</param>
    /// <returns>The temperatures.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="layers"/> is null.</exception>
    /// <exception cref="ArgumentException">There is no layer.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A rise is outside its domain.</exception>
    /// <example><code>JointTemperatures.ByLayer(bolt: TemperatureDelta.FromKelvins(60), TemperatureDelta.FromKelvins(70), TemperatureDelta.FromKelvins(85))</code></example>
    public static JointTemperatures ByLayer(TemperatureDelta bolt, params TemperatureDelta[] layers)
    {
        if (Guard.NotNull(layers).Length == 0) throw new ArgumentException("at least one layer must have a temperature.", nameof(layers));
        return new JointTemperatures(
            Domains.TemperatureChange.Check(bolt), Array.ConvertAll(layers, rise => Domains.TemperatureChange.Check(rise, nameof(layers))), 1, 1);
    }

    /// <summary>The same with moduli that change with temperature.</summary>
    /// <param name="bolt">Modulus of the bolt at temperature over that at assembly, 0.05 to 3.</param>
    /// <param name="parts">Modulus of the parts at temperature over that at assembly, 0.05 to 3.</param>
    /// <returns>New temperatures.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A ratio is outside its domain.</exception>
    /// <example><code>new JointTemperatures(TemperatureDelta.FromKelvins(160), TemperatureDelta.FromKelvins(180)).WithModuli(bolt: 0.95, parts: 0.97)</code></example>
    public JointTemperatures WithModuli(double bolt, double parts) =>
        new(BoltSi, _layers, Domains.ModulusRatio.Check(bolt), Domains.ModulusRatio.Check(parts), AssemblySi);

    /// <summary>The same, tightened at a temperature that is stated: it decides up to which rise strengths at room temperature hold.</summary>
    /// <param name="assembly">Temperature of the joint when it was tightened, −60 to 100 °C.</param>
    /// <returns>New temperatures.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its domain.</exception>
    /// <example><code>new JointTemperatures(TemperatureDelta.FromKelvins(160), TemperatureDelta.FromKelvins(180)).AssembledAt(Temperature.FromDegreesCelsius(20))</code></example>
    public JointTemperatures AssembledAt(Temperature assembly) =>
        new(BoltSi, _layers, BoltModulusRatio, PartsModulusRatio, Domains.AssemblyTemperature.Check(assembly));

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"bolt {BoltSi:+0.#;-0.#;0} K, parts {string.Join(", ", Array.ConvertAll(_layers, rise => Print.Text($"{rise:+0.#;-0.#;0}")))} K")
        + (AssemblySi is double celsius ? Print.Text($" from {celsius:0.#} °C") : "");

    internal double LayerSi(int index) => _layers.Length == 1 ? _layers[0] : _layers[index];
}
