namespace Fastening.Quality;

/// <summary>How the values that an input may have are spread about its best value (JCGM 101:2008 §6.4).</summary>
public enum UncertaintyDistribution
{
    /// <summary>Normal.</summary>
    Normal = 0,

    /// <summary>Anything between two limits alike.</summary>
    Rectangular = 1,

    /// <summary>Between two limits, most often in the middle.</summary>
    Triangular = 2,

    /// <summary>Between two limits, most often at the ends: U-shaped, as a cycling temperature.</summary>
    Arcsine = 3,

    /// <summary>Between two limits, flat in the middle.</summary>
    Trapezoidal = 4,

    /// <summary>The mean of repeated readings: Student's t about it, u its scale.</summary>
    Readings = 5,

    /// <summary>The mean of readings taken together with those of other inputs.</summary>
    JointReadings = 6,

    /// <summary>Student's t about the best value; u is its scale, and its standard deviation is greater. So is a normal input drawn whose u has degrees of freedom.</summary>
    StudentByScale = 7,

    /// <summary>Student's t about the best value; u is its standard deviation.</summary>
    StudentByStandardDeviation = 8,
}
