using System.Text;

namespace Fastening.Tests.Threads;

/// <summary>A million random and mutated designations of every family: reading them ends in a thread or in a refusal, never in another exception.</summary>
public class ThreadDesignationFuzzTests
{
    private const int Texts = 1_000_000;
    private const string Alphabet = "MmxX×*0123456789//--##.., \t\"'UuNnCcFfEeLHghGHAB½٣１–\0\u202E\uD83D+()²TrPpAaSsWw";

    private static readonly string[] Seeds =
    [
        "M16", "M16x1.5", "M8x1.0", "M16-6g", "M16x1.5-5g6g-LH", "1/2-13 UNC", "1 1/8-7 UNC-2A", "1-1/8-7", "#10-32 UNF", "No.10-24",
        "0.500-13 UNC", "2-4 1/2 UNC", "M16 x 1,5 mm", "1/2\"-13", "G1/2", "16", "M999999x999999", "999999/64-13", "M16xPh3P1.5", "S40x7",
        "Tr40x7", "Tr 40x14 (P7)", "Tr40x14P7-7e", "Tr 60 × 9 LH", "Tr999999x999999P1.5", "1 1/2-4 ACME", "ACME 1-1/2-4", "1/2-10 Acme-2G",
        "999999 63/64-0.000001 ACME",
    ];

    [Fact]
    public void Any_text_is_read_or_refused()
    {
        var random = new Random(20240611);
        var read = new Dictionary<ThreadProfile, int>();
        for (int i = 0; i < Texts; i++)
        {
            string text = i % 3 == 0 ? RandomText(random) : Mutated(random);
            if (ScrewThread.TryParse(text, out ScrewThread? thread))
            {
                read[thread.Profile] = read.GetValueOrDefault(thread.Profile) + 1;
                AssertFoundAgain(thread);
                continue;
            }

            Assert.InRange(ThreadRefusal.Explain(text).Length, 20, 400);
            if (i % 50 == 0) Assert.Throws<FormatException>(() => ScrewThread.Parse(text));
        }

        ThreadProfile[] families = [ThreadProfile.IsoMetric, ThreadProfile.Unified, ThreadProfile.IsoTrapezoidal, ThreadProfile.Acme];
        Assert.All(families, family => Assert.InRange(read.GetValueOrDefault(family), Texts / 500, Texts / 5));
    }

    /// <summary>The catalogue gives the same instance; a computed thread comes out equal, and with sound dimensions.</summary>
    private static void AssertFoundAgain(ScrewThread thread)
    {
        ScrewThread again = ScrewThread.Parse(thread.Designation);
        if (thread.Profile is ThreadProfile.IsoMetric or ThreadProfile.Unified)
        {
            Assert.Same(thread, again);
            return;
        }

        double d = thread.NominalDiameter.Meters;
        Assert.Equal(thread.Designation, again.Designation);
        Assert.Equal(d, again.NominalDiameter.Meters);
        Assert.Equal(thread.Lead, again.Lead);
        Assert.InRange(thread.RootDiameter.Meters, 0.1 * d, thread.PitchDiameter.Meters);
        Assert.InRange(d, thread.PitchDiameter.Meters, 2);
        Assert.InRange(thread.Starts, 1, 100);
    }

    private static string RandomText(Random random)
    {
        var text = new StringBuilder();
        for (int length = random.Next(0, 25); length > 0; length--) text.Append(Alphabet[random.Next(Alphabet.Length)]);
        return text.ToString();
    }

    private static string Mutated(Random random)
    {
        var text = new StringBuilder(Seeds[random.Next(Seeds.Length)]);
        for (int changes = random.Next(1, 4); changes > 0; changes--)
        {
            int place = random.Next(text.Length + 1);
            char c = random.Next(20) == 0 ? (char)random.Next(char.MaxValue + 1) : Alphabet[random.Next(Alphabet.Length)];
            switch (random.Next(3))
            {
                case 0: text.Insert(place, c); break;
                case 1 when place < text.Length: text.Remove(place, 1); break;
                case 2 when place < text.Length: text[place] = c; break;
                default: text.Append(text.Length < 100 ? text.ToString() : ""); break;
            }
        }

        return text.ToString();
    }
}
