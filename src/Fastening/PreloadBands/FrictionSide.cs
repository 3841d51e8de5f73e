using Fastening.Equations;
using Fastening.Internals;
using Fastening.Quality;

namespace Fastening;

/// <summary>Torque per unit preload κ, and how it scatters.</summary>
internal abstract class FrictionSide
{
    public abstract double Middle { get; }

    /// <summary>What is unusual in the range.</summary>
    public abstract IReadOnlyList<PlausibilityRemark> Remarks { get; }

    /// <summary>κ of a block of draws, in metres.</summary>
    public abstract void Fill(double[] columns, Span<double> arms);

    public abstract (double Low, double High) WorstCase();

    public abstract void AddTo(List<BandInput> budget, double preload);

    /// <summary>Whether an input of the budget is one of these.</summary>
    public abstract bool Has(string input);

    /// <summary>From a nut factor.</summary>
    internal sealed class OfNutFactor(double low, double high, double diameter, ScatterShape shape) : FrictionSide
    {
        private readonly BandInput _factor = new("K", low, high, shape);

        public override double Middle => Arm(_factor.Middle);

        public override IReadOnlyList<PlausibilityRemark> Remarks => TorquePreloadRange.NutFactorRemarks(_factor.Low, _factor.High);

        public override void Fill(double[] columns, Span<double> arms)
        {
            _factor.Fill(columns, arms);
            for (int i = 0; i < arms.Length; i++) arms[i] = Arm(Math.Max(arms[i], Domains.NutFactor.Low));
        }

        public override (double Low, double High) WorstCase() => (Arm(_factor.Low), Arm(_factor.High));

        public override void AddTo(List<BandInput> budget, double preload) =>
            _factor.AddTo(budget, PreloadSensitivityEquations.PreloadPerNutFactor(preload, _factor.Middle));

        public override bool Has(string input) => input == _factor.Name;

        private double Arm(double factor) => TorqueEquations.NutFactorArm(factor, diameter);
    }

    /// <summary>From two coefficients of friction and the effective diameter of the bearing surface.</summary>
    internal sealed class OfCoefficients : FrictionSide
    {
        private readonly ThreadLaw _law;
        private readonly double _radius;
        private readonly double _radiusPerDiameter;
        private readonly BandInput _thread;
        private readonly BandInput _bearing;
        private readonly BandInput _bearingDiameter;

        public OfCoefficients(FrictionTorqueModel model, FrictionRange range, ScatterShape shape, double diameterError)
        {
            Remarks = range.Remarks;
            _law = model.Arms.Law;
            _radius = model.Bearing.FrictionRadius.Value;
            double diameter = Si.Of(model.Bearing.EffectiveDiameter);
            _radiusPerDiameter = _radius / diameter;
            _thread = new("µ_th", range.Low.Thread, range.High.Thread, shape);
            _bearing = new("µ_b", range.Low.Bearing, range.High.Bearing, shape);
            _bearingDiameter = new("D_b (mm)", 1e3 * diameter - diameterError, 1e3 * diameter + diameterError, ScatterShape.Rectangular, 1e-3);
        }

        public static (string Thread, string Bearing) Names => ("µ_th", "µ_b");

        public override double Middle => Arm(_thread.Middle, _bearing.Middle, _bearingDiameter.Middle);

        public override IReadOnlyList<PlausibilityRemark> Remarks { get; }

        /// <summary>A draw of a normal friction below zero counts as no friction.</summary>
        public override void Fill(double[] columns, Span<double> arms)
        {
            Span<double> bearings = stackalloc double[InputSampler.Rows], diameters = stackalloc double[InputSampler.Rows];
            _thread.Fill(columns, arms);
            _bearing.Fill(columns, bearings.Slice(0, arms.Length));
            _bearingDiameter.Fill(columns, diameters.Slice(0, arms.Length));
            for (int i = 0; i < arms.Length; i++) arms[i] = Arm(Math.Max(arms[i], 0), Math.Max(bearings[i], 0), diameters[i]);
        }

        public override (double Low, double High) WorstCase() =>
            (Arm(_thread.Low, _bearing.Low, _bearingDiameter.Low), Arm(_thread.High, _bearing.High, _bearingDiameter.High));

        public override void AddTo(List<BandInput> budget, double preload)
        {
            double arm = Middle;
            double perBearing = PreloadSensitivityEquations.PreloadPerBearingFriction(preload, _radius, arm);
            _thread.AddTo(budget, PreloadSensitivityEquations.PreloadPerThreadFriction(preload, _law.RadiusAt(_thread.Middle), arm));
            _bearing.AddTo(budget, perBearing);
            _bearingDiameter.AddTo(budget, perBearing * _bearing.Middle / _bearingDiameter.Middle);
        }

        public override bool Has(string input) => input == _thread.Name || input == _bearing.Name || input == _bearingDiameter.Name;

        private double Arm(double thread, double bearing, double bearingDiameter) =>
            TorqueEquations.TorqueArm(_law.Jams(thread) ? double.PositiveInfinity : _law.ArmAt(thread), bearing * (_radiusPerDiameter * bearingDiameter));
    }
}
