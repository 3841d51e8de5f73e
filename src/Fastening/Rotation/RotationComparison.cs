using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>A published rotation held against a joint whose stiffness is known.</summary>
/// <remarks>
/// Published rotations are chosen to carry the bolt past yield, so that its preload depends on its strength and no longer on the joint. That
/// suits structural bolts, which are made for it; on other joints it means a stretched bolt. All counts from the snug torque of the tightening, at
/// the friction of its model; where a range of friction was given, least and greatest are those of the range.
/// </remarks>
/// <example><code>RotationComparison comparison = tightening.Compare(PublishedRotation.En1090Part2(grip, diameter), Force.FromKilonewtons(172));
/// if (comparison.CarriesPastElasticLimit) Console.WriteLine(comparison);</code></example>
public sealed class RotationComparison
{
    private readonly double _required;

    internal RotationComparison(
        bool hasSteelGrip, PublishedRotation published, double required, double? needed,
        PreloadAfterRotation atLeast, PreloadAfterRotation atPublished, PreloadAfterRotation atMost)
    {
        HasSteelGrip = hasSteelGrip;
        Published = published;
        _required = required;
        RotationNeeded = needed is double radians ? Si.AngleFromRadians(radians) : null;
        AtLeast = atLeast;
        AtPublished = atPublished;
        AtMost = atMost;
    }

    /// <summary>The published rotation.</summary>
    public PublishedRotation Published { get; }

    /// <summary>Whether everything in the grip is as stiff as steel (Young's modulus of at least 190 GPa); if not, the published rotation is not for this joint.</summary>
    public bool HasSteelGrip { get; }

    /// <summary>The preload that the joint is to have.</summary>
    public Force RequiredPreload => Si.Force(_required);

    /// <summary>The rotation past snug that gives it on this joint, at the highest friction of a range; 0 when snugging does; null when it lies beyond the elastic limit.</summary>
    public Angle? RotationNeeded { get; }

    /// <summary>The joint at the least rotation of the tolerance and the highest friction; at the rotation itself where no tolerance is stated.</summary>
    public PreloadAfterRotation AtLeast { get; }

    /// <summary>The joint at the published rotation and the friction of the model.</summary>
    public PreloadAfterRotation AtPublished { get; }

    /// <summary>The joint at the greatest rotation of the tolerance and the lowest friction; at the rotation itself where no tolerance is stated.</summary>
    public PreloadAfterRotation AtMost { get; }

    /// <summary>Whether the published rotation carries the joint past its elastic limit, at the friction of the model.</summary>
    public bool CarriesPastElasticLimit => !AtPublished.IsElastic;

    /// <summary>Whether some joint may be carried past its elastic limit: at the greatest rotation of the tolerance and the lowest friction.</summary>
    public bool MayPassElasticLimit => CarriesPastElasticLimit || !AtMost.IsElastic;

    /// <summary>Whether the required preload is reached even at the least rotation of the tolerance and the highest friction, or the joint yields above it.</summary>
    public bool ReachesRequired => Tolerance.IsAtLeast(AtLeast.IsElastic ? AtLeast.PreloadSi : AtLeast.LimitSi, _required);

    /// <inheritdoc />
    public override string ToString()
    {
        string does = CarriesPastElasticLimit
            ? Print.Text($"carries the joint past its elastic limit of {AtPublished.ElasticLimit:0.0} (the elastic line would give {AtPublished.Preload:0.0})")
            : Print.Text($"gives {AtPublished.Preload:0.0}, within the elastic limit of {AtPublished.ElasticLimit:0.0}");
        string may = MayPassElasticLimit && !CarriesPastElasticLimit ? ", which the greatest turn at the lowest friction passes" : "";
        string needs = RotationNeeded is Angle needed
            ? Print.Text($"this joint needs {needed:0.#} for {Si.Force(_required):0.0}")
            : Print.Text($"{Si.Force(_required):0.0} lie beyond the elastic limit of this joint");
        string grip = HasSteelGrip ? "" : "; it is published for steel grips, and this one is not";
        return Print.Text($"the published {Published.Degrees:0.#}° ({Published.Table}) {does}{may}; {needs}{grip}");
    }
}
