using FsCheck.Xunit;
using UnitsNet;

namespace Fastening.Tests.Tightening;

public class PreloadScatterTests
{
    /// <summary>α_A and ± % as tables after VDI 2230 print them side by side (from memory), to half a unit of the factor's digit.</summary>
    [Theory]
    [InlineData(9, 1.2)]
    [InlineData(17, 1.4)]
    [InlineData(23, 1.6)]
    [InlineData(26, 1.7)]
    [InlineData(33, 2.0)]
    [InlineData(43, 2.5)]
    [InlineData(60, 4.0)]
    public void Factor_and_percentage_of_the_tables(double percent, double factor)
    {
        Assert.InRange(PreloadScatter.FromPlusMinus(Ratio.FromPercent(percent)).TighteningFactor, factor - 0.05, factor + 0.05);
        Assert.InRange(PreloadScatter.FromTighteningFactor(factor).PlusMinus.Percent, percent - 0.7, percent + 0.7);
    }

    [Property]
    public void Both_ways_and_back(ushort part)
    {
        double percent = part * 99.9 / ushort.MaxValue;
        PreloadScatter scatter = PreloadScatter.FromPlusMinus(Ratio.FromPercent(percent)), back = PreloadScatter.FromTighteningFactor(scatter.TighteningFactor);

        Assert.Equal(percent, scatter.PlusMinus.Percent);
        Close.To(percent, back.PlusMinus.Percent, scale: 100);
        Assert.Equal(scatter.TighteningFactor, back.TighteningFactor);

        Range<Force> range = scatter.RangeAround(Force.FromKilonewtons(60));
        Close.To(120, range.Low.Kilonewtons + range.High.Kilonewtons);
        if (range.HighOverLow is double factor) Close.To(scatter.TighteningFactor, factor, 1e-9);

        Range<Force> below = scatter.RangeBelow(Force.FromKilonewtons(60));
        Assert.Equal(60, below.High.Kilonewtons, 12);
        Close.To(below.High / below.Low, scatter.TighteningFactor);
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(99.91)]
    [InlineData(1e200)]
    public void A_scatter_that_leaves_no_preload_is_refused(double percent) =>
        Assert.Equal("plusMinus", Assert.Throws<ArgumentOutOfRangeException>(() => PreloadScatter.FromPlusMinus(Ratio.FromPercent(percent))).ParamName);

    [Theory]
    [InlineData(0.999)]
    [InlineData(2000)]
    [InlineData(double.PositiveInfinity)]
    public void A_factor_below_one_is_refused(double factor) =>
        Assert.Equal("tighteningFactor", Assert.Throws<ArgumentOutOfRangeException>(() => PreloadScatter.FromTighteningFactor(factor)).ParamName);

    [Fact]
    public void Text_is_the_same_in_a_culture_with_decimal_commas() => CommaCulture.Run(() =>
    {
        Assert.Equal("±23.08 %, α_A 1.6", PreloadScatter.FromTighteningFactor(1.6).ToString());
        Assert.Equal(
            "TorqueWrench, friction estimated: ±23…28 % (VDI 2230:1986, read in secondary source)",
            PublishedPreloadScatter.Of(TighteningMethod.TorqueWrench).Single(row => row.Condition == "friction estimated").ToString());
        Assert.Equal("HydraulicTensioner: ±15 % (NASA NSTS 08307A (1998) para 3.4, read)", One("NASA NSTS 08307A", TighteningMethod.HydraulicTensioner).ToString());
    });

