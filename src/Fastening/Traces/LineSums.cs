namespace Fastening;

/// <summary>The sums from which a line of least squares follows; sums of neighbouring stretches add up.</summary>
internal struct LineSums
{
    private double _n;
    private double _x;
    private double _y;
    private double _xx;
    private double _xy;

    public readonly double Count => _n;

    public void Add(double x, double y)
    {
        _n++;
        _x += x;
        _y += y;
        _xx += x * x;
        _xy += x * y;
    }

    public void Add(double x, double y, double weight)
    {
        _n += weight;
        _x += weight * x;
        _y += weight * y;
        _xx += weight * x * x;
        _xy += weight * x * y;
    }

    /// <summary>Adds sums whose x was counted from another origin, <paramref name="shift"/> further on.</summary>
    public void Add(in LineSums other, double shift)
    {
        _n += other._n;
        _x += other._x + shift * other._n;
        _y += other._y;
        _xx += other._xx + shift * (2 * other._x + shift * other._n);
        _xy += other._xy + shift * other._y;
    }

    /// <summary>Takes sums away that were added before.</summary>
    public void Remove(in LineSums other, double shift)
    {
        _n -= other._n;
        _x -= other._x + shift * other._n;
        _y -= other._y;
        _xx -= other._xx + shift * (2 * other._x + shift * other._n);
        _xy -= other._xy + shift * other._y;
    }

    /// <summary>The sums of one sample at the mean: a stretch weighs as one, however long the tool dwelt in it.</summary>
    public readonly LineSums OfOne() => _n > 0
        ? new LineSums { _n = 1, _x = _x / _n, _y = _y / _n, _xx = _xx / _n, _xy = _xy / _n }
        : default;

    /// <summary>The same sums with x counted from an origin further on.</summary>
    public readonly LineSums FromOrigin(double origin)
    {
        LineSums moved = default;
        moved.Add(this, -origin);
        return moved;
    }

    /// <summary>The mean of x.</summary>
    public readonly double MeanX => _n > 0 ? _x / _n : 0;

    /// <summary>The mean of y.</summary>
    public readonly double Mean => _n > 0 ? _y / _n : 0;

    /// <summary>Sum of the squares of x about its mean.</summary>
    public readonly double Spread => _n > 0 ? Math.Max(_xx - _x * _x / _n, 0) : 0;

    /// <summary>Slope and the value at x = 0; the slope is NaN when the variance of x is not more than <paramref name="leastVariance"/>.</summary>
    public readonly (double Slope, double AtZero) Line(double leastVariance)
    {
        double spread = Spread;
        if (!(spread > leastVariance * _n)) return (double.NaN, Mean);
        double slope = (_xy - _x * _y / _n) / spread;
        return (slope, (_y - slope * _x) / _n);
    }
}
