using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The governing cross-section of a bolt under tension and torsion.</summary>
internal readonly record struct StressedSection(double Area, double Modulus)
{
    public static StressedSection Of(Derivation? work, ScrewThread thread, TorsionDistribution torsion, Length? waistDiameter)
    {
        if (torsion is < TorsionDistribution.Plastic or > TorsionDistribution.Elastic)
        {
            Guard.RefuseAgainst(nameof(torsion), (int)torsion, "Plastic or Elastic");
        }

        double diameter = thread.Geometry.StressDiameter;
        if (waistDiameter is Length waist)
        {
            diameter = StressEquations.SectionDiameterEquation.Step(work, diameter, Domains.Length.Check(waist, nameof(waistDiameter)));
        }

        return new StressedSection(
            StressEquations.SectionAreaEquation.Step(work, diameter),
            (torsion == TorsionDistribution.Plastic ? StressEquations.PlasticSectionModulusEquation : StressEquations.ElasticSectionModulusEquation)
                .Step(work, diameter));
    }
}
