using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>RCSC, Specification for Structural Joints Using High-Strength Bolts: the nut rotation table, and its length limits by size.</summary>
public sealed class RcscStructuralJoints : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("rcsc-rot-", (row, output) => Rotation(row.Text("bolt_length_over_d"), output)),
        new("rcsc-len-", (row, output) => LongestWith(output, Inches(row.Text("d_in")))),
    ];

    /// <summary>At the upper end of the row, and just above its lower end; both must agree.</summary>
    private static double? Rotation(string row, string output)
    {
        SlopedFaces? faces = output switch
        {
            "both_faces_normal_deg" => SlopedFaces.None,
            "one_face_sloped_1to20_deg" => SlopedFaces.One,
            "both_faces_sloped_1to20_deg" => SlopedFaces.Both,
            _ => null,
        };
        (double low, double high) = row switch
        {
            "<=4d" => (0.5, 4.0),
            ">4d..8d" => (4.001, 8),
            _ => (8.001, 12),
        };
        return faces is SlopedFaces some && DegreesAt(low, some) is double degrees && degrees == DegreesAt(high, some) ? degrees : null;
    }

    private static double DegreesAt(double diameters, SlopedFaces faces) =>
        PublishedRotation.Rcsc2014(Length.FromInches(diameters * 0.75), Length.FromInches(0.75), faces).Rotation.Degrees;

    /// <summary>The longest bolt with a rotation, found by halving.</summary>
    private static double? LongestWith(string output, double diameter)
    {
        double degrees = output[..3] switch { "1/3" => 120, "1/2" => 180, _ => 240 };
        double shorter = 0.1 * diameter, longer = 20 * diameter;
        while (longer - shorter > 1e-9)
        {
            double middle = (shorter + longer) / 2;
            if (DegreesOf(middle, diameter) <= degrees) shorter = middle;
            else longer = middle;
        }

        return shorter;
    }

    /// <summary>More than any rotation where the table ends.</summary>
    private static double DegreesOf(double length, double diameter)
    {
        try
        {
            return PublishedRotation.Rcsc2014(Length.FromInches(length), Length.FromInches(diameter), SlopedFaces.None).Rotation.Degrees;
        }
        catch (ArgumentOutOfRangeException)
        {
            return double.PositiveInfinity;
        }
    }

    private static double Inches(string fraction) =>
        fraction.Split('/') is [string numerator, string denominator]
            ? double.Parse(numerator, System.Globalization.CultureInfo.InvariantCulture) / double.Parse(denominator, System.Globalization.CultureInfo.InvariantCulture)
            : double.NaN;
}
