namespace Fastening;

/// <summary>A named bundle of the choices on which handbooks differ: form, flank section, mean thread diameter.</summary>
/// <remarks>Any published torque can be reproduced by naming its convention; mixing them is how two right tables disagree.</remarks>
/// <example><code>FrictionTorqueModel printed = model.WithConvention(TorqueConvention.Vdi2230);</code></example>
public sealed class TorqueConvention
{
    private TorqueConvention(string name, TorqueForm form, FlankSection flankSection, MeanThreadDiameter meanDiameter)
    {
        Name = name;
        Form = form;
        FlankSection = flankSection;
        MeanDiameter = meanDiameter;
    }

    /// <summary>Linear form, axial flank section, pitch diameter: ISO 16047:2005 (from memory). The default of every model.</summary>
    public static TorqueConvention Iso16047 { get; } = new("ISO 16047", TorqueForm.Linear, FlankSection.Axial, MeanThreadDiameter.PitchDiameter);

    /// <summary>The rounded coefficients printed in VDI 2230-1:2015 §5.4.2; about 0.25 % above the linear form in the whole torque.</summary>
    public static TorqueConvention Vdi2230 { get; } = new("VDI 2230, printed", TorqueForm.Printed, FlankSection.Axial, MeanThreadDiameter.PitchDiameter);

    /// <summary>Linear form with the flank angle in the normal section: Machinery's Handbook, 31st ed. (2020), p. 1665, and JIS B 1083.</summary>
    public static TorqueConvention MachinerysHandbook { get; } =
        new("Machinery's Handbook / JIS", TorqueForm.Linear, FlankSection.Normal, MeanThreadDiameter.PitchDiameter);

    /// <summary>Exact form on the textbook mean diameter: Shigley, 9th ed. (2011), §8-2.</summary>
    public static TorqueConvention Shigley { get; } = new("Shigley", TorqueForm.Exact, FlankSection.Axial, MeanThreadDiameter.MajorAndRoot);

    /// <summary>How the convention is called in printed work.</summary>
    public string Name { get; }

    /// <summary>How thread torque depends on friction.</summary>
    public TorqueForm Form { get; }

    /// <summary>The section in which the flank angle enters.</summary>
    public FlankSection FlankSection { get; }

    /// <summary>The diameter at which thread friction acts.</summary>
    public MeanThreadDiameter MeanDiameter { get; }

    /// <summary>The same convention with another form.</summary>
    /// <param name="form">The form.</param>
    /// <returns>A new convention, named after the change.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="form"/> is not a value of the enumeration.</exception>
    public TorqueConvention WithForm(TorqueForm form)
    {
        if (form is < TorqueForm.Linear or > TorqueForm.Printed) Refuse(nameof(form), (int)form, "Linear, Exact or Printed");
        return new(Changed, form, FlankSection, MeanDiameter);
    }

    /// <summary>The same convention with another flank section.</summary>
    /// <param name="flankSection">The section.</param>
    /// <returns>A new convention, named after the change.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="flankSection"/> is not a value of the enumeration.</exception>
    public TorqueConvention WithFlankSection(FlankSection flankSection)
    {
        if (flankSection is < FlankSection.Axial or > FlankSection.Normal) Refuse(nameof(flankSection), (int)flankSection, "Axial or Normal");
        return new(Changed, Form, flankSection, MeanDiameter);
    }

    /// <summary>The same convention with another mean thread diameter.</summary>
    /// <param name="meanDiameter">The diameter.</param>
    /// <returns>A new convention, named after the change.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="meanDiameter"/> is not a value of the enumeration.</exception>
    public TorqueConvention WithMeanDiameter(MeanThreadDiameter meanDiameter)
    {
        if (meanDiameter is < MeanThreadDiameter.PitchDiameter or > MeanThreadDiameter.MajorAndRoot)
        {
            Refuse(nameof(meanDiameter), (int)meanDiameter, "PitchDiameter or MajorAndRoot");
        }

        return new(Changed, Form, FlankSection, meanDiameter);
    }

    /// <inheritdoc />
    public override string ToString() => $"{Name} ({Form}, {FlankSection}, {MeanDiameter})";

    private string Changed => Name.EndsWith(", changed", StringComparison.Ordinal) ? Name : Name + ", changed";

    private static void Refuse(string name, int value, string permitted) => Internals.Guard.RefuseAgainst(name, value, permitted);
}
