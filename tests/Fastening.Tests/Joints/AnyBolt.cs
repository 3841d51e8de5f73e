using UnitsNet;

namespace Fastening.Tests.Joints;

/// <summary>A bolt of an ISO metric size, with a shank and free thread; lengths in millimetres, modulus in gigapascals.</summary>
/// <param name="Thread">The thread.</param>
/// <param name="GripMm">Grip.</param>
/// <param name="BeyondMm">How far the bolt reaches beyond the grip.</param>
/// <param name="ShankShare">Share of the length that has no thread.</param>
/// <param name="ModulusGpa">Young's modulus.</param>
/// <param name="Head">Head.</param>
public sealed record AnyBolt(ScrewThread Thread, double GripMm, double BeyondMm, double ShankShare, double ModulusGpa, BoltHead Head)
{
    public double LengthMm => GripMm + BeyondMm;

    public double ThreadedMm => LengthMm * (1 - ShankShare);

    public double ShankMm => Math.Min(LengthMm - ThreadedMm, GripMm);

    public ElasticMaterial Material =>
        new("bolt", Pressure.FromGigapascals(ModulusGpa), 0.29, CoefficientOfThermalExpansion.FromPpmPerKelvin(11.5));

    public BoltCompliance Vdi => BoltCompliance.Vdi2230(Thread, Mm(LengthMm), Mm(ThreadedMm), Mm(GripMm), Head, Material);

    public BoltCompliance Textbook => BoltCompliance.Textbook(Thread, Mm(LengthMm), Mm(ThreadedMm), Mm(GripMm), Material);

    private static Length Mm(double value) => Length.FromMillimeters(value);
}
