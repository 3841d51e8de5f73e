using UnitsNet;

namespace Fastening.Tests.Joints;

/// <summary>A load across the bolt embeds more than one along it (VDI 2230-1:2015 Table 5, from memory): the table of the one is not taken for the other.</summary>
public class EmbeddingDirectionTests
{
    private static readonly Force Load = Force.FromKilonewtons(3);

    [Theory]
    [InlineData(SurfaceRoughness.RzBelow10)]
    [InlineData(SurfaceRoughness.Rz10To40)]
    public void Axial_values_are_refused_beside_a_load_across_the_bolt(SurfaceRoughness roughness)
    {
        JointDuty duty = DutyWith(Embedding.ForRoughness(roughness, EmbeddingLoad.Axial, threads: 1, bearingFaces: 2, interfaces: 1));
        ArgumentException transverse = Assert.Throws<ArgumentException>(() => duty.WithTransverseLoad(Load, slipFaces: 1, lowestFriction: 0.12));
        Assert.Equal("load", transverse.ParamName);
        Assert.Contains("EmbeddingLoad.Shear", transverse.Message, StringComparison.Ordinal);
        ArgumentException twist = Assert.Throws<ArgumentException>(
            () => duty.WithInterfaceTorque(Torque.FromNewtonMeters(20), Length.FromMillimeters(18), slipFaces: 1, lowestFriction: 0.12));
        Assert.Equal("torque", twist.ParamName);
    }

    [Fact]
    public void Values_of_shear_a_length_of_ones_own_and_none_are_taken()
    {
        foreach (Embedding embedding in new[]
        {
            Embedding.ForRoughness(SurfaceRoughness.Rz10To40, EmbeddingLoad.Shear, 1, 2, 1), Embedding.Of(Length.FromMicrometers(9)), Embedding.None,
        })
        {
            Assert.Equal(Load, DutyWith(embedding).WithTransverseLoad(Load, slipFaces: 1, lowestFriction: 0.12).TransverseLoad);
        }
    }

    [Fact]
    public void A_load_of_zero_asks_for_nothing() => Assert.Equal(
        Force.Zero,
        DutyWith(Embedding.ForRoughness(SurfaceRoughness.Rz10To40, EmbeddingLoad.Axial, 1, 2, 1))
            .WithTransverseLoad(Force.Zero, slipFaces: 1, lowestFriction: 0.12).TransverseLoad);

    private static JointDuty DutyWith(Embedding embedding) => new(Force.Zero, Load, LoadIntroduction.WorstCase, embedding);
}
