using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The service conditions of a joint: loads, tightness, temperatures, and where the load enters.</summary>
/// <remarks>
/// Concentric load only. The range of the axial load covers every moment of service; include zero when the machine rests. Unless temperatures
/// are given, the joint stays at the temperature of assembly; what is not given is named by the check that lacks it, never assumed.
/// </remarks>
/// <example><code>JointDuty duty = new JointDuty(
///         lowAxialLoad: Force.Zero, highAxialLoad: Force.FromKilonewtons(12), LoadIntroduction.Between(0.3, 0.7),
///         Embedding.ForRoughness(SurfaceRoughness.Rz10To40, EmbeddingLoad.Shear, threads: 1, bearingFaces: 2, interfaces: 1))
///     .WithTransverseLoad(Force.FromKilonewtons(2), slipFaces: 1, lowestFriction: 0.12)
///     .WithRequiredClamp(Force.FromKilonewtons(5));</code></example>
public sealed class JointDuty
{
    private readonly AxialLoads _axial;
    private readonly Held<Force>? _requiredClamp;
    private readonly Transverse? _transverse;
    private readonly Twist? _twist;

    /// <summary>The axial load and what every joint must state with it.</summary>
    /// <param name="lowAxialLoad">Least axial load on one bolt; negative presses the parts together.</param>
    /// <param name="highAxialLoad">Greatest axial load on one bolt, at least the least.</param>
    /// <param name="introduction">Where the load enters; there is no default.</param>
    /// <param name="embedding">Embedding after tightening; <see cref="Fastening.Embedding.None"/> when it is to be left out.</param>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A load is outside its domain, or the greatest is less than the least.</exception>
    /// <example><code>var duty = new JointDuty(
    ///     lowAxialLoad: Force.FromKilonewtons(-3), highAxialLoad: Force.FromKilonewtons(12), LoadIntroduction.Of(0.4),
    ///     Embedding.Of(Length.FromMicrometers(11)));</code></example>
    public JointDuty(Force lowAxialLoad, Force highAxialLoad, LoadIntroduction introduction, Embedding embedding)
    {
        _axial = new AxialLoads(
            new(lowAxialLoad, Domains.AxialLoad.Check(lowAxialLoad), "least axial load"), new(highAxialLoad, Domains.AxialLoad.Check(highAxialLoad), "greatest axial load"));
        if (_axial.High.Value < _axial.Low.Value)
        {
            Guard.RefuseAgainst(nameof(highAxialLoad), highAxialLoad, $"at least lowAxialLoad, {Guard.ShowToCompare(lowAxialLoad)}");
        }

        Introduction = Guard.NotNull(introduction);
        Embedding = Guard.NotNull(embedding);
    }

    private JointDuty(JointDuty other, Transverse? transverse, Twist? twist, Held<Force>? requiredClamp, JointTemperatures? temperatures)
    {
        _axial = other._axial;
        Introduction = other.Introduction;
        Embedding = other.Embedding;
        _transverse = transverse;
        _twist = twist;
        _requiredClamp = requiredClamp;
        Temperatures = temperatures;
    }

    /// <summary>Least axial load.</summary>
    public Force LowAxialLoad => Si.Force(_axial.Low.Term);

    /// <summary>Greatest axial load.</summary>
    public Force HighAxialLoad => Si.Force(_axial.High.Term);

    /// <summary>Where the axial load enters.</summary>
    public LoadIntroduction Introduction { get; }

    /// <summary>Embedding after tightening.</summary>
    public Embedding Embedding { get; }

    /// <summary>Transverse load; null when none is stated.</summary>
    public Force? TransverseLoad => _transverse is Transverse load ? Si.Force(load.Load.Term) : null;

    /// <summary>Torque about the axis of the bolt; null when none is stated.</summary>
    public Torque? InterfaceTorque => _twist is Twist twist ? Si.Torque(twist.Torque.Term) : null;

    /// <summary>Clamp force required for sealing or function; null when none is stated.</summary>
    public Force? RequiredClamp => _requiredClamp is null ? null : Si.Force(_requiredClamp.Term);

    /// <summary>Temperatures in service; null when they are those of assembly.</summary>
    public JointTemperatures? Temperatures { get; }

    internal Term AxialLow => _axial.Low.Term;

    internal Term AxialHigh => _axial.High.Term;

    internal Term? StatedClamp => _requiredClamp?.Term;

    internal bool AsksForFriction => _transverse is not null || _twist is not null;

    /// <summary>The same with a transverse load that friction in the interface must hold (VDI 2230-1:2015 §5.4.1, from memory).</summary>
    /// <param name="load">The load on one bolt.</param>
    /// <param name="slipFaces">Interfaces that share it, q_F: 1 of two plates, 2 of three.</param>
    /// <param name="lowestFriction">Lowest coefficient of static friction of the interface, 0.0001 to 1; there is no default.</param>
    /// <returns>A new duty.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <exception cref="ArgumentException">The embedding of the duty is that of a load along the bolt (<see cref="EmbeddingLoad.Axial"/>).</exception>
    /// <example><code>duty.WithTransverseLoad(Force.FromKilonewtons(2), slipFaces: 1, lowestFriction: 0.12)</code></example>
    public JointDuty WithTransverseLoad(Force load, int slipFaces, double lowestFriction)
    {
        var transverse = new Transverse(
            new Stated<Force>(load, Domains.Force.Check(load), "transverse load"), new StatedNumber(Domains.CountFromOne.Check(slipFaces), "faces that share the transverse load"),
            new StatedNumber(Domains.SlipFactor.Check(lowestFriction), "lowest friction of the interface"));
        if (transverse.Load.Value > 0) RefuseAxialEmbedding(nameof(load));
        return new JointDuty(this, transverse, _twist, _requiredClamp, Temperatures);
    }

