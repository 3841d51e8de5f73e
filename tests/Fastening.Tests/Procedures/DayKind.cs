namespace Fastening.Tests.Procedures;

/// <summary>The random days: good work with faults of transport, and bad work of each sort.</summary>
internal enum DayKind
{
    Good,
    GoodRepeated,
    GoodLate,
    GoodLost,
    BadPulls,
    BadData,
    BadLines,
    BadDecisions,
    BadClocks,
    BadAll,
}
