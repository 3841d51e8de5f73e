namespace Fastening;

/// <summary>How many pitches of incomplete thread a rule adds to the engaged length of full thread: countersink, run-out and point do not carry.</summary>
/// <remarks>From memory, not checked in the text of either edition. The two differ by more than a pitch; none is preferred.</remarks>
/// <example><code>Length total = engaged.LeastTotalLength(IncompleteThreads.Vdi2230Of2015);</code></example>
public enum IncompleteThreads
{
    /// <summary>VDI 2230-1:2015 §5.5.5: two pitches.</summary>
    Vdi2230Of2015 = 0,

    /// <summary>VDI 2230-1:2003 §5.5.5: 0.8 of a pitch.</summary>
    Vdi2230Of2003 = 1,
}
