using UnitsNet;

namespace Fastening.Tests.Friction;

/// <summary>
/// Effective diameters and seat angles against pressure summed over the surface itself: points of a surface of revolution, normals as cross
/// products of its tangents, forces and moments as vectors. Nothing here knows a formula of the library.
/// </summary>
public class SeatIntegrationTests
{
    private const double Friction = 0.13;

    [Theory]
    [InlineData(22.49, 17.5, 180)]
    [InlineData(30, 10, 180)]
    [InlineData(20, 11, 90)]
    [InlineData(20, 11, 60)]
    [InlineData(26, 13, 120)]
    [InlineData(18, 17.9, 30)]
    public void Ring_and_cone(double outer, double inner, double includedAngle)
    {
        double slope = 1 / Math.Tan(includedAngle / 2 * Math.PI / 180);
        BearingSurface cone = BearingSurface.Cone(Length.FromMillimeters(outer), Length.FromMillimeters(inner), Angle.FromDegrees(includedAngle));
        double uniformPressure = MomentPerForce(inner / 2, outer / 2, r => slope * r, _ => 1);
        double uniformWear = MomentPerForce(inner / 2, outer / 2, r => slope * r, r => 1 / r);

        Close.To(uniformWear, BearingTorquePerForce(cone), 1e-9);
        Close.To(uniformPressure, BearingTorquePerForce(cone.WithUniformPressure()), 1e-9);
        Assert.True(uniformPressure > uniformWear);
    }

    [Theory]
    [InlineData(22, 14)]
    [InlineData(22, 11.5)]
    [InlineData(10, 40)]
    public void A_narrow_band_of_a_sphere(double contactDiameter, double sphereRadius)
    {
        BearingSurface sphere = BearingSurface.Sphere(Length.FromMillimeters(contactDiameter), Length.FromMillimeters(sphereRadius));
        double middle = contactDiameter / 2;

        Close.To(Band(1e-4), BearingTorquePerForce(sphere), 1e-6);

        // The wider the band, the worse the circle stands for it: the difference goes with the square of the width.
        double wide = Band(0.004) - BearingTorquePerForce(sphere), narrow = Band(0.002) - BearingTorquePerForce(sphere);
        Assert.InRange(wide / narrow, 3.8, 4.2);

        double Band(double share) => MomentPerForce(
            middle * (1 - share), middle * (1 + share), r => -Math.Sqrt(sphereRadius * sphereRadius - r * r), _ => 1);
    }

    [Fact]
    public void The_tangent_cone_of_a_sphere_in_numbers()
    {
        // cos(γ/2) = 11/14; a plane is a sphere without end, a circle near the equator a cylinder.
        Close.To(2 * Math.Acos(11.0 / 14), BearingSurface.Sphere(Length.FromMillimeters(22), Length.FromMillimeters(14)).IncludedAngle.Radians, 1e-14);
        Assert.InRange(BearingSurface.Sphere(Length.FromMillimeters(22), Length.FromMeters(999)).IncludedAngle.Degrees, 179.99, 180);
        Assert.InRange(BearingSurface.Sphere(Length.FromMillimeters(22), Length.FromMillimeters(11.001)).IncludedAngle.Degrees, 1, 2);
    }

    [Fact]
    public void A_sphere_and_a_given_diameter_have_no_ring()
    {
        foreach (BearingSurface surface in new[]
        {
            BearingSurface.Sphere(Length.FromMillimeters(22), Length.FromMillimeters(14)),
            BearingSurface.OfDiameter(Length.FromMillimeters(22)),
            BearingSurface.ForShigleyCollar(ScrewThread.Parse("M16")),
        })
        {
            Assert.Null(surface.OuterDiameter);
            Assert.Null(surface.InnerDiameter);
            Assert.False(surface.HasUniformPressure);
            Assert.Throws<InvalidOperationException>(() => surface.WithUniformPressure());
            Assert.Throws<InvalidOperationException>(() => surface.WithHole(Length.FromMillimeters(18)));
            Assert.Throws<InvalidOperationException>(() => surface.WithHole(HoleSeries.Fine));
        }
    }

    [Fact]
    public void Given_and_textbook_diameters()
    {
        Assert.Equal(40, BearingSurface.OfDiameter(Length.FromMillimeters(40)).EffectiveDiameter.Millimeters, 12);
        Assert.Equal(180, BearingSurface.OfDiameter(Length.FromMillimeters(40)).IncludedAngle.Degrees);
        Assert.Equal(20, BearingSurface.ForShigleyCollar(ScrewThread.Parse("M16")).EffectiveDiameter.Millimeters, 12);
        Assert.Equal(0.625, BearingSurface.ForShigleyCollar(ScrewThread.Parse("1/2-13 UNC")).EffectiveDiameter.Inches, 12);
    }

    [Fact]
    public void Texts_are_the_same_in_a_culture_with_decimal_commas() => CommaCulture.Run(() =>
    {
        Assert.Equal("sphere of radius 14.5 mm touching at 22.5 mm", BearingSurface.Sphere(Length.FromMillimeters(22.5), Length.FromMillimeters(14.5)).ToString());
        Assert.Equal("effective diameter 40.5 mm", BearingSurface.OfDiameter(Length.FromMillimeters(40.5)).ToString());
        Assert.Equal("effective diameter 12.5 mm (1.25 d)", BearingSurface.ForShigleyCollar(ScrewThread.Parse("M10")).ToString());
    });

    [Theory]
    [InlineData(22, 11)]
    [InlineData(22, 11.0001)]
    [InlineData(22, 5)]
    public void A_circle_that_is_not_on_the_sphere_is_refused(double contactDiameter, double sphereRadius)
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(
            () => BearingSurface.Sphere(Length.FromMillimeters(contactDiameter), Length.FromMillimeters(sphereRadius)));
        Assert.Equal("sphereRadius", refusal.ParamName);
    }

    /// <summary>The bearing share of the library's torque over the preload, in mm.</summary>
    private static double BearingTorquePerForce(BearingSurface surface)
    {
        FrictionTorqueModel model = TorquePreloadModel.FromFriction(ScrewThread.Parse("M8"), surface, new FrictionCoefficients(thread: 0.2, bearing: Friction));
        TorqueBreakdown parts = model.BreakdownAt(Torque.FromNewtonMeters(100));
        return parts.BearingFrictionTorque.NewtonMeters / model.PreloadAt(Torque.FromNewtonMeters(100)).Newtons * 1e3;
    }

    /// <summary>Moment of friction about the axis over axial force, for a surface z(r) under a pressure p(r); Simpson's rule over r.</summary>
    private static double MomentPerForce(double from, double to, Func<double, double> height, Func<double, double> pressure)
    {
        const int Intervals = 2000;
        double step = (to - from) / Intervals, moment = 0, force = 0;
        for (int n = 0; n <= Intervals; n++)
        {
            double r = from + n * step;
            double weight = n is 0 or Intervals ? 1 : n % 2 == 1 ? 4 : 2;
            double rise = (height(r + 1e-5) - height(r - 1e-5)) / 2e-5;

            // Tangents at (r, 0, z): (1, 0, rise) along the meridian and (0, r, 0) around; their cross product is area times normal.
            (double X, double Z) normal = (-rise * r, r);
            double area = Math.Sqrt(normal.X * normal.X + normal.Z * normal.Z);
            force += weight * pressure(r) * normal.Z;
            moment += weight * Friction * pressure(r) * area * r;
        }

        return moment / force;
    }
}
