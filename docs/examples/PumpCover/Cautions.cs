namespace PumpCover;

/// <summary>What a person with a wrench must read before anything else.</summary>
internal static class Cautions
{
    public static IReadOnlyList<string> All { get; } =
    [
        "This example is invented. Do not tighten a real joint by it.",
        "Torque is not preload: at one torque the preload varies with friction, over the whole band on this sheet.",
        "Wear eye and hand protection. Pull, do not push; stand clear of the line of the wrench and of where it swings if something slips or breaks.",
        "Isolate, drain and depressurise before a bolt is touched; follow the lock-out procedure of the plant.",
        "Never guess on a pressure-bearing, lifting, structural or safety-critical joint: such a joint needs a qualified procedure.",
        "Local codes, the instructions of the equipment maker and licensed practice come first; where they differ from this sheet, they apply.",
        "Tighten crosswise and in steps as the procedure says. This sheet gives the last step only.",
    ];
}
