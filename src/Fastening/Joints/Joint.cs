using System.Runtime.CompilerServices;
using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;
using UnitsNet.Units;

namespace Fastening;

/// <summary>A bolt and the parts it clamps: two springs in one ring of force.</summary>
/// <remarks>
/// Concentric clamping and load. Rotation is that of the nut relative to the bolt thread, whichever is turned, from full contact of the parts up
/// to the first yield of bolt, thread or bearing.
/// </remarks>
/// <example><code>var joint = new Joint(bolt, parts);
/// Angle further = joint.RotationFor(Force.FromKilonewtons(40));     // from snug, to gain 40 kN</code></example>
public sealed partial class Joint : IDerives<JointSprings>
{
    private JointSprings? _springs;

    /// <summary>A joint.</summary>
    /// <param name="bolt">The bolt.</param>
    /// <param name="parts">What it clamps.</param>
    /// <exception cref="ArgumentNullException"><paramref name="bolt"/> or <paramref name="parts"/> is null.</exception>
    /// <exception cref="ArgumentException">
    /// A bolt of VDI 2230 with the fit by Wileman, a textbook bolt with the cone of VDI 2230, a bolt of VDI 2230 with a nut and a cone or
    /// frusta for a tapped thread or the reverse, a bolt and parts of different grips, or one of them a thousand million times as stiff as the other.
    /// </exception>
    /// <example><code>var joint = new Joint(bolt, parts);</code></example>
    public Joint(BoltCompliance bolt, ClampedStack parts)
    {
        Bolt = Guard.NotNull(bolt);
        Parts = Guard.NotNull(parts);
        RefuseMixture(bolt, parts);
        RefuseWithoutASpring(bolt, parts);
    }

    /// <summary>A joint of two stated stiffnesses, from a test or from finite elements.</summary>
    /// <remarks>It has neither sections nor layers: growth by temperature, twist of the bolt and what requires a steel grip are not known from it.</remarks>
    /// <param name="thread">Thread of the bolt.</param>
    /// <param name="bolt">Stiffness of the bolt, head and nut included as far as they were measured.</param>
    /// <param name="parts">Stiffness of the clamped parts.</param>
    /// <returns>The joint.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A stiffness is outside 1e-3 N/mm to 1e8 kN/mm.</exception>
    /// <exception cref="ArgumentException">One is a thousand million times as stiff as the other.</exception>
    /// <example><code>Joint measured = Joint.FromStiffness(
    ///     ScrewThread.Parse("M16"), bolt: ForcePerLength.FromKilonewtonsPerMillimeter(420), parts: ForcePerLength.FromKilonewtonsPerMillimeter(1680));
    /// Console.WriteLine(measured.LoadFactor);     // 0.2</code></example>
    public static Joint FromStiffness(ScrewThread thread, ForcePerLength bolt, ForcePerLength parts) => new(
        BoltCompliance.OfStiffness(Guard.NotNull(thread), new Held<ForcePerLength>(new(bolt, Domains.Stiffness.Check(bolt), "stiffness of the bolt"))),
        ClampedStack.OfStiffness(new Held<ForcePerLength>(new(parts, Domains.Stiffness.Check(parts), "stiffness of the parts"))));

    /// <summary>The bolt.</summary>
    public BoltCompliance Bolt { get; }

    /// <summary>The clamped parts.</summary>
    public ClampedStack Parts { get; }

    /// <summary>Elastic resilience of both, δ_S + δ_P, metres per newton.</summary>
    public double MetersPerNewton => Si.Number(Springs.Total);

    /// <summary>
    /// Load factor Φ_K = δ_P/(δ_S + δ_P): the share that the bolt takes of a load under head and nut (load introduction n = 1); Shigley's C.
    /// </summary>
    public double LoadFactor => Si.Number(Springs.LoadFactor);

    /// <summary>The rotation that gains a preload (equation <c>joint.rotation</c>).</summary>
    /// <param name="preloadGain">The preload to gain.</param>
    /// <returns>The rotation.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="preloadGain"/> is outside its domain.</exception>
    /// <example><code>joint.RotationFor(preloadGain: Force.FromKilonewtons(40)).Degrees</code></example>
    public Angle RotationFor(Force preloadGain)
    {
        double radians = JointEquations.Rotation(Domains.Force.Check(preloadGain), Springs.Total.Value, Bolt.Thread.Geometry.Lead.Value);
        if (Recording.IsAnywhere) WriteRotation(radians, preloadGain.Value, preloadGain.Unit);
        return Si.AngleFromRadians(radians);
    }

