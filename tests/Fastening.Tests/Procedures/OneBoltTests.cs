namespace Fastening.Tests.Procedures;

/// <summary>All logs to four lines on one bolt, in every program; five by FASTENING_LINES (.ci/attack-jobs).</summary>
public class OneBoltTests(Xunit.Abstractions.ITestOutputHelper output)
{
    private static readonly int Lines = int.TryParse(Environment.GetEnvironmentVariable("FASTENING_LINES"), out int lines) ? lines : 4;

    public static TheoryData<string> Programs => [.. DayProgram.All.Select(program => program.Name)];

    [Theory]
    [MemberData(nameof(Programs))]
    public void No_log_conforms_with_a_bad_bolt_in_any_world(string name)
    {
        var world = new OneBoltWorld(DayProgram.All.Single(program => program.Name == name));
        world.Try(Lines);
        output.WriteLine($"{name}: {world.Logs} logs to {Lines} lines, {world.Conforming} conform, {world.Objections.Count} objections");
        Assert.True(world.Objections.Count == 0, $"{world.Objections.Count} objections\n{string.Join("\n\n", world.Objections.Take(3))}");
        Assert.True(world.Conforming > 0, "no log conforms");
    }
}
