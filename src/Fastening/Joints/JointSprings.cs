using Fastening.Equations;

namespace Fastening;

/// <summary>The resiliences of a joint and its load factor.</summary>
internal sealed class JointSprings(Term bolt, Term parts)
{
    public Term Bolt => bolt;

    public Term Parts => parts;

    public Term Total { get; } = JointEquations.ResilienceEquation.Of(bolt, parts);

    public Term LoadFactor { get; } = JointEquations.LoadFactorEquation.Of(bolt, parts);

    /// <summary>The share of an axial load that the bolt feels.</summary>
    /// <param name="introduction">The load introduction factor n.</param>
    public Term Share(Term introduction) => LoadShareEquations.WorkingLoadFactorEquation.Of(introduction, LoadFactor);
}