    /// <summary>The preload that a rotation gains (equation <c>joint.preload-gain</c>).</summary>
    /// <param name="rotation">The rotation.</param>
    /// <returns>The preload.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="rotation"/> is outside its domain.</exception>
    /// <example><code>joint.PreloadGainAt(Angle.FromDegrees(35)).Kilonewtons</code></example>
    public Force PreloadGainAt(Angle rotation)
    {
        double gain = JointEquations.PreloadGain(Si.ToRadians(Domains.Rotation.Check(rotation)), Bolt.Thread.Geometry.Lead.Value, Springs.Total.Value);
        if (Recording.IsAnywhere) WritePreloadGain(gain, rotation.Value, rotation.Unit);
        return Si.Force(gain);
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Bolt}; {Parts}; Φ_K {Springs.LoadFactor.Value:G3}");

    /// <summary>
    /// Nut or tapped part, as far as bolt or cone state it: a bolt of VDI 2230 and its cone always, frusta from the head alone too. Frusta from both
    /// ends do not: textbooks take them for a tapped joint as well, over the effective grip.
    /// </summary>
    internal JointForm? Form =>
        Bolt.Method == BoltComplianceMethod.Vdi2230 || Parts.Method == ClampedStackMethod.Vdi2230Cone || Parts.Form == JointForm.TappedThread
            ? Parts.Form ?? FormOfBolt
            : null;

    /// <summary>Parts without a cone, sleeves, leave it to the bolt.</summary>
    private JointForm? FormOfBolt =>
        Bolt.Method != BoltComplianceMethod.Vdi2230 ? null : Bolt.IsTapped ? JointForm.TappedThread : JointForm.ThroughBolt;

    internal JointSprings Springs => Derived.Of(ref _springs, this);

    JointSprings IDerives<JointSprings>.Derive() => new(Bolt.Springs.Resilience, Parts.Spring.Resilience);

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void WriteRotation(double radians, double gain, ForceUnit unit)
    {
        if (!Recording.IsOn) return;
        Term force = Domains.Force.Argument(new Force(gain, unit), "preloadGain");
        Si.AngleFromRadians(Recording.Agree(radians, JointEquations.RotationEquation.Of(force, Springs.Total, Bolt.Thread.Geometry.Lead)));
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private void WritePreloadGain(double gain, double rotation, AngleUnit unit)
    {
        if (!Recording.IsOn) return;
        Term radians = Domains.Rotation.Argument(new Angle(rotation, unit), nameof(rotation));
        Si.Force(Recording.Agree(gain, JointEquations.PreloadGainEquation.Of(radians, Bolt.Thread.Geometry.Lead, Springs.Total)));
    }

    private static void RefuseMixture(BoltCompliance bolt, ClampedStack parts)
    {
        if (bolt.Method == BoltComplianceMethod.Vdi2230 && parts.Method == ClampedStackMethod.Wileman)
        {
            throw new ArgumentException("A bolt of VDI 2230 goes with the cone of VDI 2230 or with frusta, not with the fit by Wileman, which belongs to a textbook bolt.", nameof(parts));
        }

        if (bolt.Method == BoltComplianceMethod.Textbook && parts.Method == ClampedStackMethod.Vdi2230Cone)
        {
            throw new ArgumentException("A textbook bolt goes with frusta or with the fit by Wileman, not with the cone of VDI 2230.", nameof(parts));
        }

        RefuseOtherForm(bolt, parts);
        bool gripMustAgree = bolt.Method is BoltComplianceMethod.Vdi2230 or BoltComplianceMethod.Textbook;
        if (gripMustAgree && Math.Abs(bolt.GripMeters - parts.GripMeters) > 1e-6 * parts.GripMeters)
        {
            throw new ArgumentException(Print.Text(
                $"The bolt has a grip of {Si.Length(bolt.GripMeters):G6}, the parts are {Si.Length(parts.GripMeters):G6} thick; they must agree."), nameof(parts));
        }
    }

    // Beyond, the load factor is 0 or 1 to the last digits, and the load at separation no number.
    private static void RefuseWithoutASpring(BoltCompliance bolt, ClampedStack parts)
    {
        double stretch = bolt.Springs.Resilience.Value, compression = parts.Spring.Resilience.Value, ratio = stretch / compression;
        if (ratio is >= 1e-9 and <= 1e9) return;
        throw new ArgumentException(
            Print.Text($"The bolt has {Si.Stiffness(1 / stretch):G4}, the parts have {Si.Stiffness(1 / compression):G4}: too far apart for two springs that share a load."),
            nameof(parts));
    }

    // One cone of the full height instead of two that meet changes δ_P by up to a factor of two, and no number would show the slip.
    private static void RefuseOtherForm(BoltCompliance bolt, ClampedStack parts)
    {
        if (bolt.Method != BoltComplianceMethod.Vdi2230 || parts.Form is null || bolt.IsTapped == (parts.Form == JointForm.TappedThread)) return;
        throw new ArgumentException(
            bolt.IsTapped
                ? "The bolt sits in a tapped part, the parts are those of bolt and nut; give the cone or the frusta JointForm.TappedThread."
                : "The bolt has a nut, the parts are those of a tapped thread; give them JointForm.ThroughBolt, or take bolt.TappedInto.",
            nameof(parts));
    }
}
