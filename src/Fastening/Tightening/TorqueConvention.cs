using Fastening.Internals;

namespace Fastening;

/// <summary>A named bundle of the choices on which handbooks differ: form, flank section, mean thread diameter, diameter of the bearing friction.</summary>
/// <remarks>
/// Any published torque can be reproduced by naming its convention; mixing them is how two right tables disagree. The convention brings the
/// diameter of the bearing friction with it: mean (ISO 16047, VDI 2230), uniform pressure (Machinery's Handbook, JIS) or 1.25 d (Shigley,
/// TM-106943). A surface that states its own (<see cref="BearingSurface.OfDiameter"/>, <see cref="BearingSurface.ForShigleyCollar"/>,
/// <see cref="BearingSurface.Sphere"/>, <see cref="BearingSurface.WithUniformPressure"/>) keeps it under every convention.
/// </remarks>
/// <example><code>FrictionTorqueModel printed = model.WithConvention(TorqueConvention.Vdi2230);</code></example>
public sealed class TorqueConvention
{
    private TorqueConvention(string name, TorqueForm form, FlankSection flankSection, MeanThreadDiameter meanDiameter, BearingRule bearing)
    {
        Name = name;
        Form = form;
        FlankSection = flankSection;
        MeanDiameter = meanDiameter;
        Bearing = bearing;
    }

    /// <summary>Linear form, axial flank section, pitch diameter: ISO 16047:2005 (from memory). The default of every model.</summary>
    public static TorqueConvention Iso16047 { get; } =
        new("ISO 16047", TorqueForm.Linear, FlankSection.Axial, MeanThreadDiameter.PitchDiameter, BearingRule.MeanDiameter);

    /// <summary>The evaluation as ISO 16047:2005 prints it, with 0.577 for 1/(2 cos 30°) (from memory): 60° threads with one start.</summary>
    public static TorqueConvention Iso16047Printed { get; } =
        new("ISO 16047, printed", TorqueForm.PrintedIso16047, FlankSection.Axial, MeanThreadDiameter.PitchDiameter, BearingRule.MeanDiameter);

    /// <summary>
    /// The rounded coefficients that VDI 2230-1:2015 §5.4.3 (R13, clause from memory) prints for the tightening torque; about 0.25 % above the
    /// linear form in the whole torque. The stress while tightening keeps P/π and 1/cos 30°, as VDI 2230 does there (R7, from memory).
    /// </summary>
    public static TorqueConvention Vdi2230 { get; } =
        new("VDI 2230, printed", TorqueForm.Printed, FlankSection.Axial, MeanThreadDiameter.PitchDiameter, BearingRule.MeanDiameter);

    private static TorqueConvention VdiStress { get; } =
        new("VDI 2230, stress", TorqueForm.Linear, FlankSection.Axial, MeanThreadDiameter.PitchDiameter, BearingRule.MeanDiameter);

    /// <summary>
    /// Linear form with the flank angle in the normal section and bearing friction under uniform pressure: Machinery's Handbook, 31st ed.
    /// (2020), p. 1665, and JIS B 1083.
    /// </summary>
    public static TorqueConvention MachinerysHandbook { get; } =
        new("Machinery's Handbook / JIS", TorqueForm.Linear, FlankSection.Normal, MeanThreadDiameter.PitchDiameter, BearingRule.UniformPressure);

    /// <summary>
    /// Exact form on the textbook mean diameter: Shigley, 9th ed. (2011), §8-2. Bearing friction acts at 1.25 d under a standard head or nut
    /// (eq. (8-26)), at the mean diameter of a ring that was stated.
    /// </summary>
    public static TorqueConvention Shigley { get; } =
        new("Shigley", TorqueForm.Exact, FlankSection.Axial, MeanThreadDiameter.MajorAndRoot, BearingRule.TextbookCollar);

    /// <summary>The same choices as Shigley's: NASA TM-106943 (1995), Preloaded Joint Analysis Methodology for Space Flight Systems.</summary>
    public static TorqueConvention NasaTm106943 { get; } =
        new("NASA TM-106943", TorqueForm.Exact, FlankSection.Axial, MeanThreadDiameter.MajorAndRoot, BearingRule.TextbookCollar);

    /// <summary>
    /// Exact form on the pitch diameter, flank angle in the axial section: the power screws of Mott, 4th ed. (2004), ch. 17, and of Khurmi and
    /// Gupta, ch. 17. Books that take the flank angle normal to the helix are this <see cref="WithFlankSection"/> (Normal).
    /// </summary>
    public static TorqueConvention PowerScrew { get; } =
        new("power screw", TorqueForm.Exact, FlankSection.Axial, MeanThreadDiameter.PitchDiameter, BearingRule.MeanDiameter);

    /// <summary>Every named convention, the default first.</summary>
    public static IReadOnlyList<TorqueConvention> Named { get; } =
        Array.AsReadOnly([Iso16047, Iso16047Printed, Vdi2230, MachinerysHandbook, Shigley, NasaTm106943, PowerScrew]);

    /// <summary>How the convention is called in printed work.</summary>
    public string Name { get; }

    /// <summary>How thread torque depends on friction.</summary>
    public TorqueForm Form { get; }

