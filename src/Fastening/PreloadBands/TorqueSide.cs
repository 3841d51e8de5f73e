using Fastening.Equations;
using Fastening.Internals;
using Fastening.Quality;
using UnitsNet;

namespace Fastening;

/// <summary>Where the torque at the fastener comes from, and how it scatters.</summary>
internal abstract class TorqueSide
{
    public abstract double Middle { get; }

    /// <summary>Torques at the fastener for a block of draws, in newton-metres.</summary>
    public abstract void Fill(double[] columns, Span<double> torques);

    /// <summary>The lowest and the highest torque at the fastener that the limits allow.</summary>
    public abstract (double Low, double High) WorstCase();

    public abstract void AddTo(List<BandInput> budget, double preloadPerTorque);

    /// <summary>A window at the fastener.</summary>
    internal sealed class AtFastener(ToleranceWindow<Torque> window, ScatterShape shape) : TorqueSide
    {
        private readonly BandInput _torque = new("torque (N·m)", window.Limits.Lower, window.Limits.Upper, shape);

        public override double Middle => _torque.Middle;

        public override void Fill(double[] columns, Span<double> torques) => _torque.Fill(columns, torques);

        public override (double Low, double High) WorstCase() => (_torque.Low, _torque.High);

        public override void AddTo(List<BandInput> budget, double preloadPerTorque) => _torque.AddTo(budget, preloadPerTorque, always: true);
    }

    /// <summary>A setting of a wrench, with the deviation of the wrench and the errors of its geometry.</summary>
    internal sealed class AtWrench : TorqueSide
    {
        private readonly BandInput _setting;
        private readonly BandInput _deviation;
        private readonly BandInput _lever;
        private readonly BandInput _pull;
        private readonly (BandInput Length, BandInput Angle)[] _adapters;
        private readonly TorqueWrench _wrench;
        private readonly bool _isFixed;

        public AtWrench(TorqueWrench wrench, Torque setting, ScatterShape shape, GeometryErrors errors)
        {
            _wrench = wrench;
            _isFixed = errors.IsNone;
            double step = wrench.Resolution is Torque resolution ? Si.Of(resolution) / 2 : 0;
            double percent = 100 * Si.Of(wrench.Accuracy!.Value);
            ScatterShape even = ScatterShape.Rectangular;
            _setting = new("setting (N·m)", Math.Max(0, Si.Of(setting) - step), Si.Of(setting) + step, even);
            _deviation = new("wrench deviation (%)", -percent, percent, shape, 0.01);
            _lever = Around("lever length (mm)", Si.Millimeters(wrench.LeverLength), errors.Lever, 1e-3);
            _pull = Around("pull off square (°)", Si.Of(wrench.PullOffSquare), errors.Pull, Si.RadiansPerDegree);
            _adapters = [.. wrench.Adapters.Select((adapter, i) => (
                Around(Print.Text($"adapter {i + 1} length (mm)"), Si.Millimeters(adapter.Length), errors.AdapterLength, 1e-3),
                Around(Print.Text($"adapter {i + 1} angle (°)"), Si.Of(adapter.AngleFromHandle), errors.AdapterAngle, Si.RadiansPerDegree)))];

            BandInput Around(string name, double middle, double error, double siPerUnit) => new(name, middle - error, middle + error, even, siPerUnit);
        }

        public override double Middle => WrenchEquations.FastenerTorque(_setting.Middle, _wrench.TorqueRatio);

        public override void Fill(double[] columns, Span<double> torques)
        {
            Span<double> deviations = stackalloc double[InputSampler.Rows], ratios = stackalloc double[InputSampler.Rows];
            _setting.Fill(columns, torques);
            _deviation.Fill(columns, deviations.Slice(0, torques.Length));
            FillRatios(columns, ratios.Slice(0, torques.Length));
            for (int i = 0; i < torques.Length; i++) torques[i] = WrenchEquations.FastenerTorque(torques[i], ratios[i]) / (1 + deviations[i]);
        }

