using Fastening.Equations;
using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>Permitted loads of bolt, thread and clamped parts: the available side of the checks. A check without its limit is reported as not assessed.</summary>
/// <remarks>
/// Strengths are those at room temperature and are used up to 100 °C. Above, a check of strength is not assessed unless the strength is stated for the
/// temperature: of the bolt with <see cref="WithHotBolt"/>, of all else with <see cref="WithStrengthsUpTo"/>.
/// </remarks>
/// <example><code>JointCapacity capacity = JointCapacity.NothingStated
///     .WithPermittedPreload(model.PermittedPreload(strength, utilisation: Ratio.FromPercent(90)))
///     .WithBolt(model, strength, residualTorsion: Ratio.FromPercent(50))
///     .WithHeadBearing(BearingSurface.ForHexagonHead(thread), Pressure.FromMegapascals(490));</code></example>
public sealed class JointCapacity
{
    /// <summary>Degrees Celsius up to which strengths at room temperature are used.</summary>
    internal const double HottestOfRoomStrength = 100;

    private JointCapacity()
    {
    }

    private JointCapacity(JointCapacity other)
    {
        StatedPreload = other.StatedPreload;
        Bolt = other.Bolt;
        StatedAmplitude = other.StatedAmplitude;
        Head = other.Head;
        Nut = other.Nut;
        IsWithoutNut = other.IsWithoutNut;
        Engagement = other.Engagement;
        HotBolt = other.HotBolt;
        StrengthsUpToSi = other.StrengthsUpToSi;
    }

    /// <summary>Nothing is stated: every check of strength stays open.</summary>
    public static JointCapacity NothingStated { get; } = new();

    /// <summary>Permitted assembly preload; null when not stated.</summary>
    public Force? PermittedPreload => PermittedPreloadTerm is Term preload ? Si.Force(preload) : null;

    /// <summary>Permitted amplitude of the stress in the thread; null when not stated.</summary>
    public Pressure? PermittedAmplitude => PermittedAmplitudeTerm is Term amplitude ? Si.Pressure(amplitude) : null;

    /// <summary>The engaged thread; null when not stated.</summary>
    public EngagementStrength? Engagement { get; private init; }

    /// <summary>Yield strength of the hot bolt; null when not stated.</summary>
    public HotStrength? HotBolt { get; private init; }

    /// <summary>Temperature up to which permitted pressures, permitted amplitude and engaged thread are stated; 100 °C unless stated.</summary>
    public Temperature StrengthsUpTo => Si.Temperature(StrengthsUpToSi);

    internal double StrengthsUpToSi { get; private init; } = HottestOfRoomStrength;

    internal Term? PermittedPreloadTerm => StatedPreload?.Term;

    internal Term? PermittedAmplitudeTerm => StatedAmplitude?.Term;

    private Held<Force>? StatedPreload { get; init; }

    private Held<Pressure>? StatedAmplitude { get; init; }

    internal BoltInService? Bolt { get; private init; }

    internal Face? Head { get; private init; }

    internal Face? Nut { get; private init; }

    internal bool IsWithoutNut { get; private init; }

    /// <summary>The same with a permitted assembly preload: F_Mzul of VDI 2230, or a rule of <see cref="PublishedPreload"/>.</summary>
    /// <param name="preload">The preload that no bolt may pass while tightening.</param>
    /// <returns>A new capacity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The preload is outside its domain.</exception>
    /// <example><code>capacity.WithPermittedPreload(model.PermittedPreload(strength, utilisation: Ratio.FromPercent(90)))</code></example>
    public JointCapacity WithPermittedPreload(Force preload) => new(this) { StatedPreload = new Held<Force>(new(preload, Domains.Force.Check(preload), "permitted preload")) };

    /// <summary>The same with the bolt, for its stress in service.</summary>
    /// <param name="tightening">
    /// The model whose thread torque twists the bolt. After tightening by torque give the friction that goes with the highest preload, the lowest; after
    /// tightening by rotation, where friction does not limit the preload, the highest thread friction.
    /// </param>
    /// <param name="strength">Strength of the bolt.</param>
    /// <param name="residualTorsion">
    /// Share k_τ of the torsion of tightening that stays: 50 % by VDI 2230-1:2015 (from memory), 100 % while tightening, 0 % when tensioned.
    /// </param>
    /// <param name="torsion">Distribution of the torsion; plastic (VDI 2230 since 2001) by default.</param>
    /// <param name="waistDiameter">Least shank diameter, when it may be below the stress diameter.</param>
    /// <returns>A new capacity.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The strength was looked up for another size.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its domain.</exception>
    /// <example><code>capacity.WithBolt(model, strength, residualTorsion: Ratio.FromPercent(50))</code></example>
    public JointCapacity WithBolt(
        FrictionTorqueModel tightening, BoltStrength strength, Ratio residualTorsion,
        TorsionDistribution torsion = TorsionDistribution.Plastic, Length? waistDiameter = null) => new(this)
        {
            Bolt = new BoltInService(tightening, strength, residualTorsion, torsion, waistDiameter),
        };

