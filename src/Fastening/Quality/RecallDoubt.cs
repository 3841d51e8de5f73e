namespace Fastening.Quality;

/// <summary>Why a reading that is judged again is undecidable.</summary>
public enum RecallDoubt
{
    /// <summary>It lies outside the points of the calibration, where nothing is known.</summary>
    OutsidePoints = 0,

    /// <summary>A delivered torque is too near a limit for the uncertainty of the calibration and the rule.</summary>
    NearLimit = 1,

    /// <summary>By the readings of the calibration it may have conformed or not.</summary>
    ExtremesDisagree = 2,

    /// <summary>It would conform, and the calibration is not complete enough to clear it.</summary>
    CalibrationIncomplete = 3,
}
