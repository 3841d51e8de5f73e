using UnitsNet;

namespace Fastening.Tests.ShopUnits;

/// <summary>Spellings are common practice, no source: what wrenches, gauges, drawings and logs print.</summary>
public class SpellingTests
{
    [Theory]
    [InlineData("N·m", "N·m", "N⋅m", "N•m", "Nm", "N.m", "N m", "N*m", "N-m", "N · m", "NM", "N.M", "N·M", "N\u00A0m", "N\u2011m")]
    [InlineData("dN·m", "dN·m", "dNm", "dN.m", "dN m", "dN-m", "DNM", "DN·M")]
    [InlineData("N·cm", "N·cm", "Ncm", "N.cm", "N cm", "cN·m", "cNm", "NCM", "N·CM", "CN·M")]
    [InlineData("N·mm", "N·mm", "Nmm", "N mm", "mN·m", "mNm", "mN m", "NMM", "N·MM")]
    [InlineData("daN·m", "daN·m", "daNm", "DAN·M")]
    [InlineData("kN·m", "kN·m", "kNm", "kN m", "KN·m", "KNm", "KNM")]
    [InlineData("kgf·m", "kgf·m", "kgf-m", "kgfm", "kgf m", "KGF.M", "Kgf·m")]
    [InlineData("kgf·cm", "kgf·cm", "kgf-cm", "kgfcm", "KGF.CM", "KGF·cm")]
    [InlineData("lbf·ft", "lbf·ft", "ft·lbf", "lb-ft", "ft-lb", "lbf-ft", "ft-lbf", "lbf ft", "lb·ft", "ft.lb", "lb ft", "ft lb", "ft·lb", "FT-LB")]
    [InlineData("lbf·ft", "ft-lbs", "lbs-ft", "Ft.-Lb.", "ft.-lbs.", "ft. lb.", "FTLB", "lbft", "lbfft", "ftlbf", "foot-pounds", "Pound-Feet", "ft\u2013lb")]
    [InlineData("lbf·in", "lbf·in", "in·lbf", "lb-in", "in-lb", "lbf-in", "in-lbf", "in·lb", "IN.LB", "in.-lb", "in.lbs", "inlb", "inch-pounds", "lb. in.")]
    [InlineData("ozf·in", "ozf·in", "in·ozf", "oz-in", "in-oz", "ozf in", "IN-OZ", "ozin", "in.-oz.")]
    public void Torque_is_read(string symbol, params string[] spellings) => AssertRead<Torque>(symbol, spellings);

    [Theory]
    [InlineData("°", "°", "º", "deg", "Deg", "DEG", "deg.", "degree", "degrees", "DEGREES")]
    [InlineData("turn", "turn", "turns", "Turns", "TURN", "rev", "revs", "rev.", "revolution", "revolutions")]
    [InlineData("rad", "rad", "RAD", "radian", "radians")]
    public void Angle_is_read(string symbol, params string[] spellings) => AssertRead<Angle>(symbol, spellings);

    [Theory]
    [InlineData("N", "N")]
    [InlineData("kN", "kN", "KN")]
    [InlineData("lbf", "lbf", "LBF", "lbf.", "lbfs")]
    [InlineData("kip", "kip", "kips", "KIP", "Kips")]
    [InlineData("kgf", "kgf", "KGF", "Kgf")]
    public void Force_is_read(string symbol, params string[] spellings) => AssertRead<Force>(symbol, spellings);

    [Theory]
    [InlineData("mm", "mm", "MM")]
    [InlineData("cm", "cm", "CM")]
    [InlineData("m", "m")]
    [InlineData("in", "in", "in.", "IN", "inch", "inches", "INCH", "\"", "″")]
    [InlineData("ft", "ft", "ft.", "FT", "foot", "feet", "'", "′")]
    public void Length_is_read(string symbol, params string[] spellings) => AssertRead<Length>(symbol, spellings);

    [Theory]
    [InlineData("n·m")]
    [InlineData("nm")]
    [InlineData("Mn·m")]
    [InlineData("MN·m")]
    [InlineData("MNm")]
    [InlineData("MN·M")]
    [InlineData("mN·M")]
    [InlineData("Dn·m")]
    [InlineData("N·Mm")]
    [InlineData("kn·m")]
    [InlineData("N·m.")]
    [InlineData("N··m")]
    [InlineData("N--m")]
    [InlineData("·Nm")]
    [InlineData("Nm·")]
    [InlineData("N×m")]
    [InlineData("k Nm")]
    [InlineData("m·N")]
    [InlineData("ft/lb")]
    [InlineData("lb-ft-")]
    public void Torque_is_not_guessed(string spelling)
    {
        Assert.False(ShopUnit.TryParse(spelling, out ShopUnit<Torque>? _));
        Assert.False(Entered.TryParse("85 " + spelling, out Entered<Torque>? _));
        Assert.False(Entered.TryParse("85", spelling, out Entered<Torque>? _));
    }

    [Fact]
    public void Milli_and_mega_never_interchange()
    {
        Assert.Equal(0.005, Entered.Parse<Torque>("5 mN·m").Quantity.NewtonMeters);
        Assert.Throws<FormatException>(() => Entered.Parse<Torque>("5 MN·m"));
        Assert.Throws<FormatException>(() => Entered.Parse<Force>("5 mN"));
        Assert.Throws<FormatException>(() => Entered.Parse<Force>("5 MN"));
        Assert.Throws<FormatException>(() => Entered.Parse<Length>("5 M"));
    }

    [Theory]
    [InlineData("85 N·m", 85)]
    [InlineData("85Nm", 85)]
    [InlineData("  85  Nm  ", 85)]
    [InlineData("+85 N·m", 85)]
    [InlineData("-85 N·m", -85)]
    [InlineData("\u221285 N·m", -85)]
    [InlineData(".5 N·m", 0.5)]
    [InlineData("0.50 N·m", 0.5)]
    [InlineData("1.5e2Nm", 150)]
    [InlineData("1.5E+2 Nm", 150)]
    [InlineData("15e-1 Nm", 1.5)]
    [InlineData("0e-999 Nm", 0)]
    [InlineData("85\tNm", 85)]
    [InlineData("85\u00A0Nm", 85)]
    [InlineData("85\u202FNm", 85)]
    [InlineData("000085 Nm", 85)]
    public void Number_is_read(string text, double expected)
    {
        Assert.Equal(expected, Entered.Parse<Torque>(text).Value);
        Assert.Same(ShopUnit.NewtonMeter, Entered.Parse<Torque>(text).Unit);
    }

    private static void AssertRead<TQuantity>(string symbol, string[] spellings)
        where TQuantity : struct, IQuantity
    {
        foreach (string spelling in spellings)
        {
            Assert.Equal(symbol, ShopUnit.Parse<TQuantity>(spelling).Symbol);
            Assert.Same(ShopUnit.Parse<TQuantity>(symbol), ShopUnit.Parse<TQuantity>(" " + spelling + " "));
            foreach (Entered<TQuantity> entered in (Entered<TQuantity>[])
                [Entered.Parse<TQuantity>("12.5 " + spelling), Entered.Parse<TQuantity>("12.5" + spelling), Entered.Parse<TQuantity>(" 12.5 ", spelling)])
            {
                Assert.Equal(symbol, entered.Unit.Symbol);
                Assert.Equal(12.5, entered.Value);
            }
        }
    }
}
