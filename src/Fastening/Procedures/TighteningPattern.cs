using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The order in which the fasteners of a joint are tightened.</summary>
/// <remarks>
/// <para>Cross pattern on a circle, places numbered 1 to n one way round. An even circle is split into two of every second place: the pattern of
/// the half circle is taken, and each of its places is followed at once by the one opposite. An odd circle goes round in steps of (n − 1)/2, so that
/// each place is as nearly opposite the last as can be. For 4, 8, 12 and 24 fasteners this is the legacy table of ASME PCC-1 (12 read, the others
/// from memory); it also gives the rows for 16, 20 and 32 as remembered, and not the one for 28. Procedures differ: what the procedure of the joint
/// prints comes first.</para>
/// <para>Rows and rectangles go from the centre outwards: nearer places first, by distance with equal pitches both ways; of those equally far, the
/// first in reading order, followed at once by the one opposite through the centre. Common practice for splices and long flanges; no table.</para>
/// </remarks>
/// <example><code>TighteningPattern.Cross(8).Order      // 1, 5, 3, 7, 2, 6, 4, 8
/// TighteningPattern.Row(5).Order        // 3, 2, 4, 1, 5</code></example>
public sealed class TighteningPattern
{
    private TighteningPattern(IEnumerable<int> order) => Order = Array.AsReadOnly([.. order.Select(place => place + 1)]);

    /// <summary>The places in the order in which they are tightened, numbered from 1.</summary>
    public IReadOnlyList<int> Order { get; }

    /// <summary>Crosswise on a circle.</summary>
    /// <param name="count">Number of fasteners, 1 to 100 000.</param>
    /// <returns>The pattern; places numbered one way round.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is outside its domain.</exception>
    /// <example><code>TighteningPattern.Cross(6).Order     // 1, 4, 2, 5, 3, 6</code></example>
    public static TighteningPattern Cross(int count) => new(CrossOf(CheckCount(count, nameof(count))));

    /// <summary>One after the other round the circle, as a last pass often goes.</summary>
    /// <param name="count">Number of fasteners, 1 to 100 000.</param>
    /// <returns>The pattern; places numbered one way round.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is outside its domain.</exception>
    /// <example><code>TighteningPattern.Circular(5).Order     // 1, 2, 3, 4, 5</code></example>
    public static TighteningPattern Circular(int count) => new(Enumerable.Range(0, CheckCount(count, nameof(count))));

    /// <summary>A row, from its middle outwards.</summary>
    /// <param name="count">Number of fasteners, 1 to 100 000.</param>
    /// <returns>The pattern; places numbered along the row.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is outside its domain.</exception>
    /// <example><code>TighteningPattern.Row(6).Order     // 3, 4, 2, 5, 1, 6</code></example>
    public static TighteningPattern Row(int count) => new(FromCentre(1, CheckCount(count, nameof(count))));

    /// <summary>A rectangle of rows and columns, from its centre outwards.</summary>
    /// <param name="rows">Number of rows, 1 to 300.</param>
    /// <param name="columns">Number of columns, 1 to 300.</param>
    /// <returns>The pattern; places numbered row by row.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>TighteningPattern.Rectangle(rows: 2, columns: 3).Order     // 2, 5, 1, 6, 3, 4</code></example>
    public static TighteningPattern Rectangle(int rows, int columns)
    {
        Domains.Rows.Check(rows, "", nameof(rows));
        Domains.Rows.Check(columns, "", nameof(columns));
        return new(FromCentre(rows, columns));
    }

    /// <summary>The names of the fasteners in the order of the pattern, for <see cref="TighteningStep.WithFasteners"/>.</summary>
    /// <param name="fasteners">The names by place, as many as the pattern has places.</param>
    /// <returns>The same names, in the order in which they are tightened.</returns>
    /// <exception cref="ArgumentNullException">The list or a name is null.</exception>
    /// <exception cref="ArgumentException">There are too many or too few names, one is empty, or one stands twice.</exception>
    /// <example><code>IReadOnlyList&lt;string&gt; crosswise = TighteningPattern.Cross(4).Arrange(["B1", "B2", "B3", "B4"]);     // B1, B3, B2, B4</code></example>
    public IReadOnlyList<string> Arrange(IReadOnlyList<string> fasteners)
    {
        string[] names = CheckNames(fasteners);
        return Array.AsReadOnly([.. Order.Select(place => names[place - 1])]);
    }

