using Fastening.Equations;

namespace Fastening;

/// <summary>What the clamped parts compute of their layers.</summary>
internal sealed class StackSpring(Term resilience)
{
    public Term Resilience => resilience;
}
