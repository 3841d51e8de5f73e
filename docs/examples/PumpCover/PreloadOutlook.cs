using Fastening;
using Fastening.Quality;
using UnitsNet;

namespace PumpCover;

/// <summary>The preload band of a plan: all stated inputs at their limits, and statistical.</summary>
internal sealed record PreloadOutlook(PreloadBand Band, PreloadBand OneLubricant)
{
    /// <summary>Fixed, so that the sheet is the same on every run and machine.</summary>
    public static MonteCarlo MonteCarlo { get; } = new MonteCarlo().WithDraws(1_000_000).WithSeed(1);

    public static PreloadOutlook Of(TighteningPlan plan)
    {
        BoltedJoint joint = plan.Job.Joint;
        var inputs = new PreloadBandInputs(joint.AtLowestFriction, ToleranceWindow.FromLimits(plan.LowestTorque, plan.HighestTorque), joint.Friction, FrictionCorrelation.Independent)
            .WithPrevailingRange(joint.Prevailing.Low, joint.Prevailing.High);
        return new PreloadOutlook(PreloadBand.Evaluate(inputs, MonteCarlo), PreloadBand.Evaluate(inputs.WithFrictionCorrelation(FrictionCorrelation.Full), MonteCarlo));
    }

    /// <summary>The inputs that scatter, in words, the dominating one first.</summary>
    public IReadOnlyList<(string Name, double Weight)> Influences =>
        [.. Band.Influences.Where(influence => influence.Weight > 0).Select(influence => (InWords(influence.Name), influence.Weight))];

    public static string Factor(Range<Force> range) => range.HighOverLow is double factor ? $"{factor:0.00}" : "none";

    private static string InWords(string input) => input switch
    {
        "µ_th" => "thread friction",
        "µ_b" => "friction under the head",
        _ => input[..input.IndexOf(" (", StringComparison.Ordinal)],
    };
}
