namespace Fastening;

/// <summary>Which order of fasteners and steps a job enforces.</summary>
public enum TighteningOrder
{
    /// <summary>None, but each fastener takes its own steps one after the other.</summary>
    Free = 0,

    /// <summary>Every fastener of a step is done or skipped before the next step begins; within a step, any order.</summary>
    StepByStep = 1,

    /// <summary>As <see cref="StepByStep"/>, and within a step the fasteners in the order of the step.</summary>
    InSequence = 2,
}
