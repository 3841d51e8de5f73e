namespace Fastening.Tests.Traces;

/// <summary>What a feature adds to the torque of a curve, in closed form.</summary>
internal sealed class FeatureShape
{
    private readonly TraceFeature _feature;
    private readonly double _size;
    private readonly double _width;
    private readonly double _retake;
    private readonly double _bump;

    public FeatureShape(TraceFeature feature, KnownCurve curve, Dice dice)
    {
        (_feature, Curve) = (feature, curve);
        Place = curve.RunDown + curve.Toe + curve.Elastic * dice.Uniform(0.1, feature == TraceFeature.ZeroTorque ? 0.7 : 0.9);
        AtPlace = curve.TorqueAt(Place);
        _retake = dice.Uniform(2, 4);
        (_size, _width) = feature switch
        {
            TraceFeature.Dip => (dice.Uniform(0.1, 0.6), dice.Uniform(1, 5)),
            TraceFeature.ChangeOfSpeed => (dice.Uniform(-0.04, 0.25), 0.5),
            TraceFeature.LastingDrop => (dice.Uniform(0.08, 0.3), 0.3),
            TraceFeature.HealingBreak => (dice.Uniform(0.08, 0.3), dice.Uniform(2, 12)),
            TraceFeature.ZeroTorque => (1, dice.Uniform(2, 8)),
            TraceFeature.RunDownBump => (dice.Uniform(0.2, 0.9) * curve.Peak, dice.Uniform(5, 40)),
            TraceFeature.ClimbingRunDown => (dice.Uniform(0.02, 0.12) * curve.Peak / 360, 0),
            TraceFeature.Gasket => (dice.Uniform(0.1, 0.3) * curve.Slope, dice.Uniform(20, 60)),
            TraceFeature.Stripping => (dice.Uniform(0.05, 0.45), dice.Uniform(5, 30)),
            TraceFeature.Pause => (dice.Uniform(0, 0.08), 1),
            _ => (0, 0),
        };
        _bump = dice.Uniform(5, Math.Max(curve.RunDown - _width - 5, 5));
    }

    public KnownCurve Curve { get; }

    /// <summary>Where it happens on the straight part.</summary>
    public double Place { get; }

    public double AtPlace { get; }

    /// <summary>Torque that a climbing run-down or a soft layer adds to the line.</summary>
    public double Lifted => _feature switch
    {
        TraceFeature.ClimbingRunDown => _size * Curve.RunDown,
        TraceFeature.Gasket => _size * _width,
        _ => 0,
    };

    public double TorqueAt(double angle)
    {
        double torque = Curve.TorqueAt(angle), x = angle - Place;
        switch (_feature)
        {
            case TraceFeature.Gasket: return torque + _size * Math.Clamp(angle - Curve.RunDown + _width, 0, _width);
            case TraceFeature.ClimbingRunDown: return torque + _size * Math.Min(angle, Curve.RunDown);
            case TraceFeature.RunDownBump: return torque + _size * Hump(angle - _bump);
        }

        if (x < 0) return torque;
        return _feature switch
        {
            TraceFeature.Dip => torque - _size * AtPlace * Hump(x),
            TraceFeature.ChangeOfSpeed => torque - Stepped(x),
            TraceFeature.LastingDrop => torque - _size * AtPlace * Math.Min(x / _width, 1),
            TraceFeature.HealingBreak => torque - _size * AtPlace * (x < 0.3 ? x / 0.3 : Math.Max(1 - (x - 0.3) / _width, 0)),
            TraceFeature.ZeroTorque => x < _width ? 0 : torque,
            TraceFeature.Stripping => AtPlace * (1 - (1 - _size) * Math.Min(x / _width, 1)),
            TraceFeature.Pause => torque - _size * AtPlace * Math.Max(1 - x / _width, 0),
            _ => torque,
        };
    }

    /// <summary>Torque after a pause of which a share is over.</summary>
    public double Paused(double share) => AtPlace * (1 - _size * share);

    private double Hump(double x) => x <= 0 || x >= _width ? 0 : Math.Pow(Math.Sin(Math.PI * x / _width), 2);

    private double Stepped(double x)
    {
        double step = _size * AtPlace, back = (_size > 0 ? _retake - 1 : 0.5) * Curve.Slope;
        if (x < _width) return step * x / _width;
        return Math.Sign(step) * Math.Max(Math.Abs(step) - back * (x - _width), 0);
    }
}