    /// <summary>NASA NSTS 08307A (1998) para 3.4 and Machinery's Handbook, table of bolt preload methods; NASA-STD-5020 as quoted.</summary>
    [Theory]
    [InlineData("NASA NSTS 08307A", TighteningMethod.HydraulicTensioner, 15, 15)]
    [InlineData("NASA NSTS 08307A", TighteningMethod.LoadIndicatingWasher, 10, 10)]
    [InlineData("NASA NSTS 08307A", TighteningMethod.Ultrasonic, 10, 10)]
    [InlineData("NASA NSTS 08307A", TighteningMethod.Elongation, 5, 5)]
    [InlineData("NASA NSTS 08307A", TighteningMethod.InstrumentedBolt, 5, 5)]
    [InlineData("Machinery's Handbook", TighteningMethod.ByFeel, 35, 35)]
    [InlineData("Machinery's Handbook", TighteningMethod.TorqueWrench, 25, 25)]
    [InlineData("Machinery's Handbook", TighteningMethod.LoadIndicatingWasher, 10, 10)]
    [InlineData("Machinery's Handbook", TighteningMethod.InstrumentedBolt, 1, 1)]
    [InlineData("Machinery's Handbook", TighteningMethod.YieldControlled, 8, 8)]
    [InlineData("Machinery's Handbook", TighteningMethod.Elongation, 3, 5)]
    [InlineData("Machinery's Handbook", TighteningMethod.Ultrasonic, 1, 1)]
    [InlineData("VDI 2230:1986", TighteningMethod.AngleControlled, 5, 12)]
    [InlineData("VDI 2230:1986", TighteningMethod.HydraulicTensioner, 9, 23)]
    [InlineData("VDI 2230:1986", TighteningMethod.PowerTool, 26, 43)]
    [InlineData("NASA TM-106943", TighteningMethod.TorqueWrench, 25, 25)]
    public void Published_percentages(string source, TighteningMethod method, double low, double high)
    {
        PublishedPreloadScatter row = One(source, method);

        Assert.False(row.IsTighteningFactor);
        Assert.False(row.Provenance.IsFromMemory);
        Assert.Equal((low, high), (row.Low.PlusMinus.Percent, row.High.PlusMinus.Percent));
    }

    /// <summary>VDI 2230-1:2015 Table A8, from memory: regression values.</summary>
    [Theory]
    [InlineData(TighteningMethod.Elongation, 1.1, 1.5)]
    [InlineData(TighteningMethod.Ultrasonic, 1.05, 1.2)]
    [InlineData(TighteningMethod.YieldControlled, 1.2, 1.4)]
    [InlineData(TighteningMethod.AngleControlled, 1.2, 1.4)]
    [InlineData(TighteningMethod.HydraulicTensioner, 1.2, 1.6)]
    [InlineData(TighteningMethod.PowerTool, 1.7, 2.5)]
    [InlineData(TighteningMethod.ImpactTool, 2.5, 4)]
    public void Published_factors(TighteningMethod method, double low, double high)
    {
        PublishedPreloadScatter row = One("VDI 2230-1:2015", method);

        Assert.True(row.IsTighteningFactor && row.Provenance.IsFromMemory);
        Assert.Equal((low, high), (row.Low.TighteningFactor, row.High.TighteningFactor));
    }

    /// <summary>Two rows, and each says that their ranges may be the other way round.</summary>
    [Fact]
    public void Elongation_measured_mechanically_and_by_ultrasound_are_two_rows()
    {
        PublishedPreloadScatter mechanical = One("VDI 2230-1:2015", TighteningMethod.Elongation), ultrasonic = One("VDI 2230-1:2015", TighteningMethod.Ultrasonic);
        Assert.NotEqual(mechanical.High.TighteningFactor, ultrasonic.High.TighteningFactor);
        Assert.All([mechanical, ultrasonic], row => Assert.Contains("which measurement is from memory; not checked in the text", row.Provenance.Note, StringComparison.Ordinal));
    }

    [Fact]
    public void Lubrication_narrows_the_scatter_of_a_torque_wrench()
    {
        PublishedPreloadScatter[] rows = [.. PublishedPreloadScatter.Of(TighteningMethod.TorqueWrench).Where(row => row.Provenance.Source.StartsWith("NASA NSTS", StringComparison.Ordinal))];
        Assert.Equal([35, 30, 25], rows.Select(row => row.Low.PlusMinus.Percent));
        Assert.Equal(["unlubricated", "cadmium plated", "lubricated"], rows.Select(row => row.Condition));
    }

    [Fact]
    public void Every_method_has_a_row_and_every_row_is_in_order()
    {
        TighteningMethod[] methods = Enum.GetValues<TighteningMethod>();
        Assert.All(methods, method => Assert.NotEmpty(PublishedPreloadScatter.Of(method)));
        Assert.Equal(PublishedPreloadScatter.All.Count, methods.Sum(method => PublishedPreloadScatter.Of(method).Count));
        Assert.All(PublishedPreloadScatter.All, row =>
            Assert.True(row.Low.TighteningFactor <= row.High.TighteningFactor && row.Provenance.Source.Length > 5 && row.Provenance.Confidence.Length > 3, row.ToString()));
    }

    private static PublishedPreloadScatter One(string source, TighteningMethod method) =>
        PublishedPreloadScatter.Of(method).Single(row => row.Provenance.Source.StartsWith(source, StringComparison.Ordinal));
}
