namespace Fastening.Tests.Procedures;

/// <summary>Every named case, and every simpler rule that one of them catches.</summary>
public class JobCaseTests
{
    public static TheoryData<string> Names => [.. JobCases.All.Select(one => one.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_case_is_decided_as_the_trade_would(string name) => Assert.Null(JobCases.All.Single(one => one.Name == name).Complaint());
}
