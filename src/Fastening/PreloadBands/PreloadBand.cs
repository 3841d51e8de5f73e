using Fastening.Internals;
using Fastening.Quality;
using UnitsNet;

namespace Fastening;

/// <summary>The preload that the tool leaves in a joint, within the stated limits: worst case and statistical side by side, and the input that dominates.</summary>
/// <remarks>
/// Worst case: every stated input at its bad limit, and nothing else. Statistical: Monte Carlo (JCGM 101:2008), always; the preload goes with 1/κ, so that its
/// distribution is skewed and first order hides overload once u_κ/κ passes 0.05. What is left out stands in <see cref="NotCovered"/>.
/// </remarks>
/// <example><code>PreloadBand band = PreloadBand.Evaluate(new PreloadBandInputs(model, wrench, Torque.FromNewtonMeters(150), frictionRange, FrictionCorrelation.Full));
/// double risk = band.ProbabilityBelow(Force.FromKilonewtons(45));
/// Console.WriteLine(band);</code></example>
public sealed class PreloadBand
{
    /// <summary>Relative standard uncertainty of torque per preload up to which first order is good enough (formula: bias u², ends of the band).</summary>
    private const double FirstOrderLimit = 0.05;

    private const double Coverage = 0.95;

    private readonly double _nominal;
    private readonly double _armUncertainty;

    private PreloadBand(PreloadChain chain, MonteCarloResult draws, PreloadBandInputs inputs)
    {
        FrictionCorrelation = inputs.FrictionCorrelation;
        Remarks = inputs.Remarks;
        Budget = chain.Budget;
        Draws = draws;
        _nominal = chain.Middle;
        (double low, double high) = chain.WorstCase();
        WorstCase = new Range<Force>((Si.Force(low), Si.Force(high)));
        Statistical = Range(draws.SymmetricInterval(Coverage));
        ShortestStatistical = Range(draws.ShortestInterval(Coverage));
        _armUncertainty = chain.RelativeArmUncertainty;
        Influences = Array.AsReadOnly(Budget.Rows.Select(row => new PreloadInfluence(row.Input.Name, row.Weight, chain.Swing(row.Input.Name))).ToArray());
    }

    /// <summary>How thread and bearing friction were taken to vary together; null with a nut factor. The statistical figures hold for this alone.</summary>
    public FrictionCorrelation? FrictionCorrelation { get; }

    /// <summary>What is unusual in the inputs: see <see cref="PreloadBandInputs.Remarks"/>.</summary>
    /// <example><code>foreach (PlausibilityRemark remark in band.Remarks) Console.WriteLine(remark);</code></example>
    public IReadOnlyList<PlausibilityRemark> Remarks { get; }

    /// <summary>What neither band covers: it comes after the tool, or was not stated as an input.</summary>
    public static IReadOnlyList<string> NotCovered { get; } = Array.AsReadOnly(
    [
        "embedding, relaxation with time, change of temperature",
        "neighbours tightened later",
        "yield: the preload is that of the elastic bolt",
        "every input that was not stated, taken as exact",
    ]);

    /// <summary>Preload with every input in the middle of its limits; neither mean nor median.</summary>
    public Force Nominal => Si.Force(_nominal);

    /// <summary>Lowest and highest preload with every stated input at a limit, as the tool leaves it.</summary>
    public Range<Force> WorstCase { get; }

    /// <summary>The preloads of 95 % of the joints, as many below as above; <see cref="Range{T}.HighOverLow"/> is the statistical α_A.</summary>
    public Range<Force> Statistical { get; }

    /// <summary>The shortest range that holds the preloads of 95 % of the joints.</summary>
    public Range<Force> ShortestStatistical { get; }

    /// <summary>Mean of the preload over many joints.</summary>
    public Force Mean => Kilonewtons(Draws.Mean);

    /// <summary>The preload that half of the joints exceed.</summary>
    public Force Median => Kilonewtons(Draws.Median);

    /// <summary>Standard deviation of the preload over many joints.</summary>
    public Force StandardDeviation => Kilonewtons(Draws.StandardUncertainty);

    /// <summary>Relative standard uncertainty of torque per preload, u_κ/κ.</summary>
    public Ratio RelativeArmUncertainty => Si.Ratio(_armUncertainty);

    /// <summary>Whether the first-order figures of <see cref="Budget"/> would have been good enough: u_κ/κ is at most 0.05.</summary>
    public bool IsFirstOrderEnough => _armUncertainty <= FirstOrderLimit;

