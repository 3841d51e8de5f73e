using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The two steps of EN 1090-2 for a preloaded structural bolt: two torques, or a torque and a further rotation.</summary>
/// <remarks>
/// EN 1090-2 §8.5. Every torque rests on the assembly as delivered, with its lubricant, tested to EN 14399; the k-value is declared on the
/// package and never assumed. F_p,C is the tabulated stress area times 0.7 of the nominal tensile strength. The factors 0.75 and 0.13 are from
/// memory, 1.10 was read; the 2018 edition's own factor for class K1 was not read.
/// </remarks>
/// <example><code>StructuralTightening steps = StructuralTightening.CombinedMethodK2(
///     PropertyClass.Parse("10.9"), ScrewThread.Parse("M20"), meanNutFactor: 0.119, clampedThickness: Length.FromMillimeters(60));
/// Console.WriteLine(steps);      // first 306.1 N·m, then 90° further</code></example>
public sealed class StructuralTightening
{
    private static readonly Interval ClassK2 = new(0.10, 0.23);

    private readonly PublishedPreload _rule;
    private readonly ScrewThread _thread;
    private readonly StatedNumber? _meanNutFactor;

    private StructuralTightening(PropertyClass propertyClass, ScrewThread thread, StatedNumber? meanNutFactor, Length? clampedThickness)
    {
        _rule = PublishedPreload.StructuralEurope(propertyClass, thread, StressAreaBasis.NominalTable);
        _thread = thread;
        _meanNutFactor = meanNutFactor;
        FurtherRotation = clampedThickness is Length thickness ? PublishedRotation.En1090Part2(thickness, thread.NominalDiameter) : null;
    }

    /// <summary>Minimum preload F_p,C that the tightening is to reach.</summary>
    public Force Preload => _rule.Preload;

    /// <summary>Reference torque M_r: M_r,2 from the declared k-value (class K2), or M_r,1 (class K1).</summary>
    public Torque ReferenceTorque => Si.Torque(ReferenceTerm);

    /// <summary>First step, 0.75 M_r, on every bolt of the joint before the second step begins.</summary>
    public Torque FirstTorque => Si.Torque(StructuralTighteningEquations.FirstTorqueEquation.Of(ReferenceTerm));

    /// <summary>Second step of the torque method, 1.10 M_r; null in the combined method.</summary>
    public Torque? FinalTorque => FurtherRotation is null ? Si.Torque(StructuralTighteningEquations.FinalTorqueEquation.Of(ReferenceTerm)) : null;

    /// <summary>Second step of the combined method, a rotation past the first; null in the torque method.</summary>
    public PublishedRotation? FurtherRotation { get; }

    /// <summary>The torque method, for assemblies of class K2.</summary>
    /// <param name="propertyClass">8.8 or 10.9.</param>
    /// <param name="thread">M12, M16, M20, M22, M24, M27, M30 or M36, coarse.</param>
    /// <param name="meanNutFactor">Mean k-value k_m that the maker declares, 0.10 to 0.23 with a coefficient of variation of at most 0.06.</param>
    /// <returns>0.75 M_r,2, then 1.10 M_r,2.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The class is neither 8.8 nor 10.9 or does not cover the thread, or EN 1090-2 has no bolt of that size.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="meanNutFactor"/> is outside class K2.</exception>
    /// <example><code>StructuralTightening.TorqueMethod(PropertyClass.Parse("10.9"), ScrewThread.Parse("M20"), 0.119).FinalTorque   // 449 N·m</code></example>
    public static StructuralTightening TorqueMethod(PropertyClass propertyClass, ScrewThread thread, double meanNutFactor) =>
        new(Guard.NotNull(propertyClass), Guard.NotNull(thread), ClassK2.Stated(meanNutFactor), null);

    /// <summary>The combined method for assemblies of class K1, whose k-values lie between 0.10 and 0.16 and are not averaged.</summary>
    /// <param name="propertyClass">8.8 or 10.9.</param>
    /// <param name="thread">M12, M16, M20, M22, M24, M27, M30 or M36, coarse.</param>
    /// <param name="clampedThickness">Total thickness of the clamped parts, packs and washers included.</param>
    /// <returns>0.75 M_r,1 with M_r,1 = 0.13 d F_p,C (edition of 2008, from memory), then the rotation of Table 21.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The class is neither 8.8 nor 10.9 or does not cover the thread, or EN 1090-2 has no bolt of that size.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="clampedThickness"/> is outside its domain or above 10 diameters.</exception>
    /// <example><code>StructuralTightening.CombinedMethodK1(
    ///     PropertyClass.Parse("10.9"), ScrewThread.Parse("M20"), clampedThickness: Length.FromMillimeters(60)).FirstTorque.NewtonMeters   // 334.4</code></example>
    public static StructuralTightening CombinedMethodK1(PropertyClass propertyClass, ScrewThread thread, Length clampedThickness) =>
        new(Guard.NotNull(propertyClass), Guard.NotNull(thread), null, clampedThickness);

    /// <summary>The combined method for assemblies of class K2.</summary>
    /// <param name="propertyClass">8.8 or 10.9.</param>
    /// <param name="thread">M12, M16, M20, M22, M24, M27, M30 or M36, coarse.</param>
    /// <param name="meanNutFactor">Mean k-value k_m that the maker declares, 0.10 to 0.23.</param>
    /// <param name="clampedThickness">Total thickness of the clamped parts, packs and washers included.</param>
    /// <returns>0.75 M_r,2, then the rotation of Table 21.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The class is neither 8.8 nor 10.9 or does not cover the thread, or EN 1090-2 has no bolt of that size.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the parts are thicker than 10 diameters.</exception>
    /// <example><code>StructuralTightening.CombinedMethodK2(
    ///     PropertyClass.Parse("10.9"), ScrewThread.Parse("M20"), meanNutFactor: 0.119, clampedThickness: Length.FromMillimeters(60)).FurtherRotation</code></example>
    public static StructuralTightening CombinedMethodK2(
        PropertyClass propertyClass, ScrewThread thread, double meanNutFactor, Length clampedThickness) =>
        new(Guard.NotNull(propertyClass), Guard.NotNull(thread), ClassK2.Stated(meanNutFactor), clampedThickness);

    /// <inheritdoc />
    public override string ToString() => FurtherRotation is null
        ? Print.Text($"first {FirstTorque:0.#}, then {FinalTorque!.Value:0.#}")
        : Print.Text($"first {FirstTorque:0.#}, then {FurtherRotation.Rotation:0.#} further");

    private Term ReferenceTerm => _meanNutFactor is StatedNumber factor
        ? StructuralTighteningEquations.ReferenceTorqueEquation.Of(factor.Term, _thread.DiameterTerm, _rule.PreloadTerm)
        : StructuralTighteningEquations.SimplifiedReferenceTorqueEquation.Of(_thread.DiameterTerm, _rule.PreloadTerm);
}
