using Fastening.Equations;
using Fastening.Internals;

namespace Fastening.Quality;

/// <summary>The indices that a mean and a standard deviation have against the limits that there are.</summary>
internal sealed class IndexSet
{
    private readonly double? _lower, _upper;
    private readonly double _mean, _deviation;
    private readonly string _unit;

    public IndexSet(in WindowLimits limits, double mean, double deviation, int count, double degreesOfFreedom, string unit)
    {
        double? lower = limits.HasLower ? limits.Lower : null, upper = limits.HasUpper ? limits.Upper : null;
        (_lower, _upper, _mean, _deviation, _unit) = (lower, upper, mean, deviation, unit);
        CapabilityIndex Index(Func<Term> value, CapabilityBound bound) => new(value, bound, count, degreesOfFreedom);
        AgainstLower = lower is null ? null : Index(LowerIndex, CapabilityBound.NoncentralT);
        AgainstUpper = upper is null ? null : Index(UpperIndex, CapabilityBound.NoncentralT);
        Potential = lower is null || upper is null ? null : Index(PotentialIndex, CapabilityBound.ChiSquared);
        Least = AgainstLower is null ? AgainstUpper!
            : AgainstUpper is null ? AgainstLower
            : Index(() => CapabilityEquations.LeastIndexEquation.Of(UpperIndex(), LowerIndex()), CapabilityBound.Bissell);
    }

    public CapabilityIndex? Potential { get; }

    public CapabilityIndex? AgainstLower { get; }

    public CapabilityIndex? AgainstUpper { get; }

    public CapabilityIndex Least { get; }

    public double ShareBelow => _lower is double lower ? NormalCurve.Below((lower - _mean) / _deviation) : 0;

    public double ShareAbove => _upper is double upper ? NormalCurve.Below((_mean - upper) / _deviation) : 0;

    private Term LowerIndex() => CapabilityEquations.LowerIndexEquation.Of(Mean, Given(_lower!.Value, "lower limit"), Deviation);

    private Term UpperIndex() => CapabilityEquations.UpperIndexEquation.Of(Given(_upper!.Value, "upper limit"), Mean, Deviation);

    private Term PotentialIndex() =>
        CapabilityEquations.PotentialIndexEquation.Of(Given(_upper!.Value, "upper limit"), Given(_lower!.Value, "lower limit"), Deviation);

    private Term Mean => Given(_mean, "mean");

    private Term Deviation => Given(_deviation, "standard deviation");

    private Term Given(double value, string name) => Term.Given(value, name, _unit.Length == 0 ? "the readings" : "the readings, in " + _unit);
}