    /// <summary>The same with the yield strength of the bolt at temperature, for its stress in service.</summary>
    /// <remarks>
    /// Used when the bolt gets warmer than 35 °C, up to the temperature for which it is stated. Above 100 °C the stress in service is not assessed without
    /// it; up to 100 °C the strength at room temperature serves without it, although the annex of ISO 898-1 already has 590 MPa for class 8.8 at 100 °C.
    /// </remarks>
    /// <param name="strength">The strength at the highest temperature of the bolt: looked up (<see cref="BoltStrength.AtTemperature"/>) or stated.</param>
    /// <returns>A new capacity.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="strength"/> is null.</exception>
    /// <example><code>capacity.WithHotBolt(strength.AtTemperature(Temperature.FromDegreesCelsius(200)))</code></example>
    public JointCapacity WithHotBolt(HotStrength strength) => new(this) { HotBolt = Guard.NotNull(strength) };

    /// <summary>The same with permitted pressures, permitted amplitude and engaged thread that hold up to a temperature.</summary>
    /// <remarks>What is stated is then that at temperature: none of it is reduced here. The yield strength of the bolt is <see cref="WithHotBolt"/>.</remarks>
    /// <param name="temperature">The highest temperature of bolt and parts for which they are stated, 20 to 1000 °C.</param>
    /// <returns>A new capacity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its domain.</exception>
    /// <example><code>capacity.WithStrengthsUpTo(Temperature.FromDegreesCelsius(200))</code></example>
    public JointCapacity WithStrengthsUpTo(Temperature temperature) => new(this) { StrengthsUpToSi = Domains.HotTemperature.Check(temperature) };

    /// <summary>The same with a permitted amplitude of the alternating stress, related to the stress area of the thread.</summary>
    /// <param name="amplitude">The amplitude, half of the range, from a test or a standard.</param>
    /// <returns>A new capacity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The amplitude is outside 1 kPa to 100 GPa.</exception>
    /// <example><code>capacity.WithPermittedAmplitude(Pressure.FromMegapascals(42))</code></example>
    public JointCapacity WithPermittedAmplitude(Pressure amplitude) => new(this) { StatedAmplitude = new Held<Pressure>(new(amplitude, Domains.Stress.Check(amplitude), "permitted amplitude")) };

    /// <summary>The same with the face under the head.</summary>
    /// <param name="surface">The face; a ring, not an effective diameter alone.</param>
    /// <param name="permitted">Permitted pressure of the softer of both materials, p_G.</param>
    /// <returns>A new capacity.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="surface"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is outside 1 kPa to 100 GPa.</exception>
    /// <example><code>capacity.WithHeadBearing(BearingSurface.ForHexagonHead(thread), Pressure.FromMegapascals(490))</code></example>
    public JointCapacity WithHeadBearing(BearingSurface surface, Pressure permitted) =>
        new(this) { Head = new Face(Guard.NotNull(surface), new Stated<Pressure>(permitted, Domains.Stress.Check(permitted), "permitted pressure under the head")) };

    /// <summary>The same with the face under the nut; <see cref="Joint.Assess"/> refuses it where the bolt sits in a tapped part.</summary>
    /// <param name="surface">The face; a ring, not an effective diameter alone.</param>
    /// <param name="permitted">Permitted pressure of the softer of both materials, p_G.</param>
    /// <returns>A new capacity.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="surface"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is outside 1 kPa to 100 GPa.</exception>
    /// <example><code>capacity.WithNutBearing(BearingSurface.ForHexagonNut(thread), Pressure.FromMegapascals(410))</code></example>
    public JointCapacity WithNutBearing(BearingSurface surface, Pressure permitted) =>
        new(this) { Nut = new Face(Guard.NotNull(surface), new Stated<Pressure>(permitted, Domains.Stress.Check(permitted), "permitted pressure under the nut")), IsWithoutNut = false };

    /// <summary>The same without a nut: the bolt sits in a tapped part, and the pressure under a nut is no check of this joint.</summary>
    /// <remarks>
    /// Needed only where neither bolt nor clamped parts decide it: a textbook bolt with the fit by Wileman or with frusta from both ends. A bolt that
    /// was <see cref="BoltCompliance.TappedInto"/> a part and a cone of <see cref="JointForm.TappedThread"/> state it themselves; where they state that
    /// there is a nut, <see cref="Joint.Assess"/> refuses this.
    /// </remarks>
    /// <returns>A new capacity.</returns>
    /// <example><code>JointCapacity capacity = JointCapacity.NothingStated.WithoutNut();     // textbook bolt, ShigleyFrusta over BoltCompliance.TappedGrip</code></example>
    public JointCapacity WithoutNut() => new(this) { Nut = null, IsWithoutNut = true };

    /// <summary>The same with the engaged thread.</summary>
    /// <param name="engagement">The strength of bolt and threads in engagement.</param>
    /// <returns>A new capacity.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="engagement"/> is null.</exception>
    /// <example><code>capacity.WithEngagement(engaged)</code></example>
    public JointCapacity WithEngagement(EngagementStrength engagement) => new(this) { Engagement = Guard.NotNull(engagement) };

    /// <summary>A bearing face and the pressure that it bears.</summary>
    internal sealed record Face(BearingSurface Surface, Stated<Pressure> Permitted);
}
