using Fastening;

namespace PumpCover;

/// <summary>The ring on which the head turns, and where its diameters come from.</summary>
internal sealed record HeadRing(BearingSurface Surface, string Origin)
{
    private const double LargestOfGradeA = 24, LongestOfGradeA = 150;

    public static HeadRing OfHexagonHead(ScrewThread thread)
    {
        double diameter = thread.NominalDiameter.Millimeters;
        string grade = diameter > LargestOfGradeA
            ? "product grade B"
            : $"product grade A, that is a bolt up to {Show.Stated(Math.Min(LongestOfGradeA, 10 * diameter))} mm long. A longer one is of grade B: "
                + "its ring is smaller and its preload at the same torque a little higher; state its ring in the job (kind \"annulus\")";
        return new(BearingSurface.ForHexagonHead(thread), $"hexagon head of ISO 4014/4017 on a medium hole of ISO 273; {grade}");
    }
}
