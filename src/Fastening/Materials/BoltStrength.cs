using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The minimum strength of a bolt: tensile strength, yield strength and, where its standard gives one, stress under proof load.</summary>
/// <remarks>
/// Minimum values at room temperature, not nominal ones: VDI 2230 calculates the permitted preload with the minimum yield strength. A strength
/// that was looked up for a thread is refused on another size: class 8.8, for one, changes at 16 mm.
/// </remarks>
/// <example><code>BoltStrength strength = PropertyClass.Parse("8.8").StrengthFor(ScrewThread.Parse("M20"));   // R_m 830 MPa, R_p 660 MPa, S_p 600 MPa</code></example>
public sealed class BoltStrength
{
    private readonly HotStrengthTable? _hot;
    private readonly Stated<Pressure> _tensile, _yield;
    private readonly Stated<Pressure>? _proof;

    /// <summary>A strength of the user's own, for a material outside the tables.</summary>
    /// <param name="tensileStrength">Minimum tensile strength R_m.</param>
    /// <param name="yieldStrength">Minimum yield strength R_eL or R_p0.2; not above the tensile strength.</param>
    /// <param name="proofLoadStress">Stress under proof load S_p; not above the yield strength.</param>
    /// <exception cref="ArgumentOutOfRangeException">A stress is outside 1 kPa to 100 GPa, the yield strength above the tensile strength, or the proof stress above the yield strength.</exception>
    /// <example><code>var strength = new BoltStrength(Pressure.FromMegapascals(1100), yieldStrength: Pressure.FromMegapascals(990),
    ///     proofLoadStress: Pressure.FromMegapascals(880));</code></example>
    public BoltStrength(Pressure tensileStrength, Pressure yieldStrength, Pressure proofLoadStress)
        : this(tensileStrength, yieldStrength, proofLoadStress, null)
    {
    }

    /// <summary>A strength of the user's own, for a material whose standard gives no stress under proof load, such as stainless steel.</summary>
    /// <param name="tensileStrength">Minimum tensile strength R_m.</param>
    /// <param name="yieldStrength">Minimum yield strength R_eL or R_p0.2; not above the tensile strength.</param>
    /// <exception cref="ArgumentOutOfRangeException">A stress is outside 1 kPa to 100 GPa, or exceeds the tensile strength.</exception>
    public BoltStrength(Pressure tensileStrength, Pressure yieldStrength)
        : this(tensileStrength, yieldStrength, null, null)
    {
    }

    internal BoltStrength(Pressure tensileStrength, Pressure yieldStrength, Pressure? proofLoadStress, Provenance? provenance)
    {
        _tensile = Domains.Stress.Stated(tensileStrength);
        _yield = Domains.Stress.Stated(yieldStrength);
        if (Yield > Tensile) Guard.RefuseAgainst(nameof(yieldStrength), yieldStrength, $"at most the tensile strength, {Guard.ShowToCompare(tensileStrength)}");
        if (proofLoadStress is Pressure proof)
        {
            _proof = Domains.Stress.Stated(proof, nameof(proofLoadStress));
            if (Proof > Yield) Guard.RefuseAgainst(nameof(proofLoadStress), proof, $"at most the yield strength, {Guard.ShowToCompare(yieldStrength)}");
        }

        Provenance = provenance;
    }

    private BoltStrength(BoltStrength band, ScrewThread thread, string classOrGrade, HotStrengthTable? hot)
    {
        _hot = hot;
        _tensile = band._tensile;
        _yield = band._yield;
        _proof = band._proof;
        Provenance = band.Provenance;
        Thread = thread;
        ClassOrGrade = classOrGrade;
    }

    /// <summary>The thread for which the strength was looked up; null for a strength of the user's own, which any thread may have.</summary>
    public ScrewThread? Thread { get; }

    /// <summary>The class or grade from which the strength was looked up: <c>ISO 898-1 class 8.8</c>, <c>SAE J429 5</c>; null for a strength of the user's own.</summary>
    public string? ClassOrGrade { get; }

