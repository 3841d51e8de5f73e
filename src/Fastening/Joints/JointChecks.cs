using Fastening.Equations;
using Fastening.Internals;

namespace Fastening;

/// <summary>How each check is computed: demand and capacity at a load introduction factor, with or without the work written down.</summary>
internal sealed class JointChecks
{
    private readonly Joint _joint;
    private readonly JointDuty _duty;
    private readonly JointCapacity _capacity;
    private readonly double _low, _high;
    private readonly JointWarming? _warming;

    public JointChecks(Joint joint, JointDuty duty, PreloadRange assembly, JointCapacity capacity)
    {
        _joint = joint;
        _duty = duty;
        _capacity = capacity;
        _low = assembly.MinimumSi;
        _high = assembly.MaximumSi;
        _warming = joint.WarmingOf(duty);
    }

    /// <summary>The check at the end of the load introduction that is the worst for it.</summary>
    public JointCheck Make(JointCheckKind kind)
    {
        if (LackOf(kind) is JointCheckLack lack) return new JointCheck(this, kind, lack);
        LoadIntroduction introduction = _duty.Introduction;
        (double Demand, double Capacity) low = Of(null, kind, introduction.Low);
        bool dependsOnIntroduction = kind != JointCheckKind.PermittedPreload && (kind != JointCheckKind.BoltStaysTight || _duty.AxialLow < 0);
        if (!dependsOnIntroduction) return new JointCheck(this, kind, low.Demand, low.Capacity, null);
        if (introduction.IsKnown) return new JointCheck(this, kind, low.Demand, low.Capacity, introduction.Low);
        (double Demand, double Capacity) high = Of(null, kind, introduction.High);
        return IsWorse(high, low)
            ? new JointCheck(this, kind, high.Demand, high.Capacity, introduction.High)
            : new JointCheck(this, kind, low.Demand, low.Capacity, introduction.Low);
    }

    public (double Demand, double Capacity) Of(Derivation? work, JointCheckKind kind, double factor)
    {
        JointSprings springs = _joint.SpringsOf(work);
        return kind switch
        {
            JointCheckKind.RequiredPreload => (Joint.LeastAssemblyPreloadOf(work, springs, _duty, Warming(work, springs), factor), _low),
            JointCheckKind.PermittedPreload => (_high, _capacity.PermittedPreloadSi!.Value),
            JointCheckKind.Separation => (Math.Max(_duty.AxialHigh, 0), SeparationLoad(work, springs, factor)),
            JointCheckKind.ResidualClamp => (_duty.RequiredClampSi!.Value, ClampLeft(work, springs, factor)),
            JointCheckKind.Slip => (_duty.ClampAgainstSlip(work), ClampLeft(work, springs, factor)),
            JointCheckKind.BoltStaysTight => (Relief(work, springs, factor), LowestPreload(work, springs)),
            JointCheckKind.BoltStress => Stress(work, springs, factor),
            JointCheckKind.AlternatingStress => (Amplitude(work, springs, factor), _capacity.PermittedAmplitudeSi!.Value),
            JointCheckKind.HeadPressure => Bearing(work, springs, factor, _capacity.Head!),
            JointCheckKind.NutPressure => Bearing(work, springs, factor, _capacity.Nut!),
            _ => (GreatestBoltForce(work, springs, factor), _capacity.Engagement!.FailureForceTerm.Value),
        };
    }

    /// <summary>The strength of the hot bolt, where the bolt gets warmer than a room and one is stated.</summary>
    public HotStrength? HotBolt => _duty.Temperatures?.HottestBolt > JointTemperatures.WarmestRoom ? _capacity.HotBolt : null;

    /// <summary>Whether the engaged thread is neither that of a nut nor that of a tapped hole.</summary>
    public bool IsByShearAreasAlone => _capacity.Engagement is { ThreadLength: null };

    public string Describe(JointCheckLack lack, JointCheckKind kind)
    {
        bool bolt = lack == JointCheckLack.HotStrengthOfBolt;
        double? reached = bolt ? _duty.Temperatures?.HottestBolt : _duty.Temperatures?.Hottest;
        double stated = bolt ? _capacity.HotBolt?.Celsius ?? double.NaN : _capacity.StrengthsUpToSi;
        return JointCheckWording.DescribeLack(
            lack, kind, reached ?? 0, double.IsNaN(stated) ? "room temperature" : FormattableString.Invariant($"{stated:0.#} °C"));
    }

    private JointCheckLack? LackOf(JointCheckKind kind) => kind switch
    {
        JointCheckKind.PermittedPreload when _capacity.PermittedPreloadSi is null => JointCheckLack.PermittedPreload,
        JointCheckKind.ResidualClamp when _duty.RequiredClampSi is null => JointCheckLack.RequiredClamp,
        JointCheckKind.Slip when !_duty.AsksForFriction => JointCheckLack.SlipLoad,
        JointCheckKind.BoltStress when _capacity.Bolt is null => JointCheckLack.BoltStrength,
        JointCheckKind.BoltStress when IsBoltTooHot => JointCheckLack.HotStrengthOfBolt,
        JointCheckKind.AlternatingStress when _capacity.PermittedAmplitudeSi is null => JointCheckLack.PermittedAmplitude,
        JointCheckKind.AlternatingStress when IsSlack => JointCheckLack.TensionInBolt,
        JointCheckKind.HeadPressure when LackOf(_capacity.Head) is JointCheckLack lack => lack,
        JointCheckKind.NutPressure when LackOf(_capacity.Nut) is JointCheckLack lack => lack,
        JointCheckKind.ThreadStripping when _capacity.Engagement is null => JointCheckLack.EngagedThread,
        JointCheckKind.AlternatingStress or JointCheckKind.HeadPressure or JointCheckKind.NutPressure or JointCheckKind.ThreadStripping
            when IsAbove(_duty.Temperatures?.Hottest, _capacity.StrengthsUpToSi) => JointCheckLack.StrengthAtTemperature,
        _ => null,
    };

