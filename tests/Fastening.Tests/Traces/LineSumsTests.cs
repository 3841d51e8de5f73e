using MathNet.Numerics;

namespace Fastening.Tests.Traces;

/// <summary>Sums that are shifted, added and taken away give the line of the points that are left.</summary>
public class LineSumsTests
{
    [Fact]
    public void Sums_of_stretches_with_their_own_origins_give_the_line_of_all_points()
    {
        var dice = new Dice(5);
        for (int round = 0; round < 50; round++)
        {
            double[] xs = [.. Enumerable.Range(0, 30).Select(_ => dice.Uniform(3, 9))], ys = [.. xs.Select(x => 2 * x - 5 + dice.Normal())];
            LineSums first = Sums(xs[..12], ys[..12], origin: 4), second = Sums(xs[12..], ys[12..], origin: 7.5);
            LineSums all = default;
            all.Add(first, 4 - 1.5);
            all.Add(second, 7.5 - 1.5);
            Agree(xs, ys, all, origin: 1.5);
            Agree(xs, ys, all.FromOrigin(2.25), origin: 1.5 + 2.25);
            all.Remove(first, 4 - 1.5);
            Agree(xs[12..], ys[12..], all, origin: 1.5);
        }
    }

    [Fact]
    public void A_stretch_made_one_keeps_its_mean()
    {
        LineSums one = Sums([1, 2, 6], [10, 30, 20], origin: 0).OfOne();
        Assert.Equal((1.0, 3.0, 20.0), (one.Count, one.MeanX, one.Mean));
    }

    [Fact]
    public void A_robust_line_through_clean_points_is_their_line_and_a_wild_point_hardly_moves_it()
    {
        double[] xs = [.. Enumerable.Range(0, 40).Select(i => 100 + 0.5 * i)], ys = [.. xs.Select((x, i) => 3 * x - 7 + 0.01 * (i % 2))];
        RobustLine clean = RobustLine.Through(xs, ys);
        (double intercept, double slope) = Fit.Line(xs, ys);
        Assert.Equal(slope, clean.Slope, 1e-4);
        Assert.Equal(intercept + 110 * slope, clean.At(110), 1e-2);
        Assert.Equal(110, clean.PlaceOf(clean.At(110)), 1e-9);
        ys[5] += 500;
        xs[20] = double.NaN;
        Assert.Equal(3, RobustLine.Through(xs, ys).Slope, 0.05);
        Assert.True(Math.Abs(Fit.Line([.. xs.Where(x => !double.IsNaN(x))], [.. ys.Where((_, i) => i != 20)]).B - 3) > 1);
    }

    private static LineSums Sums(double[] xs, double[] ys, double origin)
    {
        LineSums sums = default;
        for (int i = 0; i < xs.Length; i++) sums.Add(xs[i] - origin, ys[i]);
        return sums;
    }

    private static void Agree(double[] xs, double[] ys, LineSums sums, double origin)
    {
        (double intercept, double slope) = Fit.Line(xs, ys);
        (double found, double atZero) = sums.Line(0);
        Assert.Equal(slope, found, 1e-9);
        Assert.Equal(intercept + slope * origin, atZero, 1e-8);
        Assert.Equal(xs.Length, sums.Count, 1e-9);
    }
}
