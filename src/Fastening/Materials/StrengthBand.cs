namespace Fastening;

/// <summary>A strength and the diameters, in metres, up to which it holds; <paramref name="Sizes"/> says the range from the least size on.</summary>
internal sealed record class StrengthBand(ThreadStandard Threads, double Least, double Greatest, string Sizes, BoltStrength Strength);
