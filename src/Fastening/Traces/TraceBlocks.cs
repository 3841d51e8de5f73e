using System.Buffers;
using System.Numerics;
using System.Runtime.InteropServices;

namespace Fastening;

/// <summary>
/// One pass over angles and torques: their extremes and the work, block by block, so that later steps open only the blocks that they need. A
/// block has 512 samples, or more in a long record: the number of blocks is bounded, and with it the rented memory.
/// </summary>
internal sealed class TraceBlocks : IDisposable
{
    private const int LeastLength = 512;
    private const int MostBlocks = 2048;

    private readonly Block[] _blocks;
    private readonly int _samples;

    private TraceBlocks(int samples)
    {
        _samples = samples;
        Length = Math.Max(LeastLength, (samples + MostBlocks - 1) / MostBlocks);
        Count = (samples + Length - 1) / Length;
        _blocks = ArrayPool<Block>.Shared.Rent(Count);
    }

    /// <summary>Samples of a block; the last one may have fewer.</summary>
    public int Length { get; }

    public int Count { get; }

    /// <summary>Samples whose angle is less than that of the sample before.</summary>
    public int StepsBack { get; private set; }

    public double LargestStepBack { get; private set; }

    public ref readonly Block this[int block] => ref _blocks[block];

    public int From(int block) => block * Length;

    public int To(int block) => Math.Min((block + 1) * Length, _samples);

    public static TraceBlocks Of(ReadOnlySpan<double> angles, ReadOnlySpan<double> torques)
    {
        var blocks = new TraceBlocks(torques.Length);
        for (int b = 0; b < blocks.Count; b++)
        {
            int from = blocks.From(b), before = Math.Max(from - 1, 0), count = blocks.To(b) - before;
            blocks._blocks[b] = blocks.Scanned(angles.Slice(before, count), torques.Slice(before, count), angles[from], torques[from]);
        }

        return blocks;
    }

    /// <summary>∫ M dθ by trapezoids from the first sample to another, in N·m·°.</summary>
    public double EnergyTo(int sample, ReadOnlySpan<double> angles, ReadOnlySpan<double> torques)
    {
        double energy = 0;
        int block = sample / Length;
        for (int b = 0; b < block; b++) energy += _blocks[b].Energy;
        for (int i = Math.Max(From(block), 1); i <= sample; i++) energy += 0.5 * (torques[i] + torques[i - 1]) * (angles[i] - angles[i - 1]);
        return energy;
    }

    /// <summary>The first sample of the highest torque, or of the lowest.</summary>
    public int FirstExtreme(ReadOnlySpan<double> torques, bool isLowest)
    {
        int best = 0;
        for (int b = 1; b < Count; b++)
        {
            if (isLowest ? _blocks[b].LowestTorque < _blocks[best].LowestTorque : _blocks[b].HighestTorque > _blocks[best].HighestTorque) best = b;
        }

        double extreme = isLowest ? _blocks[best].LowestTorque : _blocks[best].HighestTorque;
        return From(best) + torques.Slice(From(best), To(best) - From(best)).IndexOf(extreme);
    }

    public void Dispose() => ArrayPool<Block>.Shared.Return(_blocks);

    /// <summary>Scans a block; the first sample of the columns is the one before it, from which its first step comes.</summary>
    private Block Scanned(ReadOnlySpan<double> angles, ReadOnlySpan<double> torques, double firstAngle, double firstTorque)
    {
        int steps = angles.Length - 1, done = steps / Vector<double>.Count * Vector<double>.Count;
        var lowest = new Vector<double>(firstAngle);
        Vector<double> highest = lowest, least = new(firstTorque), most = least, energies = default, farthestBack = default;
        Vector<long> back = default;
        ReadOnlySpan<Vector<double>> anglesBefore = MemoryMarshal.Cast<double, Vector<double>>(angles.Slice(0, done)), anglesNow = MemoryMarshal.Cast<double, Vector<double>>(angles.Slice(1, done));
        ReadOnlySpan<Vector<double>> torquesBefore = MemoryMarshal.Cast<double, Vector<double>>(torques.Slice(0, done)), torquesNow = MemoryMarshal.Cast<double, Vector<double>>(torques.Slice(1, done));
        for (int v = 0; v < anglesNow.Length; v++)
        {
            Vector<double> turn = anglesNow[v] - anglesBefore[v];
            energies += (torquesNow[v] + torquesBefore[v]) * turn;
            farthestBack = Vector.Min(farthestBack, turn);
            back += Vector.LessThan(turn, Vector<double>.Zero);
            lowest = Vector.Min(lowest, anglesNow[v]);
            highest = Vector.Max(highest, anglesNow[v]);
            least = Vector.Min(least, torquesNow[v]);
            most = Vector.Max(most, torquesNow[v]);
        }

        var block = new Block(lowest[0], highest[0], least[0], most[0], 0);
        for (int lane = 0; lane < Vector<double>.Count; lane++)
        {
            block = block.With(lowest[lane], least[lane], 0).With(highest[lane], most[lane], 0.5 * energies[lane]);
            StepsBack -= (int)back[lane];
            LargestStepBack = Math.Max(LargestStepBack, -farthestBack[lane]);
        }

        for (int i = done + 1; i <= steps; i++)
        {
            double turn = angles[i] - angles[i - 1];
            if (turn < 0) StepsBack++;
            LargestStepBack = Math.Max(LargestStepBack, -turn);
            block = block.With(angles[i], torques[i], 0.5 * (torques[i] + torques[i - 1]) * turn);
        }

        return block;
    }

    internal readonly record struct Block(double LowestAngle, double HighestAngle, double LowestTorque, double HighestTorque, double Energy)
    {
        public Block With(double angle, double torque, double energy) => new(
            Math.Min(LowestAngle, angle), Math.Max(HighestAngle, angle), Math.Min(LowestTorque, torque), Math.Max(HighestTorque, torque), Energy + energy);
    }
}
