using Fastening.Internals;

namespace Fastening;

/// <summary>One proportion that lies outside the range of a method; the result stands where it is defined.</summary>
/// <example><code>foreach (RangeNote note in parts.RangeNotes) Console.WriteLine(note);</code></example>
public sealed class RangeNote
{
    internal RangeNote(RangeNoteKind kind, double value)
    {
        Kind = kind;
        Value = value;
    }

    /// <summary>Which proportion.</summary>
    public RangeNoteKind Kind { get; }

    /// <summary>Its value, a ratio.</summary>
    public double Value { get; }

    /// <inheritdoc />
    public override string ToString() => Kind switch
    {
        RangeNoteKind.GripPerBearing => Print.Text(
            $"The grip per bearing diameter, β_L, is {Value:G3}; the angle of the deformation cone is known for 0.5 to 10 (from memory)."),
        RangeNoteKind.OutsidePerBearing => Print.Text(
            $"The outside per bearing diameter, y, is {Value:G3}; the angle of the deformation cone is known for up to 10 (from memory)."),
        RangeNoteKind.OutsideBeyondGrip => Print.Text(
            $"The outside diameter is {Value:G3} times bearing diameter and grip together: the cone is too wide and the parts too stiff, by up to about a quarter (finite elements of this project); state the diameter of the angle with WithInterfaceDiameter."),
        _ => Print.Text($"d/l is {Value:G3}; the fit by Wileman was made for 0.1 to 2."),
    };
}
