using System.Text;
using Fastening.Equations;
using Fastening.Internals;

namespace Fastening;

/// <summary>Every check of a joint, each with its margin and its work; a check that lacks an input is listed as open, none is passed in silence.</summary>
/// <remarks>
/// VDI 2230-1:2015 R2 and R5 to R12 (numbers from memory, not checked in the text) as far as a concentric joint and elastic behaviour go: no bending, no eccentric load, no relaxation with time, no
/// preload beyond yield, no shear or bearing of the shank. The lowest preload in service is the lowest assembly preload less embedding and, if it
/// is one, the thermal loss; the highest is the highest assembly preload with the thermal gain. The load factor is that at assembly temperature.
/// </remarks>
/// <example><code>JointAssessment assessment = joint.Assess(duty, scatter.RangeBelow(permitted), capacity);
/// Console.WriteLine(assessment);
/// foreach (JointCheck check in assessment.Checks) Console.WriteLine(check);
/// Console.WriteLine(Derivation.Of(() => joint.Assess(duty, scatter.RangeBelow(permitted), capacity).Of(JointCheckKind.Slip).Safety));</code></example>
public sealed class JointAssessment : IDerived
{
    private readonly JointCheck[] _checks;

    internal JointAssessment(JointChecks checks, bool hasNut)
    {
        JointCheckRow[] rows = hasNut ? JointCheckRow.All : JointCheckRow.WithoutNut;
        _checks = new JointCheck[rows.Length];
        for (int i = 0; i < rows.Length; i++) _checks[i] = checks.Make(rows[i]);
        Checks = Array.AsReadOnly(_checks);
    }

    /// <summary>What no check of a joint covers, whatever its <see cref="Outcome"/>; a conclusion names it.</summary>
    public static IReadOnlyList<string> NotCovered { get; } = Array.AsReadOnly(
    [
        "bending of the bolt and eccentric clamping or loading",
        "fatigue strength: the permitted amplitude is the one that was stated",
        "relaxation with time, creep of gaskets and coatings, temperatures that were not stated",
        "loosening by itself under vibration and transverse movement",
        "corrosion and embrittlement",
        "shear and bearing of the shank",
        "strength of the parts beyond pressure under head and nut and the engaged thread",
        "neighbours tightened later, unless the stated preload counts them",
    ]);

    /// <summary>The checks, in the order of <see cref="JointCheckKind"/>; without a nut, the pressure under it is not among them.</summary>
    public IReadOnlyList<JointCheck> Checks { get; }

    /// <summary>Fails when one check fails; otherwise not assessed when one is open; holds when all were made and hold.</summary>
    public CheckOutcome Outcome =>
        Array.Exists(_checks, check => check.Outcome == CheckOutcome.Fails) ? CheckOutcome.Fails
        : Array.Exists(_checks, check => check.Outcome == CheckOutcome.NotAssessed) ? CheckOutcome.NotAssessed
        : CheckOutcome.Holds;

    /// <summary>The check with the least safety; null when none has one.</summary>
    public JointCheck? Governing
    {
        get
        {
            JointCheck? least = null;
            foreach (JointCheck check in _checks)
            {
                if (check.SafetyTerm is Term safety && !(least?.SafetyTerm!.Value.Value <= safety.Value)) least = check;
            }

            return least;
        }
    }

    Term IDerived.Answer => Governing?.SafetyTerm ?? default;

    /// <summary>One check.</summary>
    /// <param name="kind">Which.</param>
    /// <returns>The check.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is not a value of the enumeration.</exception>
    /// <exception cref="InvalidOperationException">The joint has no nut.</exception>
    /// <example><code>assessment.Of(JointCheckKind.Slip).Safety</code></example>
    public JointCheck Of(JointCheckKind kind)
    {
        if (kind < 0 || (int)kind >= JointCheckRow.All.Length)
        {
            Guard.RefuseAgainst(nameof(kind), (int)kind, "a value of JointCheckKind");
        }

        return Array.Find(_checks, check => check.Kind == kind) ?? throw new InvalidOperationException("The joint has no nut, so there is no pressure under it.");
    }

    /// <inheritdoc />
    public override string ToString()
    {
        var text = new StringBuilder();
        foreach (JointCheck check in _checks) text.Append(check).Append('\n');
        string outcome = Outcome switch
        {
            CheckOutcome.Holds => "every check above holds",
            CheckOutcome.Fails => "at least one check fails",
            _ => "no check fails, and at least one is not assessed",
        };
        return text.Append(outcome).Append("; not covered: ").Append(string.Join("; ", NotCovered)).Append('\n').ToString();
    }
}
