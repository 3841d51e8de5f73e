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
    public Force EmbeddingLossOf(Embedding embedding) => Si.Force(EmbeddingLossTerm(Guard.NotNull(embedding)));

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
    public Force ThermalLossAt(Force preload, JointTemperatures temperatures)
    {
        Term force = Domains.Force.Argument(preload);
        return Si.Force(JointWarming.Of(this, Guard.NotNull(temperatures)).LossAt(force, Springs));
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
    public Force LeastAssemblyPreloadFor(JointDuty duty) => Si.Force(LeastAssemblyPreload(Guard.NotNull(duty)));

    /// <summary>The greatest assembly preload when the least is to be reached with a scatter (equation <c>joint.greatest-assembly-preload</c>, VDI 2230 R6).</summary>
    /// <param name="duty">The service conditions.</param>
    /// <param name="scatter">Scatter of the tightening, α_A.</param>
    /// <returns>α_A times the least assembly preload; to be compared with the permitted one.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A thermal expansion is unknown, or bolt, layers and temperatures do not match.</exception>
    /// <example><code>bool tight = joint.GreatestAssemblyPreloadFor(duty, PreloadScatter.FromTighteningFactor(1.6)) &lt;= permitted;</code></example>
    public Force GreatestAssemblyPreloadFor(JointDuty duty, PreloadScatter scatter) => Si.Force(PreloadLossEquations.GreatestAssemblyPreloadEquation.Of(
        Guard.NotNull(scatter).FactorTerm, LeastAssemblyPreload(duty)));

    internal Term EmbeddingLossTerm(Embedding embedding) => PreloadLossEquations.EmbeddingLossEquation.Of(embedding.TotalTerm, Springs.Total);

    /// <summary>Null at the temperatures of assembly.</summary>
    internal JointWarming? WarmingOf(JointDuty duty) => duty.Temperatures is JointTemperatures rises ? JointWarming.Of(this, rises) : null;

    internal Term LeastAssemblyPreload(JointDuty duty, JointWarming? warming, Term introduction)
    {
        Term keep = PreloadLossEquations.PreloadToKeepEquation.Of(duty.ClampRequired, Springs.Share(introduction), duty.AxialHigh);
        Term thermal = warming is JointWarming warm ? warm.LossBehind(keep, Springs) : Term.Given(0, "thermal loss at the temperature of assembly");
        return PreloadLossEquations.LeastAssemblyPreloadEquation.Of(keep, EmbeddingLossTerm(duty.Embedding), thermal);
    }

    /// <summary>At the end of the load introduction that asks for the most preload: the parts are relieved most by a pulling load at low n.</summary>
    private Term LeastAssemblyPreload(JointDuty duty)
    {
        LoadIntroduction introduction = Guard.NotNull(duty).Introduction;
        return LeastAssemblyPreload(duty, WarmingOf(duty), duty.AxialHigh.Value >= 0 ? introduction.LowTerm : introduction.HighTerm);
    }
}
