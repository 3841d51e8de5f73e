using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The governing cross-section of a bolt under tension and torsion.</summary>
internal readonly struct StressedSection
{
    private StressedSection(Term area, Term modulus)
    {
        Area = area;
        Modulus = modulus;
    }

    public Term Area { get; }

    public Term Modulus { get; }

    public static StressedSection Of(ScrewThread thread, TorsionDistribution torsion, Length? waistDiameter)
    {
        if (torsion is < TorsionDistribution.Plastic or > TorsionDistribution.Elastic)
        {
            Guard.RefuseAgainst(nameof(torsion), (int)torsion, "Plastic or Elastic");
        }

        Term diameter = thread.Geometry.StressDiameter;
        if (waistDiameter is Length waist)
        {
            diameter = StressEquations.SectionDiameterEquation.Of(diameter, Domains.Length.Argument(waist, nameof(waistDiameter)));
        }

        return new StressedSection(
            StressEquations.SectionAreaEquation.Of(diameter),
            (torsion == TorsionDistribution.Plastic ? StressEquations.PlasticSectionModulusEquation : StressEquations.ElasticSectionModulusEquation)
                .Of(diameter));
    }

    /// <summary>The preload at which the equivalent stress while tightening reaches a share of the yield strength.</summary>
    public Term PermittedPreload(FrictionTorqueModel model, BoltStrength strength, Ratio utilisation)
    {
        Term share = Domains.Utilisation.Argument(utilisation);
        Term yield = Guard.NotNull(strength).RequireFor(model.Thread, nameof(strength)).YieldTerm;
        Term limit = StressEquations.PermittedStressEquation.Of(share, yield);
        Term prevailing = StressEquations.PrevailingStressEquation.Of(model.PrevailingTerm, Modulus);
        if (prevailing.Value >= limit.Value)
        {
            throw new ArgumentException(
                Print.Text($"the prevailing torque, {Si.Torque(model.Prevailing):G6}, alone uses up the permitted stress of {Si.Pressure(limit.Value):G6}."),
                nameof(model));
        }

        return StressEquations.PermittedPreloadEquation.Of(
            limit,
            StressEquations.TensionPerPreloadEquation.Of(Area),
            StressEquations.TorsionPerPreloadEquation.Of(model.Arms.InShank, Modulus),
            prevailing);
    }
}
