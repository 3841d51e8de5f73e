using Fastening;
using UnitsNet;

namespace TwoDayJob;

/// <summary>The log taken through a run as the lines came in: every update, the progress at the end of each day, and the proof by a replay.</summary>
internal sealed record RunJob(IReadOnlyList<JobUpdate> Updates, IReadOnlyList<(DateOnly Day, JobProgress Progress)> EndsOfDays, JobProgress Replayed)
{
    /// <summary>The clocks of wrenches and office were compared on both mornings: within half a minute. The first numbers are those on the job card.</summary>
    private static readonly JobOptions Options = JobOptions.Default.WithClockTolerance(Duration.FromSeconds(30))
        .WithSources(JobSource.Counting("TW-07", first: 411), JobSource.Counting("TW-12", first: 96), JobSource.Counting("form", first: 1), JobSource.Counting("office", first: 1));

    public static RunJob Through(TighteningProgram program, IReadOnlyList<JobEntry> log)
    {
        var updates = new List<JobUpdate>();
        var days = new SortedDictionary<DateOnly, JobProgress>();
        var run = new JobRun(program, Options);
        DateOnly today = DateOnly.FromDateTime(log[0].Time.DateTime);
        foreach (JobEntry entry in log)
        {
            // A line of yesterday that comes today belongs to the state of today.
            DateOnly day = DateOnly.FromDateTime(entry.Time.DateTime);
            if (day > today)
            {
                days[today] = run.Progress;
                today = day;
            }

            updates.Add(run.Apply(entry));
        }

        days[today] = run.Progress;
        return new(updates, [.. days.Select(day => (day.Key, day.Value))], JobProgress.Replay(program, log, Options));
    }
}
