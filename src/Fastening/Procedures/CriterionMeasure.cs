namespace Fastening;

/// <summary>What a criterion looks at. The numbers are part of the contract: reasons are counted from them.</summary>
public enum CriterionMeasure
{
    /// <summary>The torque of the pull.</summary>
    Torque = 0,

    /// <summary>The rotation of all pulls of the step since the fastener was loosened, added up.</summary>
    Turn = 1,

    /// <summary>The rotation of this pull alone.</summary>
    Move = 2,

    /// <summary>The rotation of this pull, over the time it took.</summary>
    Rate = 3,

    /// <summary>Firm contact of the parts, by eye or by hand.</summary>
    Contact = 4,
}
