using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Lowest and highest preload after a snug torque and a rotation, as the tool leaves the fastener.</summary>
/// <remarks>Not counted: embedding, relaxation, adjacent bolts tightened later, faces that are not in full contact.</remarks>
/// <example><code>PreloadRangeAfterRotation range = tightening.PreloadRangeAt(Angle.FromDegrees(60), friction);
/// Console.WriteLine(range);      // 130.89 … 138.496 kN, elastic, stiffness as calculated, before embedding, relaxation and the tightening of adjacent bolts</code></example>
public sealed class PreloadRangeAfterRotation
{
    internal PreloadRangeAfterRotation(PreloadAfterRotation low, PreloadAfterRotation high, Ratio? stiffnessError)
    {
        StiffnessError = stiffnessError;
        Low = low;
        High = high;
        Range = new Range<Force>((Si.Force(Math.Min(low.PreloadSi, low.LimitSi)), Si.Force(high.PreloadSi)));
        SnugRange = new Range<Force>((Si.Force(low.SnugSi), Si.Force(high.SnugSi)));
    }

    /// <summary>The corner of the lowest preload: highest friction.</summary>
    public PreloadAfterRotation Low { get; }

    /// <summary>The corner of the highest preload: lowest friction.</summary>
    public PreloadAfterRotation High { get; }

    /// <summary>From the lowest preload to the highest, and their ratio.</summary>
    /// <remarks>
    /// The highest is that of the elastic line even beyond the elastic limit, which errs to the safe side for the bolt. The lowest is at most the
    /// elastic limit: beyond it the elastic line gives a clamp force that is not reached.
    /// </remarks>
    public Range<Force> Range { get; }

    /// <summary>Lowest and highest preload after snugging alone.</summary>
    public Range<Force> SnugRange { get; }

    /// <summary>The limit of error of δ_S + δ_P that the range counts; null when none was stated: the range then takes the stiffness as calculated.</summary>
    public Ratio? StiffnessError { get; }

    /// <summary>Whether even the highest preload is within the elastic limit.</summary>
    public bool IsElastic => High.IsElastic;

    /// <inheritdoc />
    public override string ToString() =>
        $"{Range}, {(IsElastic ? "elastic" : "the highest is above the elastic limit: the joint yields first")}, {StiffnessText}, before embedding, relaxation and the tightening of adjacent bolts";

    private string StiffnessText => StiffnessError is Ratio error
        ? Print.Text($"stiffness of the joint ±{error:0.###}")
        : "stiffness as calculated";
}