    /// <summary>Minimum tensile strength R_m.</summary>
    public Pressure TensileStrength => _tensile.AsStated;

    /// <summary>Minimum yield strength: lower yield strength R_eL, or 0.2 % proof strength R_p0.2.</summary>
    public Pressure YieldStrength => _yield.AsStated;

    /// <summary>Stress under proof load S_p; null where the standard gives none (ISO 3506-1, ASTM A193).</summary>
    public Pressure? ProofLoadStress => _proof?.AsStated;

    /// <summary>Standard, edition and table, and what in it is from memory; null for a strength of the user's own.</summary>
    public Provenance? Provenance { get; }

    internal double Tensile => _tensile.Value;

    internal double Yield => _yield.Value;

    internal double? Proof => _proof?.Value;

    internal Term TensileTerm => Named(_tensile);

    internal Term YieldTerm => Named(_yield);

    internal Term? ProofTerm => _proof is Stated<Pressure> proof ? Named(proof) : null;

    /// <summary>Minimum ultimate tensile load F_m = R_m A_s (equation <c>material.ultimate-load</c>).</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="basis">Stress area; exact by default.</param>
    /// <returns>The load, not rounded.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentException">
    /// The strength was looked up for another size, or the tabulated area is requested and the thread is neither ISO metric nor unified.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="basis"/> is no basis.</exception>
    /// <example><code>ScrewThread m12 = ScrewThread.Parse("M12");
    /// PropertyClass.Parse("10.9").StrengthFor(m12).UltimateLoad(m12).Kilonewtons   // 87.6</code></example>
    public Force UltimateLoad(ScrewThread thread, StressAreaBasis basis = StressAreaBasis.Exact) => Si.Force(Ultimate(thread, basis));

    /// <summary>Proof load F_p = S_p A_s (equation <c>material.proof-load</c>).</summary>
    /// <param name="thread">The thread.</param>
    /// <param name="basis">Stress area; exact by default.</param>
    /// <returns>The load, not rounded; null without a stress under proof load.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentException">
    /// The strength was looked up for another size, or the tabulated area is requested and the thread is neither ISO metric nor unified.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="basis"/> is no basis.</exception>
    /// <example><code>ScrewThread m12 = ScrewThread.Parse("M12");
    /// PropertyClass.Parse("8.8").StrengthFor(m12).ProofLoad(m12)?.Kilonewtons   // 48.87</code></example>
    public Force? ProofLoad(ScrewThread thread, StressAreaBasis basis = StressAreaBasis.Exact) =>
        ProofOf(thread, basis) is Term load ? Si.Force(load) : null;

    /// <summary>The ultimate tensile load as tables print it: tabulated area times stress, to three significant digits (in lbf for unified threads).</summary>
    /// <remarks>
    /// Of the 227 printed loads of ISO 898-1 that the tests of this package compare, 207 equal this rule; the other 20 are one unit of the third
    /// digit away, one of them printed with four digits. Loads outside those 227 can be further away: M16 of class 6.8 is printed as 94 000 N (from
    /// memory, not checked in the text) and is 94 200 N here, two units. Where a printed load decides, take it from the standard.
    /// </remarks>
    /// <param name="thread">An ISO metric or unified thread.</param>
    /// <returns>The load.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentException">The strength was looked up for another size, or the thread is neither ISO metric nor unified.</exception>
    /// <example><code>ScrewThread m12 = ScrewThread.Parse("M12");
    /// PropertyClass.Parse("10.9").StrengthFor(m12).PublishedUltimateLoad(m12).Newtons   // 87 700</code></example>
    public Force PublishedUltimateLoad(ScrewThread thread) =>
        Si.Force(PrintedLoad.ToThreeDigits(thread, Ultimate(thread, StressAreaBasis.NominalTable).Value));

