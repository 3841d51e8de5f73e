using System.Buffers;
using System.Numerics;
using System.Runtime.InteropServices;

namespace Fastening;

/// <summary>
/// The samples that turned the fastener on, as means over bins of the furthest angle so far. A sample that fell back by more than one bin
/// counts in none, nor does a lone angle that was never reached. A bin without samples is NaN. The buffers are rented.
/// </summary>
internal sealed class TraceBins : IDisposable
{
    private readonly double[] _angles;
    private readonly double[] _torques;
    private readonly int[] _firstSamples;

    private TraceBins(double origin, double step, int count)
    {
        (Origin, Step, Count) = (origin, step, count);
        _angles = ArrayPool<double>.Shared.Rent(count);
        _torques = ArrayPool<double>.Shared.Rent(count);
        _firstSamples = ArrayPool<int>.Shared.Rent(count + 1);
    }

    public double Origin { get; }

    /// <summary>Degrees of one bin.</summary>
    public double Step { get; }

    public int Count { get; }

    /// <summary>Bins of a number of degrees each from an origin to an end, filled.</summary>
    public static TraceBins Of(ReadOnlySpan<double> angles, ReadOnlySpan<double> torques, double origin, double end, double step, double halfWindow)
    {
        var bins = new TraceBins(origin, step, (int)Math.Ceiling((end - origin) / step));
        bins.Fill(angles, torques, halfWindow);
        return bins;
    }

    public double AngleAt(double bin) => Origin + bin * Step;

    /// <summary>The bin that holds an angle, or the first or last.</summary>
    public int At(double angle) => (int)Math.Min(Math.Max(Math.Floor((angle - Origin) / Step), 0), Count);

    /// <summary>Index of the first sample at or past the beginning of a bin.</summary>
    public int FirstSample(int bin) => _firstSamples[bin];

    /// <summary>Mean angle of each bin.</summary>
    public Span<double> Angles => _angles.AsSpan(0, Count);

    /// <summary>Mean torque of each bin.</summary>
    public Span<double> Torques => _torques.AsSpan(0, Count);

    /// <summary>Mean torque of the bins from one to before another; NaN when they are empty.</summary>
    public double Mean(int from, int to)
    {
        double sum = 0;
        int count = 0;
        for (int k = Math.Max(from, 0); k < Math.Min(to, Count); k++)
        {
            if (double.IsNaN(_torques[k])) continue;
            sum += _torques[k];
            count++;
        }

        return count == 0 ? double.NaN : sum / count;
    }

    /// <summary>Number of bins with samples from one to before another.</summary>
    public int Filled(int from, int to)
    {
        int count = 0;
        for (int k = Math.Max(from, 0); k < Math.Min(to, Count); k++)
        {
            if (!double.IsNaN(_torques[k])) count++;
        }

        return count;
    }

    public void Dispose()
    {
        ArrayPool<double>.Shared.Return(_angles);
        ArrayPool<double>.Shared.Return(_torques);
        ArrayPool<int>.Shared.Return(_firstSamples);
    }

    private void Fill(ReadOnlySpan<double> angles, ReadOnlySpan<double> torques, double halfWindow)
    {
        Angles.Fill(double.NaN);
        Torques.Fill(double.NaN);
        var sums = new Sums();
        double furthest = double.NegativeInfinity, begin = double.NegativeInfinity, until = Origin;
        int reached = -1;
        for (int i = 0; i < angles.Length; i++)
        {
            if (reached >= 0)
            {
                i += sums.AddWithin(angles.Slice(i), torques.Slice(i), begin, until, ref furthest);
                if (i == angles.Length) break;
            }

            double angle = angles[i];
            if (angle > furthest)
            {
                if (LoneAngle.IsAt(angles, i, halfWindow)) continue;
                furthest = angle;
                if (furthest < Origin) continue;
            }
            else if (!(furthest - angle <= Step))
            {
                continue;
            }

            if (furthest >= until || reached < 0)
            {
                Set(reached, sums);
                int bin = Math.Min((int)((furthest - Origin) / Step), Count - 1);
                while (reached < bin) _firstSamples[++reached] = i;
                begin = AngleAt(bin);
                until = bin == Count - 1 ? double.PositiveInfinity : AngleAt(bin + 1);
                sums = new Sums { Centre = AngleAt(bin + 0.5) };
            }

            if (reached >= 0) sums.Add(angle, torques[i]);
        }

        Set(reached, sums);
        while (reached < Count) _firstSamples[++reached] = angles.Length - 1;
    }

    private void Set(int bin, in Sums sums)
    {
        if (bin < 0 || sums.Count == 0) return;
        (_angles[bin], _torques[bin]) = (sums.MeanAngle, sums.MeanTorque);
    }

    private struct Sums
    {
        private double _angles;
        private double _torques;

        public double Centre { get; init; }

        public int Count { get; private set; }

        public readonly double MeanAngle => Centre + _angles / Count;

        public readonly double MeanTorque => _torques / Count;

        public void Add(double angle, double torque)
        {
            _angles += angle - Centre;
            _torques += torque;
            Count++;
        }

        /// <summary>Adds samples by whole vectors as long as all their angles lie within the bin; returns how many.</summary>
        public int AddWithin(ReadOnlySpan<double> angles, ReadOnlySpan<double> torques, double begin, double until, ref double furthest)
        {
            ReadOnlySpan<Vector<double>> xs = MemoryMarshal.Cast<double, Vector<double>>(angles), ys = MemoryMarshal.Cast<double, Vector<double>>(torques);
            Vector<double> low = new(begin), high = new(until), centre = new(Centre), angleSum = default, torqueSum = default, most = low;
            int taken = 0;
            for (; taken < xs.Length; taken++)
            {
                if (!Vector.GreaterThanOrEqualAll(xs[taken], low) || !Vector.LessThanAll(xs[taken], high)) break;
                angleSum += xs[taken] - centre;
                torqueSum += ys[taken];
                most = Vector.Max(most, xs[taken]);
            }

            for (int lane = 0; lane < Vector<double>.Count; lane++)
            {
                _angles += angleSum[lane];
                _torques += torqueSum[lane];
                furthest = Math.Max(furthest, most[lane]);
            }

            Count += taken * Vector<double>.Count;
            return taken * Vector<double>.Count;
        }
    }
}
