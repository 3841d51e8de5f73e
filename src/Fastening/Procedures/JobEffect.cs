namespace Fastening;

/// <summary>What a reason does to the work. Each lasts until its own cure.</summary>
[Flags]
public enum JobEffect
{
    /// <summary>Nothing to say.</summary>
    None = 0,

    /// <summary>It is kept in the record.</summary>
    Remark = 1,

    /// <summary>The reading does not count. Cure: another reading.</summary>
    Reject = 2,

    /// <summary>No reading of the fastener counts. Cure: loosened, or replaced.</summary>
    Loosen = 4,

    /// <summary>The fastener cannot conform before a person has decided. Cure: accepted by name, or replaced.</summary>
    LookAt = 8,
}
