namespace Fastening;

/// <summary>How the compliance of a bolt was found. The first two are never mixed, in one bolt or in one joint.</summary>
public enum BoltComplianceMethod
{
    /// <summary>VDI 2230-1:2015 §5.1.1 (from memory): the sections of the grip, and substitution lengths for head, engaged thread and nut or tapped part.</summary>
    Vdi2230 = 0,

    /// <summary>Shank and thread in the grip, neither head nor nut: Shigley 9th ed. (2011) eq. (8-17).</summary>
    Textbook = 1,

    /// <summary>The sections as they were given, and nothing else.</summary>
    SectionsOnly = 2,

    /// <summary>A stiffness as stated, from a test or from finite elements.</summary>
    Stated = 3,
}
