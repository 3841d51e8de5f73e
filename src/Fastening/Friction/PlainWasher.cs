namespace Fastening;

/// <summary>A plain washer under the turned head or nut.</summary>
public enum PlainWasher
{
    /// <summary>ISO 7089:2000, normal series.</summary>
    Iso7089 = 0,

    /// <summary>ISO 7090:2000, normal series, chamfered; M5 and above.</summary>
    Iso7090 = 1,

    /// <summary>ISO 7092:2000, small series; to M36.</summary>
    Iso7092 = 2,
}
