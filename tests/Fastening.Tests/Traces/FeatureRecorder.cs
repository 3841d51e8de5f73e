using UnitsNet;

namespace Fastening.Tests.Traces;

/// <summary>Records a known curve with one feature: 4 to 15 samples a degree, 0.6 % noise, angles in steps of 0.1°.</summary>
internal sealed class FeatureRecorder
{
    private readonly TraceFeature _feature;
    private readonly Dice _dice;
    private readonly KnownCurve _curve;
    private readonly FeatureShape _shape;
    private readonly List<double> _times = [];
    private readonly List<double> _angles = [];
    private readonly List<double> _torques = [];
    private readonly double _perDegree;
    private readonly double _perSecond;
    private readonly double _noise;
    private readonly double _resolution;
    private readonly double _windUp;
    private readonly double _end;
    private double _time;

    public FeatureRecorder(TraceFeature feature, Dice dice)
    {
        (_feature, _dice) = (feature, dice);
        _curve = CurveOf(feature, dice);
        _shape = new FeatureShape(feature, _curve, dice);
        _perDegree = feature == TraceFeature.CoarseSampling ? 1 / dice.Uniform(1, 2.5) : dice.Uniform(4, 15);
        _perSecond = dice.Uniform(20, 240);
        _noise = (feature == TraceFeature.Noise ? 0.03 : 0.006) * _curve.Peak;
        _resolution = feature == TraceFeature.AngleSteps ? dice.Uniform(0.5, 2.5) : 0.1;
        _windUp = feature is TraceFeature.LetGoWoundUp or TraceFeature.LetGoCorrected or TraceFeature.RatchetWoundUp ? dice.Uniform(2, 6) / _curve.Peak : 0;
        _end = feature switch
        {
            TraceFeature.EndInKnee => _curve.End - _curve.Knee * dice.Uniform(0, 0.7),
            TraceFeature.Stripping => _shape.Place + dice.Uniform(40, 90),
            TraceFeature.ConstantTorque => _curve.RunDown,
            _ => _curve.End,
        };
    }

    public FeaturedTrace Record(int number)
    {
        if (_feature is TraceFeature.LooseningPositive or TraceFeature.LooseningNegative) Loosen();
        else Tighten();
        Spoil();
        TighteningTrace trace = TighteningTrace.FromSamples(_times.ToArray(), _angles.ToArray(), _torques.ToArray());
        if (_feature == TraceFeature.LetGoCorrected) trace = trace.WithoutWindUp(RotationalStiffness.FromNewtonMetersPerDegree(1 / _windUp));
        return new FeaturedTrace(_feature, number, trace, Truth());
    }

    private static KnownCurve CurveOf(TraceFeature feature, Dice dice)
    {
        KnownCurve curve = KnownCurve.Random(dice);
        return feature switch
        {
            TraceFeature.EndInKnee => curve with { Knee = dice.Uniform(4, 20), Plateau = 0 },
            TraceFeature.ShortStraightPart => curve with { Elastic = dice.Uniform(2, 8), Prevailing = curve.Prevailing * 0.1 },
            TraceFeature.Gasket => curve with { RunDown = curve.RunDown + 60 },
            TraceFeature.ConstantTorque => curve with { Slope = 1e-9, Prevailing = curve.Slope * 10 },
            TraceFeature.RunDownBump => curve with { RunDown = curve.RunDown + 40 },
            _ => curve,
        };
    }

    private void Tighten()
    {
        double angle = _feature == TraceFeature.NoRunDown ? _curve.RunDown + _curve.Toe * _dice.Uniform(0, 1.5) : 0;
        double[] stops = Stops();
        int next = 0;
        while (angle < _end)
        {
            for (; next < stops.Length && angle >= stops[next]; next++) Stop(stops[next]);
            Add(angle, _shape.TorqueAt(angle));
            angle += Wait() * _perSecond;
        }

        Add(_end, _shape.TorqueAt(_end));
        if (_dice.Chance(0.1)) return;
        double recoil = _windUp > 0 ? 0 : _dice.Uniform(2, 4);
        for (int i = 1; i <= 80; i++)
        {
            _time += 0.001;
            Add(_end - recoil * Math.Min(i / 40.0, 1), _shape.TorqueAt(_end) * Math.Pow(0.85, i));
        }
    }

    /// <summary>It breaks loose over a few degrees and then turns ever more easily.</summary>
    private void Loosen()
    {
        double loose = _dice.Uniform(1, 4), decay = _dice.Uniform(5, 30), end = _dice.Uniform(100, 400);
        for (double angle = 0; angle < end; angle += Wait() * _perSecond)
        {
            double torque = _curve.Peak * (angle < loose ? angle / loose : Math.Exp((loose - angle) / decay));
            Add(angle, Math.Max(torque, angle < loose ? 0 : _curve.Prevailing * 0.5));
        }
    }

