namespace Fastening.Published.Tests;

/// <summary>ISO 3506-1: minimum strengths of stainless steel bolts.</summary>
public sealed class Iso3506Part1 : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } = [new("iso3506-1-", Strength)];

    /// <summary>What every steel of the row's group has; not a number when they differ.</summary>
    private static double? Strength(PublishedRow row, string output)
    {
        ScrewThread thread = ScrewThread.Parse("M10");
        double[] strengths =
        [
            .. row.Text("steel_group").Split('/')
                .Select(steel => PropertyClass.Parse($"{steel}-{row.Text("property_class")}").StrengthFor(thread))
                .Select(strength => output == "Rm_min_MPa" ? strength.TensileStrength.Megapascals : strength.YieldStrength.Megapascals)
                .Distinct(),
        ];
        return strengths.Length == 1 ? strengths[0] : double.NaN;
    }
}
