using Fastening;
using UnitsNet;

namespace PumpCover;

/// <summary>The section of the sheet that sets the band of all limits beside the statistical one.</summary>
internal sealed class OutlookSection(PreloadOutlook outlook, TighteningPlan plan, ISheetWriter writer)
{
    private const MidpointRounding Down = MidpointRounding.ToNegativeInfinity, Up = MidpointRounding.ToPositiveInfinity;

    /// <summary>Below this share, in percent, a number of draws says little more than that it is rare.</summary>
    private const double LeastPercent = 0.1;

    private BoltedJoint Joint => plan.Job.Joint;

    public void Write()
    {
        writer.Heading("Uncertainty of the preload: all inputs at their limits, and statistical");
        writer.Table(["Band", "lowest ", "highest ", "highest/lowest, α_A "],
        [
            Row("every stated input at its limit", outlook.Band.WorstCase),
            Row("95 % of bolts, thread and head friction independent", outlook.Band.Statistical),
            Row("95 % of bolts, both friction coefficients rise and fall together", outlook.OneLubricant.Statistical),
        ]);
        writer.Bullets(
        [
            $"Short of the required {Show.Stated(Joint.RequiredPreload.Kilonewtons)} kN: "
                + Share(band => band.ProbabilityBelow(Joint.RequiredPreload), plan.LowestPreload >= Joint.RequiredPreload),
            $"Above the permitted {Show.Force(Joint.PermittedPreload, Down)} (at the lowest thread friction): "
                + Share(band => band.ProbabilityAbove(Joint.PermittedPreload), plan.HighestPreload <= Joint.PermittedPreload),
            Dominating(),
        ]);
        writer.Paragraph(
            $"Assumed: every torque from {Show.Torque(plan.LowestTorque, 1)} to {Show.Torque(plan.HighestTorque, 1)} ({plan.Job.Deviation.PartsOfTorque}) "
            + $"and every friction{(Joint.Prevailing.IsZero ? "" : " and prevailing torque")} in its range equally likely, because nothing more is stated. "
            + $"Monte Carlo (JCGM 101), {PreloadOutlook.MonteCarlo.Draws:N0} draws, fixed seed. The statistical bands describe many bolts; "
            + "target, settings and verdicts on this sheet go by the limits. "
            + "None of the bands counts what stands under \"Not in the band\".");
    }

    private static string[] Row(string name, Range<Force> range) =>
        [name, Show.Force(range.Low, Down), Show.Force(range.High, Up), PreloadOutlook.Factor(range)];

    private string Share(Func<PreloadBand, double> probability, bool isExcluded)
    {
        if (isExcluded) return "no bolt, as the wrench leaves it: before settling and before its neighbours are tightened.";
        double[] percent = [probability(outlook.Band) * 100, probability(outlook.OneLubricant) * 100];
        return percent.Max() < LeastPercent
            ? $"fewer than {LeastPercent} % of bolts, but not excluded."
            : $"{percent.Min():0.0} to {percent.Max():0.0} % of bolts, by how far the friction coefficients go together.";
    }

    private string Dominating()
    {
        IReadOnlyList<(string Name, double Weight)> influences = outlook.Influences;
        if (influences.Count == 0) return "Nothing scatters in this job.";
        IEnumerable<string> rest = influences.Skip(1).Select(influence => $"{influence.Name}, {influence.Weight * 100:0} %");
        double friction = influences.Where(influence => influence.Name.Contains("friction")).Sum(influence => influence.Weight);
        return $"Dominating input: {influences[0].Name}, {influences[0].Weight * 100:0} % of the variance"
            + (influences.Count > 1 ? $"; then {string.Join("; ", rest)}. Friction altogether, {friction * 100:0} %." : ".");
    }
}
