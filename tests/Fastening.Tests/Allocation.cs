namespace Fastening.Tests;

/// <summary>
/// What a call allocates. The runtime counts now and then some thousand bytes of its own to the thread that runs (a tier of the compiler, a type
/// made ready); what the call itself allocates comes back every time, so the least of several runs is the answer.
/// </summary>
internal static class Allocation
{
    private const int Runs = 7;

    public static long Of(Action call)
    {
        long least = long.MaxValue;
        for (int run = 0; run < Runs; run++)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            call();
            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        return least;
    }
}
