using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>What the checks of a joint compare, with or without the work written down; <see cref="JointCheckRow"/> says which check compares what.</summary>
internal sealed class JointChecks
{
    private readonly Joint _joint;
    private readonly JointWarming? _warming;
    private readonly Point _low, _high;

    public JointChecks(Joint joint, JointDuty duty, Range<Force> assembly, JointCapacity capacity)
    {
        _joint = joint;
        Duty = duty;
        Capacity = capacity;
        Low = Si.Of(assembly.Low);
        High = Si.Of(assembly.High);
        _warming = joint.WarmingOf(duty);
        _low = At(null, duty.Introduction.Low);
        _high = At(null, duty.Introduction.High);
    }

    public JointDuty Duty { get; }

    public JointCapacity Capacity { get; }

    /// <summary>Lowest assembly preload.</summary>
    public double Low { get; }

    /// <summary>Highest assembly preload.</summary>
    public double High { get; }

    /// <summary>The strength of the hot bolt, where the bolt gets warmer than a room and one is stated.</summary>
    public HotStrength? HotBolt => Duty.Temperatures?.HottestBolt > JointTemperatures.WarmestRoom ? Capacity.HotBolt : null;

    public JointCheckLack? LackOfBoltStrength =>
        Capacity.Bolt is null ? JointCheckLack.BoltStrength
        : IsAbove(Duty.Temperatures?.HottestBolt, Math.Max(JointCapacity.HottestOfRoomStrength, Capacity.HotBolt?.Celsius ?? 0)) ? JointCheckLack.HotStrengthOfBolt
        : null;

    public JointCheckLack? LackOfAmplitude =>
        Capacity.PermittedAmplitudeSi is null ? JointCheckLack.PermittedAmplitude
        : IsSlack ? JointCheckLack.TensionInBolt
        : null;

    /// <summary>Permitted pressure, amplitude and engaged thread are stated for less than the joint gets warm.</summary>
    public JointCheckLack? LackOfStrengthWhenHot =>
        IsAbove(Duty.Temperatures?.Hottest, Capacity.StrengthsUpToSi) ? JointCheckLack.StrengthAtTemperature : null;

    private bool IsSlack => Relief(_high) > LowestPreload(_high);

    public static JointCheckLack? LackOf(JointCapacity.Face? face) =>
        face is null ? JointCheckLack.BearingSurface
        : face.Surface.OuterDiameter is null ? JointCheckLack.BearingRing
        : null;

    /// <summary>The check at the end of the load introduction that is the worst for it.</summary>
    public JointCheck Make(JointCheckRow row)
    {
        if (row.Lack(this) is JointCheckLack lack) return new JointCheck(this, row, lack);
        LoadIntroduction introduction = Duty.Introduction;
        (double Demand, double Capacity) low = row.Compare(this, _low);
        if (!row.DependsOnIntroduction(this)) return new JointCheck(this, row, low.Demand, low.Capacity, null);
        if (introduction.IsKnown) return new JointCheck(this, row, low.Demand, low.Capacity, introduction.Low);
        (double Demand, double Capacity) high = row.Compare(this, _high);
        return IsWorse(high, low)
            ? new JointCheck(this, row, high.Demand, high.Capacity, introduction.High)
            : new JointCheck(this, row, low.Demand, low.Capacity, introduction.Low);
    }

    public (double Demand, double Capacity) Compare(JointCheckRow row, Derivation work, double factor) => row.Compare(this, At(work, factor));

    /// <summary>Why a check was not made, with the temperatures where they decide.</summary>
    public string Describe(JointCheckLack lack, JointCheckRow row)
    {
        bool bolt = lack == JointCheckLack.HotStrengthOfBolt;
        double? reached = bolt ? Duty.Temperatures?.HottestBolt : Duty.Temperatures?.Hottest;
        double stated = bolt ? Capacity.HotBolt?.Celsius ?? double.NaN : Capacity.StrengthsUpToSi;
        return JointCheckLackWords.Of(
            lack, row.Place, reached ?? 0, double.IsNaN(stated) ? "room temperature" : Print.Text($"{stated:0.#} °C"));
    }

