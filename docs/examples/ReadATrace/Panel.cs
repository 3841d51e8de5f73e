using System.Globalization;
using System.Text;

namespace ReadATrace;

/// <summary>One plot with its axes: a rectangle of the drawing, and what its edges stand for.</summary>
internal sealed class Panel(double left, double top, double width, double height, double fromX, double toX, double fromY, double toY)
{
    private const int MostTicks = 8;

    public double X(double value) => left + (value - fromX) / (toX - fromX) * width;

    public double Y(double value) => top + height - (value - fromY) / (toY - fromY) * height;

    public void DrawAxes(StringBuilder svg, string nameX, string nameY)
    {
        svg.Append(Text($"<path class='axis' d='M{left},{top}V{top + height}H{left + width}'/>\n"));
        foreach (double tick in Ticks(fromX, toX))
        {
            svg.Append(Text($"<path class='axis' d='M{X(tick):0.#},{top + height}v5'/><text class='middle' x='{X(tick):0.#}' y='{top + height + 18}'>{tick:0.######}</text>\n"));
        }

        foreach (double tick in Ticks(fromY, toY))
        {
            svg.Append(Text($"<path class='axis' d='M{left},{Y(tick):0.#}h-5'/><text class='end' x='{left - 9}' y='{Y(tick) + 4:0.#}'>{tick:0.######}</text>\n"));
        }

        svg.Append(Text($"<text class='middle' x='{left + width / 2}' y='{top + height + 36}'>{nameX}</text>\n"));
        svg.Append(Text($"<text x='{left - 46}' y='{top - 10}'>{nameY}</text>\n"));
    }

    /// <summary>The samples as one line: of those in one column of pixels the first, the lowest, the highest and the last.</summary>
    public void DrawCurve(StringBuilder svg, ReadOnlySpan<double> xs, ReadOnlySpan<double> ys)
    {
        svg.Append("<path class='curve' d='");
        char command = 'M';
        for (int i = 0; i < xs.Length;)
        {
            int column = Column(xs[i]), next = i + 1, low = i, high = i;
            while (next < xs.Length && Column(xs[next]) == column)
            {
                if (ys[next] < ys[low]) low = next;
                if (ys[next] > ys[high]) high = next;
                next++;
            }

            int before = -1;
            foreach (int at in new[] { i, Math.Min(low, high), Math.Max(low, high), next - 1 })
            {
                if (at == before || xs[at] < fromX || xs[at] > toX) continue;
                svg.Append(Text($"{command}{X(xs[at]):0.#},{Y(ys[at]):0.#}"));
                (command, before) = ('L', at);
            }

            i = next;
        }

        svg.Append("'/>\n");
    }

    public static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private int Column(double value) => (int)Math.Floor(X(value));

    /// <summary>Multiples of 1, 2 or 5 times a power of ten.</summary>
    private static IEnumerable<double> Ticks(double from, double to)
    {
        double rough = (to - from) / MostTicks, power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        double step = power * (rough <= power ? 1 : rough <= 2 * power ? 2 : rough <= 5 * power ? 5 : 10);
        for (double n = Math.Ceiling(from / step); n * step <= to; n++) yield return Math.Round(n * step, 9) + 0.0;
    }
}
