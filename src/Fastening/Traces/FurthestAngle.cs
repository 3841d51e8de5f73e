namespace Fastening;

/// <summary>The furthest angle that was reached, and the places that hang on it: shut-off, a reversal, the sense of the record.</summary>
internal readonly ref struct FurthestAngle
{
    private const double ShareOfTorque = 0.5;

    private readonly TraceBlocks _blocks;
    private readonly ReadOnlySpan<double> _angles;
    private readonly ReadOnlySpan<double> _torques;
    private readonly double _window;

    public FurthestAngle(TraceBlocks blocks, ReadOnlySpan<double> angles, ReadOnlySpan<double> torques, double window)
    {
        (_blocks, _window) = (blocks, window);
        _angles = angles;
        _torques = torques;
        (Degrees, First) = Furthest(angles.Length - 1);
    }

    public double Degrees { get; }

    /// <summary>The first sample that reached it.</summary>
    public int First { get; }

    /// <summary>
    /// Where the tool stopped turning the fastener: the sample at which the angle first reaches its furthest, the tail left out. The tail begins
    /// after the last sample within one window of the furthest angle that still carries half the torque of that stretch, as two neighbouring
    /// samples share it: neither a spike nor an angle that dithers while the torque has gone moves it.
    /// </summary>
    public int ShutOff()
    {
        double near = Degrees - _window, highest = 0;
        for (int b = _blocks.Count - 1; b >= 0; b--)
        {
            if (_blocks[b].HighestAngle < near || _blocks[b].HighestTorque <= highest) continue;
            for (int i = Math.Max(_blocks.From(b), 1); i < _blocks.To(b); i++)
            {
                if (_angles[i] >= near || _angles[i - 1] >= near) highest = Math.Max(highest, Math.Min(_torques[i], _torques[i - 1]));
            }
        }

        if (highest <= 0) return First;
        for (int b = _blocks.Count - 1; b >= 0; b--)
        {
            if (_blocks[b].HighestAngle < near || _blocks[b].HighestTorque < ShareOfTorque * highest) continue;
            for (int i = _blocks.To(b) - 1; i >= _blocks.From(b); i--)
            {
                if (_angles[i] >= near && _torques[i] >= ShareOfTorque * highest && IsShared(i, ShareOfTorque * highest)) return Furthest(i).Index;
            }
        }

        return First;
    }

    /// <summary>The first sample before shut-off that fell back from the furthest angle by more than a limit; −1 when none did.</summary>
    public int FirstReversal(double limit, int shutOff)
    {
        double furthest = double.NegativeInfinity;
        for (int b = 0; b < _blocks.Count && _blocks.From(b) <= shutOff; b++)
        {
            double high = Math.Max(furthest, _blocks[b].HighestAngle);
            if (_blocks[b].LowestAngle >= high - limit)
            {
                furthest = high;
                continue;
            }

            for (int i = _blocks.From(b); i < _blocks.To(b) && i <= shutOff; i++)
            {
                if (_angles[i] > furthest && !LoneAngle.IsAt(_angles, i, _window / 2)) furthest = _angles[i];
                if (furthest - _angles[i] > limit) return i;
            }
        }

        return -1;
    }

    /// <summary>Whether the record ends further behind its start than it came forward.</summary>
    public bool TurnsBack => _angles[0] - _angles[^1] > Degrees - _angles[0];

    private bool IsShared(int index, double torque) =>
        (index > 0 && _torques[index - 1] >= torque) || (index + 1 < _torques.Length && _torques[index + 1] >= torque);

    /// <summary>The furthest angle up to a sample and the first sample that reached it, lone angles left out.</summary>
    private (double Degrees, int Index) Furthest(int last)
    {
        double furthest = double.NegativeInfinity;
        int index = 0;
        for (int b = last / _blocks.Length; b >= 0; b--)
        {
            if (_blocks[b].HighestAngle < furthest) continue;
            double inBlock = furthest;
            int first = -1;
            for (int i = _blocks.From(b); i < _blocks.To(b) && i <= last; i++)
            {
                if ((first < 0 ? _angles[i] < inBlock : _angles[i] <= inBlock) || LoneAngle.IsAt(_angles, i, _window / 2)) continue;
                (inBlock, first) = (_angles[i], i);
            }

            if (first >= 0) (furthest, index) = (inBlock, first);
        }

        return (furthest, index);
    }
}