    /// <summary>The lowest preload in service: embedded, and cold or warm, whichever is less.</summary>
    public double LowestPreload(in Point at)
    {
        double embedding = Joint.EmbeddingLossOf(at.Work, at.Springs, Duty.Embedding);
        double cold = PreloadLossEquations.PreloadLeftEquation.Step(at.Work, Low, embedding, 0);
        if (Warming(at) is not JointWarming warming) return cold;
        double loss = Joint.ThermalLossOf(at.Work, cold, at.Springs, warming);
        return loss > 0 ? PreloadLossEquations.PreloadLeftEquation.Step(at.Work, Low, embedding, loss) : cold;
    }

    public double LeastAssemblyPreload(in Point at) => Joint.LeastAssemblyPreloadOf(at.Work, at.Springs, Duty, Warming(at), at.Factor);

    public double SeparationLoad(in Point at) => LoadShareEquations.SeparationLoadEquation.Step(at.Work, LowestPreload(at), Share(at));

    public double ClampLeft(in Point at) => LoadShareEquations.ClampForceEquation.Step(at.Work, LowestPreload(at), Share(at), Duty.AxialHigh);

    public double Relief(in Point at) => LoadShareEquations.BoltReliefEquation.Step(at.Work, Share(at), Duty.AxialLow);

    public double GreatestBoltForce(in Point at) => WorkingStressEquations.GreatestBoltForceEquation.Step(at.Work, High, BoltForce(at));

    public (double Demand, double Capacity) Stress(in Point at)
    {
        JointCapacity.BoltInService bolt = Capacity.Bolt!;
        double force = BoltForce(at);
        return (BoltStress.Service(bolt.Section, bolt.Model, new Term(High, 0), new Term(force, 0), new Term(bolt.ResidualTorsion, 0)).VonMisesTerm.Value,
            HotBolt?.YieldSi ?? bolt.Strength.Yield);
    }

    public double Amplitude(in Point at)
    {
        double preload = LowestPreload(at), share = Share(at);
        double upper = LoadShareEquations.BoltForceEquation.Step(at.Work, preload, share, Duty.AxialHigh);
        double lower = LoadShareEquations.BoltForceEquation.Step(at.Work, preload, share, Duty.AxialLow);
        return WorkingStressEquations.StressAmplitudeEquation.Step(at.Work, upper, lower, _joint.Bolt.Thread.Geometry.StressArea.Value);
    }

    public (double Demand, double Capacity) Bearing(in Point at, JointCapacity.Face face)
    {
        double force = GreatestBoltForce(at);
        double area = WorkingStressEquations.BearingAreaEquation.Step(at.Work, Si.Of(face.Surface.OuterDiameter!.Value), Si.Of(face.Surface.InnerDiameter!.Value));
        return (WorkingStressEquations.BearingPressureEquation.Step(at.Work, force, area), face.Permitted);
    }

    /// <summary>Less safety; of two without any, more demand or less capacity.</summary>
    private static bool IsWorse((double Demand, double Capacity) one, (double Demand, double Capacity) other)
    {
        double mine = one.Capacity * other.Demand, its = other.Capacity * one.Demand;
        if (mine != its) return mine < its;
        return one.Demand > other.Demand || one.Demand == other.Demand && one.Capacity < other.Capacity;
    }

    private static bool IsAbove(double? celsius, double limit) => celsius > limit + 1e-9;

    private static double Share(in Point at) => LoadShareEquations.WorkingLoadFactorEquation.Step(at.Work, at.Factor, at.Springs.LoadFactor);

    /// <summary>The highest preload in service: not embedded, and cold or warm, whichever is more.</summary>
    private double HighestPreload(in Point at)
    {
        if (Warming(at) is not JointWarming warming) return High;
        double loss = Joint.ThermalLossOf(at.Work, High, at.Springs, warming);
        return loss < 0 ? PreloadLossEquations.PreloadLeftEquation.Step(at.Work, High, 0, loss) : High;
    }

    private double BoltForce(in Point at) => LoadShareEquations.BoltForceEquation.Step(at.Work, HighestPreload(at), Share(at), Duty.AxialHigh);

    private Point At(Derivation? work, double factor) => new(work, _joint.SpringsOf(work), factor);

    private JointWarming? Warming(in Point at) =>
        at.Work is null || Duty.Temperatures is not JointTemperatures rises ? _warming : _joint.WarmingOf(at.Work, at.Springs, rises);

    /// <summary>Where a check looks: the springs, a load introduction factor, and the list that the work is written to.</summary>
    public readonly record struct Point(Derivation? Work, JointSprings Springs, double Factor);
}
