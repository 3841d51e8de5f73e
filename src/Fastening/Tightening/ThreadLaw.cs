using Fastening.Equations;

namespace Fastening;

/// <summary>The torque of a thread per unit preload, in the form of a convention: forwards from a friction, and back to it.</summary>
/// <remarks>To add a form: one subclass here, one line in <see cref="Of"/>, one value of <see cref="TorqueForm"/>.</remarks>
internal abstract class ThreadLaw
{
    private ThreadLaw(ScrewThread thread, TorqueConvention convention)
    {
        ThreadGeometry geometry = thread.Geometry;
        PitchArm = TorqueEquations.PitchArmEquation.Of(geometry.Lead);
        FlankFactor = convention.FlankSection == FlankSection.Axial || convention.HasPrintedCoefficients
            ? TorqueEquations.AxialFlankFactorEquation.Of(thread.FlankAngle)
            : TorqueEquations.NormalFlankFactorEquation.Of(thread.FlankAngle, geometry.LeadAngle);
        bool atPitchDiameter = convention.MeanDiameter == MeanThreadDiameter.PitchDiameter;
        Diameter = atPitchDiameter ? geometry.PitchDiameter : thread.TextbookMeanDiameter;
        Slope = atPitchDiameter ? geometry.LeadAngle : ThreadEquations.LeadAngleAtMeanDiameterEquation.Of(geometry.Lead, Diameter);
    }

    /// <summary>P_h/(2π).</summary>
    public Term PitchArm { get; }

    /// <summary>The thread friction from which the thread is self-locking.</summary>
    public Term HoldingFriction => PowerScrewEquations.HoldingFrictionEquation.Of(FlankFactor, Slope);

    /// <summary>The wedge of the flanks, c.</summary>
    protected Term FlankFactor { get; }

    /// <summary>The diameter at which friction acts.</summary>
    protected Term Diameter { get; }

    /// <summary>The lead angle at that diameter.</summary>
    protected Term Slope { get; }

    public static ThreadLaw Of(ScrewThread thread, TorqueConvention convention) => convention.Form switch
    {
        TorqueForm.Linear => new Linear(thread, convention),
        TorqueForm.Printed => new PrintedByVdi2230(thread, convention),
        TorqueForm.PrintedIso16047 => new PrintedByIso16047(thread, convention),
        _ => new Exact(thread, convention),
    };

    /// <summary>Torque in the thread per unit preload while tightening.</summary>
    public abstract Term Arm(Term friction);

    /// <summary>The same while loosening.</summary>
    public abstract Term LooseningArm(Term friction);

    /// <summary>The thread friction that an arm measured in the thread speaks of.</summary>
    public abstract Term FrictionOf(Term arm);

    /// <summary>The one friction of thread and bearing that an arm of the whole torque speaks of.</summary>
    public abstract Term UniformFrictionOf(Term arm, Term bearingRadius);

    /// <summary>Whether no torque turns the thread at this friction.</summary>
    public virtual bool Jams(double friction) => false;

    /// <summary>The arm for loops.</summary>
    public abstract double ArmAt(double friction);

    /// <summary>Change of the arm with friction, for loops.</summary>
    public abstract double RadiusAt(double friction);

    /// <summary>The forms in which the arm is a straight line of friction: pitch arm and radius times friction.</summary>
    private abstract class Straight(ScrewThread thread, TorqueConvention convention) : ThreadLaw(thread, convention)
    {
        /// <summary>The arm without friction, of the printed form the printed one.</summary>
        protected virtual Term ArmWithoutFriction => PitchArm;

        protected abstract Term Radius { get; }

        public sealed override Term FrictionOf(Term arm) => FrictionTestEquations.LinearThreadFrictionEquation.Of(arm, ArmWithoutFriction, Radius);

        public sealed override Term UniformFrictionOf(Term arm, Term bearingRadius) =>
            FrictionTestEquations.LinearTotalFrictionEquation.Of(arm, ArmWithoutFriction, Radius, bearingRadius);

