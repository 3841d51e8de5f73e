using UnitsNet;

namespace Fastening.Tests.Joints;

/// <summary>Plates, washers and spacers: some layers with an outside diameter of their own, narrow ones too.</summary>
/// <param name="Stack">The stack without them.</param>
/// <param name="OwnMm">Outside diameter of each layer; null where it is that of the stack.</param>
public sealed record AnyLayeredPlates(AnyPlates Stack, IReadOnlyList<double?> OwnMm)
{
    public IReadOnlyList<ClampedLayer> Layers =>
        [.. Stack.Layers.Zip(OwnMm, (layer, own) => own is double mm ? layer.WithOuterDiameter(Length.FromMillimeters(mm)) : layer)];

    public ClampedStack Vdi => ClampedStack.Vdi2230Cone(
        Layers, Length.FromMillimeters(Stack.BearingMm), Length.FromMillimeters(Stack.HoleMm), Length.FromMillimeters(Stack.OuterMm), Stack.Form);

    public ClampedStack Frusta => ClampedStack.Frusta(
        Layers, Length.FromMillimeters(Stack.BearingMm), Length.FromMillimeters(Stack.HoleMm), Angle.FromDegrees(Stack.HalfAngleDegrees),
        Length.FromMillimeters(Stack.OuterMm), Stack.Form);

    public ClampedStack WideFrusta => ClampedStack.Frusta(
        Layers, Length.FromMillimeters(Stack.BearingMm), Length.FromMillimeters(Stack.HoleMm), Angle.FromDegrees(Stack.HalfAngleDegrees), null, Stack.Form);
}