    /// <summary>The whole work: every pass over every fastener, with its torque.</summary>
    /// <param name="fasteners">The names by place, as many as the pattern has places.</param>
    /// <param name="target">The torque of 100 %.</param>
    /// <param name="shares">The passes as shares of the target, each from 1 to 1000 %, none below the one before.</param>
    /// <returns>The strokes in their order.</returns>
    /// <exception cref="ArgumentNullException">A list or a name is null.</exception>
    /// <exception cref="ArgumentException">The names do not fit the pattern, there is no pass, or a pass is below the one before.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>Ratio[] passes = [Ratio.FromPercent(30), Ratio.FromPercent(70), Ratio.FromPercent(100)];
    /// foreach (TighteningStroke stroke in TighteningPattern.Cross(4).Strokes(bolts, Torque.FromNewtonMeters(120), passes))
    ///     Console.WriteLine(stroke);       // pass 1: B1, 36 N·m …</code></example>
    public IReadOnlyList<TighteningStroke> Strokes(IReadOnlyList<string> fasteners, Torque target, IReadOnlyList<Ratio> shares)
    {
        string[] names = CheckNames(fasteners);
        double full = Domains.PositiveTorque.Check(target);
        if (Guard.NotNull(shares).Count == 0) throw new ArgumentException("shares is empty; there is at least one pass.", nameof(shares));
        var strokes = new List<TighteningStroke>(names.Length * shares.Count);
        for (int i = 0; i < shares.Count; i++)
        {
            Domains.ShareOfTarget.Check(shares[i], $"shares[{i}]");
            double percent = shares[i].Percent;
            if (i > 0 && percent < shares[i - 1].Percent)
            {
                throw new ArgumentException(
                    $"shares[{i}] is {Interval.Format(percent, "%")}; it must be at least the pass before it, {Interval.Format(shares[i - 1].Percent, "%")}: a tightened fastener takes no lower torque.",
                    nameof(shares));
            }

            foreach (int place in Order) strokes.Add(new TighteningStroke(i + 1, place, names[place - 1], full * percent / 100));
        }

        return strokes.AsReadOnly();
    }

    /// <inheritdoc />
    public override string ToString() => string.Join(", ", Order);

    private static int CheckCount(int count, string name) => (int)Domains.Fasteners.Check(count, "", name);

    private string[] CheckNames(IReadOnlyList<string> fasteners)
    {
        string[] names = Naming.CheckAll(fasteners);
        return names.Length == Order.Count
            ? names
            : throw new ArgumentException($"fasteners has {names.Length} names; the pattern has {Order.Count} places.", nameof(fasteners));
    }

    private static int[] CrossOf(int count)
    {
        if (count % 2 == 0) return [.. CrossOf(count / 2).SelectMany(place => new[] { place, place + count / 2 })];
        int step = Math.Max((count - 1) / 2, 1);
        return [.. Enumerable.Range(0, count).Select(i => (int)((long)i * step % count))];
    }

    /// <summary>Twice the distances from the centre, so that they are whole numbers and equal ones are exactly equal.</summary>
    private static IEnumerable<int> FromCentre(int rows, int columns)
    {
        int last = rows * columns - 1;
        long Distance(int place)
        {
            long across = 2L * (place % columns) - (columns - 1);
            long down = 2L * (place / columns) - (rows - 1);
            return across * across + down * down;
        }

        // The place opposite through the centre counts from the other end; the lower of the two numbers names the pair.
        return Enumerable.Range(0, last + 1).OrderBy(Distance).ThenBy(place => Math.Min(place, last - place)).ThenBy(place => place);
    }
}
