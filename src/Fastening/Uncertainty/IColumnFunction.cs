namespace Fastening.Quality;

/// <summary>A measurement function that takes a block of draws at once; input i of row r is at i × <see cref="InputSampler.Rows"/> + r.</summary>
internal interface IColumnFunction
{
    void Evaluate(double[] columns, Span<double> results);
}
