using UnitsNet;

namespace Fastening.Tests.Docs;

/// <summary>The code of the guide on threads, strengths, friction and conventions, asserted.</summary>
public class CatalogueExamples
{
    [Fact]
    public void Threads_example()
    {
        #region threads
        ScrewThread coarse = ScrewThread.Parse("M16");                          // also "M16x1.5", "1/2-13 UNC", "#10-32 UNF", "Tr40x14 (P7)"
        ScrewThread own = ScrewThread.IsoMetric(Length.FromMillimeters(19), Length.FromMillimeters(1.5));
        Area exact = coarse.StressArea;                                         // 156.7 mm²
        Area? printed = coarse.TabulatedStressArea;                             // 157 mm², as ISO 898-1 prints it
        #endregion

        Assert.Equal(156.67, exact.SquareMillimeters, 0.005);
        Assert.Equal(157, printed!.Value.SquareMillimeters, 1e-9);
        Assert.Equal("M19x1.5", own.ToString());
    }

    [Fact]
    public void Engagement_example()
    {
        #region stripping
        ScrewThread thread = ScrewThread.Parse("M16");
        EngagementStrength engaged = ThreadEngagement.For(thread, Length.FromMillimeters(20)).StrengthFor(
            leastTensileStrength: Pressure.FromMegapascals(830),
            greatestTensileStrength: Pressure.FromMegapascals(1000),
            externalShearStrength: Pressure.FromMegapascals(0.6 * 830),
            internalShearStrength: Pressure.FromMegapascals(170)).InTappedHole(threadDepth: Length.FromMillimeters(40));
        EngagementFailure first = engaged.FailsFirst;                           // the tapped hole strips
        Length full = engaged.LeastLength;                                      // of full thread: even the strongest bolt breaks first
        Length enough = engaged.LeastTotalLength(IncompleteThreads.Vdi2230Of2015);     // with two pitches that do not carry
        #endregion

        Assert.Equal(EngagementFailure.InternalThreadStrips, first);
        Assert.True(full > Length.FromMillimeters(20));
        Close.To(full.Millimeters + 2 * 2, enough.Millimeters);
        Assert.True(enough > thread.NominalDiameter);
    }

    [Fact]
    public void Strength_example()
    {
        #region strength
        ScrewThread thread = ScrewThread.Parse("M20");
        BoltStrength strength = PropertyClass.Parse("10.9").StrengthFor(thread);    // also "A4-80"; BoltGrade.Parse("SAE J429 5")
        Force proof = strength.ProofLoad(thread, StressAreaBasis.NominalTable)!.Value;
        PublishedPreload reusable = PublishedPreload.ReusableJoint(strength, thread);       // 75 % of the proof load, by name
        PublishedPreload structural = PublishedPreload.StructuralEurope(PropertyClass.Parse("10.9"), thread);
        #endregion

        // ISO 898-1:2013, proof loads: M20 10.9 is 203 kN.
        Assert.Equal(203, proof.Kilonewtons, 0.5);
        Close.To(0.75 * 830 * thread.StressArea.SquareMillimeters / 1000, reusable.Preload.Kilonewtons);

        // EN 1090-2, Table of F_p,C: M20 10.9 is 172 kN (0.7 × 1000 × 245 = 171.5).
        Assert.Equal(172, structural.Preload.Kilonewtons, 0.9);
    }

    [Fact]
    public void Friction_test_example()
    {
        #region friction-test
        ScrewThread thread = ScrewThread.Parse("M12");
        FrictionTest measured = FrictionTest.Of(
            thread, BearingSurface.ForHexagonHead(thread),
            clampForce: Force.FromKilonewtons(36), totalTorque: Torque.FromNewtonMeters(75), threadTorque: Torque.FromNewtonMeters(41));
        double inThread = measured.Thread, underHead = measured.Bearing;          // raw: a bad reading shows as a negative number
        FrictionCoefficients coefficients = measured.ToCoefficients();          // refuses what cannot be friction
        #endregion

        double d2 = 12 - 0.75 * Math.Sqrt(3) / 2 * 1.75;
        Close.To((41.0 / 36 - 1.75 / (2 * Math.PI)) * 2 * Math.Cos(Math.PI / 6) / d2, inThread, 1e-9);
        Close.To(coefficients.Bearing, underHead);
    }

    [Fact]
    public void Scatter_example()
    {
        #region scatter
        PreloadScatter scatter = PreloadScatter.FromPlusMinus(Ratio.FromPercent(23));                // ±23 %
        double factor = scatter.TighteningFactor;                               // 1.6
        IReadOnlyList<PublishedPreloadScatter> published = PublishedPreloadScatter.Of(TighteningMethod.TorqueWrench);
        #endregion

        Close.To(1.23 / 0.77, factor);
        Assert.All(published, row => Assert.False(string.IsNullOrWhiteSpace(row.Provenance.Source)));
    }

    [Fact]
    public void Seats_example()
    {
        #region seats
        ScrewThread thread = ScrewThread.Parse("M12");
        BearingSurface underNut = BearingSurface.ForHexagonNut(thread);
        BearingSurface socketHead = BearingSurface.ForSocketHead(thread).WithHole(HoleSeries.Fine);
        BearingSurface countersunk = BearingSurface.Cone(
            Length.FromMillimeters(24), Length.FromMillimeters(13), includedAngle: Angle.FromDegrees(90));
        #endregion

        Assert.True(underNut.EffectiveDiameter > thread.NominalDiameter && socketHead.EffectiveDiameter > thread.NominalDiameter);
        Close.To(18.5, countersunk.EffectiveDiameter.Millimeters);
    }
}
