namespace Fastening;

/// <summary>The standard profile of a thread.</summary>
public enum ThreadProfile
{
    /// <summary>ISO 68-1 metric profile, 60°.</summary>
    IsoMetric = 0,

    /// <summary>ASME B1.1 unified profile, 60°, with the UNR reference root.</summary>
    Unified = 1,

    /// <summary>Given by its diameters and its load flank.</summary>
    Custom = 2,

    /// <summary>ISO metric trapezoidal profile (ISO 2901), 30° included, load flank 15°.</summary>
    IsoTrapezoidal = 3,

    /// <summary>General purpose Acme profile (ASME B1.5), 29° included, load flank 14.5°.</summary>
    Acme = 4,

    /// <summary>Square profile of the textbooks, load flank 0°.</summary>
    Square = 5,
}
