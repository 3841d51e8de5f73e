using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening.Quality;

/// <summary>The readings of the reference device at one torque that the tool was set to or indicated.</summary>
/// <remarks>The sign of a deviation: positive = the tool delivers less than it says, so it under-tightens.</remarks>
/// <example><code>CalibrationPoint point = CalibrationPoint.At(Torque.FromNewtonMeters(100),
///     [Torque.FromNewtonMeters(98.1), Torque.FromNewtonMeters(98.4), Torque.FromNewtonMeters(98.2), Torque.FromNewtonMeters(98.5), Torque.FromNewtonMeters(98.3)]);
/// Ratio deviation = point.MeanDeviation;     // +1.7 %: it delivers less than it says</code></example>
public sealed class CalibrationPoint
{
    // A broken tool must go on record as it was found; further off than this a reading is taken for one in another unit.
    private const double FurthestOff = 10;

    private readonly Stated<Torque> _torque;
    private readonly double[] _references;

    private CalibrationPoint(Stated<Torque> torque, double[] references)
    {
        _torque = torque;
        _references = references;
        Statistics = SampleStatistics.Of<Torque>(references);
        LeastDeviation = CalibrationEquations.Deviation(torque.Value, references.Max());
        GreatestDeviation = CalibrationEquations.Deviation(torque.Value, references.Min());
    }

    /// <summary>Torque that the tool was set to or indicated.</summary>
    public Torque Torque => Si.Torque(_torque.Term);

    /// <summary>What the reference device measured, in the order taken.</summary>
    public IReadOnlyList<Torque> References => Array.AsReadOnly(Array.ConvertAll(_references, Si.Torque));

    /// <summary>Deviation of every reading, in the order taken; positive = delivers less than it says.</summary>
    public IReadOnlyList<Ratio> Deviations => Array.AsReadOnly(
        Array.ConvertAll(_references, reference => Si.Ratio(CalibrationEquations.Deviation(SiTorque, reference))));

    /// <summary>Deviation of the mean of the readings; positive = delivers less than it says.</summary>
    public Ratio MeanDeviation => Si.Ratio(DeviationTerm);

    internal double SiTorque => _torque.Value;

    internal double MeanReference => Statistics.MeanSi;

    internal double Mean => DeviationTerm.Value;

    internal Term DeviationTerm => CalibrationEquations.DeviationEquation.Of(_torque.Term, MeanReferenceTerm);

    internal Term MeanReferenceTerm => Stated<Torque>.Of(MeanReference, "mean of the reference readings").Term;

    /// <summary>Deviation of the reading that delivers most.</summary>
    internal double LeastDeviation { get; }

    /// <summary>Deviation of the reading that delivers least.</summary>
    internal double GreatestDeviation { get; }

    internal double StandardDeviation => Statistics.DeviationSi;

    internal ReadOnlySpan<double> SiReferences => _references;

    private SampleStatistics<Torque> Statistics { get; }

    /// <summary>A point from its readings.</summary>
    /// <param name="torque">Torque that the tool was set to or indicated.</param>
    /// <param name="references">What the reference device measured, at least two readings.</param>
    /// <returns>The point.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="references"/> is null.</exception>
    /// <exception cref="ArgumentException">There are fewer than two readings.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A torque is outside its domain, or a reading is not between a tenth of the torque of the tool and ten times it: then it is another unit.</exception>
    /// <example><code>CalibrationPoint.At(Torque.FromNewtonMeters(40), [Torque.FromNewtonMeters(40.3), Torque.FromNewtonMeters(40.1)])</code></example>
    public static CalibrationPoint At(Torque torque, IReadOnlyList<Torque> references)
    {
        Stated<Torque> tool = Domains.PositiveTorque.Stated(torque);
        double set = tool.Value;
        if (Guard.NotNull(references).Count < 2)
        {
            throw new ArgumentException($"references has {references.Count} readings; a point of a calibration has at least 2.", nameof(references));
        }

        double[] si = new double[references.Count];
        for (int i = 0; i < si.Length; i++)
        {
            si[i] = Domains.PositiveTorque.Check(references[i], $"references[{i}]");
            if (si[i] < set / FurthestOff || si[i] > set * FurthestOff)
            {
                Guard.RefuseAgainst($"references[{i}]", references[i], $"between a tenth of the torque of the tool, {Guard.ShowToCompare(torque)}, and ten times it (is its unit right?)");
            }
        }

        return new CalibrationPoint(tool, si);
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"{SiTorque:0.###} N·m: deviation {Si.Ratio(Mean):+0.00;−0.00;0.00} ({Si.Ratio(LeastDeviation):+0.00;−0.00;0.00} to {Si.Ratio(GreatestDeviation):+0.00;−0.00;0.00}) of {_references.Length} readings");
}
