using System.Text.RegularExpressions;
using Fastening.Tests.House;

namespace Fastening.Tests.Joints;

/// <summary>A check of a joint is one row and one value of the enumeration, and nothing else names it.</summary>
public class JointCheckRowTests
{
    [Fact]
    public void Rows_follow_the_enumeration()
    {
        Assert.Equal(Enum.GetValues<JointCheckKind>(), JointCheckRow.All.Select(row => row.Kind));
        Assert.Equal([JointCheckKind.NutPressure], Enum.GetValues<JointCheckKind>().Except(JointCheckRow.WithoutNut.Select(row => row.Kind)));
    }

    [Fact]
    public void Every_row_has_a_name_of_its_own_and_says_what_must_hold()
    {
        Assert.Equal(JointCheckRow.All.Length, JointCheckRow.All.Select(row => row.Name).Distinct().Count());
        Assert.All(JointCheckRow.All, row => Assert.Contains(" ≤ ", row.Criterion, StringComparison.Ordinal));
    }

    /// <summary>The kind of a check decides nothing outside its row, so that a new check touches no other file.</summary>
    [Fact]
    public void Only_the_rows_name_a_kind_of_check()
    {
        string[] naming =
        [
            .. LibrarySource.Files
                .Where(file => file.Value.DescendantTokens().Zip(file.Value.DescendantTokens().Skip(1), (one, next) => one.Text == "JointCheckKind" && next.Text == ".").Any(named => named))
                .Select(file => file.Key),
        ];
        Assert.Equal(["Joints/JointCheckRow.cs"], naming);
    }

    /// <summary>A face that is missing is named by where it lies.</summary>
    [Theory]
    [InlineData(JointCheckKind.HeadPressure, "head")]
    [InlineData(JointCheckKind.NutPressure, "nut")]
    public void A_missing_face_is_named_by_its_place(JointCheckKind kind, string place)
    {
        JointCheck open = AssessedJoint.Joint.Assess(AssessedJoint.Duty(0, 5, LoadIntroduction.Of(0.4)), AssessedJoint.Assembly, JointCapacity.NothingStated).Of(kind);
        Assert.Equal(JointCheckLack.BearingSurface, open.Lack);
        Assert.Matches(new Regex($@"\b{place}\b"), open.OpenBecause!);
    }
}
