using Fastening.Equations;
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

    private static readonly StatedNumber AsAssembled = new(1, "modulus as at assembly");

    /// <summary>The bolt, then the layers: one value when all are alike.</summary>
    private readonly Stated<TemperatureDelta>[] _rises;
    private readonly StatedNumber _boltModulus, _partsModulus;
    private readonly double? _assembly;

    /// <summary>One rise for the bolt and one for all layers.</summary>
    /// <param name="bolt">Rise of the bolt, −300 K to 3000 K.</param>
    /// <param name="parts">Rise of every layer, −300 K to 3000 K.</param>
    /// <exception cref="ArgumentOutOfRangeException">A rise is outside its domain.</exception>
    /// <example><code>new JointTemperatures(bolt: TemperatureDelta.FromKelvins(60), parts: TemperatureDelta.FromKelvins(80))</code></example>
    public JointTemperatures(TemperatureDelta bolt, TemperatureDelta parts)
        : this([BoltRise(bolt), LayerRise(parts, nameof(parts))], AsAssembled, AsAssembled, null)
    {
    }

    private JointTemperatures(Stated<TemperatureDelta>[] rises, StatedNumber boltModulus, StatedNumber partsModulus, double? assembly)
    {
        _rises = rises;
        _boltModulus = boltModulus;
        _partsModulus = partsModulus;
        _assembly = assembly;
    }

    /// <summary>Rise of the bolt since assembly.</summary>
    public TemperatureDelta Bolt => Si.TemperatureDelta(_rises[0].Term);

    /// <summary>Rise of each layer, in the order of the stack; one value when all are alike.</summary>
    public IReadOnlyList<TemperatureDelta> Layers => Array.AsReadOnly(_rises.Skip(1).Select(rise => Si.TemperatureDelta(rise.Term)).ToArray());

    /// <summary>Modulus of the bolt at temperature over that at assembly.</summary>
    public double BoltModulusRatio => Si.Number(_boltModulus.Term);

    /// <summary>Modulus of the parts at temperature over that at assembly.</summary>
    public double PartsModulusRatio => Si.Number(_partsModulus.Term);

    /// <summary>Temperature of the joint when it was tightened; null when not stated.</summary>
    public Temperature? Assembly => _assembly is double celsius ? Si.Temperature(celsius) : null;

    internal Term BoltTerm => _rises[0].Term;

    internal Term BoltModulusTerm => _boltModulus.Term;

    internal Term PartsModulusTerm => _partsModulus.Term;

    /// <summary>The highest temperature of the bolt, in degrees Celsius, at assembly or in service.</summary>
    internal double HottestBolt => AtAssembly + Math.Max(_rises[0].Value, 0);

    /// <summary>The highest temperature of bolt and parts.</summary>
    internal double Hottest
    {
        get
        {
            double most = _rises[1].Value;
            for (int i = 2; i < _rises.Length; i++) most = Math.Max(most, _rises[i].Value);
            return Math.Max(HottestBolt, AtAssembly + most);
        }
    }

    /// <summary>Number of layers that have a rise of their own; 1 when all are alike.</summary>
    internal int LayerCount => _rises.Length - 1;

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
            [BoltRise(bolt), .. layers.Select(rise => LayerRise(rise, nameof(layers)))], AsAssembled, AsAssembled, null);
    }

    /// <summary>The same with moduli that change with temperature.</summary>
    /// <param name="bolt">Modulus of the bolt at temperature over that at assembly, 0.05 to 3.</param>
    /// <param name="parts">Modulus of the parts at temperature over that at assembly, 0.05 to 3.</param>
    /// <returns>New temperatures.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A ratio is outside its domain.</exception>
    /// <example><code>new JointTemperatures(TemperatureDelta.FromKelvins(160), TemperatureDelta.FromKelvins(180)).WithModuli(bolt: 0.95, parts: 0.97)</code></example>
    public JointTemperatures WithModuli(double bolt, double parts) => new(
        _rises, new StatedNumber(Domains.ModulusRatio.Check(bolt, name: nameof(bolt)), "modulus of the bolt at temperature over that at assembly"),
        new StatedNumber(Domains.ModulusRatio.Check(parts, name: nameof(parts)), "modulus of the parts at temperature over that at assembly"), _assembly);

    /// <summary>The same, tightened at a temperature that is stated: it decides up to which rise strengths at room temperature hold.</summary>
    /// <param name="assembly">Temperature of the joint when it was tightened, −60 to 100 °C.</param>
    /// <returns>New temperatures.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its domain.</exception>
    /// <example><code>new JointTemperatures(TemperatureDelta.FromKelvins(160), TemperatureDelta.FromKelvins(180)).AssembledAt(Temperature.FromDegreesCelsius(20))</code></example>
    public JointTemperatures AssembledAt(Temperature assembly) =>
        new(_rises, _boltModulus, _partsModulus, Domains.AssemblyTemperature.Check(assembly));

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"bolt {_rises[0].Value:+0.#;-0.#;0} K, parts {string.Join(", ", _rises.Skip(1).Select(rise => Print.Text($"{rise.Value:+0.#;-0.#;0}")))} K")
        + (_assembly is double celsius ? Print.Text($" from {celsius:0.#} °C") : "");

    /// <summary>The rise of a layer, under its name where it has one of its own.</summary>
    internal Term LayerTerm(int index, string name) => LayerCount == 1 ? _rises[1].Term : _rises[index + 1].TermOf(name);

    private double AtAssembly => _assembly ?? WarmestRoom;

    private static Stated<TemperatureDelta> BoltRise(TemperatureDelta bolt) =>
        new(bolt, Domains.TemperatureChange.Check(bolt), "temperature rise of the bolt");

    private static Stated<TemperatureDelta> LayerRise(TemperatureDelta rise, string name) =>
        new(rise, Domains.TemperatureChange.Check(rise, name), name == "parts" ? "temperature rise of the parts" : "temperature rise");
}
