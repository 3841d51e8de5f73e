using System.Runtime.ExceptionServices;
using Fastening.Internals;

namespace Fastening.Quality;

/// <summary>One run: the draws made so far, block by block.</summary>
internal sealed class MonteCarloRun(UncertaintyBudget budget, MonteCarlo settings, IProgress<double>? progress, CancellationToken cancellation)
{
    private readonly InputSampler _sampler = new(budget);
    private readonly string[] _names = Array.ConvertAll(budget.InputArray, input => input.Name);
    private readonly object _counting = new();
    private double[] _values = [];
    private long _drawn;

    public int Length => _values.Length;

    /// <summary>Goes on until there are so many draws, and returns them all. Blocks already begun but not full are never extended: a stop falls on a block's end.</summary>
    public double[] Draw(int length)
    {
        int firstBlock = _values.Length / MonteCarlo.BlockLength;
        Array.Resize(ref _values, length);
        int blocks = (length + MonteCarlo.BlockLength - 1) / MonteCarlo.BlockLength;
        try
        {
            Parallel.For(
                firstBlock,
                blocks,
                new ParallelOptions { MaxDegreeOfParallelism = settings.Threads, CancellationToken = cancellation },
                () => new double[_names.Length * InputSampler.Rows],
                (block, _, columns) => DrawBlock(block, columns),
                _ => { });
        }
        catch (AggregateException several)
        {
            // The user's function failed: its own exception says more than a bundle of them.
            ExceptionDispatchInfo.Capture(several.Flatten().InnerExceptions[0]).Throw();
        }

        return _values;
    }

    private double[] DrawBlock(int block, double[] columns)
    {
        var random = new RandomStream(settings.Seed, block);
        int start = block * MonteCarlo.BlockLength;
        int end = Math.Min(start + MonteCarlo.BlockLength, _values.Length);
        Func<InputValues, double> function = budget.Function;
        for (int first = start; first < end; first += InputSampler.Rows)
        {
            int rows = Math.Min(InputSampler.Rows, end - first);
            _sampler.Fill(random, columns);
            Span<double> values = _values.AsSpan(first, rows);
            if (budget.Columns is { } whole) whole.Evaluate(columns, values);
            else for (int row = 0; row < rows; row++) values[row] = function(new InputValues(columns, _names, row, InputSampler.Rows));
            for (int row = 0; row < rows; row++)
            {
                if (values[row] - values[row] != 0) Refuse(values[row], columns, row);
            }
        }

        Report(end - start);
        return columns;
    }

    private void Report(int drawn)
    {
        if (progress is null) return;
        lock (_counting)
        {
            _drawn += drawn;
            progress.Report((double)_drawn / settings.Draws);
        }
    }

    private void Refuse(double value, double[] columns, int row)
    {
        string inputs = string.Join(", ", _names.Select((name, i) => Print.Text($"{name} = {columns[i * InputSampler.Rows + row]:G6}")));
        throw new InvalidOperationException(Print.Text($"The measurement function gives {value} at {inputs}."));
    }
}
