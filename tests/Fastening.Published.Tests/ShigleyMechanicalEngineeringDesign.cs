using System.Globalization;
using Fastening.Equations;
using UnitsNet;

namespace Fastening.Published.Tests;

/// <summary>Budynas and Nisbett, Shigley's Mechanical Engineering Design, 9th ed. (2011), chapter 8.</summary>
public sealed class ShigleyMechanicalEngineeringDesign : PublishedSource
{
    public override IReadOnlyList<PublishedTable> Tables { get; } =
    [
        new("unified-area-", UnifiedArea),
        new("shigley9-class-", Strength),
        new("shigley9-ex8.1", PowerScrew),
        new("shigley-prob8.4", PowerScrew),
        new("shigley-prob8.3-", (row, _) => Efficiency(row["lead_angle_deg"], row["f"])),
        new("shigley9-ex8.3-geom", MeanDiameter),
        new("shigley9-ex8.3a-", (row, _) => StressEquations.TensileStress(row["Fi_kip"], row["At_in2"])),
        new("shigley9-K-", (row, _) => TorqueFactor(row.Text("bolt_condition"))),
        new("shigley-815", (_, output) => TorqueFactor(output)),
        new("shigley-third-turn", ThirdOfATurn),
        new("shigley9-blake-kurtz-", (row, output) => Preloads(row.Numbers("preloads_kN"), output)),
        new("shigley-814", (row, output) => Preloads(row.Numbers("F_kN"), output)),
    ];

    /// <summary>A bolt through a tube of another metal, turned past full contact: the stress in both.</summary>
    private static double? ThirdOfATurn(PublishedRow row, string output)
    {
        var boltMaterial = new ElasticMaterial("bolt", Pressure.FromGigapascals(row["E_bolt_GPa"]), 0.3, null);
        var tubeMaterial = new ElasticMaterial("tube", Pressure.FromGigapascals(row["E_tube_GPa"]), 0.3, null);
        Length length = Length.FromMillimeters(row["L_mm"]), outer = Length.FromMillimeters(row["tube_od_mm"]), inner = Length.FromMillimeters(row["tube_id_mm"]);
        Length diameter = Length.FromMillimeters(row["d_mm"]);
        ScrewThread thread = ScrewThread.IsoMetric(diameter, Length.FromMillimeters(row["pitch_mm"]));
        var joint = new Joint(
            BoltCompliance.OfSections(thread, [BoltSection.OfDiameter(length, diameter)], boltMaterial),
            ClampedStack.Sleeve([new ClampedLayer(length, tubeMaterial)], outer, inner));
        double newtons = joint.PreloadGainAt(Angle.FromRevolutions(row["turns"])).Newtons;
        double boltArea = StressEquations.SectionArea(diameter.Millimeters);
        return output switch
        {
            "sigma_bolt_MPa" => newtons / boltArea,
            "sigma_tube_MPa" => -newtons / (StressEquations.SectionArea(outer.Millimeters) - StressEquations.SectionArea(inner.Millimeters)),
            _ => null,
        };
    }

    /// <summary>Mean and standard deviation of the preloads at one torque, Tables 8-13 and 8-14.</summary>
    private static double Preloads(double[] kilonewtons, string output)
    {
        SampleStatistics<Force> sample = SampleStatistics.Of<Force>([.. kilonewtons.Select(x => Force.FromKilonewtons(x))]);
        return (output == "mean_kN" ? sample.Mean : sample.StandardDeviation).Kilonewtons;
    }

    private static double? UnifiedArea(PublishedRow row, string output)
    {
        ScrewThread thread = ScrewThread.Unified(Length.FromInches(row["d_in"]), row["threads_per_inch"]);
        return output switch
        {
            "At_in2" => thread.StressArea.SquareInches,
            "Ar_in2" => thread.MinorArea.SquareInches,
            _ => null,
        };
    }

    private static double? Strength(PublishedRow row, string output)
    {
        double largest = double.Parse(row.Text("size_range").Split("-M")[1], CultureInfo.InvariantCulture);
        BoltStrength strength = Iso898Part1.StrengthOf(row, largest);
        return output switch
        {
            "proof_MPa" => strength.ProofLoadStress?.Megapascals,
            "tensile_min_MPa" => strength.TensileStrength.Megapascals,
            "yield_min_MPa" => strength.YieldStrength.Megapascals,
            _ => null,
        };
    }

