namespace Fastening.Tests.Docs;

/// <summary>What the examples use without declaring it: the variables a reader has by then, with their types.</summary>
internal static class ExampleVariables
{
    private static readonly Dictionary<string, string> Types = new(StringComparer.Ordinal)
    {
        ["amperes"] = "IReadOnlyList<double>",
        ["analysis"] = "TraceAnalysis",
        ["angles"] = "ReadOnlyMemory<double>",
        ["assemblyPreload"] = "Force",
        ["assessment"] = "JointAssessment",
        ["at"] = "DateTimeOffset",
        ["audit"] = "SubgroupedReadings<Torque>",
        ["axialLoad"] = "Force",
        ["band"] = "PreloadBand",
        ["bar"] = "CoaxialExtension",
        ["bearing"] = "BearingSurface",
        ["bolt"] = "BoltCompliance",
        ["bolts"] = "IReadOnlyList<string>",
        ["budget"] = "UncertaintyBudget",
        ["calibration"] = "ToolCalibration",
        ["capability"] = "ProcessCapability",
        ["capacity"] = "JointCapacity",
        ["clampForce"] = "Force",
        ["diameter"] = "Length",
        ["duty"] = "JointDuty",
        ["engagement"] = "ThreadEngagement",
        ["firstUse"] = "DateTimeOffset",
        ["found"] = "ToolCalibration",
        ["friction"] = "FrictionRange",
        ["frictionRange"] = "FrictionRange",
        ["grip"] = "Length",
        ["inputs"] = "PreloadBandInputs",
        ["interval"] = "CalibrationInterval",
        ["introduction"] = "LoadIntroduction",
        ["ironBed"] = "TemperatureDelta",
        ["joint"] = "Joint",
        ["lastGood"] = "DateTimeOffset",
        ["limit"] = "RotationRateLimit",
        ["load"] = "Force",
        ["m12"] = "ScrewThread",
        ["model"] = "FrictionTorqueModel",
        ["nutFactorModel"] = "NutFactorModel",
        ["options"] = "TraceOptions",
        ["parts"] = "ClampedStack",
        ["performed"] = "DateTimeOffset",
        ["permitted"] = "Force",
        ["point"] = "CalibrationPoint",
        ["points"] = "IReadOnlyList<CalibrationPoint>",
        ["preload"] = "Force",
        ["preloads"] = "IReadOnlyList<Force>",
        ["process"] = "Prior<Torque>",
        ["program"] = "TighteningProgram",
        ["radians"] = "IReadOnlyList<double>",
        ["range"] = "FrictionRange",
        ["reading"] = "Torque",
        ["readings"] = "IReadOnlyList<Torque>",
        ["recall"] = "ToolRecall",
        ["result"] = "MonteCarloResult",
        ["sample"] = "SampleStatistics<Force>",
        ["samples"] = "IEnumerable<(Duration Time, Angle Angle)>",
        ["scatter"] = "PreloadScatter",
        ["setting"] = "Torque",
        ["snugTorque"] = "Torque",
        ["steelFoot"] = "TemperatureDelta",
        ["step"] = "TighteningStep",
        ["strength"] = "BoltStrength",
        ["study"] = "GaugeStudy<Torque>",
        ["subgroups"] = "IReadOnlyList<IReadOnlyList<Torque>>",
        ["tensile"] = "Pressure",
        ["thread"] = "ScrewThread",
        ["threadTorque"] = "Torque",
        ["tightening"] = "RotationTightening",
        ["time"] = "DateTimeOffset",
        ["times"] = "ReadOnlyMemory<double>",
        ["today"] = "DateTimeOffset",
        ["tool"] = "TorqueTool",
        ["torque"] = "Torque",
        ["torques"] = "ReadOnlyMemory<double>",
        ["totalTorque"] = "Torque",
        ["trace"] = "TighteningTrace",
        ["uncertainty"] = "CalibrationUncertainty",
        ["volts"] = "IReadOnlyList<double>",
        ["window"] = "ToleranceWindow<Torque>",
        ["wrench"] = "TorqueWrench",
    };

    /// <summary>Where one name stands for something else than in the other files.</summary>
    private static readonly Dictionary<(string File, string Name), string> OfOneFile = new()
    {
        [("Joints/DiagramPoint.cs", "point")] = "DiagramPoint",
        [("Joints/JointTemperatures.cs", "bolt")] = "TemperatureDelta",
        [("Quality/GaugeStudy.cs", "readings")] = "IReadOnlyList<GaugeReading<Torque>>",
        [("Quality/SampleStatistics.cs", "readings")] = "IReadOnlyList<Force>",
        [("Quality/ToolCalibration.cs", "readings")] = "IEnumerable<ToolReading>",
        [("Quality/ToolRecall.cs", "readings")] = "IEnumerable<ToolReading>",
        [("Tightening/NutFactorModel.cs", "model")] = "NutFactorModel",
        [("Traces/TraceAnalysis.Preload.cs", "preloads")] = "Span<double>",
    };

    public static IEnumerable<string> Names => Types.Keys;

    public static IEnumerable<(string File, string Name)> Exceptions => OfOneFile.Keys;

    public static string? TypeOf(string name, string file) =>
        OfOneFile.TryGetValue((file, name), out string? type) || Types.TryGetValue(name, out type) ? type : null;
}
