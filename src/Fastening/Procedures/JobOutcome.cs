namespace Fastening;

/// <summary>What a job said of an entry.</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="Reasons">Every reason.</param>
/// <param name="Step">The step, or −1.</param>
/// <param name="Fastener">The fastener that it concerns, or −1.</param>
internal readonly record struct JobOutcome(JobVerdict Verdict, ReasonSet Reasons, int Step = -1, int Fastener = -1);
