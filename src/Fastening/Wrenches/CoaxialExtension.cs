using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A bar on the axis of the fastener. It does not change the torque; it winds up, so the wrench turns further than the fastener.</summary>
/// <remarks>Elastic only, uniform over its length. Torsion constants: equations wrench.round-, square- and hexagon-torsion-constant.</remarks>
/// <example><code>CoaxialExtension bar = CoaxialExtension.Round(
///     Length.FromMillimeters(300), Length.FromMillimeters(16), Pressure.FromGigapascals(79));</code></example>
public sealed class CoaxialExtension
{
    private readonly double _length;
    private readonly double _shearModulus;
    private readonly Func<Derivation?, double> _torsionConstant;

    private CoaxialExtension(Length length, Pressure shearModulus, Func<Derivation?, double> torsionConstant)
    {
        _length = Domains.Length.Check(length);
        _shearModulus = Domains.Modulus.Check(shearModulus);
        _torsionConstant = torsionConstant;
    }

    /// <summary>Torsional stiffness G J/l.</summary>
    public RotationalStiffness Stiffness => RotationalStiffness.FromNewtonMetersPerRadian(1 / AddCompliance(null, 0));

    /// <summary>A solid round bar.</summary>
    /// <param name="length">Length that twists.</param>
    /// <param name="diameter">Diameter.</param>
    /// <param name="shearModulus">Shear modulus G; about 79 GPa for steel.</param>
    /// <returns>The bar.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>CoaxialExtension.Round(Length.FromMillimeters(300), diameter: Length.FromMillimeters(16), shearModulus: Pressure.FromGigapascals(79))</code></example>
    public static CoaxialExtension Round(Length length, Length diameter, Pressure shearModulus)
    {
        double d = Domains.Length.Check(diameter);
        return new(length, shearModulus, work => WrenchEquations.RoundTorsionConstantEquation.Step(work, d, 0));
    }

    /// <summary>A round tube.</summary>
    /// <param name="length">Length that twists.</param>
    /// <param name="outerDiameter">Outer diameter.</param>
    /// <param name="bore">Bore, smaller than <paramref name="outerDiameter"/>.</param>
    /// <param name="shearModulus">Shear modulus G; about 79 GPa for steel.</param>
    /// <returns>The bar.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or the bore leaves no wall.</exception>
    /// <example><code>CoaxialExtension.Tube(Length.FromMillimeters(450), outerDiameter: Length.FromMillimeters(22), bore: Length.FromMillimeters(14),
    ///     Pressure.FromGigapascals(79))</code></example>
    public static CoaxialExtension Tube(Length length, Length outerDiameter, Length bore, Pressure shearModulus)
    {
        double outer = Domains.Length.Check(outerDiameter);
        double inner = Domains.LengthOrZero.Check(bore);
        if (inner > 0.999 * outer) Guard.RefuseAgainst(nameof(bore), bore, $"at most 0.999 of the outer diameter, {Guard.ShowToCompare(outerDiameter)}");
        return new(length, shearModulus, work => WrenchEquations.RoundTorsionConstantEquation.Step(work, outer, inner));
    }

    /// <summary>A square bar.</summary>
    /// <param name="length">Length that twists.</param>
    /// <param name="side">Side of the square.</param>
    /// <param name="shearModulus">Shear modulus G; about 79 GPa for steel.</param>
    /// <returns>The bar.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>CoaxialExtension.Square(Length.FromMillimeters(250), side: Length.FromMillimeters(12.7), shearModulus: Pressure.FromGigapascals(79))</code></example>
    public static CoaxialExtension Square(Length length, Length side, Pressure shearModulus)
    {
        double s = Domains.Length.Check(side);
        return new(length, shearModulus, work => WrenchEquations.SquareTorsionConstantEquation.Step(work, s));
    }

    /// <summary>A hexagonal bar.</summary>
    /// <param name="length">Length that twists.</param>
    /// <param name="acrossFlats">Width across flats.</param>
    /// <param name="shearModulus">Shear modulus G; about 79 GPa for steel.</param>
    /// <returns>The bar.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>CoaxialExtension.Hexagon(Length.FromMillimeters(180), acrossFlats: Length.FromMillimeters(17), shearModulus: Pressure.FromGigapascals(79))</code></example>
    public static CoaxialExtension Hexagon(Length length, Length acrossFlats, Pressure shearModulus)
    {
        double s = Domains.Length.Check(acrossFlats);
        return new(length, shearModulus, work => WrenchEquations.HexagonTorsionConstantEquation.Step(work, s));
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Si.Length(_length):0.###} bar, {1 / AddCompliance(null, 0):G4} N·m/rad");

    /// <summary>The compliance of everything before this bar, and of this bar.</summary>
    internal double AddCompliance(Derivation? work, double before) =>
        WrenchEquations.ComplianceEquation.Step(work, before, _length, _shearModulus, _torsionConstant(work));
}
