using Fastening.Equations;
using Fastening.Internals;

namespace Fastening;

/// <summary>Resilience at temperature and free growth of bolt and parts, in SI.</summary>
internal readonly record struct JointWarming(double Resilience, double BoltGrowth, double PartsGrowth)
{
    public static JointWarming Of(Derivation? work, in JointSprings springs, Joint joint, JointTemperatures temperatures)
    {
        RefuseMismatch(joint, temperatures);
        double hot = PreloadLossEquations.HotResilienceEquation.Step(
            work, springs.Bolt, temperatures.BoltModulusRatio, springs.Parts, temperatures.PartsModulusRatio);
        return new JointWarming(hot, GrowthOfBolt(work, joint, temperatures), GrowthOfParts(work, joint.Parts, temperatures));
    }

    private static double GrowthOfBolt(Derivation? work, Joint joint, JointTemperatures temperatures)
    {
        BoltCompliance bolt = joint.Bolt;
        if (!HasOtherMaterials(bolt)) return Grow(work, 0, joint.Parts.GripMeters, bolt.Material!, temperatures.BoltSi);
        double growth = 0;
        for (int i = 0; i < bolt.Sections.Count; i++)
        {
            growth = Grow(work, growth, bolt.Sections[i].SiLength, bolt.Sections[i].Material ?? bolt.Material!, temperatures.BoltSi);
        }

        return growth;
    }

    private static double GrowthOfParts(Derivation? work, ClampedStack parts, JointTemperatures temperatures)
    {
        double growth = 0;
        for (int i = 0; i < parts.Layers.Count; i++)
        {
            growth = Grow(work, growth, parts.Layers[i].SiThickness, parts.Layers[i].Material, temperatures.LayerSi(i));
        }

        return growth;
    }

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
            if (material.ThermalExpansion is null) return material;
        }

        for (int i = 0; i < joint.Parts.Layers.Count; i++)
        {
            if (joint.Parts.Layers[i].Material.ThermalExpansion is null) return joint.Parts.Layers[i].Material;
        }

        return null;
    }

    private static double Grow(Derivation? work, double before, double length, ElasticMaterial material, double rise) =>
        PreloadLossEquations.FreeGrowthEquation.Step(work, before, length, Si.Of(material.ThermalExpansion!.Value), rise);

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
