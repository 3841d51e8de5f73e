using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <content>What the joint loses of its preload, and the assembly preload that makes up for it.</content>
public sealed partial class Joint
{
    /// <summary>The preload lost by embedding (equation <c>joint.embedding-loss</c>); positive.</summary>
    /// <param name="embedding">How much the surfaces flatten.</param>
    /// <returns>The loss.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="embedding"/> is null.</exception>
    /// <example><code>Force loss = joint.EmbeddingLossOf(Embedding.Of(Length.FromMicrometers(11)));</code></example>
    public Force EmbeddingLossOf(Embedding embedding) => Si.Force(EmbeddingLossOf(null, SpringsOf(null), Guard.NotNull(embedding)));

    /// <summary>The work behind <see cref="EmbeddingLossOf(Embedding)"/>.</summary>
    /// <param name="embedding">How much the surfaces flatten.</param>
    /// <returns>The steps; the last is the loss.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="embedding"/> is null.</exception>
    /// <example><code>Console.WriteLine(joint.DeriveEmbeddingLossOf(Embedding.Of(Length.FromMicrometers(11))));</code></example>
    public Derivation DeriveEmbeddingLossOf(Embedding embedding)
    {
        Guard.NotNull(embedding);
        var work = new Derivation("Preload lost by embedding");
        EmbeddingLossOf(work, SpringsOf(work), embedding);
        return work.KeepWhatCounts();
    }

    /// <summary>
    /// The preload lost by a change of temperature (equation <c>joint.thermal-loss</c>): positive when the bolt grows more than the parts, or
    /// softens; negative when preload is gained.
    /// </summary>
    /// <param name="preload">Preload before the change, embedding taken off.</param>
    /// <param name="temperatures">The rises since assembly.</param>
    /// <returns>The loss. It may exceed the preload: then nothing is left.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="temperatures"/> is null.</exception>
    /// <exception cref="ArgumentException">A thermal expansion is unknown, or bolt, layers and temperatures do not match.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="preload"/> is outside its domain.</exception>
    /// <example><code>Force loss = joint.ThermalLossAt(preload, new JointTemperatures(TemperatureDelta.FromKelvins(60), TemperatureDelta.FromKelvins(80)));</code></example>
    public Force ThermalLossAt(Force preload, JointTemperatures temperatures) =>
        Si.Force(ThermalLossOf(null, Domains.Force.Check(preload), SpringsOf(null), WarmingOf(null, SpringsOf(null), Guard.NotNull(temperatures))));

    /// <summary>The work behind <see cref="ThermalLossAt"/>.</summary>
    /// <param name="preload">Preload before the change, embedding taken off.</param>
    /// <param name="temperatures">The rises since assembly.</param>
    /// <returns>The steps; the last is the loss.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="temperatures"/> is null.</exception>
    /// <exception cref="ArgumentException">A thermal expansion is unknown, or bolt, layers and temperatures do not match.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="preload"/> is outside its domain.</exception>
    /// <example><code>Console.WriteLine(joint.DeriveThermalLossAt(preload, new JointTemperatures(TemperatureDelta.FromKelvins(60), TemperatureDelta.FromKelvins(80))));</code></example>
    public Derivation DeriveThermalLossAt(Force preload, JointTemperatures temperatures)
    {
        double force = Domains.Force.Check(preload);
        Guard.NotNull(temperatures);
        var work = new Derivation("Preload lost by heat");
        JointSprings springs = SpringsOf(work);
        ThermalLossOf(work, force, springs, WarmingOf(work, springs, temperatures));
        return work.KeepWhatCounts();
    }

    /// <summary>
    /// The least assembly preload that a duty requires (equation <c>joint.least-assembly-preload</c>, VDI 2230 R5): clamp force required by tightness
    /// and against slip, share of the axial load, embedding and thermal loss. A thermal gain is not counted on.
    /// </summary>
    /// <remarks>At the end of the load introduction that needs most. Where no clamp is required, it is the preload that just keeps the joint closed.</remarks>
    /// <param name="duty">The service conditions.</param>
    /// <returns>The preload.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="duty"/> is null.</exception>
    /// <exception cref="ArgumentException">A thermal expansion is unknown, or bolt, layers and temperatures do not match.</exception>
    /// <example><code>Force least = joint.LeastAssemblyPreloadFor(duty);</code></example>
    public Force LeastAssemblyPreloadFor(JointDuty duty)
    {
        JointSprings springs = SpringsOf(null);
        JointWarming? warming = WarmingOf(Guard.NotNull(duty));
        return Si.Force(LeastAssemblyPreloadOf(null, springs, duty, warming, MostAskingFactor(duty)));
    }

