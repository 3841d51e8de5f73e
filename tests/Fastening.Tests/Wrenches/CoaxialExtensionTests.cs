using UnitsNet;

namespace Fastening.Tests.Wrenches;

public class CoaxialExtensionTests
{
    private static readonly Pressure Steel = Pressure.FromGigapascals(79);
    private static readonly TorqueWrench Bare = new(Length.FromMillimeters(400));

    [Fact]
    public void Bars_in_series_add_their_wind_up()
    {
        CoaxialExtension slim = CoaxialExtension.Round(Length.FromMillimeters(250), Length.FromMillimeters(12), Steel);
        CoaxialExtension stout = CoaxialExtension.Square(Length.FromMillimeters(90), Length.FromMillimeters(19), Steel);
        Torque torque = Torque.FromNewtonMeters(80);
        double together = Bare.WithCoaxialExtension(slim).WithCoaxialExtension(stout).WindUpAt(torque).Degrees;
        Close.To(Bare.WithCoaxialExtension(slim).WindUpAt(torque).Degrees + Bare.WithCoaxialExtension(stout).WindUpAt(torque).Degrees, together);
        Close.To(torque.NewtonMeters / slim.Stiffness.NewtonMetersPerRadian, Bare.WithCoaxialExtension(slim).WindUpAt(torque).Radians);
    }

    [Fact]
    public void A_coaxial_bar_changes_no_torque() =>
        Assert.Equal(1, Bare.WithCoaxialExtension(CoaxialExtension.Round(Length.FromMeters(1), Length.FromMillimeters(12), Steel)).TorqueRatio);

    [Fact]
    public void A_thin_tube_follows_the_thin_wall_formula()
    {
        // Bredt: J = 2π r³ t for a thin wall; 1 % wall leaves (t/2r)² = 2.5e-5 of difference.
        double r = 0.0995e-1, t = 1e-4;
        CoaxialExtension tube = CoaxialExtension.Tube(
            Length.FromMeters(0.5), Length.FromMeters(2 * r + t), Length.FromMeters(2 * r - t), Steel);
        Close.To(79e9 * 2 * Math.PI * r * r * r * t / 0.5, tube.Stiffness.NewtonMetersPerRadian, 5e-5);
    }

    [Fact]
    public void Square_constant_agrees_with_the_torsion_series()
    {
        // Saint-Venant for a square of side a: J/a⁴ = 1/3 − (64/π⁵) Σ tanh((2n+1)π/2)/(2n+1)⁵, summed here.
        double sum = 0;
        for (int n = 0; n < 200; n++) sum += Math.Tanh((2 * n + 1) * Math.PI / 2) / Math.Pow(2 * n + 1, 5);
        double series = 1.0 / 3 - 64 / Math.Pow(Math.PI, 5) * sum;
        double stiffness = CoaxialExtension.Square(Length.FromMeters(1), Length.FromMeters(0.02), Pressure.FromPascals(1e9)).Stiffness.NewtonMetersPerRadian;
        Close.To(series, stiffness / 1e9 / Math.Pow(0.02, 4), 4e-6);
    }

    [Fact]
    public void Hexagon_constant_agrees_with_a_finite_difference_solution()
    {
        // Prandtl's stress function on a hexagon of unit width across flats, solved by successive over-relaxation; J = 2∫ψ dA with ∇²ψ = −2.
        // Boundary distances enter the five-point star (Shortley–Weller); the grid leaves about 0.1 %.
        double j = PrandtlHexagon.TorsionConstant(cells: 40);
        double stiffness = CoaxialExtension.Hexagon(Length.FromMeters(1), Length.FromMeters(0.02), Pressure.FromPascals(1e9)).Stiffness.NewtonMetersPerRadian;
        Close.To(j, stiffness / 1e9 / Math.Pow(0.02, 4), 2e-3);
    }

    [Fact]
    public void A_tube_without_a_wall_is_refused() =>
        Assert.Equal("bore", Assert.Throws<ArgumentOutOfRangeException>(
            () => CoaxialExtension.Tube(Length.FromMillimeters(100), Length.FromMillimeters(20), Length.FromMillimeters(20), Steel)).ParamName);
}
