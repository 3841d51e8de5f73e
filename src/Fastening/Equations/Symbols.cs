namespace Fastening.Equations;

/// <summary>The symbols of the trade, each defined once.</summary>
/// <remarks>
/// Names follow VDI 2230-1:2015 and ISO 16047:2005 where they agree, with <c>lambda</c> and <c>kappa</c> for torque per unit preload. The
/// symbols stand in files by subject beside this one.
/// </remarks>
internal static partial class Symbols
{
    private const double Degree = Math.PI / 180;
}
