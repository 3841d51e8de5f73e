using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The bolt as its stress in service needs it.</summary>
internal sealed class BoltInService
{
    private readonly Stated<Ratio> _residualTorsion;
    private readonly TorsionDistribution _torsion;
    private readonly Length? _waistDiameter;

    public BoltInService(FrictionTorqueModel tightening, BoltStrength strength, Ratio residualTorsion, TorsionDistribution torsion, Length? waistDiameter)
    {
        Model = Guard.NotNull(tightening);
        Strength = Guard.NotNull(strength).RequireFor(tightening.Thread, nameof(strength));
        _residualTorsion = new Stated<Ratio>(
            residualTorsion, Domains.Share.CheckNoneOrAtLeast(5, residualTorsion), "share of the torsion of tightening that stays");
        StressedSection.Of(tightening.Thread, torsion, waistDiameter);
        _torsion = torsion;
        _waistDiameter = waistDiameter;
    }

    public FrictionTorqueModel Model { get; }

    public BoltStrength Strength { get; }

    /// <summary>Equivalent stress, after tightening to a preload and under a force in the bolt.</summary>
    public Term StressAt(Term assemblyPreload, Term boltForce) => BoltStress.Service(
        StressedSection.Of(Model.Thread, _torsion, _waistDiameter), Model, assemblyPreload, boltForce, _residualTorsion.Term).VonMisesTerm;
}