    /// <summary>The section in which the flank angle enters.</summary>
    public FlankSection FlankSection { get; }

    /// <summary>The diameter at which thread friction acts.</summary>
    public MeanThreadDiameter MeanDiameter { get; }

    /// <summary>The diameter at which bearing friction acts, where the surface leaves it open.</summary>
    public BearingRule Bearing { get; }

    /// <summary>The same convention with another form.</summary>
    /// <param name="form">The form.</param>
    /// <returns>A new convention, named after the change.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="form"/> is not a value of the enumeration.</exception>
    /// <example><code>TorqueConvention.Iso16047.WithForm(TorqueForm.Exact)</code></example>
    public TorqueConvention WithForm(TorqueForm form)
    {
        if (form is < TorqueForm.Linear or > TorqueForm.PrintedIso16047) Refuse(nameof(form), (int)form, "Linear, Exact, Printed or PrintedIso16047");
        return new(Changed, form, FlankSection, MeanDiameter, Bearing);
    }

    /// <summary>The same convention with another flank section.</summary>
    /// <param name="flankSection">The section.</param>
    /// <returns>A new convention, named after the change.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="flankSection"/> is not a value of the enumeration.</exception>
    /// <example><code>TorqueConvention.Shigley.WithFlankSection(FlankSection.Normal)</code></example>
    public TorqueConvention WithFlankSection(FlankSection flankSection)
    {
        if (flankSection is < FlankSection.Axial or > FlankSection.Normal) Refuse(nameof(flankSection), (int)flankSection, "Axial or Normal");
        return new(Changed, Form, flankSection, MeanDiameter, Bearing);
    }

    /// <summary>The same convention with another mean thread diameter.</summary>
    /// <param name="meanDiameter">The diameter.</param>
    /// <returns>A new convention, named after the change.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="meanDiameter"/> is not a value of the enumeration.</exception>
    /// <example><code>TorqueConvention.Shigley.WithMeanDiameter(MeanThreadDiameter.PitchDiameter)</code></example>
    public TorqueConvention WithMeanDiameter(MeanThreadDiameter meanDiameter)
    {
        if (meanDiameter is < MeanThreadDiameter.PitchDiameter or > MeanThreadDiameter.MajorAndRoot)
        {
            Refuse(nameof(meanDiameter), (int)meanDiameter, "PitchDiameter or MajorAndRoot");
        }

        return new(Changed, Form, FlankSection, meanDiameter, Bearing);
    }

    /// <summary>The same convention with another diameter of the bearing friction.</summary>
    /// <param name="bearing">The rule.</param>
    /// <returns>A new convention, named after the change.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="bearing"/> is not a value of the enumeration.</exception>
    /// <example><code>TorqueConvention.Shigley.WithBearing(BearingRule.MeanDiameter)     // the ring of the head, not 1.25 d</code></example>
    public TorqueConvention WithBearing(BearingRule bearing)
    {
        if (bearing is < BearingRule.MeanDiameter or > BearingRule.TextbookCollar)
        {
            Refuse(nameof(bearing), (int)bearing, "MeanDiameter, UniformPressure or TextbookCollar");
        }

        return new(Changed, Form, FlankSection, MeanDiameter, bearing);
    }

    /// <inheritdoc />
    public override string ToString() => Name + ": " + Form switch
    {
        TorqueForm.Printed => "0.16 P + 0.58 d_2 µ",
        TorqueForm.PrintedIso16047 => "P/(2π) + 0.577 d_2 µ",
        TorqueForm.Linear => "linear form, " + Choices,
        _ => "exact form, " + Choices,
    } + Bearing switch
    {
        BearingRule.UniformPressure => ", bearing under uniform pressure",
        BearingRule.TextbookCollar => ", bearing at 1.25 d",
        _ => "",
    };

    /// <summary>The convention of the torque that twists the shank: VDI 2230 rounds its coefficients for the tightening torque alone.</summary>
    internal TorqueConvention InShank => Form == TorqueForm.Printed ? VdiStress : this;

    /// <summary>Whether the form has the flank angle of 60° threads and the pitch diameter built into its numbers.</summary>
    internal bool HasPrintedCoefficients => Form is TorqueForm.Printed or TorqueForm.PrintedIso16047;

    private string Choices =>
        (FlankSection == FlankSection.Axial ? "flank angle in the axial section, " : "flank angle normal to the helix, ")
        + (MeanDiameter == MeanThreadDiameter.PitchDiameter ? "pitch diameter" : "mean of major and root diameter");

    private string Changed => Name.EndsWith(", changed", StringComparison.Ordinal) ? Name : Name + ", changed";

    /// <summary>Printed coefficients hold for the thread they were printed for.</summary>
    internal static void RefuseUnlessItHolds(TorqueConvention convention, ScrewThread thread)
    {
        if (convention.HasPrintedCoefficients && (!thread.Standard.IsSixtyDegrees || convention.MeanDiameter != MeanThreadDiameter.PitchDiameter))
        {
            throw new ArgumentException(
                $"The printed form of {convention.Name} holds for 60° threads with one start and the pitch diameter only; for {thread} use the linear or the exact form.",
                nameof(convention));
        }
    }

    private static void Refuse(string name, int value, string permitted) => Guard.RefuseAgainst(name, value, permitted);
}