    /// <summary>The proof load as tables print it: tabulated area times stress, to three significant digits (in lbf for unified threads).</summary>
    /// <remarks>How often the rule meets print: see <see cref="PublishedUltimateLoad"/>.</remarks>
    /// <param name="thread">An ISO metric or unified thread.</param>
    /// <returns>The load; null without a stress under proof load.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="thread"/> is null.</exception>
    /// <exception cref="ArgumentException">The strength was looked up for another size, or the thread is neither ISO metric nor unified.</exception>
    /// <example><code>ScrewThread m12 = ScrewThread.Parse("M12");
    /// PropertyClass.Parse("8.8").StrengthFor(m12).PublishedProofLoad(m12)?.Newtons   // 48 900</code></example>
    public Force? PublishedProofLoad(ScrewThread thread) =>
        ProofOf(thread, StressAreaBasis.NominalTable) is Term load ? Si.Force(PrintedLoad.ToThreeDigits(thread, load.Value)) : null;

    /// <summary>The yield strength at a temperature, of ISO 898-1 classes 8.8, 10.9 and 12.9 from 20 to 300 °C (equation <c>material.hot-yield-strength</c>).</summary>
    /// <remarks>
    /// The annex of ISO 898-1 (1988 and 1999) gives these values as indications, for loading of short duration; it was read in a table that reproduces
    /// it. The straight line between its points is a choice. Class 8.8 has one line in the annex, which is used above 16 mm too, where the strength at room
    /// temperature is 20 MPa higher. Not for class 10.9 of low-carbon boron steel, for which the annex gives no value. Relaxation is not included.
    /// </remarks>
    /// <param name="temperature">Temperature of the bolt, 20 to 300 °C: beyond, nothing is extrapolated.</param>
    /// <returns>The strength at that temperature.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside the table.</exception>
    /// <exception cref="InvalidOperationException">There is no table for this strength; state one with <see cref="HotStrength(Temperature, Pressure)"/>.</exception>
    /// <example><code>PropertyClass.Parse("8.8").StrengthFor(ScrewThread.Parse("M16")).AtTemperature(Temperature.FromDegreesCelsius(250)).YieldStrength.Megapascals   // 510</code></example>
    public HotStrength AtTemperature(Temperature temperature)
    {
        if (_hot is null)
        {
            throw new InvalidOperationException(
                $"No yield strength at temperature is held for {ClassOrGrade ?? "a strength of your own"}; state one with new HotStrength(temperature, yieldStrength).");
        }

        return new HotStrength(_hot.Range.Stated(temperature), this, _hot);
    }

    /// <inheritdoc />
    public override string ToString() => Print.Text(
        $"R_m {TensileStrength:0.###}, R_p {YieldStrength:0.###}")
        + (ProofLoadStress is Pressure proof ? Print.Text($", S_p {proof:0.###}") : "");

    /// <summary>Refuses another size than the one looked up.</summary>
    internal BoltStrength RequireFor(ScrewThread thread, string name)
    {
        if (Thread is null || Thread.HasSizeOf(thread)) return this;
        throw new ArgumentException($"the strength was looked up for {Thread} ({ClassOrGrade}), the thread is {thread}; look it up with StrengthFor for {thread}.", name);
    }

    /// <summary>The strength of a band, for a thread inside it.</summary>
    internal BoltStrength LookedUpFor(ScrewThread thread, string classOrGrade, HotStrengthTable? hot) => new(this, thread, classOrGrade, hot);

    private Term Named(Stated<Pressure> stress) => ClassOrGrade is null ? stress.Term : stress.TermOf(ClassOrGrade);

    private Term Ultimate(ScrewThread thread, StressAreaBasis basis)
    {
        RequireFor(Guard.NotNull(thread), nameof(thread));
        return MaterialEquations.UltimateLoadEquation.Of(TensileTerm, StressAreas.Of(thread, basis));
    }

    private Term? ProofOf(ScrewThread thread, StressAreaBasis basis)
    {
        RequireFor(Guard.NotNull(thread), nameof(thread));
        Term area = StressAreas.Of(thread, basis);
        return ProofTerm is Term proof ? MaterialEquations.ProofLoadEquation.Of(proof, area) : null;
    }
}