    /// <summary>A square thread has d_m = d − P/2 and d_r = d − P; the collar acts at a given diameter.</summary>
    private static double? PowerScrew(PublishedRow row, string output)
    {
        ScrewThread thread = ScrewThread.Square(
            Length.FromMillimeters(row["d_mm"]), Length.FromMillimeters(row["pitch_mm"]), (int)row["starts"]);
        double root = thread.RootDiameter.Millimeters;
        FrictionTorqueModel screw = Screw(thread, row["dc_mm"], new FrictionCoefficients(row["f"], row["fc"]));
        FrictionTorqueModel withoutCollar = screw.WithFriction(new FrictionCoefficients(row["f"], 0));
        Force load = Force.FromNewtons(row["F_N"]);
        Torque raise = screw.TorqueFor(load);
        return output switch
        {
            "dm_mm" => thread.PitchDiameter.Millimeters,
            "dr_mm" => root,
            "lead_mm" => thread.Lead.Millimeters,
            "TR_total_Nm" => raise.NewtonMeters,
            "TR_thread_Nm" => withoutCollar.TorqueFor(load).NewtonMeters,
            "T_collar_Nm" => screw.BreakdownAt(raise).BearingFrictionTorque.NewtonMeters,
            "TL_total_Nm" => screw.LooseningTorqueAt(load).NewtonMeters,
            "TL_thread_Nm" => withoutCollar.LooseningTorqueAt(load).NewtonMeters,
            "efficiency" => screw.Efficiency,
            "self_locking" or "self_locking_thread_alone" => screw.IsSelfLocking ? 1 : 0,
            "tau_body_MPa" => StressEquations.TorsionalStress(raise.NewtonMeters * 1e3, StressEquations.ElasticSectionModulus(root)),
            "sigma_axial_MPa" => -StressEquations.TensileStress(load.Newtons, StressEquations.SectionArea(root)),
            _ => null,
        };
    }

    /// <summary>A square thread of that lead angle, without a collar; the size cancels, and many starts bring the lead.</summary>
    private static double Efficiency(double leadAngleDegrees, double friction)
    {
        const double Mean = 30;
        const int Starts = 20;
        double lead = Math.PI * Mean * Math.Tan(leadAngleDegrees * Math.PI / 180);
        ScrewThread thread = ScrewThread.FromProfile(
            Length.FromMillimeters(32), Length.FromMillimeters(lead / Starts), Angle.Zero, Starts,
            Length.FromMillimeters(Mean), Length.FromMillimeters(28));
        FrictionTorqueModel screw = Screw(thread, 40, new FrictionCoefficients(friction, 0));
        return screw.Efficiency;
    }

    /// <summary>The book takes the root diameter from the tabulated minor area, and the lead angle from the rounded mean diameter.</summary>
    private static double? MeanDiameter(PublishedRow row, string output) => output switch
    {
        "dr_in" => BoltComplianceEquations.RoundDiameter(row["Ar_in2"]),
        "dm_in" => ThreadEquations.TextbookMeanDiameter(row["d_in"], Math.Sqrt(4 / Math.PI * row["Ar_in2"])),
        "lead_angle_deg" => Angle.FromRadians(ThreadEquations.LeadAngleAtMeanDiameter(
            1 / row["threads_per_inch"], row.Values.Single(value => value.Output == "dm_in").Number)).Degrees,
        _ => null,
    };

    /// <summary>The K that the package holds for a condition of Table 8-15, which the data name in two ways.</summary>
    private static double TorqueFactor(string condition)
    {
        string shipped = condition switch
        {
            "Nonplated, black finish" or "nonplated_black" => "nonplated; black finish",
            "Zinc-plated" or "zinc_plated" => "zinc-plated",
            "Lubricated" or "lubricated" => "lubricated",
            "Cadmium-plated" or "cadmium_plated" => "cadmium-plated",
            "With anti-seize compound" or "anti_seize" => "anti-seize compound",
            _ => "special low-friction nuts",
        };
        PublishedNutFactor? row = FrictionGuidance.NutFactors
            .SingleOrDefault(k => k.Provenance.Source == "Shigley 9th ed. (2011) Table 8-15" && k.Condition == shipped);
        return row is { IsSingleValue: true } ? row.Low : double.NaN;
    }

    private static FrictionTorqueModel Screw(ScrewThread thread, double collarDiameter, FrictionCoefficients friction) => TorquePreloadModel
        .FromFriction(
            thread, BearingSurface.Annulus(Length.FromMillimeters(collarDiameter + 5), Length.FromMillimeters(collarDiameter - 5)), friction)
        .WithConvention(TorqueConvention.Shigley);
}
