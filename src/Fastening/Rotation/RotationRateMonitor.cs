using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Watches the rate of rotation while it happens: one sample at a time, no allocation, the same answer as <see cref="RotationRateLimit.Check(TighteningTrace, Duration)"/> on the whole record.</summary>
/// <remarks>
/// The capacity is the number of samples that one window can hold, and two more. A sample that finds no room is not taken: <see cref="TryAdd"/>
/// says so, <see cref="RefusedCount"/> counts it, and there is no verdict until <see cref="Reset"/>. Not for use from two threads at once.
/// </remarks>
/// <example><code>var monitor = new RotationRateMonitor(limit, window: Duration.FromSeconds(0.5), capacity: 600);
/// foreach ((Duration time, Angle angle) in samples) monitor.TryAdd(time, angle);
/// RotationRateCheck check = monitor.Check();</code></example>
public sealed class RotationRateMonitor
{
    private const int LeastCapacity = 4;
    private const int MostCapacity = 1 << 24;

    private readonly double _limit;
    private readonly double _window;
    private readonly double[] _times;
    private readonly double[] _angles;
    private RateWalk _walk;
    private int _oldest;
    private int _held;
    private int _tailFromOldest;

    /// <summary>A monitor for one limit and one window.</summary>
    /// <param name="limit">The limit.</param>
    /// <param name="window">Length of the window.</param>
    /// <param name="capacity">Samples that one window can hold, and two more; 4 to 16 777 216.</param>
    /// <exception cref="ArgumentNullException"><paramref name="limit"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>new RotationRateMonitor(limit, window: Duration.FromSeconds(0.5), capacity: 600)     // 1000 samples a second, and room to spare</code></example>
    public RotationRateMonitor(RotationRateLimit limit, Duration window, int capacity)
    {
        _limit = Guard.NotNull(limit).RateInDegrees;
        _window = Domains.Duration.Check(window);
        if (capacity is < LeastCapacity or > MostCapacity) Guard.RefuseAgainst(nameof(capacity), capacity, $"from {LeastCapacity} to {MostCapacity}");
        _times = new double[capacity];
        _angles = new double[capacity];
        Reset();
    }

    /// <summary>Samples that can be held at once.</summary>
    public int Capacity => _times.Length;

    /// <summary>Samples taken.</summary>
    public long Count { get; private set; }

    /// <summary>Samples that found no room since the last <see cref="Reset"/>; with any, there is no verdict.</summary>
    public long RefusedCount { get; private set; }

    /// <summary>Takes one sample.</summary>
    /// <param name="time">Its time, not before the last.</param>
    /// <param name="angle">The angle of the fastener, positive in the tightening sense.</param>
    /// <returns>False when the window holds more samples than there is room for: the sample was not taken.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain, or time goes back; the sample was not taken.</exception>
    /// <example><code>if (!monitor.TryAdd(Duration.FromMilliseconds(812), Angle.FromDegrees(24.25))) throw new InvalidOperationException("no room");</code></example>
    public bool TryAdd(Duration time, Angle angle)
    {
        double seconds = Domains.SampleTime.Check(time), degrees = Domains.SampleAngle.Check(angle);
        if (_held > 0 && seconds < _times[Place(_held - 1)]) Guard.RefuseAgainst(nameof(time), time, "at least the time before it");
        if (_held == Capacity && _times[Place(1)] + _window > seconds)
        {
            RefusedCount++;
            return false;
        }

        if (_held == 0) _walk.Begin(seconds, degrees);
        else Advance(seconds, degrees);
        _times[Place(_held)] = seconds;
        _angles[Place(_held)] = degrees;
        _held++;
        Count++;
        return true;
    }

    /// <summary>The verdict on the samples so far.</summary>
    /// <returns>What <see cref="RotationRateLimit.Check(TighteningTrace, Duration)"/> says of a trace of the same samples, to the last bit.</returns>
    /// <exception cref="InvalidOperationException">Samples were refused, they have no duration yet, or the window is too short for their clock.</exception>
    /// <example><code>if (!monitor.Check().Conforms) Console.WriteLine(monitor.Check());</code></example>
    public RotationRateCheck Check()
    {
        if (RefusedCount > 0) throw new InvalidOperationException($"The monitor had no room for {RefusedCount} of the samples: it cannot judge the record.");
        if (Count == 0 || _walk.Length <= 0) throw new InvalidOperationException("The samples so far have no duration: they have no rate.");
        if (RotationRateLimit.LeastWindow(_walk, _window) is double least) throw new InvalidOperationException($"The window must be {RotationRateLimit.NeedOf(least)}.");
        return _walk.Result();
    }

    /// <summary>Forgets all samples; the next one begins a new record.</summary>
    /// <example><code>monitor.Reset();     // the next fastener</code></example>
    public void Reset()
    {
        _walk = new RateWalk(_limit, _window);
        (_oldest, _held, _tailFromOldest) = (0, 0, 0);
        (Count, RefusedCount) = (0, 0);
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text($"{Count} samples, at most {_limit:0.###}°/s over {_window:0.####} s");

    /// <summary>Walks to a new sample and lets go of what lies behind the window, but for the sample just before it.</summary>
    private void Advance(double seconds, double degrees)
    {
        _walk.Approach(seconds, degrees);
        while (_walk.TailIsDue)
        {
            _tailFromOldest++;
            bool isNewest = _tailFromOldest == _held;
            _walk.PassTail(isNewest ? seconds : _times[Place(_tailFromOldest)], isNewest ? degrees : _angles[Place(_tailFromOldest)]);
        }

        _walk.Arrive();
        int behind = Math.Max(_tailFromOldest - 1, 0);
        _oldest = Place(behind);
        _held -= behind;
        _tailFromOldest -= behind;
    }

    private int Place(int fromOldest)
    {
        int place = _oldest + fromOldest;
        return place < _times.Length ? place : place - _times.Length;
    }
}
