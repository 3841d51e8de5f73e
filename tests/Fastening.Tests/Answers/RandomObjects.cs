namespace Fastening.Tests.Answers;

/// <summary>Random receivers and arguments. A pool is drawn once from its own name, so that no pool disturbs another.</summary>
internal static partial class RandomObjects
{
    public const int PoolSize = 24;
    private const int Attempts = 50;

    private static readonly Dictionary<string, object[]> Pools = [];

    /// <summary>How an object is made, by the name its type had when the record was first written.</summary>
    public static IReadOnlyDictionary<string, Func<Draw, object>> Makers { get; } = new[]
        {
            ThreadMakers(), TighteningMakers(), ToleranceMakers(), JointMakers(), TraceMakers(), UncertaintyMakers(), QualityMakers(), ProcedureMakers(),
        }
        .SelectMany(makers => makers).ToDictionary(maker => maker.Name, maker => maker.Make, StringComparer.Ordinal);

    public static object[] Pool(string name)
    {
        lock (Pools)
        {
            if (Pools.TryGetValue(name, out object[]? kept)) return kept;
            object[] pool = [.. Enumerable.Range(0, PoolSize).Select(n => Make(name, n))];
            Pools.Add(name, pool);
            return pool;
        }
    }

    /// <summary>A new object: for what a call changes.</summary>
    public static object Make(string name, int n)
    {
        var draw = new Draw($"{name}#{n}");
        for (int attempt = 1; ; attempt++)
        {
            try
            {
                return Makers[name](draw);
            }
            catch (Exception refusal) when (attempt < Attempts && refusal is ArgumentException or InvalidOperationException)
            {
                // The values of this attempt do not belong together: draw others.
            }
        }
    }

    private static T Any<T>(this Draw draw, string name) => (T)draw.Of(Pool(name));

    private static (string Name, Func<Draw, object> Make) Maker(string name, Func<Draw, object> make) => (name, make);
}
