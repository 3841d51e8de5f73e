namespace Fastening;

/// <summary>How many of the faces under head and nut are sloped 1:20 to the bolt axis without a bevelled washer (RCSC nut rotation table).</summary>
public enum SlopedFaces
{
    /// <summary>Both faces square to the bolt axis.</summary>
    None = 0,

    /// <summary>One face square, the other sloped not more than 1:20.</summary>
    One = 1,

    /// <summary>Both faces sloped not more than 1:20.</summary>
    Both = 2,
}