        public sealed override double RadiusAt(double friction) => Radius.Value;
    }

    private sealed class Linear(ScrewThread thread, TorqueConvention convention) : Straight(thread, convention)
    {
        protected override Term Radius => FrictionTestEquations.ThreadRadiusEquation.Of(FlankFactor, Diameter);

        public override Term Arm(Term friction) => TorqueEquations.LinearThreadArmEquation.Of(PitchArm, FlankFactor, friction, Diameter);

        public override Term LooseningArm(Term friction) => TorqueEquations.LinearLooseningThreadArmEquation.Of(PitchArm, FlankFactor, friction, Diameter);

        public override double ArmAt(double friction) => TorqueEquations.LinearThreadArm(PitchArm.Value, FlankFactor.Value, friction, Diameter.Value);
    }

    /// <summary>0.16 P + 0.58 d₂ µ.</summary>
    private sealed class PrintedByVdi2230(ScrewThread thread, TorqueConvention convention) : Straight(thread, convention)
    {
        private readonly Term _pitch = thread.PitchTerm;

        protected override Term ArmWithoutFriction => FrictionTestEquations.PrintedPitchArmEquation.Of(_pitch);

        protected override Term Radius => FrictionTestEquations.PrintedThreadRadiusEquation.Of(Diameter);

        public override Term Arm(Term friction) => TorqueEquations.PrintedThreadArmEquation.Of(_pitch, friction, Diameter);

        public override Term LooseningArm(Term friction) => TorqueEquations.PrintedLooseningThreadArmEquation.Of(_pitch, friction, Diameter);

        public override double ArmAt(double friction) => TorqueEquations.PrintedThreadArm(_pitch.Value, friction, Diameter.Value);
    }

    /// <summary>P/(2π) + 0.577 d₂ µ.</summary>
    private sealed class PrintedByIso16047(ScrewThread thread, TorqueConvention convention) : Straight(thread, convention)
    {
        protected override Term Radius => FrictionTestEquations.IsoPrintedThreadRadiusEquation.Of(Diameter);

        public override Term Arm(Term friction) => TorqueEquations.IsoPrintedThreadArmEquation.Of(PitchArm, friction, Diameter);

        public override Term LooseningArm(Term friction) => TorqueEquations.IsoPrintedLooseningThreadArmEquation.Of(PitchArm, friction, Diameter);

        public override double ArmAt(double friction) => TorqueEquations.IsoPrintedThreadArm(PitchArm.Value, friction, Diameter.Value);
    }

    /// <summary>The inclined plane without simplification.</summary>
    private sealed class Exact(ScrewThread thread, TorqueConvention convention) : ThreadLaw(thread, convention)
    {
        private const double AsGoodAsJammed = 0.99;

        public override Term Arm(Term friction) => TorqueEquations.ExactThreadArmEquation.Of(FlankFactor, friction, Diameter, Slope);

        public override Term LooseningArm(Term friction) => TorqueEquations.ExactLooseningThreadArmEquation.Of(FlankFactor, friction, Diameter, Slope);

        public override Term FrictionOf(Term arm) => FrictionTestEquations.ExactThreadFrictionEquation.Of(arm, FlankFactor, Diameter, Slope);

        public override Term UniformFrictionOf(Term arm, Term bearingRadius) =>
            FrictionTestEquations.ExactTotalFrictionEquation.Of(arm, FlankFactor, Diameter, Slope, bearingRadius);

        public override bool Jams(double friction) => FlankFactor.Value * friction * Math.Tan(Slope.Value) >= AsGoodAsJammed;

        public override double ArmAt(double friction) => TorqueEquations.ExactThreadArm(FlankFactor.Value, friction, Diameter.Value, Slope.Value);

        public override double RadiusAt(double friction) =>
            PreloadSensitivityEquations.ExactThreadRadius(FlankFactor.Value, friction, Diameter.Value, Slope.Value);
    }
}
