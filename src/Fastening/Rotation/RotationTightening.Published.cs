using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <content>Published rotations held against the joint.</content>
public sealed partial class RotationTightening
{
    private const double LeastModulusOfSteel = 190e9;

    /// <summary>A published rotation held against this joint, at the friction of the model.</summary>
    /// <remarks>
    /// It counts from the snug torque of this tightening. For EN 1090-2 it begins at the first step, 0.75 M_r: give that as the snug torque, or what
    /// it does is calculated too low. Friction is not known to a number: where a range of it is known, the overload with a range looks at both ends.
    /// </remarks>
    /// <param name="published">The published rotation; it counts at the fastener, whatever the tool.</param>
    /// <param name="requiredPreload">The preload that the joint is to have.</param>
    /// <returns>What the published rotation does here, and what rotation the joint needs.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="published"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="requiredPreload"/> is negative or beyond its domain.</exception>
    /// <example><code>Console.WriteLine(tightening.Compare(PublishedRotation.En1090Part2(grip, diameter), Force.FromKilonewtons(172)));   // snug torque: the first step</code></example>
    public RotationComparison Compare(PublishedRotation published, Force requiredPreload) =>
        Compare(published, requiredPreload, At(StiffnessCorner.Softest), At(StiffnessCorner.Stiffest));

    /// <summary>A published rotation held against this joint over a range of friction.</summary>
    /// <remarks>
    /// It counts from the snug torque, as without a range. Least preload and the rotation needed are those of the highest friction, greatest preload
    /// that of the lowest; what the published rotation itself does is calculated at the friction of the model.
    /// </remarks>
    /// <param name="published">The published rotation; it counts at the fastener, whatever the tool.</param>
    /// <param name="requiredPreload">The preload that the joint is to have.</param>
    /// <param name="friction">The range of friction.</param>
    /// <returns>What the published rotation does here, and what rotation the joint needs.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="requiredPreload"/> is negative or beyond its domain.</exception>
    /// <exception cref="ArgumentException">At the highest friction no torque turns the thread (exact form), or the lowest reaches the elastic limit by snugging alone.</exception>
    /// <exception cref="InvalidOperationException">The model has a nut factor only.</exception>
    /// <example><code>if (tightening.Compare(published, required, range).MayPassElasticLimit) Console.WriteLine("some bolts yield");</code></example>
    public RotationComparison Compare(PublishedRotation published, Force requiredPreload, FrictionRange friction)
    {
        FrictionTorqueModel model = FrictionModel("its spread over a range of friction");
        Guard.NotNull(friction);
        return Compare(
            published, requiredPreload, Corner(model.WithFriction(friction.High), _snugTorque, StiffnessCorner.Softest, nameof(friction)),
            Corner(model.WithFriction(friction.Low), _snugTorque, StiffnessCorner.Stiffest, nameof(friction)));
    }

    private RotationComparison Compare(PublishedRotation published, Force requiredPreload, RotationTightening least, RotationTightening greatest)
    {
        double required = Domains.Force.Check(requiredPreload);
        Guard.NotNull(published);
        bool steel = Joint.Parts.Layers.Count > 0 && Joint.Parts.Layers.All(layer => layer.Modulus >= LeastModulusOfSteel);
        return new RotationComparison(
            steel, published, required, least.RotationNeededFor(required), least.AtFastenerBy(published.Window?.Lower ?? published.Rotation),
            AtFastenerBy(published.Rotation), greatest.AtFastenerBy(published.Window?.Upper ?? published.Rotation));
    }

    private double? RotationNeededFor(double required) => Tolerance.Exceeds(required, _limit.Value) ? null
        : Math.Max(0, RotationTighteningEquations.RotationForGain(RotationTighteningEquations.GainBeyondSnug(required, _snug), Line.AtFastener.Value));

    private PreloadAfterRotation AtFastenerBy(Angle rotation)
    {
        RotationLine line = Line;
        var turn = new Stated<Angle>(rotation, Si.Of(rotation), "published rotation");
        Term gain = RotationTighteningEquations.PreloadGainEquation.Of(turn.Term, line.AtFastener);
        return new PreloadAfterRotation(turn.Value, line.Snug, gain, _limit.Term, line.AtFastener.Value - line.Stretch.Value, 0);
    }
}
