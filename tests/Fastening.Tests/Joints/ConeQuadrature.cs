using MathNet.Numerics.Integration;

namespace Fastening.Tests.Joints;

/// <summary>
/// The second route to the resilience of clamped parts: ∫ dz/(E(z) A(z)) over the grip by Gauss–Legendre, with the local diameter of the cone
/// written down anew and no formula of the library.
/// </summary>
internal static class ConeQuadrature
{
    private const int Order = 64, PiecesPerSegment = 16;

    /// <summary>Metres per newton, for a half angle whose tangent is given; an outside of infinity is a wide plate.</summary>
    public static double MetersPerNewton(AnyPlates stack, double tangent, double outerMm)
    {
        double grip = stack.GripMm;
        double reach = Math.Max(0, (outerMm - stack.BearingMm) / (2 * tangent));
        List<double> cuts = [0, grip, reach];
        if (stack.Form == JointForm.ThroughBolt) cuts.AddRange([grip / 2, grip - reach]);
        double face = 0;
        foreach (double thickness in stack.LayersMm) cuts.Add(face += thickness);
        double[] inside = [.. cuts.Where(z => z >= 0 && z <= grip).Distinct().Order()];
        double sum = 0;
        for (int i = 1; i < inside.Length; i++) sum += Segment(stack, tangent, outerMm, inside[i - 1], inside[i]);
        return sum * 1e-6; // mm/(GPa·mm²) = 1e-3 m/(1e9 Pa · 1e-6 m²)
    }

    /// <summary>tan φ of VDI 2230-1:2015 §5.1.2.1, from memory.</summary>
    public static double VdiTangent(AnyPlates stack)
    {
        double slenderness = stack.GripMm / stack.BearingMm, width = stack.OuterMm / stack.BearingMm;
        return stack.Form == JointForm.ThroughBolt
            ? 0.362 + 0.032 * Math.Log(slenderness / 2) + 0.153 * Math.Log(width)
            : 0.348 + 0.013 * Math.Log(slenderness) + 0.193 * Math.Log(width);
    }

    private static double Segment(AnyPlates stack, double tangent, double outerMm, double from, double to)
    {
        double modulus = ModulusAt(stack, (from + to) / 2);
        double sum = 0;
        for (int i = 0; i < PiecesPerSegment; i++)
        {
            double a = from + (to - from) * i / PiecesPerSegment, b = from + (to - from) * (i + 1) / PiecesPerSegment;
            sum += GaussLegendreRule.Integrate(z => 1 / (modulus * AreaAt(stack, tangent, outerMm, z)), a, b, Order);
        }

        return sum;
    }

    private static double AreaAt(AnyPlates stack, double tangent, double outerMm, double z)
    {
        double depth = stack.Form == JointForm.ThroughBolt ? Math.Min(z, stack.GripMm - z) : z;
        double cone = outerMm <= stack.BearingMm ? outerMm : stack.BearingMm + 2 * tangent * depth;
        double diameter = Math.Min(cone, outerMm);
        return Math.PI / 4 * (diameter - stack.HoleMm) * (diameter + stack.HoleMm);
    }

    private static double ModulusAt(AnyPlates stack, double z)
    {
        double face = 0;
        for (int i = 0; i < stack.LayersMm.Count; i++)
        {
            face += stack.LayersMm[i];
            if (z < face) return stack.ModuliGpa[i];
        }

        return stack.ModuliGpa[^1];
    }
}