    /// <summary>The same with a torque about the axis of the bolt that friction in the interface must hold (VDI 2230-1:2015 §5.4.1, from memory).</summary>
    /// <param name="torque">The torque.</param>
    /// <param name="frictionRadius">Radius r_a at which friction acts.</param>
    /// <param name="slipFaces">Interfaces that share it, q_M.</param>
    /// <param name="lowestFriction">Lowest coefficient of static friction of the interface, 0.0001 to 1; there is no default.</param>
    /// <returns>A new duty.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <exception cref="ArgumentException">The embedding of the duty is that of a load along the bolt (<see cref="EmbeddingLoad.Axial"/>).</exception>
    /// <example><code>duty.WithInterfaceTorque(Torque.FromNewtonMeters(35), frictionRadius: Length.FromMillimeters(18), slipFaces: 1, lowestFriction: 0.12)</code></example>
    public JointDuty WithInterfaceTorque(Torque torque, Length frictionRadius, int slipFaces, double lowestFriction)
    {
        var twist = new Twist(
            new Stated<Torque>(torque, Domains.Torque.Check(torque), "torque about the axis of the bolt"), Domains.Length.Stated(frictionRadius),
            new StatedNumber(Domains.CountFromOne.Check(slipFaces), "faces that share the torque"),
            new StatedNumber(Domains.SlipFactor.Check(lowestFriction), "lowest friction of the interface"));
        if (twist.Torque.Value > 0) RefuseAxialEmbedding(nameof(torque));
        return new JointDuty(this, _transverse, twist, _requiredClamp, Temperatures);
    }

    /// <summary>The same with a clamp force that sealing or function requires.</summary>
    /// <param name="clampForce">The force in the interface of one bolt.</param>
    /// <returns>A new duty.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The force is outside its domain.</exception>
    /// <example><code>duty.WithRequiredClamp(Force.FromKilonewtons(5))     // for the gasket</code></example>
    public JointDuty WithRequiredClamp(Force clampForce) =>
        new(this, _transverse, _twist, new Held<Force>(new(clampForce, Domains.Force.Check(clampForce), "required clamp force")), Temperatures);

    /// <summary>The same at other temperatures than those of assembly.</summary>
    /// <param name="temperatures">The rises since assembly. The joint is also checked cold.</param>
    /// <returns>A new duty.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="temperatures"/> is null.</exception>
    /// <example><code>duty.WithTemperatures(new JointTemperatures(bolt: TemperatureDelta.FromKelvins(60), parts: TemperatureDelta.FromKelvins(80)))</code></example>
    public JointDuty WithTemperatures(JointTemperatures temperatures) =>
        new(this, _transverse, _twist, _requiredClamp, Guard.NotNull(temperatures));

    /// <inheritdoc />
    public override string ToString() => Print.Text($"axial load {Print.Between(Si.Force(_axial.Low.Value), Si.Force(_axial.High.Value), "0.###")}, {Introduction}, {Embedding}")
        + (TransverseLoad is Force load ? Print.Text($", transverse load {load:0.###}") : "")
        + (InterfaceTorque is Torque torque ? Print.Text($", torque {torque:0.###}") : "")
        + (RequiredClamp is Force clamp ? Print.Text($", required clamp {clamp:0.###}") : "")
        + (Temperatures is null ? "" : $", {Temperatures}");

    /// <summary>Clamp force required against slip; null when no load asks for friction.</summary>
    internal Term? ClampAgainstSlip
    {
        get
        {
            Term? transverse = _transverse is Transverse load
                ? SlipEquations.ClampForTransverseLoadEquation.Of(load.Load.Term, load.Faces.Term, load.Friction.Term)
                : null;
            Term? twist = _twist is Twist t ? SlipEquations.ClampForTorqueEquation.Of(t.Torque.Term, t.Faces.Term, t.Radius.Term, t.Friction.Term) : null;
            return transverse is Term one && twist is Term other ? SlipEquations.ClampAgainstSlipEquation.Of(one, other) : transverse ?? twist;
        }
    }

    /// <summary>Clamp force required, for whatever reason.</summary>
    internal Term ClampRequired => StatedClamp is Term stated && ClampAgainstSlip is Term slip
        ? SlipEquations.RequiredClampEquation.Of(stated, slip)
        : StatedClamp ?? ClampAgainstSlip ?? Term.Given(0, "required clamp force, none is stated");

    private void RefuseAxialEmbedding(string name)
    {
        if (Embedding.Load != EmbeddingLoad.Axial) return;
        throw new ArgumentException($"The duty states {Embedding}, for a load along the bolt; beside a load across it state that of EmbeddingLoad.Shear, which embeds more.", name);
    }

    // Fields, and no records: a property would copy what is stated at every reading.
    private sealed class AxialLoads(in Stated<Force> low, in Stated<Force> high)
    {
        public readonly Stated<Force> Low = low, High = high;
    }

    private sealed class Transverse(in Stated<Force> load, in StatedNumber faces, in StatedNumber friction)
    {
        public readonly Stated<Force> Load = load;
        public readonly StatedNumber Faces = faces, Friction = friction;
    }

    private sealed class Twist(in Stated<Torque> torque, in Stated<Length> radius, in StatedNumber faces, in StatedNumber friction)
    {
        public readonly Stated<Torque> Torque = torque;
        public readonly Stated<Length> Radius = radius;
        public readonly StatedNumber Faces = faces, Friction = friction;
    }
}
