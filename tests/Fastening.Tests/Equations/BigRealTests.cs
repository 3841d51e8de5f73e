namespace Fastening.Tests.Equations;

/// <summary>The arithmetic that judges the equations, against constants of NIST DLMF and OEIS (digits from memory) and its own identities.</summary>
public class BigRealTests
{
    private static readonly BigReal Tiny = BigReal.FromDouble(1e-60);

    [Fact]
    public void Constants_have_their_digits()
    {
        Same("3.14159265358979323846264338327950288419716939937510582097494459", BigReal.Pi);
        Same("0.69314718055994530941723212145817656807550013436025525412068000", BigReal.LnTwo);
        Same("1.41421356237309504880168872420969807856967187537694807317667973", BigReal.Sqrt(2));
        Same("2.71828182845904523536028747135266249775724709369995957496696762", BigReal.Exp(1));
        Same("2.30258509299404568401799145468436420760110148862877297603332790", BigReal.Ln(10));
        Same("0.84147098480789650665250232163029899962256306079837106567275170", BigReal.SineCosine(1).Sine);
        Same("0.54030230586813971740093660744297660373231042061792222767009725", BigReal.SineCosine(1).Cosine);
        Same("0.46364760900080611621425623146121440202853705428612026381093308", BigReal.ArcTangent(BigReal.FromDouble(0.5)));
    }

    [Fact]
    public void Doubles_come_and_go_exactly()
    {
        var random = new Random(1);
        for (int n = 0; n < 1000; n++)
        {
            double x = (random.NextDouble() - 0.5) * Math.Pow(10, random.Next(-300, 300)), y = random.NextDouble() + 1e-3;
            Assert.Equal(x, BigReal.FromDouble(x).ToDouble());
            BigReal big = BigReal.FromDouble(y);
            Assert.Equal(y * y, (big * big).ToDouble());
            Assert.Equal(Math.Sqrt(y), BigReal.Sqrt(big).ToDouble());
            Assert.Equal(1 / y, (1 / big).ToDouble());
            Assert.Equal(x + y, (BigReal.FromDouble(x) + big).ToDouble());
        }
    }

    [Fact]
    public void Functions_undo_each_other()
    {
        var random = new Random(2);
        for (int n = 0; n < 40; n++)
        {
            BigReal x = BigReal.FromDouble((random.NextDouble() - 0.5) * 60), angle = BigReal.FromDouble((random.NextDouble() - 0.5) * 3);
            Near(x, BigReal.Ln(BigReal.Exp(x)), 1);
            (BigReal sine, BigReal cosine) = BigReal.SineCosine(x);
            Near(1, sine * sine + cosine * cosine, 1);
            (sine, cosine) = BigReal.SineCosine(angle);
            Near(angle, BigReal.ArcTangent(sine / cosine), 1);
            Near(x * x * x, BigReal.Power(x, 3), BigReal.Abs(x * x * x));
            Near(BigReal.Sqrt(BigReal.Abs(x)), BigReal.Power(BigReal.Abs(x), BigReal.FromDouble(0.5)), 10);
        }
    }

    private static void Same(string digits, BigReal actual) => Near(BigReal.FromDecimal(digits), actual, 1);

    private static void Near(BigReal expected, BigReal actual, BigReal scale) =>
        Assert.True(BigReal.Abs(expected - actual).CompareTo(Tiny * scale) < 0, $"{expected} {actual} {(expected - actual)}");
}
