using Fastening.Equations;
using Fastening.Quality;

namespace Fastening;

/// <summary>From torque and friction to preload: one function for the estimate, the draws and the corners.</summary>
internal sealed class PreloadChain : IColumnFunction
{
    private const double NewtonsPerKilonewton = 1e3;

    private readonly TorqueSide _torque;
    private readonly FrictionSide _friction;
    private readonly BandInput _prevailing;
    private readonly RotationGain? _rotation;
    private readonly List<BandInput> _inputs = [];

    public PreloadChain(TorqueSide torque, FrictionSide friction, BandInput prevailing, RotationGain? rotation, double frictionCorrelation)
    {
        _torque = torque;
        _friction = friction;
        _prevailing = prevailing;
        _rotation = rotation;
        double perTorque = Snug > 0 ? PreloadSensitivityEquations.PreloadPerTorque(friction.Middle) : 0;
        torque.AddTo(_inputs, perTorque / NewtonsPerKilonewton);
        friction.AddTo(_inputs, Snug / NewtonsPerKilonewton);
        prevailing.AddTo(_inputs, -perTorque / NewtonsPerKilonewton);
        rotation?.AddTo(_inputs, 1 / NewtonsPerKilonewton);
        Budget = MakeBudget(frictionCorrelation);
    }

    /// <summary>Preload with every input in the middle of its limits, in newtons.</summary>
    public double Middle => Snug + (_rotation?.Middle ?? 0);

    /// <summary>The budget of the preload in kilonewtons, with analytic sensitivities; inputs without scatter take no part.</summary>
    public UncertaintyBudget Budget { get; }

    /// <summary>Preload by torque alone: all of it, or that at the snug torque.</summary>
    private double Snug => TorqueEquations.Preload(_torque.Middle, _prevailing.Middle, _friction.Middle);

    /// <summary>u_κ/κ, from the friction's part in the budget: the preload by torque goes with 1/κ.</summary>
    public double RelativeArmUncertainty
    {
        get
        {
            int[] places = [.. Enumerable.Range(0, _inputs.Count).Where(i => _friction.Has(_inputs[i].Name))];
            double variance = places.Sum(i => places.Sum(j => Budget.Correlations[i, j] * Part(i) * Part(j)));
            return Snug > 0 ? Math.Sqrt(Math.Max(0, variance)) * NewtonsPerKilonewton / Snug : 0;

            double Part(int i) => Budget.Inputs[i].Sensitivity!.Value * Budget.Inputs[i].StandardUncertainty;
        }
    }

    /// <summary>Every input at the end that lowers or raises the preload, by the signs of the sensitivities; in newtons.</summary>
    public (double Low, double High) WorstCase()
    {
        (double lowTorque, double highTorque) = _torque.WorstCase();
        (double lowArm, double highArm) = _friction.WorstCase();
        (double lowGain, double highGain) = _rotation?.WorstCase() ?? (0, 0);
        return (TorqueEquations.Preload(lowTorque, _prevailing.High, highArm) + lowGain, TorqueEquations.Preload(highTorque, _prevailing.Low, lowArm) + highGain);
    }

    /// <summary>Change of the preload, in newtons, when one input goes from limit to limit and the others stay in the middle.</summary>
    public double Swing(string name)
    {
        string[] names = [.. _inputs.Select(input => input.Name)];
        int place = Array.IndexOf(names, name);
        return Math.Abs(At(_inputs[place].Limits.High) - At(_inputs[place].Limits.Low));

        double At(double limit)
        {
            double[] values = [.. Budget.Inputs.Select(input => input.Value)];
            values[place] = limit;
            return Kilonewtons(new InputValues(values, names)) * NewtonsPerKilonewton;
        }
    }

    /// <summary>Preloads of a block of draws, in kilonewtons.</summary>
    public void Evaluate(double[] columns, Span<double> results)
    {
        Span<double> arms = stackalloc double[InputSampler.Rows], prevailing = stackalloc double[InputSampler.Rows];
        _torque.Fill(columns, results);
        _friction.Fill(columns, arms.Slice(0, results.Length));
        _prevailing.Fill(columns, prevailing.Slice(0, results.Length));
        for (int i = 0; i < results.Length; i++) results[i] = TorqueEquations.Preload(results[i], prevailing[i], arms[i]) / NewtonsPerKilonewton;
        if (_rotation is null) return;
        Span<double> gains = arms.Slice(0, results.Length);
        _rotation.Fill(columns, gains);
        for (int i = 0; i < results.Length; i++) results[i] += gains[i] / NewtonsPerKilonewton;
    }

    private UncertaintyBudget MakeBudget(double frictionCorrelation)
    {
        UncertaintyBudget budget = UncertaintyBudget.Of(
            "preload", "kN", Kilonewtons, [.. _inputs.Select(input => input.Contribution!)]).WithColumns(this);
        (string thread, string bearing) = FrictionSide.OfCoefficients.Names;
        bool both = _inputs.Exists(input => input.Name == thread) && _inputs.Exists(input => input.Name == bearing);
        return both && frictionCorrelation != 0 ? budget.WithKnownCorrelations((thread, bearing, frictionCorrelation)) : budget;
    }

    /// <summary>One draw, by the same way as a block of them.</summary>
    private double Kilonewtons(InputValues x)
    {
        double[] columns = new double[_inputs.Count * InputSampler.Rows];
        for (int i = 0; i < _inputs.Count; i++) columns[i * InputSampler.Rows] = x[i];
        Span<double> one = stackalloc double[1];
        Evaluate(columns, one);
        return one[0];
    }
}
