namespace Fastening.Quality;

/// <summary>Whether a calibration was made before or after the tool was adjusted.</summary>
public enum CalibrationState
{
    /// <summary>As the tool came from use: what it did to the fasteners since its last calibration.</summary>
    AsFound = 0,

    /// <summary>After adjustment or repair: what it will do from now on. It says nothing about the fasteners tightened before.</summary>
    AsLeft = 1,
}
