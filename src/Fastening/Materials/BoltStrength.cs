using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The minimum strength of a bolt: tensile strength, yield strength, proof stress.</summary>
/// <remarks>Minimum values, not nominal ones: VDI 2230 computes the permitted preload with the minimum yield strength.</remarks>
/// <example><code>BoltStrength strength = PropertyClass.Parse("8.8").StrengthFor(ScrewThread.Parse("M20"));   // 830, 660, 600 MPa</code></example>
public sealed class BoltStrength
{
    /// <summary>A strength of the user's own, for a material outside the tables.</summary>
    /// <param name="tensileStrength">Minimum tensile strength R_m.</param>
    /// <param name="yieldStrength">Minimum yield strength R_eL or R_p0.2; not above the tensile strength.</param>
    /// <param name="proofLoadStress">Stress under proof load S_p; not above the tensile strength.</param>
    /// <exception cref="ArgumentOutOfRangeException">A stress is outside 1 kPa to 100 GPa, or exceeds the tensile strength.</exception>
    public BoltStrength(Pressure tensileStrength, Pressure yieldStrength, Pressure proofLoadStress)
    {
        double tensile = Guard.Check(tensileStrength, Domains.Stress);
        Yield = Guard.Check(yieldStrength, Domains.Stress);
        double proof = Guard.Check(proofLoadStress, Domains.Stress);
        string bound = $"at most the tensile strength, {Guard.Show(tensileStrength)}";
        if (Yield > tensile) Guard.RefuseAgainst(nameof(yieldStrength), yieldStrength, bound);
        if (proof > tensile) Guard.RefuseAgainst(nameof(proofLoadStress), proofLoadStress, bound);
        TensileStrength = tensileStrength;
        YieldStrength = yieldStrength;
        ProofLoadStress = proofLoadStress;
    }

    /// <summary>Minimum tensile strength R_m.</summary>
    public Pressure TensileStrength { get; }

    /// <summary>Minimum yield strength: lower yield strength R_eL, or 0.2 % proof strength R_p0.2.</summary>
    public Pressure YieldStrength { get; }

    /// <summary>Stress under proof load S_p.</summary>
    public Pressure ProofLoadStress { get; }

    internal double Yield { get; }

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant(
        $"R_m {TensileStrength.Megapascals:0.###} MPa, R_p {YieldStrength.Megapascals:0.###} MPa, S_p {ProofLoadStress.Megapascals:0.###} MPa");
}
