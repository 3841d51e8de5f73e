namespace PumpCover;

/// <summary>Why a reading does not conform.</summary>
internal enum FindingKind
{
    Low,
    High,
    TooFast,
    UnderRotated,
    OverRotated,
    NotJudged,
}
