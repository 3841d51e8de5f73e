using Fastening.Internals;
using UnitsNet;

namespace Fastening;

/// <summary>The four limits of size as stated: by a table, or by the user.</summary>
internal sealed class StatedLimits(Stated<Length> externalMajor, Stated<Length> externalPitch, Stated<Length> internalMinor, Stated<Length> internalPitch)
{
    public Stated<Length> ExternalMajor { get; } = externalMajor;

    public Stated<Length> ExternalPitch { get; } = externalPitch;

    public Stated<Length> InternalMinor { get; } = internalMinor;

    public Stated<Length> InternalPitch { get; } = internalPitch;
}
