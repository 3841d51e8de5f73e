namespace Fastening.Equations;

/// <summary>Every equation of the library. One of each subject stands here, so that its class is made ready and all of it is entered; no reflection, so that trimming keeps it.</summary>
internal static class EquationList
{
    private static readonly Lazy<Dictionary<string, Equation>> ById = new(() =>
    {
        Equation[] oneOfEachSubject =
        [
            BoltComplianceEquations.SectionResilienceEquation,
            CalibrationEquations.DeviationEquation,
            CapabilityEquations.PotentialIndexEquation,
            ChartEquations.MeanLimitByRangeEquation,
            ClampedPartsEquations.FrustumResilienceEquation,
            ConeGeometryEquations.GripEquation,
            DecisionEquations.GuardBandEquation,
            EngagementEquations.ExternalThicknessEquation,
            FrictionTestEquations.MeasuredThreadArmEquation,
            GaugeEquations.RangeRootMeanSquareEquation,
            GuaranteeEquations.LowestSettingEquation,
            JointEquations.ResilienceEquation,
            LoadShareEquations.WorkingLoadFactorEquation,
            MaterialEquations.UltimateLoadEquation,
            PowerScrewEquations.EfficiencyEquation,
            PreloadLossEquations.FaceEmbeddingEquation,
            PreloadSensitivityEquations.PreloadPerTorqueEquation,
            PublishedPreloadEquations.ReusableJointEquation,
            RotationEquations.RateEquation,
            RotationTighteningEquations.RotationPerPreloadEquation,
            SafeWindowEquations.SafeWindowEquation,
            ScatterEquations.TighteningFactorEquation,
            SlipEquations.ClampForTransverseLoadEquation,
            StressEquations.SectionDiameterEquation,
            StructuralTighteningEquations.ReferenceTorqueEquation,
            ThreadEquations.TriangleHeightEquation,
            ToleranceFactorEquations.HoweFactorEquation,
            TorqueEquations.PitchArmEquation,
            WorkingStressEquations.ResidualTorsionEquation,
            WrenchEquations.TorqueRatioEquation,
        ];
        GC.KeepAlive(oneOfEachSubject);
        return Equation.SoFar().ToDictionary(equation => equation.Id, StringComparer.Ordinal);
    });

    private static readonly Lazy<IReadOnlyList<Equation>> InOrder =
        new(() => Array.AsReadOnly(ById.Value.Values.OrderBy(equation => equation.Id, StringComparer.Ordinal).ToArray()));

    public static IReadOnlyList<Equation> All => InOrder.Value;

    public static Equation? Find(string id) => ById.Value.TryGetValue(id, out Equation? found) ? found : null;
}
