using Fastening.Equations;

namespace Fastening;

/// <summary>What a length of engaged thread computes of its limits of size.</summary>
internal sealed class EngagementAreas(Term external, Term @internal)
{
    public Term External { get; } = external;

    public Term Internal { get; } = @internal;

    public static EngagementAreas Of(ThreadLimits limits, Term length)
    {
        Term pitch = limits.Thread.PitchTerm;
        Term externalThickness = EngagementEquations.ExternalThicknessEquation.Of(pitch, limits.ExternalPitch, limits.InternalMinor);
        Term internalThickness = EngagementEquations.InternalThicknessEquation.Of(pitch, limits.ExternalMajor, limits.InternalPitch);
        return new EngagementAreas(
            EngagementEquations.ExternalShearAreaEquation.Of(limits.InternalMinor, length, pitch, externalThickness),
            EngagementEquations.InternalShearAreaEquation.Of(limits.ExternalMajor, length, pitch, internalThickness));
    }
}
