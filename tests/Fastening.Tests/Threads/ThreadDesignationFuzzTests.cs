using System.Text;

namespace Fastening.Tests.Threads;

/// <summary>Random and mutated designations: reading them ends in a thread or in a refusal, never in another exception.</summary>
public class ThreadDesignationFuzzTests
{
    private const int Texts = 200_000;
    private const string Alphabet = "MmxX×*0123456789//--##.., \t\"'UuNnCcFfEeLHghGHAB½٣１–\0\u202E\uD83D+()²Tr";

    private static readonly string[] Seeds =
    [
        "M16", "M16x1.5", "M8x1.0", "M16-6g", "M16x1.5-5g6g-LH", "1/2-13 UNC", "1 1/8-7 UNC-2A", "1-1/8-7", "#10-32 UNF", "No.10-24",
        "0.500-13 UNC", "2-4 1/2 UNC", "M16 x 1,5 mm", "1/2\"-13", "Tr40x7", "G1/2", "16", "M999999x999999", "999999/64-13",
    ];

    [Fact]
    public void Any_text_is_read_or_refused()
    {
        var random = new Random(20240611);
        int read = 0;
        for (int i = 0; i < Texts; i++)
        {
            string text = i % 3 == 0 ? RandomText(random) : Mutated(random);
            if (ScrewThread.TryParse(text, out ScrewThread? thread))
            {
                read++;
                Assert.Same(thread, ScrewThread.Parse(thread.Designation));
                continue;
            }

            if (i % 4 == 0) Assert.InRange(ThreadRefusal.Explain(text).Length, 20, 400);
            if (i % 20 == 0) Assert.Throws<FormatException>(() => ScrewThread.Parse(text));
        }

        Assert.InRange(read, Texts / 100, Texts / 2);
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
