namespace Fastening.Quality;

/// <summary>What kept a tool from complying, or its calibration from deciding.</summary>
public enum CalibrationReasonKind
{
    /// <summary>Readings deviate by more than is permitted: the tool does not comply.</summary>
    ReadingOutside = 0,

    /// <summary>Readings lie so near the limit that their uncertainty leaves it open.</summary>
    ReadingNearLimit = 1,

    /// <summary>The class takes a point where there is none.</summary>
    PointMissing = 2,

    /// <summary>A point has fewer readings than the class takes.</summary>
    ReadingsMissing = 3,

    /// <summary>The tool has a scale or display, and its resolution was not stated.</summary>
    ResolutionMissing = 4,

    /// <summary>The reference device is too uncertain for what is permitted.</summary>
    ReferenceTooUncertain = 5,
}
