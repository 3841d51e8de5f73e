using UnitsNet;

namespace Fastening.Equations;

/// <summary>One entry of the work: a value that was given, or an equation with the entries that went in.</summary>
/// <param name="Value">In the SI unit of its symbol.</param>
/// <param name="Name">Of a given value: what it is; null for an equation.</param>
/// <param name="Quantity">A given quantity as it was entered; null for a pure number.</param>
/// <param name="Equation">The equation; null for a given value.</param>
/// <param name="Inputs">The places of the entries that went in.</param>
/// <param name="Values">Their values as they went in: what passed through a quantity in degrees can differ in its last bit from what came out of the entry.</param>
internal sealed record WorkEntry(double Value, string? Name, IQuantity? Quantity, Equation? Equation, int[] Inputs, double[] Values);
