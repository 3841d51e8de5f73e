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
/// <example><code>PreloadRange range = SpaceflightPreload.ByTm106943(
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
    /// <example><code>SpaceflightPreload.ByTm106943(model, Torque.FromNewtonMeters(150), preloadVariation: Ratio.FromPercent(25)).Minimum</code></example>
    public static PreloadRange ByTm106943(TorquePreloadModel model, Torque torque, Ratio preloadVariation)
    {
        double nominal = Si.Of(Guard.NotNull(model).PreloadAt(torque));
        double share = ShareDomain.Check(preloadVariation);
        return new PreloadRange(
            ScatterEquations.RelaxedPreloadOfTm106943(share, nominal, RelaxationOfTm106943), ScatterEquations.HighestPreload(share, nominal));
    }

    /// <summary>The work behind the lowest preload of <see cref="ByTm106943"/>; its last step is that preload, bit for bit.</summary>
    /// <param name="model">Torque and nominal preload.</param>
    /// <param name="torque">Torque at the fastener.</param>
    /// <param name="preloadVariation">Γ: all preloads at a torque are taken to lie within ± Γ of the nominal one; a limit, no standard uncertainty; 0 to below 100 %.</param>
    /// <returns>The steps.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="model"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>Console.WriteLine(SpaceflightPreload.DeriveMinimumByTm106943(model, Torque.FromNewtonMeters(150), Ratio.FromPercent(25)));</code></example>
    public static Derivation DeriveMinimumByTm106943(TorquePreloadModel model, Torque torque, Ratio preloadVariation)
    {
        Derivation work = DeriveNominal("Lowest preload by NASA TM-106943", Guard.NotNull(model), torque);
        ScatterEquations.RelaxedPreloadOfTm106943Equation.Step(work, ShareDomain.Check(preloadVariation), work.Result, RelaxationOfTm106943);
        return work.KeepWhatCounts();
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
    public static PreloadRange ByNasaStd5020(TorquePreloadModel model, Torque torque, Ratio preloadVariation, Ratio relaxation)
    {
        double nominal = Si.Of(Guard.NotNull(model).PreloadAt(torque));
        double share = ShareDomain.Check(preloadVariation);
        return new PreloadRange(
            ScatterEquations.RelaxedPreload(share, nominal, ShareDomain.Check(relaxation)), ScatterEquations.HighestPreload(share, nominal));
    }

    /// <summary>The work behind the lowest preload of <see cref="ByNasaStd5020"/>; its last step is that preload, bit for bit.</summary>
    /// <param name="model">Torque and nominal preload.</param>
    /// <param name="torque">Torque at the fastener.</param>
    /// <param name="preloadVariation">Γ: all preloads at a torque are taken to lie within ± Γ of the nominal one; a limit, no standard uncertainty; 0 to below 100 %.</param>
    /// <param name="relaxation">Relaxation as a share of the lowest preload, 0 to below 100 %.</param>
    /// <returns>The steps.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="model"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>Console.WriteLine(SpaceflightPreload.DeriveMinimumByNasaStd5020(model, Torque.FromNewtonMeters(150), Ratio.FromPercent(25),
    ///     Ratio.FromPercent(5)));</code></example>
    public static Derivation DeriveMinimumByNasaStd5020(TorquePreloadModel model, Torque torque, Ratio preloadVariation, Ratio relaxation)
    {
        Derivation work = DeriveNominal("Lowest preload by NASA-STD-5020", Guard.NotNull(model), torque);
        ScatterEquations.RelaxedPreloadEquation.Step(
            work, ShareDomain.Check(preloadVariation), work.Result, ShareDomain.Check(relaxation));
        return work.KeepWhatCounts();
    }

    private static Derivation DeriveNominal(string title, TorquePreloadModel model, Torque torque)
    {
        var work = new Derivation(title);
        foreach (DerivationStep step in model.DerivePreloadAt(torque).Steps) work.Add(step.Equation, step.Result, [.. step.Inputs]);
        return work;
    }
}
