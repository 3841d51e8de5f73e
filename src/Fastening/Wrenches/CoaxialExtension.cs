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
    private readonly Stated<Length> _length;
    private readonly Stated<Pressure> _shearModulus;
    private readonly Func<string, Term> _torsionConstant;

    private CoaxialExtension(Length length, Pressure shearModulus, Func<string, Term> torsionConstant)
    {
        _length = Domains.Length.Stated(length);
        _shearModulus = Domains.Modulus.Stated(shearModulus);
        _torsionConstant = torsionConstant;
    }

    /// <summary>Torsional stiffness G J/l.</summary>
    public RotationalStiffness Stiffness => Si.RotationalStiffness(StiffnessTerm);

    /// <summary>A solid round bar.</summary>
    /// <param name="length">Length that twists.</param>
    /// <param name="diameter">Diameter.</param>
    /// <param name="shearModulus">Shear modulus G; about 79 GPa for steel.</param>
    /// <returns>The bar.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>CoaxialExtension.Round(Length.FromMillimeters(300), diameter: Length.FromMillimeters(16), shearModulus: Pressure.FromGigapascals(79))</code></example>
    public static CoaxialExtension Round(Length length, Length diameter, Pressure shearModulus)
    {
        Stated<Length> d = Domains.Length.Stated(diameter);
        return new(length, shearModulus, owner => WrenchEquations.RoundTorsionConstantEquation.Of(d.TermOf(owner), Term.Given(0, "bore", owner)));
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
        Stated<Length> outer = Domains.Length.Stated(outerDiameter), inner = Domains.LengthOrZero.Stated(bore);
        if (inner.Value > 0.999 * outer.Value) Guard.RefuseAgainst(nameof(bore), bore, $"at most 0.999 of the outer diameter, {Guard.ShowToCompare(outerDiameter)}");
        return new(length, shearModulus, owner => WrenchEquations.RoundTorsionConstantEquation.Of(outer.TermOf(owner), inner.TermOf(owner)));
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
        Stated<Length> s = Domains.Length.Stated(side);
        return new(length, shearModulus, owner => WrenchEquations.SquareTorsionConstantEquation.Of(s.TermOf(owner)));
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
        Stated<Length> s = Domains.Length.Stated(acrossFlats);
        return new(length, shearModulus, owner => WrenchEquations.HexagonTorsionConstantEquation.Of(s.TermOf(owner)));
    }

    /// <summary>A drive without bars does not wind up.</summary>
    internal static Term NothingBefore => Term.Given(0, "compliance before the first bar");

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Si.Length(_length.Value):0.###} bar, {StiffnessTerm.Value:G4} N·m/rad");

    /// <summary>The compliance of everything before this bar, and of this bar.</summary>
    internal Term AddCompliance(Term before, string owner) =>
        WrenchEquations.ComplianceEquation.Of(before, _length.TermOf(owner), _shearModulus.TermOf(owner), _torsionConstant(owner));

    private Term StiffnessTerm => WrenchEquations.BarStiffnessEquation.Of(AddCompliance(NothingBefore, "the bar"));
}
