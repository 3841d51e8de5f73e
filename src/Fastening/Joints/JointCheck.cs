using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>One check of a joint: what is asked, what is there, and whether it holds.</summary>
/// <remarks>A check holds at a safety of 1: no margin is added. Which margin is wanted is the designer's to say, with <see cref="HoldsWith"/>.</remarks>
/// <example><code>JointCheck slip = assessment.Of(JointCheckKind.Slip);
/// Console.WriteLine(slip);                     // slip: holds, 16.67 kN asked, 35.84 kN there, safety 2.15 at n 0.3
/// Console.WriteLine(Derivation.Of(() => joint.Assess(duty, scatter.RangeBelow(permitted), capacity).Of(JointCheckKind.Slip).Safety));     // every step, with sources</code></example>
public sealed class JointCheck
{
    private readonly JointChecks _checks;
    private readonly JointCheckRow _row;
    private readonly Term _demand, _capacity;
    private readonly Term? _safety;

    internal JointCheck(JointChecks checks, JointCheckRow row, JointCheckLack lack)
    {
        _checks = checks;
        _row = row;
        Lack = lack;
    }

    internal JointCheck(JointChecks checks, JointCheckRow row, Term demand, Term capacity, double? factor)
    {
        _checks = checks;
        _row = row;
        _demand = demand;
        _capacity = capacity;
        LoadIntroductionFactor = factor;
        _safety = SafetyOf(demand, capacity);
        Outcome = Tolerance.IsAtLeast(capacity.Value, demand.Value) ? CheckOutcome.Holds : CheckOutcome.Fails;
    }

    /// <summary>Which check.</summary>
    public JointCheckKind Kind => _row.Kind;

    /// <summary>Its name: <c>residual clamp</c>.</summary>
    public string Name => _row.Name;

    /// <summary>What must hold, and the step of VDI 2230-1:2015 where there is one; the numbers of the steps, R2 to R12, are from memory, not checked in the text.</summary>
    public string Criterion => _row.Criterion;

    /// <summary>What it came to.</summary>
    public CheckOutcome Outcome { get; }

    /// <summary>What is asked, a <see cref="Force"/> or a <see cref="Pressure"/>; null when the check is open.</summary>
    public IQuantity? Demand => Outcome == CheckOutcome.NotAssessed ? null : Quantity(_demand);

    /// <summary>What is there or permitted, a <see cref="Force"/> or a <see cref="Pressure"/>; null when the check is open.</summary>
    public IQuantity? Capacity => Outcome == CheckOutcome.NotAssessed ? null : Quantity(_capacity);

    internal Term? SafetyTerm => _safety;

    /// <summary>What is there over what is asked; null when the check is open, and when nothing is asked.</summary>
    public double? Safety => _safety is Term safety ? Si.Number(safety) : null;

    /// <summary>The load introduction factor at which the check was made, the worst for it; null when it does not depend on one.</summary>
    public double? LoadIntroductionFactor { get; }

    /// <summary>What was not stated, so that the check is open; null when it was made.</summary>
    public JointCheckLack? Lack { get; }

    /// <summary>The same in words; null when the check was made.</summary>
    public string? OpenBecause => Lack is JointCheckLack lack ? _checks.Describe(lack, _row) : null;

    /// <summary>The strength of the hot bolt with which the check was made; null when it was made with one at room temperature, or with none.</summary>
    public HotStrength? HotStrength => Lack is null && _row.IsOfBoltStrength ? _checks.HotBolt : null;

    /// <summary>Whether the check was made and holds with a safety that is asked for.</summary>
    /// <param name="safety">The safety, 1 or more.</param>
    /// <returns>True when it holds with it, or when nothing is asked.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="safety"/> is outside 1 to 1000.</exception>
    /// <example><code>bool holds = assessment.Of(JointCheckKind.Slip).HoldsWith(1.2);</code></example>
    public bool HoldsWith(double safety)
    {
        double asked = Domains.Safety.Check(safety);
        return Outcome == CheckOutcome.Holds && (_safety is not Term reached || Tolerance.IsAtLeast(reached.Value, asked));
    }

    /// <inheritdoc />
    public override string ToString()
    {
        if (Lack is not null) return $"{Name}: not assessed, {OpenBecause}";
        string outcome = Outcome == CheckOutcome.Holds ? "holds" : "FAILS";
        return $"{Name}: {outcome}, {_row.Reading(this)}"
            + (_safety is Term safety ? Print.Text($", safety {safety.Value:0.00}") : "")
            + (LoadIntroductionFactor is double n ? Print.Text($" at n {n:0.###}") : "")
            + _row.Note(_checks);
    }

    internal string AskedAndThere => $"{Show(_demand.Value)} asked, {Show(_capacity.Value)} there";

    /// <summary>Nobody asks for tension in the bolt; a pressing load takes some of it.</summary>
    internal string TensionLeft =>
        !(_demand.Value > 0) ? $"{Show(_capacity.Value)} left"
        : Outcome == CheckOutcome.Fails ? $"{Show(_demand.Value)} taken of {Show(_capacity.Value)}"
        : $"{Show(Math.Max(_capacity.Value - _demand.Value, 0))} left of {Show(_capacity.Value)}";

    private Term? SafetyOf(Term demand, Term capacity)
    {
        if (!(demand.Value > 0)) return null;
        Term safety = (_row.IsStress ? WorkingStressEquations.StressSafetyEquation : WorkingStressEquations.ForceSafetyEquation).Of(capacity, demand);
        return double.IsInfinity(safety.Value) ? null : safety;
    }

    private IQuantity Quantity(Term value) => _row.IsStress ? Si.Pressure(value) : Si.Force(value);

    private string Show(double value) => _row.IsStress ? Print.Text($"{Si.Pressure(value):0.#}") : Print.Text($"{Si.Force(value):0.##}");
}