        public override (double Low, double High) WorstCase()
        {
            (double low, double high) = WorstRatios();
            return (WrenchEquations.FastenerTorque(_setting.Low, Math.Max(low, 0)) / (1 + _deviation.High),
                WrenchEquations.FastenerTorque(_setting.High, high) / (1 + _deviation.Low));
        }

        public override void AddTo(List<BandInput> budget, double preloadPerTorque)
        {
            WrenchSensitivities slopes = _wrench.SensitivitiesAt(Si.Torque(_setting.Middle));
            _setting.AddTo(budget, preloadPerTorque * slopes.PerSetting, always: true);
            _deviation.AddTo(budget, -preloadPerTorque * Middle);
            _lever.AddTo(budget, preloadPerTorque * Si.Of(slopes.PerLeverLength));
            _pull.AddTo(budget, preloadPerTorque * Si.Of(slopes.PerPullAngle));
            for (int i = 0; i < _adapters.Length; i++)
            {
                _adapters[i].Length.AddTo(budget, preloadPerTorque * Si.Of(slopes.PerAdapterLength[i]));
                _adapters[i].Angle.AddTo(budget, preloadPerTorque * Si.Of(slopes.PerAdapterAngle[i]));
            }
        }

        private void FillRatios(double[] columns, Span<double> ratios)
        {
            ratios.Fill(_isFixed ? _wrench.TorqueRatio : 1);
            if (_isFixed) return;
            Span<double> levers = stackalloc double[InputSampler.Rows], pulls = stackalloc double[InputSampler.Rows];
            Span<double> lengths = stackalloc double[InputSampler.Rows], angles = stackalloc double[InputSampler.Rows];
            _lever.Fill(columns, levers.Slice(0, ratios.Length));
            _pull.Fill(columns, pulls.Slice(0, ratios.Length));
            foreach ((BandInput length, BandInput angle) in _adapters)
            {
                length.Fill(columns, lengths.Slice(0, ratios.Length));
                angle.Fill(columns, angles.Slice(0, ratios.Length));
                for (int i = 0; i < ratios.Length; i++) ratios[i] = WrenchEquations.TorqueRatio(ratios[i], lengths[i], angles[i], levers[i], pulls[i]);
            }
        }

        /// <summary>
        /// Corners, exact: at a given pull every adapter reaches its own extreme, at an end of its angle or where it points along the pull;
        /// over the pull the highest of such sums is convex in tan β and the lowest concave, so that both lie at an end of the pull.
        /// </summary>
        private (double Low, double High) WorstRatios()
        {
            double low = double.PositiveInfinity, high = double.NegativeInfinity;
            foreach (double pull in new[] { _pull.Low, _pull.High })
            {
                (double least, double greatest) = (0, 0);
                foreach ((BandInput length, BandInput angle) in _adapters)
                {
                    (double lowest, double highest) = Cosines(angle.Low + pull, angle.High + pull);
                    least += Math.Min(length.Low * lowest, length.High * lowest) / Math.Cos(pull);
                    greatest += Math.Max(length.Low * highest, length.High * highest) / Math.Cos(pull);
                }

                low = Math.Min(low, Math.Min(least / _lever.Low, least / _lever.High));
                high = Math.Max(high, Math.Max(greatest / _lever.Low, greatest / _lever.High));
            }

            return (1 + low, 1 + high);
        }

        private static (double Low, double High) Cosines(double from, double to)
        {
            double a = Math.Cos(from), b = Math.Cos(to);
            bool HoldsMultiple(double offset) => Math.Floor((to - offset) / (2 * Math.PI)) >= Math.Ceiling((from - offset) / (2 * Math.PI));
            return (HoldsMultiple(Math.PI) ? -1 : Math.Min(a, b), HoldsMultiple(0) ? 1 : Math.Max(a, b));
        }
    }
}
