using Fastening.Equations;

namespace Fastening;

/// <summary>What a joint reduces itself to for torque: metres of torque per newton of preload.</summary>
internal sealed class TorqueArms
{
    public TorqueArms(ThreadLaw law, ScrewThread thread, BearingSurface bearing, FrictionCoefficients friction, TorqueConvention convention)
    {
        Law = law;
        Thread = law.Arm(friction.ThreadTerm);
        Bearing = bearing.Arm(friction.BearingTerm);
        Total = TorqueEquations.TorqueArmEquation.Of(Thread, Bearing);
        Loosening = TorqueEquations.LooseningArmEquation.Of(law.LooseningArm(friction.ThreadTerm), Bearing);
        InShank = convention.InShank == convention ? Thread : ThreadLaw.Of(thread, convention.InShank).Arm(friction.ThreadTerm);
    }

    public ThreadLaw Law { get; }

    /// <summary>Of the thread: pitch and friction.</summary>
    public Term Thread { get; }

    public Term Bearing { get; }

    public Term Total { get; }

    public Term Loosening { get; }

    /// <summary>What twists the shank: the thread's arm, without the rounding of a printed coefficient.</summary>
    public Term InShank { get; }
}
