using Fastening.Equations;

namespace Fastening;

/// <summary>Whether and how the force that strips a thread is reduced: not at all, for a tapped hole, or for a nut that widens.</summary>
internal sealed class StripReduction
{
    private readonly double? _nutWidth;

    private StripReduction(double? nutWidth) => _nutWidth = nutWidth;

    public static StripReduction None { get; } = new(null);

    public static StripReduction TappedHole { get; } = new(null);

    public static StripReduction Nut(double widthAcrossFlats) => new(widthAcrossFlats);

    /// <summary>C_1: the wall of a tapped hole does not widen.</summary>
    public double Dilation(Derivation? work, double diameter) =>
        _nutWidth is double width ? EngagementEquations.NutDilationFactorEquation.Step(work, width, diameter) : 1;
}
