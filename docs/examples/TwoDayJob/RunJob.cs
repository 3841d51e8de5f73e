using Fastening;

namespace TwoDayJob;

/// <summary>The log taken through the job: every update in its order, and the progress at the end of each day.</summary>
internal sealed record RunJob(IReadOnlyList<JobUpdate> Updates, IReadOnlyList<(DateOnly Day, JobProgress Progress)> EndsOfDays)
{
    public JobProgress End => EndsOfDays[^1].Progress;

    public static RunJob Through(TighteningProgram program, IReadOnlyList<JobEntry> log)
    {
        var updates = new List<JobUpdate>();
        var days = new SortedDictionary<DateOnly, JobProgress>();
        JobProgress job = JobProgress.Start(program);
        foreach (JobEntry entry in log)
        {
            JobUpdate update = job.Apply(entry);
            updates.Add(update);
            job = update.Progress;
            days[DateOnly.FromDateTime(entry.Time.DateTime)] = job;
        }

        return new(updates, [.. days.Select(day => (day.Key, day.Value))]);
    }
}
