using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The cross-section of a piece of a bolt. For twist every one counts as round.</summary>
internal abstract class SectionShape
{
    /// <summary>Diameter of the round section of the same area.</summary>
    /// <param name="owner">The section, for the names of what was stated.</param>
    public abstract Term Diameter(string owner);

    public virtual Term Area(string owner) => BoltComplianceEquations.SectionAreaEquation.Of(Diameter(owner));

    internal sealed class Round(Stated<Length> diameter) : SectionShape
    {
        public override Term Diameter(string owner) => diameter.TermOf(owner);
    }

    internal sealed class OfArea(Stated<Area> area) : SectionShape
    {
        public override Term Area(string owner) => area.TermOf(owner);

        public override Term Diameter(string owner) => BoltComplianceEquations.RoundDiameterEquation.Of(Area(owner));
    }

    /// <summary>A shank of the nominal diameter.</summary>
    internal sealed class Nominal(ScrewThread thread) : SectionShape
    {
        public override Term Diameter(string owner) => thread.DiameterTerm;
    }

    /// <summary>Free thread as VDI 2230 counts it.</summary>
    internal sealed class Root(ScrewThread thread) : SectionShape
    {
        public override Term Diameter(string owner) => thread.Geometry.RootDiameter;
    }

    /// <summary>Free thread on the exact stress area.</summary>
    internal sealed class Stress(ScrewThread thread) : SectionShape
    {
        public override Term Diameter(string owner) => thread.Geometry.StressDiameter;
    }

    /// <summary>Free thread on the stress area as a table prints it.</summary>
    internal sealed class Tabulated(ScrewThread thread, StressAreaBasis basis) : SectionShape
    {
        public override Term Area(string owner) => StressAreas.Of(thread, basis);

        public override Term Diameter(string owner) => BoltComplianceEquations.RoundDiameterEquation.Of(Area(owner));
    }

    /// <summary>The same, counted by the round section that has this area.</summary>
    internal sealed class TabulatedRound(ScrewThread thread, StressAreaBasis basis) : SectionShape
    {
        public override Term Diameter(string owner) => BoltComplianceEquations.RoundDiameterEquation.Of(StressAreas.Of(thread, basis));
    }
}
