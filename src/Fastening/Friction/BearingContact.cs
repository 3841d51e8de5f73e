using Fastening.Equations;
using Fastening.Internals;

namespace Fastening;

/// <summary>Where head or nut and counterpart touch: the effective diameter and the slope of the seat there.</summary>
internal abstract class BearingContact
{
    /// <summary>Included angle of the seat in degrees.</summary>
    public virtual double IncludedAngle => 180;

    /// <summary>Effective diameter in metres.</summary>
    public abstract double Diameter(Derivation? work);

    /// <summary>Included angle of the seat in radians.</summary>
    public virtual double SeatAngle(Derivation? work) => Si.ToRadians(IncludedAngle);

    /// <summary>A flat ring or a cone.</summary>
    internal sealed class Ring(double outer, double inner, double includedAngle, bool uniformPressure) : BearingContact
    {
        public double Outer => outer;

        public double Inner => inner;

        public bool HasUniformPressure => uniformPressure;

        public override double IncludedAngle => includedAngle;

        public override double Diameter(Derivation? work) =>
            (uniformPressure ? TorqueEquations.UniformPressureBearingDiameterEquation : TorqueEquations.MeanBearingDiameterEquation).Step(work, outer, inner);

        public Ring Between(double newOuter, double newInner) => new(newOuter, newInner, includedAngle, uniformPressure);

        public Ring UnderUniformPressure() => new(outer, inner, includedAngle, uniformPressure: true);

        public override string ToString() => Print.Text(
            $"{(includedAngle == 180 ? "flat ring" : Print.Text($"{includedAngle:0.##}° cone"))} {Print.Range(Si.Length(inner), Si.Length(outer), "0.###", " to ")}{(uniformPressure ? ", uniform pressure" : "")}");
    }

    /// <summary>A ball touching along a circle, on the cone tangent to it there.</summary>
    internal sealed class Circle(double diameter, double sphereRadius) : BearingContact
    {
        public override double IncludedAngle => SeatAngle(null) / Si.RadiansPerDegree;

        public override double Diameter(Derivation? work) => diameter;

        public override double SeatAngle(Derivation? work) => TorqueEquations.SphereSeatAngleEquation.Step(work, sphereRadius, diameter);

        public override string ToString() => Print.Text($"sphere of radius {Si.Length(sphereRadius):0.###} touching at {Si.Length(diameter):0.###}");
    }

    /// <summary>A flat surface of which only the effective diameter is known.</summary>
    internal sealed class Given(double diameter) : BearingContact
    {
        public override double Diameter(Derivation? work) => diameter;

        public override string ToString() => Print.Text($"effective diameter {Si.Length(diameter):0.###}");
    }

    /// <summary>The textbook collar of a bolt, in proportion to its nominal diameter.</summary>
    internal sealed class Collar(double nominalDiameter) : BearingContact
    {
        public override double Diameter(Derivation? work) => TorqueEquations.TextbookBearingDiameterEquation.Step(work, nominalDiameter);

        public override string ToString() => Print.Text($"effective diameter {Si.Length(Diameter(null)):0.###} (1.25 d)");
    }
}
