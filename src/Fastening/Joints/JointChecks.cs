using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>What the checks of a joint compare; <see cref="JointCheckRow"/> says which check compares what.</summary>
internal sealed class JointChecks
{
    private readonly Joint _joint;
    private readonly JointSprings _springs;
    private readonly JointWarming? _warming;
    private readonly Term _highestPreload;

    public JointChecks(Joint joint, JointDuty duty, Range<Force> assembly, JointCapacity capacity)
    {
        _joint = joint;
        _springs = joint.Springs;
        Duty = duty;
        Capacity = capacity;
        Low = new Stated<Force>(assembly.Low, Si.Of(assembly.Low), "lowest assembly preload").Term;
        High = new Stated<Force>(assembly.High, Si.Of(assembly.High), "highest assembly preload").Term;
        _warming = joint.WarmingOf(duty);
        LowestPreload = LowestOf();
        _highestPreload = HighestOf();
    }

    public JointDuty Duty { get; }

    public JointCapacity Capacity { get; }

    /// <summary>Lowest assembly preload.</summary>
    public Term Low { get; }

    /// <summary>Highest assembly preload.</summary>
    public Term High { get; }

    /// <summary>The lowest preload in service: embedded, and cold or warm, whichever is less.</summary>
    public Term LowestPreload { get; }

    /// <summary>The greatest axial load, none where it presses.</summary>
    public Term PullingLoad => Duty.AxialHigh.Value > 0 ? Duty.AxialHigh : Term.Given(0, "pulling load, none");

    /// <summary>The strength of the hot bolt, where the bolt gets warmer than a room and one is stated.</summary>
    public HotStrength? HotBolt => Duty.Temperatures?.HottestBolt > JointTemperatures.WarmestRoom ? Capacity.HotBolt : null;

    public JointCheckLack? LackOfBoltStrength =>
        Capacity.Bolt is null ? JointCheckLack.BoltStrength
        : IsAbove(Duty.Temperatures?.HottestBolt, Math.Max(JointCapacity.HottestOfRoomStrength, Capacity.HotBolt?.Celsius ?? 0)) ? JointCheckLack.HotStrengthOfBolt
        : null;

    public JointCheckLack? LackOfAmplitude =>
        Capacity.PermittedAmplitudeTerm is null ? JointCheckLack.PermittedAmplitude
        : IsSlack ? JointCheckLack.TensionInBolt
        : null;

    /// <summary>Permitted pressure, amplitude and engaged thread are stated for less than the joint gets warm.</summary>
    public JointCheckLack? LackOfStrengthWhenHot =>
        IsAbove(Duty.Temperatures?.Hottest, Capacity.StrengthsUpToSi) ? JointCheckLack.StrengthAtTemperature : null;

    private bool IsSlack => Relief(Duty.Introduction.HighTerm).Value > LowestPreload.Value;

    public static JointCheckLack? LackOf(JointCapacity.Face? face) =>
        face is null ? JointCheckLack.BearingSurface
        : face.Surface.Ring is null ? JointCheckLack.BearingRing
        : null;

    /// <summary>The check at the end of the load introduction that is the worst for it.</summary>
    public JointCheck Make(JointCheckRow row)
    {
        if (row.Lack(this) is JointCheckLack lack) return new JointCheck(this, row, lack);
        LoadIntroduction introduction = Duty.Introduction;
        Term n = introduction.LowTerm;
        (Term Demand, Term Capacity) low = row.Compare(this, n);
        if (!row.DependsOnIntroduction(this)) return new JointCheck(this, row, low.Demand, low.Capacity, null);
        if (introduction.IsKnown) return new JointCheck(this, row, low.Demand, low.Capacity, n.Value);
        Term other = introduction.HighTerm;
        (Term Demand, Term Capacity) high = row.Compare(this, other);
        return IsWorse(high, low)
            ? new JointCheck(this, row, high.Demand, high.Capacity, other.Value)
            : new JointCheck(this, row, low.Demand, low.Capacity, n.Value);
    }

