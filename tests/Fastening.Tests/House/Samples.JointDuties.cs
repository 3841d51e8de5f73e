using UnitsNet;

namespace Fastening.Tests.House;

/// <content>Valid values for the duties of joints.</content>
internal static partial class Samples
{
    private static IEnumerable<KeyValuePair<Type, object>> JointDuties(Joint joint)
    {
        JointDuty duty = new JointDuty(Force.Zero, Force.FromKilonewtons(20), LoadIntroduction.WorstCase, Embedding.None)
            .WithRequiredClamp(Force.FromKilonewtons(3));
        Range<Force> assembly = PreloadScatter.FromPlusMinus(Ratio.FromPercent(25)).RangeAround(Force.FromKilonewtons(60));
        var rises = new JointTemperatures(TemperatureDelta.FromKelvins(40), TemperatureDelta.FromKelvins(30));
        JointAssessment assessment = joint.Assess(duty, assembly, JointCapacity.NothingStated);
        return
        [
            new(typeof(Range<Force>), assembly),
            new(typeof(LoadIntroduction), LoadIntroduction.Between(0.3, 0.7)),
            new(typeof(Embedding), Embedding.None),
            new(typeof(JointTemperatures), rises),
            new(typeof(TemperatureDelta[]), new[] { TemperatureDelta.FromKelvins(40) }),
            new(typeof(JointDuty), duty),
            new(typeof(JointCapacity), JointCapacity.NothingStated),
            new(typeof(JointAssessment), assessment),
            new(typeof(JointCheck), assessment.Checks[0]),
        ];
    }

    private static IEnumerable<KeyValuePair<(Type, string), object>> JointDutyNames() =>
    [
        new((typeof(double), "high"), 0.7),
        new((typeof(double), "low"), 0.3),
        new((typeof(double), "safety"), 1.2),
        new((typeof(double), "partialFactor"), 1.25),
        new((typeof(Force), "lowAxialLoad"), Force.FromKilonewtons(-5)),
        new((typeof(Force), "highAxialLoad"), Force.FromKilonewtons(20)),
    ];
}