    private static JointCheckLack? LackOf(JointCapacity.Face? face) =>
        face is null ? JointCheckLack.BearingSurface
        : face.Surface.OuterDiameter is null ? JointCheckLack.BearingRing
        : null;

    /// <summary>Warmer than its strength is stated for, at room temperature or hot.</summary>
    private bool IsBoltTooHot => IsAbove(
        _duty.Temperatures?.HottestBolt, Math.Max(JointCapacity.HottestOfRoomStrength, _capacity.HotBolt?.Celsius ?? 0));

    private static bool IsAbove(double? celsius, double limit) => celsius > limit + 1e-9;

    /// <summary>Less safety; of two without any, more demand or less capacity.</summary>
    private static bool IsWorse((double Demand, double Capacity) one, (double Demand, double Capacity) other)
    {
        double mine = one.Capacity * other.Demand, its = other.Capacity * one.Demand;
        if (mine != its) return mine < its;
        return one.Demand > other.Demand || one.Demand == other.Demand && one.Capacity < other.Capacity;
    }

    private bool IsSlack
    {
        get
        {
            JointSprings springs = _joint.SpringsOf(null);
            return Relief(null, springs, _duty.Introduction.High) > LowestPreload(null, springs);
        }
    }

    private JointWarming? Warming(Derivation? work, in JointSprings springs) =>
        work is null || _duty.Temperatures is not JointTemperatures rises ? _warming : _joint.WarmingOf(work, springs, rises);

    private static double Share(Derivation? work, in JointSprings springs, double factor) =>
        LoadShareEquations.WorkingLoadFactorEquation.Step(work, factor, springs.LoadFactor);

    /// <summary>The lowest preload in service: embedded, and cold or warm, whichever is less.</summary>
    private double LowestPreload(Derivation? work, in JointSprings springs)
    {
        double embedding = Joint.EmbeddingLossOf(work, springs, _duty.Embedding);
        double cold = PreloadLossEquations.PreloadLeftEquation.Step(work, _low, embedding, 0);
        if (Warming(work, springs) is not JointWarming warming) return cold;
        double loss = Joint.ThermalLossOf(work, cold, springs, warming);
        return loss > 0 ? PreloadLossEquations.PreloadLeftEquation.Step(work, _low, embedding, loss) : cold;
    }

    /// <summary>The highest preload in service: not embedded, and cold or warm, whichever is more.</summary>
    private double HighestPreload(Derivation? work, in JointSprings springs)
    {
        if (Warming(work, springs) is not JointWarming warming) return _high;
        double loss = Joint.ThermalLossOf(work, _high, springs, warming);
        return loss < 0 ? PreloadLossEquations.PreloadLeftEquation.Step(work, _high, 0, loss) : _high;
    }

    private double SeparationLoad(Derivation? work, in JointSprings springs, double factor) =>
        LoadShareEquations.SeparationLoadEquation.Step(work, LowestPreload(work, springs), Share(work, springs, factor));

    private double ClampLeft(Derivation? work, in JointSprings springs, double factor) =>
        LoadShareEquations.ClampForceEquation.Step(work, LowestPreload(work, springs), Share(work, springs, factor), _duty.AxialHigh);

    private double Relief(Derivation? work, in JointSprings springs, double factor) =>
        LoadShareEquations.BoltReliefEquation.Step(work, Share(work, springs, factor), _duty.AxialLow);

    private double GreatestBoltForce(Derivation? work, in JointSprings springs, double factor) => WorkingStressEquations.GreatestBoltForceEquation.Step(
        work,
        _high,
        LoadShareEquations.BoltForceEquation.Step(work, HighestPreload(work, springs), Share(work, springs, factor), _duty.AxialHigh));

    private (double Demand, double Capacity) Stress(Derivation? work, in JointSprings springs, double factor)
    {
        JointCapacity.BoltInService bolt = _capacity.Bolt!;
        double force = LoadShareEquations.BoltForceEquation.Step(work, HighestPreload(work, springs), Share(work, springs, factor), _duty.AxialHigh);
        StressedSection section = bolt.Section;
        return (BoltStress.Service(section, bolt.Model, new Term(_high, 0), new Term(force, 0), new Term(bolt.ResidualTorsion, 0)).VonMisesTerm.Value,
            HotBolt?.YieldSi ?? bolt.Strength.Yield);
    }

    private double Amplitude(Derivation? work, in JointSprings springs, double factor)
    {
        double preload = LowestPreload(work, springs), share = Share(work, springs, factor);
        double upper = LoadShareEquations.BoltForceEquation.Step(work, preload, share, _duty.AxialHigh);
        double lower = LoadShareEquations.BoltForceEquation.Step(work, preload, share, _duty.AxialLow);
        return WorkingStressEquations.StressAmplitudeEquation.Step(work, upper, lower, _joint.Bolt.Thread.Geometry.StressArea.Value);
    }

    private (double Demand, double Capacity) Bearing(Derivation? work, in JointSprings springs, double factor, JointCapacity.Face face)
    {
        double force = GreatestBoltForce(work, springs, factor);
        double area = WorkingStressEquations.BearingAreaEquation.Step(work, Si.Of(face.Surface.OuterDiameter!.Value), Si.Of(face.Surface.InnerDiameter!.Value));
        return (WorkingStressEquations.BearingPressureEquation.Step(work, force, area), face.Permitted);
    }
}
