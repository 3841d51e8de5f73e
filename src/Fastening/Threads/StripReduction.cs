using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Whether and how the force that strips a thread is reduced: not at all, for a tapped hole, or for a nut that widens.</summary>
internal sealed class StripReduction
{
    private readonly Stated<Length>? _nutWidth;

    private StripReduction(Stated<Length>? nutWidth, Stated<Length>? threadLength)
    {
        _nutWidth = nutWidth;
        ThreadLength = threadLength;
    }

    public static StripReduction None { get; } = new(null, null);

    /// <summary>Length of thread that nut or hole has; null where neither is stated.</summary>
    public Stated<Length>? ThreadLength { get; }

    public static StripReduction TappedHole(Stated<Length> threadDepth) => new(null, threadDepth);

    public static StripReduction Nut(Stated<Length> widthAcrossFlats, Stated<Length> height) => new(widthAcrossFlats, height);

    /// <summary>C_1: the wall of a tapped hole does not widen.</summary>
    public Term Dilation(Term diameter) => _nutWidth is Stated<Length> width
        ? EngagementEquations.NutDilationFactorEquation.Of(width.Term, diameter)
        : Term.Given(1, "dilation factor of a tapped hole, which does not widen");
}
