namespace Fastening;

/// <summary>What the last entry changed, as it was before; without a source there is nothing to undo.</summary>
/// <param name="Source">The source of the entry.</param>
/// <param name="Fastener">The fastener.</param>
/// <param name="Step">The step, or −1 when the whole row was changed.</param>
internal readonly record struct UndoRecord(string? Source, int Fastener, int Step)
{
    public StepCell Cell { get; init; }

    public bool MustBeLoosened { get; init; }

    public FastenerRow? Row { get; init; }
}
