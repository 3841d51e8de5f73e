using Fastening.Equations;
using Fastening.Internals;

namespace Fastening;

/// <summary>The indices that a mean and a standard deviation have against the limits that there are.</summary>
internal sealed class IndexSet
{
    private readonly double? _lower;
    private readonly double? _upper;
    private readonly double _mean;
    private readonly double _deviation;

    public IndexSet(in WindowLimits limits, double mean, double deviation, int count, double degreesOfFreedom)
    {
        double? lower = limits.HasLower ? limits.Lower : null, upper = limits.HasUpper ? limits.Upper : null;
        (_lower, _upper, _mean, _deviation) = (lower, upper, mean, deviation);
        CapabilityIndex Index(double value, CapabilityBound bound) => new(value, bound, count, degreesOfFreedom);
        AgainstLower = lower is double low ? Index(CapabilityEquations.LowerIndex(mean, low, deviation), CapabilityBound.NoncentralT) : null;
        AgainstUpper = upper is double high ? Index(CapabilityEquations.UpperIndex(high, mean, deviation), CapabilityBound.NoncentralT) : null;
        Potential = lower is double l && upper is double u ? Index(CapabilityEquations.PotentialIndex(u, l, deviation), CapabilityBound.ChiSquared) : null;
        Least = AgainstLower is null ? AgainstUpper!
            : AgainstUpper is null ? AgainstLower
            : Index(CapabilityEquations.LeastIndex(AgainstUpper.Value, AgainstLower.Value), CapabilityBound.Bissell);
    }

    public CapabilityIndex? Potential { get; }

    public CapabilityIndex? AgainstLower { get; }

    public CapabilityIndex? AgainstUpper { get; }

    public CapabilityIndex Least { get; }

    public double ShareBelow => _lower is double lower ? NormalCurve.Below((lower - _mean) / _deviation) : 0;

    public double ShareAbove => _upper is double upper ? NormalCurve.Below((_mean - upper) / _deviation) : 0;

    /// <summary>The steps to the least index.</summary>
    public Derivation Derive(string title)
    {
        var work = new Derivation(title);
        double against = 0;
        if (_upper is double upper) against = CapabilityEquations.UpperIndexEquation.Step(work, upper, _mean, _deviation);
        if (_lower is double lower)
        {
            double other = CapabilityEquations.LowerIndexEquation.Step(work, _mean, lower, _deviation);
            if (_upper is not null) CapabilityEquations.LeastIndexEquation.Step(work, against, other);
        }

        return work.KeepWhatCounts();
    }
}