    /// <summary>The inputs by their share of the variance, the dominating one first.</summary>
    public IReadOnlyList<PreloadInfluence> Influences { get; }

    /// <summary>The input that makes most of the scatter.</summary>
    public PreloadInfluence Dominating => Influences[0];

    /// <summary>The input that moves the preload most from limit to limit.</summary>
    public PreloadInfluence DominatingWorstCase => Influences.OrderByDescending(influence => influence.Swing).First();

    /// <summary>The budget after the GUM, with analytic sensitivities, in kilonewtons.</summary>
    public UncertaintyBudget Budget { get; }

    /// <summary>The draws behind the statistical figures, in kilonewtons.</summary>
    public MonteCarloResult Draws { get; }

    /// <summary>The band of a million draws.</summary>
    /// <param name="inputs">What scatters.</param>
    /// <returns>The band.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="inputs"/> is null.</exception>
    /// <example><code>PreloadBand band = PreloadBand.Evaluate(inputs);</code></example>
    public static PreloadBand Evaluate(PreloadBandInputs inputs) => Evaluate(inputs, new MonteCarlo());

    /// <summary>The band of a stated Monte Carlo run.</summary>
    /// <param name="inputs">What scatters.</param>
    /// <param name="monteCarlo">Number of draws, seed, threads.</param>
    /// <returns>The band.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <example><code>PreloadBand band = PreloadBand.Evaluate(inputs, new MonteCarlo().WithDraws(200_000).WithSeed(7));</code></example>
    public static PreloadBand Evaluate(PreloadBandInputs inputs, MonteCarlo monteCarlo)
    {
        PreloadChain chain = Guard.NotNull(inputs).Chain();
        return new PreloadBand(chain, Guard.NotNull(monteCarlo).Run(chain.Budget), inputs);
    }

    /// <summary>The preloads of a stated share of the joints, as many below as above.</summary>
    /// <param name="coverageProbability">The share, 0.001 to 0.999999.</param>
    /// <returns>Lowest and highest preload.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="coverageProbability"/> is outside its domain, or too near to 1 for the number of draws.</exception>
    /// <example><code>Range&lt;Force&gt; nearlyAll = band.StatisticalRange(0.99);</code></example>
    public Range<Force> StatisticalRange(double coverageProbability) => Range(Draws.SymmetricInterval(coverageProbability));

    /// <summary>Probability that a joint falls short of a required preload.</summary>
    /// <param name="required">The preload that the joint needs.</param>
    /// <returns>0 to 1. Where it is 0, it is below 3/M with 95 % confidence, M being the number of draws: 3 in a million.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="required"/> is outside its domain.</exception>
    /// <example><code>double tooLoose = band.ProbabilityBelow(required: Force.FromKilonewtons(52));</code></example>
    public double ProbabilityBelow(Force required) => Draws.ProbabilityBelow(Domains.Force.Check(required) / 1e3);

    /// <summary>Probability that a bolt exceeds a permitted preload.</summary>
    /// <param name="permitted">The preload that the bolt may have.</param>
    /// <returns>0 to 1. Where it is 0, it is below 3/M with 95 % confidence, M being the number of draws: 3 in a million.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="permitted"/> is outside its domain.</exception>
    /// <example><code>double tooTight = band.ProbabilityAbove(permitted: Force.FromKilonewtons(75));</code></example>
    public double ProbabilityAbove(Force permitted) => Draws.ProbabilityAbove(Domains.Force.Check(permitted) / 1e3);

    /// <inheritdoc />
    public override string ToString() =>
        $"worst case {WorstCase}{Factor(WorstCase)}; 95 % of joints {Statistical}{Factor(Statistical)}; {Dominating.Name} dominates{(FrictionCorrelation is null ? "" : $"; {FrictionCorrelation}")}; not covered: {string.Join("; ", NotCovered)}{PlausibilityRemark.Mention(Remarks)}";

    private static string Factor(Range<Force> range) =>
        range.HighOverLow is double factor ? Print.Text($" (α_A {factor:0.00})") : "";

    private static Range<Force> Range(Range<double> kilonewtons) => new((Kilonewtons(kilonewtons.Low), Kilonewtons(kilonewtons.High)));

    private static Force Kilonewtons(double value) => Si.Force(value * 1e3);
}
