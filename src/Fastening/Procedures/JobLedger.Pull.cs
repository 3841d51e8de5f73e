using Fastening.Internals;

namespace Fastening;

/// <content>What a pull did to its fastener, whether it counts, and what the fastener then stands on.</content>
internal sealed partial class JobLedger
{
    private JobOutcome Pull(JobEntry entry, int fastener, ReasonSet reasons)
    {
        FastenerLedger row = _rows[fastener];
        FastenerPlan plan = _program.Plans[fastener];
        int step = StepOf(entry, fastener);
        bool counts = step >= 0 && !reasons.Meets(NotFirm);
        PullFigures pull = entry.Figures;

        // A fastener does not move below what it has borne.
        double moved = !double.IsNaN(pull.Move) ? pull.Move : Tolerance.IsAtMost(pull.Torque, row.Peak) ? 0 : double.NaN;
        reasons |= TorqueFacts(fastener, step, pull.Torque);
        row.Hear(pull.Torque);
        if (step < 0)
        {
            reasons = reasons.When(plan.IsTurned && !IsHarmless(row, plan, pull, moved), JobReason.TurnUnknown);
            return new(entry, reasons | ReasonSet.Of(JobReason.UnknownStep));
        }

        TighteningStep asked = _program.Steps[step];
        ref StepCell cell = ref row.Cells[step];
        double turned = 0;
        if (plan.IsTurned)
        {
            TurnFact fact = TurnOf(step, fastener, pull, moved, counts);
            reasons = reasons.When(fact == TurnFact.Unknown, JobReason.TurnUnknown);
            turned = fact == TurnFact.Counts ? moved : 0;
        }

        pull = pull with { Turn = IsStill(row, asked, plan, pull, moved) ? cell.Turn : cell.Turn + moved };
        reasons |= asked.Judge(pull);
        if (counts)
        {
            row.Bear(pull.Torque, turned);
            if (asked.IsByTurn) cell.Turn += turned;
            reasons = reasons.When(Tolerance.Exceeds(row.Turn, plan.TurnLimit), JobReason.BeyondTurnLimit);
        }

        if (!reasons.Meets(NotReal)) reasons = Stand(entry, fastener, step, moved, counts, reasons);
        return new(entry, reasons, step, pull.Turn);
    }

    /// <summary>What the torque says, whatever step it was for.</summary>
    private ReasonSet TorqueFacts(int fastener, int step, double torque)
    {
        FastenerPlan plan = _program.Plans[fastener];
        if (double.IsNaN(torque))
        {
            bool isAsked = step < 0 ? plan.AsksTorque : _program.Steps[step].AsksTorque;
            return default(ReasonSet).When(isAsked && !double.IsInfinity(plan.TorqueLimit), JobReason.TorqueUnknown);
        }

        int open = FirstOpenPlace(fastener);
        return default(ReasonSet).When(Tolerance.Exceeds(torque, plan.TorqueLimit), JobReason.BeyondTorqueLimit)
            .When(open >= 0 && Tolerance.Exceeds(torque, plan.Upper[open]), JobReason.PulledTooHigh);
    }

    private TurnFact TurnOf(int step, int fastener, in PullFigures pull, double moved, bool counts)
    {
        FastenerLedger row = _rows[fastener];
        FastenerPlan plan = _program.Plans[fastener];
        TighteningStep asked = _program.Steps[step];
        bool isReady = counts && step >= plan.FirstTurn && AreEarlierDone(fastener, step);
        if (asked.IsByTurn)
        {
            if (IsStill(row, asked, plan, pull, moved)) return TurnFact.None;
            bool isBlind = double.IsNaN(moved) || double.IsNaN(pull.Torque) && asked.ThresholdTorque > 0;
            bool isFast = asked.AsksRate && !asked.IsSlow(pull.Rate);
            return isReady && !isBlind && !isFast ? TurnFact.Counts : TurnFact.Unknown;
        }

        // After the turn a step says itself how far it may go on; where it limits the move, it must be measured.
        if (isReady) return !double.IsNaN(moved) ? TurnFact.Counts : asked.LimitsMove ? TurnFact.Unknown : TurnFact.None;
        bool isByEye = counts && !asked.AsksTorque && row.Turn == 0 && double.IsNaN(pull.Torque) && double.IsNaN(pull.Move) && !double.IsNaN(pull.Contact);
        return isByEye || IsHarmless(row, plan, pull, moved) ? TurnFact.None : TurnFact.Unknown;
    }

    /// <summary>A pull of a step by turn that turned nothing past the threshold. A second click at snug, where no angle is measured, is one.</summary>
    private static bool IsStill(FastenerLedger row, TighteningStep asked, FastenerPlan plan, in PullFigures pull, double moved) =>
        moved == 0 || Tolerance.FallsShort(pull.Torque, asked.ThresholdTorque)
        || double.IsNaN(moved) && row.Turn == 0 && plan.IsTurned && Tolerance.IsAtMost(pull.Torque, plan.SnugTorque);

    /// <summary>A pull that moved nothing, or only made the joint snug before any turn.</summary>
    private static bool IsHarmless(FastenerLedger row, FastenerPlan plan, in PullFigures pull, double moved) =>
        moved == 0 || Tolerance.IsAtMost(pull.Torque, plan.SnugTorque) && !(row.Turn > 0 && pull.Move > 0);

    /// <summary>Where the fastener stands after the pull.</summary>
    private ReasonSet Stand(JobEntry entry, int fastener, int step, double moved, bool counts, ReasonSet reasons)
    {
        FastenerLedger row = _rows[fastener];
        TighteningStep asked = _program.Steps[step];
        ref StepCell cell = ref row.Cells[step];
        bool mustBeLoosened = row.Run.Meets(_effects.Loosening);
        bool wasDone = cell.Status == FastenerStatus.Done;
        if (!wasDone) reasons |= OutOfOrder(fastener, step, cell.IsSettled);
        bool isPulledOn = asked.AsksTorque && !asked.IsByTurn && !reasons.Meets(OfTorque) && cell.StoppedShort && !entry.IsReadInMotion;
        reasons = reasons.When(mustBeLoosened, JobReason.NotLoosened).When(wasDone, JobReason.PulledAgain)
            .When(cell.Status == FastenerStatus.Skipped, JobReason.WasSkipped).When(isPulledOn, JobReason.Restarted);
        cell.Pulls++;
        if (counts && asked.AsksTorque)
        {
            if (Tolerance.FallsShort(entry.InNewtonMeters, asked.LeastTorque)) cell.StoppedShort |= !IsOfAnEarlierStep(fastener, step, entry.InNewtonMeters);
            else if (entry.IsReadInMotion && !reasons.Meets(OfTorque)) cell.StoppedShort = false;
        }

        // What is guilty stays in sight until it is loosened, and a look after a turn says nothing new.
        if (mustBeLoosened || wasDone && asked.IsByTurn && moved == 0) return reasons;
        cell.Pull = entry;
        cell.Reasons = reasons;
        SetStatus(fastener, step, reasons.Meets(_effects.Rejecting) ? FastenerStatus.Rejected : FastenerStatus.Done);
        return reasons;
    }

    /// <summary>A second click of the step before is no try of this one.</summary>
    private bool IsOfAnEarlierStep(int fastener, int step, double torque)
    {
        FastenerPlan plan = _program.Plans[fastener];
        int place = Array.IndexOf(plan.Own, step);
        return place > 0 && !double.IsInfinity(plan.Upper[place - 1]) && Tolerance.IsAtMost(torque, plan.Upper[place - 1]);
    }
}
