namespace Fastening.Tests.Procedures;

/// <summary>Lets days happen and looks at how they end. No test framework in it, so that a changed library can be put under it.</summary>
internal static class DayCheck
{
    private static readonly TighteningOrder[] Orders = [TighteningOrder.Free, TighteningOrder.StepByStep, TighteningOrder.InSequence];

    public static DayCount Run(DayKind kind, int firstSeed, int days)
    {
        var count = new DayCount(kind);
        foreach (DayProgram program in DayProgram.All)
        {
            foreach (TighteningOrder order in Orders)
            {
                for (int seed = firstSeed; seed < firstSeed + days; seed++)
                {
                    var day = new PhysicalDay(seed, kind, program, order);
                    day.Work();
                    count.Days++;
                    if (Complaint(day, kind, count) is string complaint) count.Complaints.Add($"seed {seed}, {program.Name}, {order}: {complaint}\n{day}");
                }
            }
        }

        return count;
    }

    private static string? Complaint(PhysicalDay day, DayKind kind, DayCount count)
    {
        JobProgress live = day.Run.Progress, replayed = JobProgress.Replay(day.Run.Program, day.Arrived, PhysicalDay.Options);
        if (replayed.IsConforming) count.Conforming++;
        if (!replayed.IsComplete) count.Incomplete++;
        if (!live.NeedsReplay && live.AssumedRepeats == 0 && live.Conflicts == 0 && live.IsConforming != replayed.IsConforming) return "the run and its replay differ";
        if (live.IsConforming && !replayed.IsConforming && live.AssumedRepeats == 0) return "the run conforms and its replay does not";
        if (replayed.IsConforming && day.Objection() is string objection) return objection;
        if (kind > DayKind.GoodLost) return null;
        if (kind != DayKind.GoodLost) return replayed.IsConforming ? null : "good work does not conform";
        if (!replayed.IsConforming && replayed.Gaps.Count == 0) return "good work with lost lines neither conforms nor shows the gap";
        JobProgress whole = JobProgress.Replay(day.Run.Program, [.. day.Arrived, .. day.Lost], PhysicalDay.Options);
        return whole.Gaps.Count > 0 ? "sent again, and still a gap" : null;
    }
}
