namespace Fastening.Tests.Traces;

/// <summary>What an eye sees of a record: the median torque of each two degrees of the furthest angle so far. Shares no code with the analysis.</summary>
internal sealed class PlainCurve
{
    private const double Degrees = 2;
    private const double Turn = 360;

    private readonly double[] _places;
    private readonly double[] _medians;

    public PlainCurve(TighteningTrace trace)
    {
        SortedDictionary<int, List<double>> bins = [];
        double furthest = double.NegativeInfinity;
        for (int i = 0; i < trace.Count; i++)
        {
            if (trace.AnglesDegrees.Span[i] < furthest) continue;
            furthest = trace.AnglesDegrees.Span[i];
            int bin = (int)Math.Floor(furthest / Degrees);
            if (!bins.TryGetValue(bin, out List<double>? torques)) bins[bin] = torques = [];
            torques.Add(trace.TorquesNewtonMeters.Span[i]);
        }

        _places = [.. bins.Keys.Select(bin => (bin + 0.5) * Degrees)];
        _medians = [.. bins.Values.Select(Median)];
        int peak = Array.IndexOf(_medians, _medians.Max());
        Top = _medians[peak];
        Base = Median([.. _medians.Where((_, i) => i <= peak && _places[i] >= _places[peak] - Turn)]);
    }

    /// <summary>The highest torque.</summary>
    public double Top { get; }

    /// <summary>The torque before the rise: the median over the turn before the highest torque.</summary>
    public double Base { get; }

    public double Rise => Top - Base;

    /// <summary>The share of the rise that is made at an angle.</summary>
    public double ShareAt(double angle) => (TorqueAt(angle) - Base) / Rise;

    public double TorqueAt(double angle)
    {
        int after = Array.FindIndex(_places, x => x >= angle);
        if (after <= 0) return after == 0 ? _medians[0] : _medians[^1];
        double share = (angle - _places[after - 1]) / (_places[after] - _places[after - 1]);
        return _medians[after - 1] + share * (_medians[after] - _medians[after - 1]);
    }

    public double Last => _places[^1];

    private static double Median(List<double> values)
    {
        values.Sort();
        return values.Count % 2 == 1 ? values[values.Count / 2] : 0.5 * (values[values.Count / 2] + values[values.Count / 2 - 1]);
    }
}
