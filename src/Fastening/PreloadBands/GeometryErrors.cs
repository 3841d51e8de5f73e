namespace Fastening;

/// <summary>Limits of the measuring errors of wrench and adapters: lengths in millimetres, angles in degrees.</summary>
internal readonly record struct GeometryErrors(double Lever, double AdapterLength, double AdapterAngle, double Pull)
{
    public bool IsNone => this == default;
}