    /// <summary>The greatest assembly preload when the least is to be reached with a scatter (equation <c>joint.greatest-assembly-preload</c>, VDI 2230 R6).</summary>
    /// <param name="duty">The service conditions.</param>
    /// <param name="scatter">Scatter of the tightening, α_A.</param>
    /// <returns>α_A times the least assembly preload; to be compared with the permitted one.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A thermal expansion is unknown, or bolt, layers and temperatures do not match.</exception>
    /// <example><code>bool tight = joint.GreatestAssemblyPreloadFor(duty, PreloadScatter.FromTighteningFactor(1.6)) &lt;= permitted;</code></example>
    public Force GreatestAssemblyPreloadFor(JointDuty duty, PreloadScatter scatter) => Si.Force(PreloadLossEquations.GreatestAssemblyPreload(
        Guard.NotNull(scatter).TighteningFactor, Si.Of(LeastAssemblyPreloadFor(duty))));

    /// <summary>The work behind <see cref="LeastAssemblyPreloadFor"/>.</summary>
    /// <param name="duty">The service conditions.</param>
    /// <returns>The steps; the last is the preload.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="duty"/> is null.</exception>
    /// <exception cref="ArgumentException">A thermal expansion is unknown, or bolt, layers and temperatures do not match.</exception>
    /// <example><code>Console.WriteLine(joint.DeriveLeastAssemblyPreloadFor(duty));</code></example>
    public Derivation DeriveLeastAssemblyPreloadFor(JointDuty duty)
    {
        var work = new Derivation("Least assembly preload");
        DeriveLeast(work, Guard.NotNull(duty));
        return work.KeepWhatCounts();
    }

    /// <summary>The work behind <see cref="GreatestAssemblyPreloadFor"/>.</summary>
    /// <param name="duty">The service conditions.</param>
    /// <param name="scatter">Scatter of the tightening, α_A.</param>
    /// <returns>The steps; the last is the preload.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A thermal expansion is unknown, or bolt, layers and temperatures do not match.</exception>
    /// <example><code>Console.WriteLine(joint.DeriveGreatestAssemblyPreloadFor(duty, PreloadScatter.FromTighteningFactor(1.6)));</code></example>
    public Derivation DeriveGreatestAssemblyPreloadFor(JointDuty duty, PreloadScatter scatter)
    {
        Guard.NotNull(duty);
        double factor = Guard.NotNull(scatter).TighteningFactor;
        var work = new Derivation("Greatest assembly preload");
        PreloadLossEquations.GreatestAssemblyPreloadEquation.Step(work, factor, DeriveLeast(work, duty));
        return work.KeepWhatCounts();
    }

    internal static double EmbeddingLossOf(Derivation? work, in JointSprings springs, Embedding embedding) =>
        PreloadLossEquations.EmbeddingLossEquation.Step(work, embedding.Derive(work), springs.Total);

    internal static double ThermalLossOf(Derivation? work, double preload, in JointSprings springs, in JointWarming warming) =>
        PreloadLossEquations.ThermalLossEquation.Step(work, preload, springs.Total, warming.Resilience, warming.BoltGrowth, warming.PartsGrowth);

    internal static double LeastAssemblyPreloadOf(Derivation? work, in JointSprings springs, JointDuty duty, JointWarming? warming, double factor)
    {
        double share = LoadShareEquations.WorkingLoadFactorEquation.Step(work, factor, springs.LoadFactor);
        double keep = PreloadLossEquations.PreloadToKeepEquation.Step(work, duty.ClampRequired(work), share, duty.AxialHigh);
        double thermal = warming is JointWarming warm
            ? PreloadLossEquations.ThermalLossBehindEquation.Step(work, keep, springs.Total, warm.Resilience, warm.BoltGrowth, warm.PartsGrowth)
            : 0;
        return PreloadLossEquations.LeastAssemblyPreloadEquation.Step(work, keep, EmbeddingLossOf(work, springs, duty.Embedding), thermal);
    }

    internal JointWarming? WarmingOf(JointDuty duty) => duty.Temperatures is JointTemperatures rises ? WarmingOf(null, SpringsOf(null), rises) : null;

    internal JointWarming WarmingOf(Derivation? work, in JointSprings springs, JointTemperatures temperatures) =>
        JointWarming.Of(work, springs, this, temperatures);

    /// <summary>The end of the load introduction that needs the most preload: the parts are relieved most by a pulling load at low n.</summary>
    private static double MostAskingFactor(JointDuty duty) => duty.AxialHigh >= 0 ? duty.Introduction.Low : duty.Introduction.High;

    private double DeriveLeast(Derivation work, JointDuty duty)
    {
        JointSprings springs = SpringsOf(work);
        JointWarming? warming = duty.Temperatures is JointTemperatures rises ? WarmingOf(work, springs, rises) : null;
        return LeastAssemblyPreloadOf(work, springs, duty, warming, MostAskingFactor(duty));
    }
}
