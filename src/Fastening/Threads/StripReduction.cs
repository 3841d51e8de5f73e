using Fastening.Equations;

namespace Fastening;

/// <summary>Whether and how the force that strips a thread is reduced: not at all, for a tapped hole, or for a nut that widens.</summary>
internal sealed class StripReduction
{
    private readonly double? _nutWidth;

    private StripReduction(double? nutWidth, double? threadLength)
    {
        _nutWidth = nutWidth;
        ThreadLength = threadLength;
    }

    public static StripReduction None { get; } = new(null, null);

    /// <summary>Length of thread that nut or hole has; null where neither is stated.</summary>
    public double? ThreadLength { get; }

    public static StripReduction TappedHole(double threadDepth) => new(null, threadDepth);

    public static StripReduction Nut(double widthAcrossFlats, double height) => new(widthAcrossFlats, height);

    /// <summary>C_1: the wall of a tapped hole does not widen.</summary>
    public double Dilation(Derivation? work, double diameter) =>
        _nutWidth is double width ? EngagementEquations.NutDilationFactorEquation.Step(work, width, diameter) : 1;
}
