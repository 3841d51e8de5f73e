using Fastening.Internals;

namespace Fastening.Tests.Internals;

public class PrintedNumberTests
{
    [Theory]
    [InlineData(84.2667, 84.3)]
    [InlineData(156.668, 157)]
    [InlineData(999.6, 1000)]
    [InlineData(1000, 1000)]
    [InlineData(1.2697, 1.27)]
    [InlineData(0.14189, 0.142)]
    [InlineData(0.001796, 0.0018)]
    [InlineData(1_190_720, 1_190_000)]
    public void Three_significant_digits(double value, double printed) => Close.To(printed, PrintedNumber.ToSignificantDigits(value, 3));

    /// <summary>Ties of 2515, 14450, 42150: to the even digit, also when the product misses the tie by its last bits.</summary>
    [Theory]
    [InlineData(5.03 * 500, 2520)]
    [InlineData(28.9 * 500, 14_400)]
    [InlineData(84.3 * 500, 42_200)]
    [InlineData(42_149.9999999999, 42_200)]
    [InlineData(14_450.0000000001, 14_400)]
    [InlineData(14_450.001, 14_500)]
    public void Ties_go_to_the_even_digit(double value, double printed) => Close.To(printed, PrintedNumber.ToSignificantDigits(value, 3));

    [Theory]
    [InlineData(171.5, 172)]
    [InlineData(171.49999999999997, 172)]
    [InlineData(172.5, 172)]
    [InlineData(171.4999, 171)]
    [InlineData(0.2, 0)]
    public void Whole_numbers(double value, double printed) => Assert.Equal(printed, PrintedNumber.Whole(value));

    [Fact]
    public void Rounding_moves_a_value_by_at_most_half_a_unit_and_once_only()
    {
        var random = new Random(3);
        for (int i = 0; i < 20_000; i++)
        {
            double value = Math.Pow(10, random.NextDouble() * 20 - 10);
            double printed = PrintedNumber.ToSignificantDigits(value, 3);
            Assert.InRange(Math.Abs(printed - value), 0, 0.005000001 * value);
            Close.To(printed, PrintedNumber.ToSignificantDigits(printed, 3));
        }
    }
}