    /// <summary>Why a check was not made, with the temperatures where they decide.</summary>
    public string Describe(JointCheckLack lack, JointCheckRow row)
    {
        bool bolt = lack == JointCheckLack.HotStrengthOfBolt;
        double? reached = bolt ? Duty.Temperatures?.HottestBolt : Duty.Temperatures?.Hottest;
        double stated = bolt ? Capacity.HotBolt?.Celsius ?? double.NaN : Capacity.StrengthsUpToSi;
        return JointCheckLackWords.Of(
            lack, row.Place, reached ?? 0, double.IsNaN(stated) ? "room temperature" : Print.Text($"{stated:0.#} °C"));
    }

    public Term LeastAssemblyPreload(Term n) => _joint.LeastAssemblyPreload(Duty, _warming, n);

    public Term SeparationLoad(Term n) => LoadShareEquations.SeparationLoadEquation.Of(LowestPreload, _springs.Share(n));

    public Term ClampLeft(Term n) => LoadShareEquations.ClampForceEquation.Of(LowestPreload, _springs.Share(n), Duty.AxialHigh);

    public Term Relief(Term n) => LoadShareEquations.BoltReliefEquation.Of(_springs.Share(n), Duty.AxialLow);

    public Term GreatestBoltForce(Term n) => WorkingStressEquations.GreatestBoltForceEquation.Of(High, BoltForce(n));

    public (Term Demand, Term Capacity) Stress(Term n)
    {
        BoltInService bolt = Capacity.Bolt!;
        return (bolt.StressAt(High, BoltForce(n)), HotBolt?.YieldTerm ?? bolt.Strength.YieldTerm);
    }

    public Term Amplitude(Term n)
    {
        Term share = _springs.Share(n);
        Term upper = LoadShareEquations.BoltForceEquation.Of(LowestPreload, share, Duty.AxialHigh);
        Term lower = LoadShareEquations.BoltForceEquation.Of(LowestPreload, share, Duty.AxialLow);
        return WorkingStressEquations.StressAmplitudeEquation.Of(upper, lower, _joint.Bolt.Thread.Geometry.StressArea);
    }

    public (Term Demand, Term Capacity) Bearing(Term n, JointCapacity.Face face)
    {
        BearingContact.Ring ring = face.Surface.Ring!;
        Term area = WorkingStressEquations.BearingAreaEquation.Of(ring.Outer.Term, ring.Inner.Term);
        return (WorkingStressEquations.BearingPressureEquation.Of(GreatestBoltForce(n), area), face.Permitted.Term);
    }

    /// <summary>Less safety; of two without any, more demand or less capacity.</summary>
    private static bool IsWorse((Term Demand, Term Capacity) one, (Term Demand, Term Capacity) other)
    {
        double mine = one.Capacity.Value * other.Demand.Value, its = other.Capacity.Value * one.Demand.Value;
        if (mine != its) return mine < its;
        return one.Demand.Value > other.Demand.Value || one.Demand.Value == other.Demand.Value && one.Capacity.Value < other.Capacity.Value;
    }

    private static bool IsAbove(double? celsius, double limit) => celsius > limit + 1e-9;

    private Term LowestOf()
    {
        Term embedding = _joint.EmbeddingLossTerm(Duty.Embedding);
        Term cold = PreloadLossEquations.PreloadLeftEquation.Of(Low, embedding, Term.Given(0, "thermal loss, not there in the cold joint"));
        if (_warming is not JointWarming warming) return cold;
        Term loss = warming.LossAt(cold, _springs);
        return loss.Value > 0 ? PreloadLossEquations.PreloadLeftEquation.Of(Low, embedding, loss) : cold;
    }

    /// <summary>The highest preload in service: not embedded, and cold or warm, whichever is more.</summary>
    private Term HighestOf()
    {
        if (_warming is not JointWarming warming) return High;
        Term loss = warming.LossAt(High, _springs);
        return loss.Value < 0 ? PreloadLossEquations.PreloadLeftEquation.Of(High, Term.Given(0, "embedding, not counted on"), loss) : High;
    }

    private Term BoltForce(Term n) => LoadShareEquations.BoltForceEquation.Of(_highestPreload, _springs.Share(n), Duty.AxialHigh);
}
