namespace Fastening.Tests.Procedures;

/// <summary>
/// Random days on bolts that only obey physics. A job that conforms has bolts that are as the program wants them; good work conforms, whatever the transport of its lines
/// did, or shows what is missing and conforms once it came.
/// </summary>
public class PhysicalDayTests(Xunit.Abstractions.ITestOutputHelper output)
{
    /// <summary>Days of each kind, program and order; more by FASTENING_DAYS (20 000 by .ci/attack-jobs).</summary>
    private static readonly int Days = int.TryParse(Environment.GetEnvironmentVariable("FASTENING_DAYS"), out int days) ? days : 200;

    public static TheoryData<int> Kinds => [.. Enum.GetValues<DayKind>().Select(kind => (int)kind)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void No_conforming_day_has_a_bad_bolt_and_good_work_conforms(int kind)
    {
        DayCount count = DayCheck.Run((DayKind)kind, firstSeed: 0, Days);
        Assert.True(count.Complaints.Count == 0, $"{count}\n{string.Join("\n\n", count.Complaints.Take(2))}");
        Assert.True(count.Conforming * 20 > count.Days, $"too few days conform to say anything: {count}");
        output.WriteLine(count.ToString());
    }
}
