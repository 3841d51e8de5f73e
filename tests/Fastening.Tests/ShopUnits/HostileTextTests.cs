namespace Fastening.Tests.ShopUnits;

public class HostileTextTests
{
    private const string Alphabet = "0123456789..,+-eExX NnmMkKdDcCaAgfFlLbBtToOzZiIrRpPuU°º·⋅•*/'\"″′\u2212\u2011\u2013\u00A0\u202F\t\n\0∞µΩ😀ıİſK";

    private static readonly string[] Seeds =
    [
        "85 ft-lb", "12.5 N·m", "-3.25e-2 dN·m", "1.5E+3Nm", "90°", "0.5 in.", "12 kN", "45 kips", "3 in.-oz.", "1,5 N·m", "NaN N·m", "7 revolutions", "5' 6\"",
    ];

    [Fact]
    public void Any_text_is_read_or_refused_and_nothing_else()
    {
        var random = new Random(16047);
        int read = 0;
        for (int i = 0; i < 200_000; i++)
        {
            string text = random.Next(4) == 0 ? Noise(random) : Mutation(random);
            NamedUnit quantity = NamedUnit.All[random.Next(NamedUnit.All.Count)];
            (double Value, string Symbol)? tried = quantity.TryRead(text);
            if (tried is { } result)
            {
                read++;
                Assert.Equal(result, quantity.Read(text));
                Assert.Equal(result, quantity.Read(NamedUnit.Of(result.Symbol).Write(result.Value)));
                Assert.InRange(result.Value, -1e100, 1e100);
            }
            else if (i % 4 == 0)
            {
                Assert.False(string.IsNullOrWhiteSpace(Assert.Throws<FormatException>(() => quantity.Read(text)).Message));
                Assert.Throws<FormatException>(() => quantity.Read(text, ""));
            }
        }

        Assert.InRange(read, 5_000, 100_000);
    }

    private static string Noise(Random random) =>
        new([.. Enumerable.Range(0, random.Next(30)).Select(_ => random.Next(8) == 0 ? (char)random.Next(0x10000) : Pick(random))]);

    private static string Mutation(Random random)
    {
        string text = Seeds[random.Next(Seeds.Length)];
        for (int edits = random.Next(4); edits > 0; edits--)
        {
            int at = random.Next(text.Length + 1);
            int cut = Math.Min(text.Length - at, random.Next(3));
            string insert = random.Next(3) switch { 0 => "", 1 => Pick(random).ToString(), _ => Seeds[random.Next(Seeds.Length)] };
            text = text.Remove(at, cut).Insert(at, insert);
        }

        return text;
    }

    private static char Pick(Random random) => Alphabet[random.Next(Alphabet.Length)];
}
