using System.Text;
using UnitsNet;

namespace Fastening.Tests.Answers;

/// <summary>Random numbers that are the same on every machine and on every runtime: splitmix64, started from a text.</summary>
internal sealed class Draw
{
    private ulong _state;

    public Draw(string seed)
    {
        _state = 14695981039346656037;
        foreach (byte letter in Encoding.UTF8.GetBytes(seed)) _state = unchecked((_state ^ letter) * 1099511628211);
    }

    public double Next() => (NextBits() >> 11) * (1.0 / (1L << 53));

    public int Next(int count) => (int)(Next() * count);

    public double Between(double low, double high) => low + (high - low) * Next();

    public bool Chance(double probability) => Next() < probability;

    public T Of<T>(params IReadOnlyList<T> many) => many[Next(many.Count)];

    public Length Millimeters(double low, double high) => Length.FromMillimeters(Between(low, high));

    public Torque NewtonMeters(double low, double high) => Torque.FromNewtonMeters(Between(low, high));

    public Force Kilonewtons(double low, double high) => Force.FromKilonewtons(Between(low, high));

    public Pressure Megapascals(double low, double high) => Pressure.FromMegapascals(Between(low, high));

    public Angle Degrees(double low, double high) => Angle.FromDegrees(Between(low, high));

    public Ratio Percent(double low, double high) => Ratio.FromPercent(Between(low, high));

    private ulong NextBits()
    {
        unchecked
        {
            _state += 0x9E3779B97F4A7C15;
            ulong z = _state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
            return z ^ (z >> 31);
        }
    }
}
