using Fastening.Equations;
using Fastening.Internals;

namespace Fastening;

/// <summary>Resilience at temperature and free growth of bolt and parts.</summary>
internal readonly struct JointWarming
{
    private JointWarming(Term resilience, Term boltGrowth, Term partsGrowth)
    {
        Resilience = resilience;
        BoltGrowth = boltGrowth;
        PartsGrowth = partsGrowth;
    }

    public Term Resilience { get; }

    public Term BoltGrowth { get; }

    public Term PartsGrowth { get; }

    public static JointWarming Of(Joint joint, JointTemperatures temperatures)
    {
        RefuseMismatch(joint, temperatures);
        JointSprings springs = joint.Springs;
        return new JointWarming(
            PreloadLossEquations.HotResilienceEquation.Of(springs.Bolt, temperatures.BoltModulusTerm, springs.Parts, temperatures.PartsModulusTerm),
            GrowthOfBolt(joint, temperatures.BoltTerm),
            GrowthOfParts(joint.Parts, temperatures));
    }

    /// <summary>The preload lost; negative when it is gained.</summary>
    public Term LossAt(Term preload, JointSprings springs) =>
        PreloadLossEquations.ThermalLossEquation.Of(preload, springs.Total, Resilience, BoltGrowth, PartsGrowth);

    /// <summary>The same, when what must be left is known and not what was there before.</summary>
    public Term LossBehind(Term preloadLeft, JointSprings springs) =>
        PreloadLossEquations.ThermalLossBehindEquation.Of(preloadLeft, springs.Total, Resilience, BoltGrowth, PartsGrowth);

    private static Term GrowthOfBolt(Joint joint, Term rise)
    {
        BoltCompliance bolt = joint.Bolt;
        if (!HasOtherMaterials(bolt)) return Grow(NoGrowth, joint.Parts.GripTerm, bolt.Material!.ExpansionOf(BoltCompliance.NameOf(bolt.Material, "the bolt")), rise);
        Term growth = NoGrowth;
        for (int i = 0; i < bolt.Sections.Count; i++)
        {
            BoltSection section = bolt.Sections[i];
            growth = Grow(growth, section.LengthOf(bolt.NameOf(i)), bolt.MaterialOf(i).ExpansionOf(bolt.MaterialNameOf(i)), rise);
        }

        return growth;
    }

    private static Term GrowthOfParts(ClampedStack parts, JointTemperatures temperatures)
    {
        Term growth = NoGrowth;
        for (int i = 0; i < parts.Layers.Count; i++)
        {
            ClampedLayer layer = parts.Layers[i];
            string name = layer.NameAt(i);
            growth = Grow(growth, layer.ThicknessOf(name), layer.Material.ExpansionOf(name), temperatures.LayerTerm(i, name));
        }

        return growth;
    }

    private static Term NoGrowth => Term.Given(0, "growth before the first piece");

    private static bool HasOtherMaterials(BoltCompliance bolt)
    {
        for (int i = 0; i < bolt.Sections.Count; i++)
        {
            if (bolt.Sections[i].Material is not null) return true;
        }

        return false;
    }

    /// <summary>The first material whose expansion is not known; null when all are.</summary>
    private static ElasticMaterial? UnknownExpansion(Joint joint)
    {
        BoltCompliance bolt = joint.Bolt;
        for (int i = 0; i < bolt.Sections.Count; i++)
        {
            ElasticMaterial material = bolt.Sections[i].Material ?? bolt.Material!;
            if (!material.HasExpansion) return material;
        }

        for (int i = 0; i < joint.Parts.Layers.Count; i++)
        {
            if (!joint.Parts.Layers[i].Material.HasExpansion) return joint.Parts.Layers[i].Material;
        }

        return null;
    }

    private static Term Grow(Term before, Term length, Term expansion, Term rise) =>
        PreloadLossEquations.FreeGrowthEquation.Of(before, length, expansion, rise);

    private static void RefuseMismatch(Joint joint, JointTemperatures temperatures)
    {
        if (joint.Bolt.Method == BoltComplianceMethod.Stated)
        {
            throw new ArgumentException("The stiffnesses of the joint are stated; without sections and layers their growth by temperature is not known.", nameof(temperatures));
        }

        if (UnknownExpansion(joint) is ElasticMaterial material)
        {
            throw new ArgumentException($"The thermal expansion of {material.Name} is unknown; give a material that has one.", nameof(temperatures));
        }

        int layers = joint.Parts.Layers.Count;
        if (temperatures.LayerCount != 1 && temperatures.LayerCount != layers)
        {
            throw new ArgumentException(
                Print.Text($"There are {temperatures.LayerCount} temperatures for {layers} layers; give one, or one for each."), nameof(temperatures));
        }

        double bolt = joint.Bolt.GripMeters, parts = joint.Parts.GripMeters;
        if (HasOtherMaterials(joint.Bolt) && Math.Abs(bolt - parts) > 1e-6 * parts)
        {
            throw new ArgumentException(
                Print.Text($"The bolt's sections of several materials are {Si.Length(bolt):G6} long, the parts {Si.Length(parts):G6}; they must agree."),
                nameof(temperatures));
        }
    }
}
