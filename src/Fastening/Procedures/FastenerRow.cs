namespace Fastening;

/// <summary>One fastener over all steps. Shared rows are not written to; <see cref="JobWork"/> writes to its own copies.</summary>
internal sealed class FastenerRow(StepCell[] cells)
{
    public StepCell[] Cells { get; } = cells;

    /// <summary>Holds too much, or an unknown rotation.</summary>
    public bool MustBeLoosened { get; set; }

    public int Loosenings { get; init; }

    public string? LooseningReason { get; init; }

    public FastenerRow Copy() => new((StepCell[])Cells.Clone())
    {
        MustBeLoosened = MustBeLoosened,
        Loosenings = Loosenings,
        LooseningReason = LooseningReason,
    };

    /// <summary>Everything open again; what was counted stays counted.</summary>
    public FastenerRow Loosened(string reason)
    {
        var cells = new StepCell[Cells.Length];
        for (int s = 0; s < cells.Length; s++)
        {
            FastenerStatus status = Cells[s].Status == FastenerStatus.NotInStep ? FastenerStatus.NotInStep : FastenerStatus.Open;
            cells[s] = new StepCell(status) { Readings = Cells[s].Readings, SkipReason = Cells[s].SkipReason };
        }

        return new(cells) { Loosenings = Loosenings + 1, LooseningReason = reason };
    }
}
