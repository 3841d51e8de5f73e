using UnitsNet;

namespace PumpCover;

/// <summary>How far the torque at the drive may lie from what the wrench shows: its accuracy, and the uncertainty with which that was calibrated.</summary>
internal sealed record WrenchDeviation(Ratio Accuracy, Ratio Calibration, bool IsCalibrationStated)
{
    private double Sum => Accuracy.DecimalFractions + Calibration.DecimalFractions;

    /// <summary>Both together, in percent.</summary>
    public string Total => Show.Stated(Accuracy.Percent + Calibration.Percent);

    public string Parts => IsCalibrationStated ? $" (accuracy {Show.Stated(Accuracy.Percent)} %, calibration {Show.Stated(Calibration.Percent)} %)" : "";

    /// <summary>Both as fractions, as they stand in a formula.</summary>
    public string Terms => Show.Stated(Accuracy.Percent / 100) + (IsCalibrationStated ? $"−{Show.Stated(Calibration.Percent / 100)}" : "");

    /// <summary>What makes the torque at the fastener scatter, in words.</summary>
    public string PartsOfTorque => IsCalibrationStated ? "window, accuracy and calibration of the wrench" : "window and accuracy of the wrench";

    public string CalibrationText => IsCalibrationStated
        ? $"uncertainty ±{Show.Stated(Calibration.Percent)} % (expanded, k = 2)"
        : "no uncertainty stated: 0 is used; a real one would narrow the settings";

    public Torque LeastAt(Torque shown) => shown / (1 + Sum);

    public Torque MostAt(Torque shown) => shown / (1 - Sum);
}