    private double[] Stops()
    {
        int count = _feature switch
        {
            TraceFeature.Pause => 1,
            TraceFeature.LetGoRigid or TraceFeature.LetGoWoundUp or TraceFeature.LetGoCorrected => _dice.Chance(0.5) ? 1 : 2,
            TraceFeature.RatchetFixed or TraceFeature.RatchetWoundUp or TraceFeature.RatchetBack => (int)_dice.Uniform(1, 3.999),
            _ => 0,
        };
        double begin = _curve.RunDown + _curve.Toe;
        return count == 1 ? [_shape.Place] : [.. Enumerable.Range(0, count).Select(_ => begin + _curve.Elastic * _dice.Uniform(0.05, 0.95)).Order()];
    }

    private void Stop(double angle)
    {
        double torque = _curve.TorqueAt(angle);
        if (_feature == TraceFeature.Pause)
        {
            int count = (int)_dice.Uniform(20, 400);
            for (int i = 1; i <= count; i++) Held(angle, _shape.Paused((double)i / count));
            return;
        }

        bool isRatchet = _feature is TraceFeature.RatchetFixed or TraceFeature.RatchetWoundUp or TraceFeature.RatchetBack;
        double left = isRatchet ? 0 : 1 - _dice.Uniform(0.3, 1);
        int down = (int)_dice.Uniform(3, 20), up = (int)_dice.Uniform(5, 40);
        for (int i = 1; i <= down; i++) Held(angle, torque * (1 - (1 - left) * i / down));
        if (_feature == TraceFeature.RatchetBack)
        {
            double back = _dice.Uniform(15, 60);
            for (int i = 1; i <= 60; i++) Held(angle - back * i / 60, 0);
            for (int i = 59; i >= 0; i--) Held(angle - back * i / 60, 0.02 * torque);
        }

        for (int i = 1; i <= up; i++) Held(angle, torque * (left + (1 - left) * i / up));
    }

    private void Held(double angle, double torque)
    {
        Wait();
        Add(angle, torque);
    }

    private double Wait()
    {
        double step = (1 + _dice.Uniform(-0.4, 0.4)) / (_perDegree * _perSecond);
        if (!_dice.Chance(0.002)) _time += step;
        return step;
    }

    private void Add(double angle, double torque) => Write(angle + _windUp * torque, torque);

    private void Write(double angle, double torque)
    {
        _times.Add(Math.Round(_time, 6));
        _angles.Add(Math.Round(angle / _resolution) * _resolution);
        _torques.Add(torque + _noise * _dice.Normal());
    }

    /// <summary>What happens to the samples after they were taken.</summary>
    private void Spoil()
    {
        if (_feature == TraceFeature.OneWildAngle) _angles[(int)_dice.Uniform(1, _angles.Count - 1)] += (_dice.Chance(0.5) ? 1 : -1) * _dice.Uniform(10, 400);
        for (int i = 82; _feature == TraceFeature.Spikes && i < _torques.Count; i += 83) _torques[i] += (_dice.Chance(0.5) ? 1 : -1) * _curve.Peak * _dice.Uniform(0.5, 3);
        bool isAngleTurned = _feature is TraceFeature.LeftHand or TraceFeature.FallingAngle || (_feature == TraceFeature.LooseningNegative && _dice.Chance(0.5));
        bool isTorqueTurned = _feature is TraceFeature.LeftHand or TraceFeature.LooseningNegative;
        for (int i = 0; isAngleTurned && i < _angles.Count; i++) _angles[i] = -_angles[i];
        for (int i = 0; isTorqueTurned && i < _torques.Count; i++) _torques[i] = -_torques[i];
    }

    private ReadingTruth Truth()
    {
        double recorded = _feature == TraceFeature.LetGoCorrected ? 0 : _windUp, slope = _curve.Slope / (1 + recorded * _curve.Slope);
        double least = 0.5 * slope / (1 - recorded * 0.5 * slope), onset = _curve.Yields ? _curve.YieldOnset(least / _curve.Slope) : double.PositiveInfinity;
        bool isMoved = recorded > 0 || _feature is TraceFeature.Gasket or TraceFeature.ClimbingRunDown;
        return new ReadingTruth
        {
            IsTightening = _feature < TraceFeature.ConstantTorque,
            HasRunDown = _feature != TraceFeature.NoRunDown,
            Slope = slope,
            Snug = _curve.Snug + recorded * _curve.Prevailing - (_feature == TraceFeature.Gasket ? _shape.Lifted / _curve.Slope : 0),
            Yield = onset < _end ? onset + recorded * _curve.TorqueAt(onset) : null,
            IsYieldOpen = _feature == TraceFeature.Stripping || (onset < _end && onset > _end - FeaturedTrace.Window / 2),
            RunningTorque = _curve.Prevailing + (_feature == TraceFeature.ClimbingRunDown ? _shape.Lifted : 0),
            ShutOff = _end + recorded * _shape.TorqueAt(_end),
            Peak = _curve.Peak,
            SnugWithin = isMoved ? 4 : 2.5,
            SlopeWithin = _feature == TraceFeature.CoarseSampling ? 0.08 : 0.05,
            YieldWithin = recorded > 0 ? 8 : 6,
        };
    }
}
