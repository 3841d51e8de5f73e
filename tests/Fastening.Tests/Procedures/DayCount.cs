namespace Fastening.Tests.Procedures;

/// <summary>What came of many days.</summary>
internal sealed class DayCount(DayKind kind)
{
    public int Days { get; set; }

    public int Conforming { get; set; }

    public int Incomplete { get; set; }

    public List<string> Complaints { get; } = [];

    public override string ToString() => $"{kind}: {Days} days, {Conforming} conform, {Incomplete} incomplete, {Complaints.Count} complaints";
}
