using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Where head or nut and counterpart touch: the effective diameter and the slope of the seat there.</summary>
internal abstract class BearingContact
{
    /// <summary>Effective diameter.</summary>
    public abstract Term Diameter { get; }

    /// <summary>Included angle of the seat.</summary>
    public virtual Term SeatAngle => Flat.Term;

    /// <summary>The same in degrees, as it was stated.</summary>
    public virtual double SeatDegrees => Flat.Value;

    private protected static Stated<Angle> Flat { get; } = Stated<Angle>.Of(180, "included angle of a flat seat");

    /// <summary>A flat ring or a cone.</summary>
    internal sealed class Ring(Stated<Length> outer, Stated<Length> inner, Stated<Angle>? cone = null, bool uniformPressure = false) : BearingContact
    {
        public Stated<Length> Outer => outer;

        public Stated<Length> Inner => inner;

        public bool HasUniformPressure => uniformPressure;

        public override Term Diameter =>
            (uniformPressure ? TorqueEquations.UniformPressureBearingDiameterEquation : TorqueEquations.MeanBearingDiameterEquation).Of(outer.Term, inner.Term);

        public override Term SeatAngle => (cone ?? Flat).Term;

        public override double SeatDegrees => (cone ?? Flat).Value;

        public Ring Between(Stated<Length> newOuter, Stated<Length> newInner) => new(newOuter, newInner, cone, uniformPressure);

        public Ring UnderUniformPressure() => new(outer, inner, cone, uniformPressure: true);

        public override string ToString() => Print.Text(
            $"{(SeatDegrees == 180 ? "flat ring" : Print.Text($"{SeatDegrees:0.##}° cone"))} {Print.Between(Si.Length(inner.Value), Si.Length(outer.Value), "0.###", " to ")}{(uniformPressure ? ", uniform pressure" : "")}");
    }

    /// <summary>A ball touching along a circle, on the cone tangent to it there.</summary>
    internal sealed class Circle(Stated<Length> diameter, Stated<Length> sphereRadius) : BearingContact
    {
        public override Term Diameter => diameter.Term;

        public override Term SeatAngle => TorqueEquations.SphereSeatAngleEquation.Of(sphereRadius.Term, diameter.Term);

        public override double SeatDegrees => SeatAngle.Value / Si.RadiansPerDegree;

        public override string ToString() => Print.Text($"sphere of radius {Si.Length(sphereRadius.Value):0.###} touching at {Si.Length(diameter.Value):0.###}");
    }

    /// <summary>A flat surface of which only the effective diameter is known.</summary>
    internal sealed class Given(Stated<Length> diameter) : BearingContact
    {
        public override Term Diameter => diameter.Term;

        public override string ToString() => Print.Text($"effective diameter {Si.Length(diameter.Value):0.###}");
    }

    /// <summary>The textbook collar of a bolt, in proportion to its nominal diameter.</summary>
    internal sealed class Collar(ScrewThread thread) : BearingContact
    {
        public override Term Diameter => TorqueEquations.TextbookBearingDiameterEquation.Of(thread.DiameterTerm);

        public override string ToString() => Print.Text($"effective diameter {Si.Length(Diameter.Value):0.###} (1.25 d)");
    }
}
