using System.Globalization;
using System.Text.RegularExpressions;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>SAE J429, as tabulated in Shigley and Mischke, 5th ed. (1989), and Shigley, 9th ed. (2011), Table 8-9.</summary>
public sealed partial class SaeJ429 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("saeJ429-", (row, output) => Strength(BoltGrade.Parse("SAE J429 " + row.Text("grade")), row, output)),
    ];

    /// <summary>What the grade has at both ends of the row's sizes; not a number when the ends differ.</summary>
    internal static double? Strength(BoltGrade grade, PublishedRow row, string output)
    {
        Match sizes = Sizes().Match(row.Text("size_range_in"));
        double? smallest = Strength(grade, Inches(sizes.Groups["from"].Value), output);
        double? largest = Strength(grade, Inches(sizes.Groups["to"].Value), output);
        return smallest == largest ? smallest : double.NaN;
    }

    /// <summary>Strength does not depend on the pitch.</summary>
    private static double? Strength(BoltGrade grade, double inches, string output)
    {
        BoltStrength strength = grade.StrengthFor(ScrewThread.Unified(Length.FromInches(inches), 10 / inches));
        return output switch
        {
            "proof_ksi" => strength.ProofLoadStress?.KilopoundsForcePerSquareInch,
            "yield_ksi" => strength.YieldStrength.KilopoundsForcePerSquareInch,
            "tensile_ksi" => strength.TensileStrength.KilopoundsForcePerSquareInch,
            _ => null,
        };
    }

    /// <summary>Sizes as 1, 3/4 or 1-1/2.</summary>
    private static double Inches(string size)
    {
        string[] parts = size.Split('-');
        string[] fraction = parts[^1].Split('/');
        double last = Number(fraction[0]) / (fraction.Length == 2 ? Number(fraction[1]) : 1);
        return parts.Length == 2 ? Number(parts[0]) + last : last;
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?<from>\d+-\d+/\d+|\d+/\d+|\d+)-(?<to>\d+-\d+/\d+|\d+/\d+|\d+)$")]
    private static partial Regex Sizes();
}
