using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Lowest and highest preload at a torque as spaceflight documents reckon them: uncertainty of the method, then relaxation.</summary>
/// <remarks>
/// Both start from the nominal preload of the model, T/(K d) for a nut factor, and agree on the highest, (1 + Γ) of it. They read the 5 % of
/// relaxation differently: TM-106943 divides by 1.05 (0.714 at Γ = 25 %), NASA-STD-5020 takes it off the lowest preload (0.7125). Thermal
/// change, creep and embedding under load are not included.
/// </remarks>
/// <example><code>Range&lt;Force&gt; range = SpaceflightPreload.ByTm106943(
///     TorquePreloadModel.FromNutFactor(0.2, Length.FromInches(0.25)), Torque.FromPoundForceInches(90), preloadVariation: Ratio.FromPercent(25));</code></example>
public static class SpaceflightPreload
{
    private const double RelaxationOfTm106943 = 0.05;

    private static readonly Domain<Ratio> ShareDomain = new(0, 1, highOpen: true);

    /// <summary>Lowest and highest preload by NASA TM-106943 (1995), eqs. (14) to (16): (1 − Γ)F/1.05 and (1 + Γ)F.</summary>
    /// <param name="model">Torque and nominal preload.</param>
    /// <param name="torque">Torque at the fastener.</param>
    /// <param name="preloadVariation">Γ: all preloads at a torque are taken to lie within ± Γ of the nominal one; a limit, no standard uncertainty; 0 to below 100 %; the memorandum takes 25 %. Never defaulted.</param>
    /// <returns>The range; the relaxation of 5 % is counted in its lower end.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="model"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>SpaceflightPreload.ByTm106943(model, Torque.FromNewtonMeters(150), preloadVariation: Ratio.FromPercent(25)).Low</code></example>
    public static Range<Force> ByTm106943(TorquePreloadModel model, Torque torque, Ratio preloadVariation)
    {
        Term nominal = Nominal(model, torque), share = ShareDomain.Argument(preloadVariation);
        return Range(ScatterEquations.RelaxedPreloadOfTm106943Equation.Of(share, nominal, Term.Given(RelaxationOfTm106943, "relaxation of NASA TM-106943")), share, nominal);
    }

    /// <summary>Lowest and highest preload by NASA-STD-5020 (as stated in J. Failure Analysis and Prevention 19, 2019): (1 − Γ)F less relaxation, and (1 + Γ)F.</summary>
    /// <param name="model">Torque and nominal preload.</param>
    /// <param name="torque">Torque at the fastener.</param>
    /// <param name="preloadVariation">Γ: all preloads at a torque are taken to lie within ± Γ of the nominal one; a limit, no standard uncertainty; 0 to below 100 %: 35 % unlubricated, 25 % lubricated in that statement.</param>
    /// <param name="relaxation">Relaxation as a share of the lowest preload, 0 to below 100 %; 5 % where no test says otherwise (from memory).</param>
    /// <returns>The range; the relaxation is counted in its lower end.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="model"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>SpaceflightPreload.ByNasaStd5020(model, Torque.FromNewtonMeters(150), preloadVariation: Ratio.FromPercent(25), relaxation: Ratio.FromPercent(5))</code></example>
    public static Range<Force> ByNasaStd5020(TorquePreloadModel model, Torque torque, Ratio preloadVariation, Ratio relaxation)
    {
        Term nominal = Nominal(model, torque), share = ShareDomain.Argument(preloadVariation);
        return Range(ScatterEquations.RelaxedPreloadEquation.Of(share, nominal, ShareDomain.Argument(relaxation)), share, nominal);
    }

    private static Term Nominal(TorquePreloadModel model, Torque torque) =>
        TorqueEquations.PreloadEquation.Of(Domains.Torque.Argument(torque), Guard.NotNull(model).PrevailingTerm, model.ArmTerm);

    private static Range<Force> Range(Term lowest, Term share, Term nominal) =>
        new((Si.Force(lowest), Si.Force(ScatterEquations.HighestPreloadEquation.Of(share, nominal))));
}
