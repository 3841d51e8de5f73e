namespace Fastening;

/// <summary>The whole state of a job, never written to once it is made: fasteners × steps, one mark per source, one undo.</summary>
internal sealed class JobState(FastenerRow[] rows, int[] unsettled, Dictionary<string, SourceMark> sources)
{
    public FastenerRow[] Rows { get; } = rows;

    /// <summary>By step, how many of its fasteners are neither done nor skipped.</summary>
    public int[] Unsettled { get; } = unsettled;

    public Dictionary<string, SourceMark> Sources { get; } = sources;

    public UndoRecord Undo { get; init; }

    public long Entries { get; init; }

    public long Strays { get; init; }

    public long Undone { get; init; }

    public long Conflicts { get; init; }

    public static JobState Begin(TighteningProgram program)
    {
        var rows = new FastenerRow[program.Fasteners.Count];
        for (int f = 0; f < rows.Length; f++)
        {
            var cells = new StepCell[program.Steps.Count];
            for (int s = 0; s < cells.Length; s++)
            {
                cells[s] = new StepCell(program.PositionIn(s, f) < 0 ? FastenerStatus.NotInStep : FastenerStatus.Open);
            }

            rows[f] = new FastenerRow(cells);
        }

        return new(rows, [.. program.Steps.Select((_, s) => program.OrderOf(s).Length)], new(StringComparer.Ordinal));
    }

    /// <summary>The first step with fasteners that are neither done nor skipped; −1 when there is none.</summary>
    public static int OpenStep(int[] unsettled)
    {
        for (int s = 0; s < unsettled.Length; s++)
        {
            if (unsettled[s] > 0) return s;
        }

        return -1;
    }
}
