using UnitsNet;

namespace Fastening.Tests.Procedures;

/// <summary>Permutations, opposite pairs, distances by coordinates. The published tables are in Fastening.Published.Tests.</summary>
public class TighteningPatternTests
{
    [Fact]
    public void Every_cross_pattern_is_a_permutation_and_takes_opposite_pairs()
    {
        for (int count = 1; count <= 200; count++)
        {
            IReadOnlyList<int> order = TighteningPattern.Cross(count).Order;
            Assert.Equal(Enumerable.Range(1, count), order.Order());
            Assert.Equal(1, order[0]);
            if (count % 2 != 0) continue;
            for (int i = 0; i < count; i += 2) Assert.Equal(order[i] + count / 2, order[i + 1]);
        }
    }

    [Fact]
    public void Of_a_multiple_of_four_every_four_pulls_stand_at_right_angles()
    {
        for (int count = 4; count <= 200; count += 4)
        {
            IReadOnlyList<int> order = TighteningPattern.Cross(count).Order;
            for (int i = 0; i < count; i += 4) Assert.Equal(order[i] + count / 4, order[i + 2]);
        }
    }

    [Fact]
    public void An_odd_circle_goes_across_by_half_a_place_less_than_half_round()
    {
        for (int count = 3; count <= 199; count += 2)
        {
            IReadOnlyList<int> order = TighteningPattern.Cross(count).Order;
            for (int i = 1; i < count; i++)
            {
                int apart = Math.Abs(order[i] - order[i - 1]);
                Assert.Equal((count - 1) / 2, Math.Min(apart, count - apart));
            }
        }
    }

    /// <summary>The rows for 16, 20 and 32 of the same legacy table and the star of a wheel with five nuts, all from memory.</summary>
    [Theory]
    [InlineData(5, "1 3 5 2 4")]
    [InlineData(16, "1 9 5 13 3 11 7 15 2 10 6 14 4 12 8 16")]
    [InlineData(20, "1 11 6 16 3 13 8 18 5 15 10 20 2 12 7 17 4 14 9 19")]
    [InlineData(32, "1 17 9 25 5 21 13 29 3 19 11 27 7 23 15 31 2 18 10 26 6 22 14 30 4 20 12 28 8 24 16 32")]
    public void Rows_remembered(int count, string order) =>
        Assert.Equal(order, string.Join(" ", TighteningPattern.Cross(count).Order));

    [Fact]
    public void The_row_for_28_is_remembered_otherwise()
    {
        // From memory: 1 15 8 22, 4 18 11 25, 6 20 13 27, 2 16 9 23, 5 19 12 26, 3 17 10 24, 7 21 14 28. The rule takes the quarters in another order.
        IReadOnlyList<int> order = TighteningPattern.Cross(28).Order;
        Assert.Equal([1, 15, 8, 22, 4, 18, 11, 25], order.Take(8));
        Assert.NotEqual(6, order[8]);
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(1, 4)]
    [InlineData(1, 7)]
    [InlineData(9, 1)]
    [InlineData(2, 3)]
    [InlineData(3, 5)]
    [InlineData(4, 4)]
    [InlineData(7, 2)]
    public void Rectangles_go_outwards_in_opposite_pairs(int rows, int columns)
    {
        IReadOnlyList<int> order = TighteningPattern.Rectangle(rows, columns).Order;
        Assert.Equal(Enumerable.Range(1, rows * columns), order.Order());
        (double X, double Y) At(int place) => ((place - 1) % columns - (columns - 1) / 2.0, (place - 1) / columns - (rows - 1) / 2.0);
        double last = 0;
        foreach (int place in order)
        {
            double distance = Math.Sqrt(At(place).X * At(place).X + At(place).Y * At(place).Y);
            Assert.True(distance >= last - 1e-9);
            last = distance;
        }

        // The centre, if there is one, comes first; then pairs that mirror each other through it.
        for (int i = rows * columns % 2; i < order.Count; i += 2) Assert.Equal((-At(order[i]).X, -At(order[i]).Y), At(order[i + 1]));
        if (rows == 1) Assert.Equal(order, TighteningPattern.Row(columns).Order);
    }

    [Fact]
    public void Rows_by_hand()
    {
        Assert.Equal([2, 3, 1, 4], TighteningPattern.Row(4).Order);
        Assert.Equal([3, 2, 4, 1, 5], TighteningPattern.Row(5).Order);
        Assert.Equal([2, 5, 1, 6, 3, 4], TighteningPattern.Rectangle(2, 3).Order);
        Assert.Equal([1, 2, 3], TighteningPattern.Circular(3).Order);
    }

    [Fact]
    public void Passes_are_ordered_pass_fastener_torque()
    {
        // PCC-1's legacy passes, from memory: 20–30 %, 50–70 %, 100 %.
        IReadOnlyList<TighteningStroke> strokes = TighteningPattern.Cross(4).Strokes(["N", "E", "S", "W"], Torque.FromNewtonMeters(120), Percent(30, 70, 100));
        Assert.Equal("N S E W N S E W N S E W", string.Join(" ", strokes.Select(s => s.Fastener)));
        Assert.Equal([1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3], strokes.Select(s => s.Pass));
        Assert.Equal([36.0, 84.0, 120.0], strokes.Select(s => s.Torque.NewtonMeters).Distinct());
        Assert.Equal("pass 2: S, 84 N·m", strokes[5].ToString());
        Assert.Equal(3, strokes[1].Position);
    }

    [Fact]
    public void What_does_not_fit_is_refused()
    {
        TighteningPattern cross = TighteningPattern.Cross(4);
        Assert.Contains("4 places", Assert.Throws<ArgumentException>(() => cross.Arrange(["a", "b", "c"])).Message, StringComparison.Ordinal);
        Assert.Contains("'a' twice", Assert.Throws<ArgumentException>(() => cross.Arrange(["a", "b", "a", "d"])).Message, StringComparison.Ordinal);
        Assert.Contains("at least the pass before it, 70 %", Assert.Throws<ArgumentException>(
            () => cross.Strokes(["a", "b", "c", "d"], Torque.FromNewtonMeters(1), Percent(70, 30))).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => cross.Strokes(["a", "b", "c", "d"], Torque.FromNewtonMeters(1), []));
        Assert.Equal("shares[1]", Assert.Throws<ArgumentOutOfRangeException>(
            () => cross.Strokes(["a", "b", "c", "d"], Torque.FromNewtonMeters(1), Percent(70, 1001))).ParamName);
    }

    [Fact]
    public void Passes_below_a_hundredth_or_above_ten_times_the_target_are_refused()
    {
        IReadOnlyList<TighteningStroke> Passes(params double[] percent) => TighteningPattern.Row(1).Strokes(["a"], Torque.FromNewtonMeters(120), Percent(percent));

        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(() => Passes(0.3, 0.7, 1));
        Assert.Equal("shares[0]", refused.ParamName);
        Assert.StartsWith("shares[0] is 0.3 %; it must be at least 1 % and at most 1000 %.", refused.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => Passes(0.999));
        Assert.Throws<ArgumentOutOfRangeException>(() => Passes(1000.1));
        Assert.Equal([1.2, 1200.0], Passes(1, 1000).Select(stroke => stroke.Torque.NewtonMeters));
    }

    private static Ratio[] Percent(params double[] values) => [.. values.Select(value => Ratio.FromPercent(value))];
}
