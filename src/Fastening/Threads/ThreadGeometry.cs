using Fastening.Equations;

namespace Fastening;

/// <summary>What a thread computes of its nominal diameter, pitch and starts.</summary>
internal sealed class ThreadGeometry
{
    public required Term PitchDiameter { get; init; }

    public required Term RootDiameter { get; init; }

    /// <summary>Null for a custom profile, which does not determine it.</summary>
    public required Term? InternalMinorDiameter { get; init; }

    public required Term StressDiameter { get; init; }

    public required Term StressArea { get; init; }

    public required Term MinorArea { get; init; }

    public required Term Lead { get; init; }

    public required Term LeadAngle { get; init; }

    /// <summary>What follows from the diameters in the same way for every standard.</summary>
    public static ThreadGeometry Complete(
        Term pitch, Term starts, Term pitchDiameter, Term rootDiameter, Term? internalMinor, Term stressDiameter, Term minorArea)
    {
        Term lead = ThreadEquations.LeadEquation.Of(starts, pitch);
        return new ThreadGeometry
        {
            PitchDiameter = pitchDiameter,
            RootDiameter = rootDiameter,
            InternalMinorDiameter = internalMinor,
            StressDiameter = stressDiameter,
            StressArea = ThreadEquations.StressAreaEquation.Of(stressDiameter),
            MinorArea = minorArea,
            Lead = lead,
            LeadAngle = ThreadEquations.LeadAngleEquation.Of(lead, pitchDiameter),
        };
    }
}
