namespace Fastening;

/// <summary>Numbers of a source from a first to a last, both included.</summary>
internal readonly record struct NumberRange(long First, long Last)
{
    public bool Holds(long number) => number >= First && number <= Last;

    /// <summary>What is left of some ranges without others.</summary>
    public static IEnumerable<NumberRange> Except(IEnumerable<NumberRange> ranges, IEnumerable<NumberRange> others)
    {
        List<NumberRange> left = [.. ranges];
        foreach (NumberRange other in others)
        {
            List<NumberRange> rest = [];
            foreach (NumberRange range in left)
            {
                if (other.Last < range.First || other.First > range.Last)
                {
                    rest.Add(range);
                    continue;
                }

                if (other.First > range.First) rest.Add(new(range.First, other.First - 1));
                if (other.Last < range.Last) rest.Add(new(other.Last + 1, range.Last));
            }

            left = rest;
        }

        return left;
    }
}
