using System.Globalization;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>NASA TM-106943, Chambers, Preloaded Joint Analysis Methodology for Space Flight Systems (1995).</summary>
public sealed class NasaTm106943 : PublishedSource
{
    private const string Memorandum = "NASA TM-106943 (1995)";

    /// <summary>The memorandum's factor for dry threads; it cancels between torque and preload.</summary>
    private const double DryNutFactor = 0.2;

    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("tm106943-eq4", (_, size) => TensileStressArea(size)),
        new("tm106943-I-", (row, output) => Preload(row, Length.FromInches(row["D_in"]), Tabulated(row), output)),
        new("tm106943-II-", (row, output) => Preload(row, Length.FromInches(row["D_in"]), Tabulated(row), output)),
        new("tm106943-factors", Factor),
    ];

    private static double TensileStressArea(string size)
    {
        string[] parts = size.Split('-');
        return ScrewThread.Unified(Length.FromInches(Diameter(parts[0])), Number(parts[1])).StressArea.SquareInches;
    }

    /// <summary>0.65 of yield on the tabulated area.</summary>
    private static Force Tabulated(PublishedRow row) =>
        Force.FromPoundsForce(row["preload_fraction_of_yield"] * row["Fty_psi"] * row["At_in2"]);

    /// <summary>
    /// The torque for the nominal preload, and the preloads it gives: 1 + u above; below, 1 − u less a relaxation of 5 % of the minimum
    /// itself.
    /// </summary>
    private static double? Preload(PublishedRow row, Length diameter, Force nominal, string output)
    {
        NutFactorModel model = TorquePreloadModel.FromNutFactor(DryNutFactor, diameter);
        Torque torque = model.TorqueFor(nominal);
        Range<Force> range = SpaceflightPreload.ByTm106943(model, torque, Ratio.FromDecimalFractions(row["u"]));
        return output switch
        {
            "T_over_KD_lb" => model.PreloadAt(torque).PoundsForce,
            "Po_min_lb" => range.Low.PoundsForce,
            "Po_max_lb" => range.High.PoundsForce,
            _ => null,
        };
    }

    /// <summary>The limits of a preload of one pound; and the factors that the package holds as this memorandum's.</summary>
    private static double? Factor(PublishedRow row, string output) => output switch
    {
        "Po_max_factor" => Preload(row, Length.FromInches(0.25), Force.FromPoundsForce(1), "Po_max_lb"),
        "Po_min_factor" => Preload(row, Length.FromInches(0.25), Force.FromPoundsForce(1), "Po_min_lb"),
        "nut_factor_lubricated[0]" => Shipped("lubricated; spaceflight fasteners")?.Low ?? double.NaN,
        "nut_factor_lubricated[1]" => Shipped("lubricated; spaceflight fasteners")?.High ?? double.NaN,
        "nut_factor_dry" => Shipped("dry; spaceflight fasteners") is { IsSingleValue: true } dry ? dry.Low : double.NaN,
        "u_instrumented_bolt" => ShippedScatter.Percent(Memorandum, TighteningMethod.InstrumentedBolt) / 100,
        _ => null,
    };

    private static PublishedNutFactor? Shipped(string condition) =>
        FrictionGuidance.NutFactors.SingleOrDefault(k => k.Provenance.Source == Memorandum && k.Condition == condition);

    private static double Diameter(string size)
    {
        if (size.StartsWith('#')) return 0.06 + 0.013 * Number(size[1..]);
        string[] fraction = size.Split('/');
        return Number(fraction[0]) / Number(fraction[1]);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
